import { createHash } from 'node:crypto';

import { failure, success } from '../diagnostics/diagnostic.ts';
import type { Diagnostic, Result } from '../diagnostics/diagnostic.ts';
import type { Workspace } from '../io/workspace.ts';
import { documentKinds } from '../model/codes.ts';
import type { DocumentKind } from '../model/codes.ts';
import { readDrawings } from './drawings/read-drawings.ts';
import type { Drawings } from './drawings/read-drawings.ts';
import { lintTemplate } from './template/lint-template.ts';
import { parseTemplate, saysSomething } from './template/parse-template.ts';
import type { ParsedTemplate } from './template/parse-template.ts';
import { readKind } from './template/read-kind.ts';
import type { KindDescription } from './template/read-kind.ts';
import { compileTemplate } from './template/run-template.ts';
import type { RunTemplate } from './template/run-template.ts';
import { viewShape } from './view/view-shape.ts';

/** One kind of document, ready to run. */
export interface DocumentTemplate extends KindDescription {
  /** Path under the template folder, for messages. */
  readonly file: string;
  readonly run: RunTemplate;
}

export interface Templates {
  readonly documents: ReadonlyMap<DocumentKind, DocumentTemplate>;
  /** What operations do to a body. */
  readonly drawings: Drawings;
  /** sha256 over all template files in path order, 64 hex digits. */
  readonly digest: string;
}

interface TemplateFile {
  readonly path: string;
  readonly text: string;
}

/**
 * Reads, checks and compiles every template of a folder. `hasWords` lets the check find keys that the base language
 * lacks. Fails with every finding of every template.
 */
export async function loadTemplates(
  workspace: Workspace,
  folder: string,
  hasWords?: (key: string) => boolean,
): Promise<Result<Templates>> {
  const files = await readFiles(workspace, folder);
  const partials = new Map<string, ParsedTemplate>();
  const found: Diagnostic[] = [];
  for (const file of files.filter(({ path }) => path.startsWith('partials/') && path.endsWith('.hbs'))) {
    const parsed = keep(parseTemplate(file.text, file.path), found);
    if (parsed !== null) partials.set(file.path.slice('partials/'.length, -'.hbs'.length), parsed);
  }
  const setting = { shape: viewShape, partials, ...(hasWords === undefined ? {} : { hasWords }) };
  const documents = new Map<DocumentKind, DocumentTemplate>();
  for (const kind of documentKinds) {
    const main = keep(openMain(files, `${kind}/main.hbs`), found);
    const description = keep(readKind(textOf(files, `${kind}/kind.yaml`), `${kind}/kind.yaml`), found);
    if (main === null || description === null) continue;
    const findings = lintTemplate(main, setting);
    found.push(...findings);
    if (findings.length === 0)
      documents.set(kind, { ...description, file: main.file, run: compileTemplate(main, partials) });
  }
  const drawn = keep(readDrawings(files.filter(({ path }) => path.startsWith('drawings/'))), found);
  if (drawn === null || found.length > 0) return failure(found);
  return success({ documents, drawings: drawn, digest: digestOf(files) });
}

async function readFiles(workspace: Workspace, folder: string): Promise<readonly TemplateFile[]> {
  const files: TemplateFile[] = [];
  for (const name of await workspace.list(folder)) {
    if (!name.endsWith('/')) continue;
    for (const entry of await workspace.list(`${folder}/${name.slice(0, -1)}`)) {
      if (!/\.(hbs|yaml)$/.test(entry)) continue;
      files.push({ path: `${name}${entry}`, text: await workspace.readText(`${folder}/${name}${entry}`) });
    }
  }
  return files;
}

/** An absent or empty template is a mistake, not an empty document. */
function openMain(files: readonly TemplateFile[], path: string): Result<ParsedTemplate> {
  const parsed = parseTemplate(textOf(files, path), path);
  if (!parsed.ok || saysSomething(parsed.value)) return parsed;
  const message = 'This template is absent or empty.';
  const span = { file: path, line: 1, column: 1 };
  return failure([
    { code: 'TEMPLATE_SYNTAX', severity: 'error', message, hint: 'Write what the document says.', span },
  ]);
}

function textOf(files: readonly TemplateFile[], path: string): string {
  return files.find((file) => file.path === path)?.text ?? '';
}

function keep<T>(result: Result<T>, found: Diagnostic[]): T | null {
  if (result.ok) return result.value;
  found.push(...result.diagnostics);
  return null;
}

function digestOf(files: readonly TemplateFile[]): string {
  const hash = createHash('sha256');
  for (const { path, text } of files) hash.update(`${path}\0${text}\0`);
  return hash.digest('hex');
}
