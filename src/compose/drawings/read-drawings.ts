import { parseDocument } from 'yaml';
import type { z } from 'zod';

import { failure, success } from '../../diagnostics/diagnostic.ts';
import type { Diagnostic, Result } from '../../diagnostics/diagnostic.ts';
import type { DrawnLabel, DrawnView } from '../../model/drawing.ts';
import { OperationFileSchema, SharedFileSchema } from './drawing-file.ts';
import type { AnyViewFile, OperationFile, OutlineFile, ViewFile } from './drawing-file.ts';

/** A view whose words are still keys: of `operation.label` for its labels, of `operation.alt` for itself. */
export interface NamedView extends Pick<DrawnView, 'height' | 'layers' | 'food'> {
  readonly name: string;
  readonly labels: readonly (Omit<DrawnLabel, 'text'> & { readonly words: string })[];
}

/** What one operation does to a body. */
export interface OperationPicture {
  /** Operation that is in place before it; `none` where there is none. */
  readonly earlier: string;
  readonly before: NamedView;
  readonly after: NamedView;
  /** What is done, step by step: keys of `operation.step`. */
  readonly steps: readonly string[];
}

/** By option. */
export type Drawings = ReadonlyMap<string, readonly OperationPicture[]>;

interface TextFile {
  readonly path: string;
  readonly text: string;
}

const sharedFile = /\/outlines\.yaml$/;

/**
 * Drawings of what operations do, from the files of `templates/drawings`. Names of outlines and views count across all
 * files. Fails with every file that cannot be read and every name that is not there or is there twice.
 */
export function readDrawings(files: readonly TextFile[]): Result<Drawings> {
  const found: Diagnostic[] = [];
  const parts: Parts = { outlines: new Map(), views: new Map(), found };
  const operations: { readonly file: string; readonly operation: OperationFile }[] = [];
  for (const file of files) {
    if (sharedFile.test(file.path)) keep(parts, readFile(SharedFileSchema, file), file.path);
    else {
      const operation = keep(parts, readFile(OperationFileSchema, file), file.path);
      if (operation !== null) operations.push({ file: file.path, operation });
    }
  }
  const drawings = new Map(
    operations.map(({ file, operation }) => [operation.option, picturesOf(parts, operation, file)] as const),
  );
  if (drawings.size < operations.length) found.push(fault('drawings', 'Two files are about one option.'));
  return found.length > 0 ? failure(found) : success(drawings);
}

interface Parts {
  readonly outlines: Map<string, OutlineFile>;
  readonly views: Map<string, ViewFile>;
  readonly found: Diagnostic[];
}

function readFile<T>(schema: z.ZodType<T>, { path, text }: TextFile): Result<T> {
  const document = parseDocument(text);
  if (document.errors.length > 0) return failure([fault(path, 'This file is not valid YAML.')]);
  const read = schema.safeParse(document.toJS());
  if (read.success) return success(read.data);
  return failure(read.error.issues.map((issue) => fault(path, `${issue.path.join('.')}: ${issue.message}.`)));
}

/** What was read, with its outlines and views put to the others; null and its faults if nothing was. */
function keep<T extends Pick<OperationFile, 'outlines' | 'views'>>(
  { outlines, views, found }: Parts,
  read: Result<T>,
  path: string,
): T | null {
  if (!read.ok) {
    found.push(...read.diagnostics);
    return null;
  }
  const file = read.value;
  for (const [name, outline] of Object.entries(file.outlines)) {
    if (outlines.has(name)) found.push(fault(path, `The outline ${name} is there twice.`));
    outlines.set(name, outline);
  }
  for (const [name, view] of Object.entries(file.views)) {
    if (views.has(name)) found.push(fault(path, `The view ${name} is there twice.`));
    const whole = 'like' in view ? relabelled(file.views, view) : view;
    if (whole === null) found.push(fault(path, `The view ${name} is like one that is not there.`));
    else views.set(name, whole);
  }
  return file;
}

function relabelled(
  views: OperationFile['views'],
  { like, labels }: Exclude<AnyViewFile, ViewFile>,
): ViewFile | null {
  const view = views[like];
  return view === undefined || 'like' in view ? null : { ...view, labels };
}

function picturesOf(parts: Parts, operation: OperationFile, file: string): readonly OperationPicture[] {
  return operation.pictures.flatMap(({ earlier, before, after, steps }) => {
    const [first, second] = [viewNamed(parts, before, file), viewNamed(parts, after, file)];
    return first === null || second === null ? [] : [{ earlier, before: first, after: second, steps }];
  });
}

function viewNamed({ outlines, views, found }: Parts, name: string, file: string): NamedView | null {
  const view = views.get(name);
  if (view === undefined) {
    found.push(fault(file, `There is no view ${name}.`));
    return null;
  }
  const missing = view.layers.flatMap(({ parts }) => parts).filter((part) => !outlines.has(part));
  found.push(...missing.map((part) => fault(file, `There is no outline ${part}, which ${name} names.`)));
  return {
    name,
    height: view.height,
    food: view.food,
    layers: view.layers.map(({ look, parts }) => ({
      look,
      outlines: parts.flatMap((part) => outlineNamed(outlines, part)),
    })),
    labels: view.labels.map(({ words, side, at: [x, y] }) => ({ words, side, x, y })),
  };
}

function outlineNamed(outlines: Parts['outlines'], name: string): DrawnView['layers'][number]['outlines'] {
  const outline = outlines.get(name);
  if (outline === undefined) return [];
  const { path, width } = outline;
  return [width === undefined ? { path } : { path, width }];
}

function fault(file: string, message: string): Diagnostic {
  return {
    code: 'TEMPLATE_SYNTAX',
    severity: 'error',
    message,
    hint: 'Correct the drawing; outlines.yaml says how drawings are written.',
    span: { file, line: 1, column: 1 },
  };
}
