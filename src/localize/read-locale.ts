import { LineCounter, parseDocument } from 'yaml';
import type { Document } from 'yaml';

import { failure, success } from '../diagnostics/diagnostic.ts';
import type { Diagnostic, Result, SourceSpan } from '../diagnostics/diagnostic.ts';
import type { Workspace } from '../io/workspace.ts';
import { LocaleSettingsSchema } from '../model/locale-settings.ts';
import type { LocaleSettings } from '../model/locale-settings.ts';
import { readWords } from './read-words.ts';
import type { Entry, Words } from './words.ts';

export interface LocaleFiles {
  readonly words: Words;
  /** Name and content of every file, in order of name. */
  readonly texts: readonly (readonly [name: string, text: string])[];
}

const settingsFile = 'locale.yaml';

/** Tags of the languages in a folder, sorted: every folder that holds a locale.yaml. */
export async function listLanguages(workspace: Workspace, folder: string): Promise<readonly string[]> {
  const entries = (await workspace.list(folder)).filter((name) => name.endsWith('/'));
  const tags = entries.map((name) => name.slice(0, -1));
  const present = await Promise.all(tags.map((tag) => workspace.exists(`${folder}/${tag}/${settingsFile}`)));
  return tags.filter((_, index) => present[index]).sort((a, b) => (a < b ? -1 : 1));
}

/** All files of one language. Fails with LOCALE_UNKNOWN for a language that is not there, LOCALE_INVALID for bad files. */
export async function readLocale(
  workspace: Workspace,
  folder: string,
  tag: string,
): Promise<Result<LocaleFiles>> {
  const known = await listLanguages(workspace, folder);
  if (!known.includes(tag)) return failure([unknownLanguage(tag, known)]);
  const home = `${folder}/${tag}`;
  const names = (await workspace.list(home)).filter((name) => name.endsWith('.yaml'));
  const texts = await Promise.all(
    names.map(async (name) => [name, await workspace.readText(`${home}/${name}`)] as const),
  );
  const settings = readSettings(
    texts.find(([name]) => name === settingsFile)?.[1] ?? '',
    `${home}/${settingsFile}`,
  );
  const files = texts
    .filter(([name]) => name !== settingsFile)
    .map(([name, text]) => readWords(text, `${home}/${name}`, name.slice(0, -'.yaml'.length)));
  const faults = [...(settings.ok ? [] : settings.diagnostics), ...files.flatMap((file) => file.diagnostics)];
  if (!settings.ok || faults.length > 0) return failure(faults);
  const entries = new Map(
    files.flatMap((file) => file.entries).map((entry): [string, Entry] => [entry.key, entry]),
  );
  return success({ words: { tag, folder: home, settings: settings.value, entries }, texts });
}

function readSettings(text: string, file: string): Result<LocaleSettings> {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, uniqueKeys: true });
  const [fault] = [...document.errors, ...document.warnings];
  if (fault !== undefined) {
    const [message = ''] = fault.message.split('\n');
    return failure([invalid(message, spanAt(lines, fault.pos[0], file))]);
  }
  const parsed = LocaleSettingsSchema.safeParse(document.toJS());
  if (parsed.success) return success(parsed.data);
  return failure(
    parsed.error.issues.map((issue) => {
      const path = issue.path.map(String);
      return invalid(
        `${[...path, ''].join(': ')}${issue.message}`,
        spanAt(lines, offsetAt(document, path), file),
      );
    }),
  );
}

/** Where a setting stands, or the nearest parent that is there. */
function offsetAt(document: Document.Parsed, path: readonly string[]): number {
  for (let length = path.length; length > 0; length -= 1) {
    const node = document.getIn(path.slice(0, length), true) as
      { readonly range?: readonly number[] } | undefined;
    if (node?.range?.[0] !== undefined) return node.range[0];
  }
  return 0;
}

function spanAt(lines: LineCounter, offset: number, file: string): SourceSpan {
  const { line, col } = lines.linePos(offset);
  return { file, line: Math.max(line, 1), column: Math.max(col, 1) };
}

function invalid(message: string, span: SourceSpan): Diagnostic {
  return { code: 'LOCALE_INVALID', severity: 'error', message, hint: 'Correct locale.yaml.', span };
}

function unknownLanguage(tag: string, known: readonly string[]): Diagnostic {
  return {
    code: 'LOCALE_UNKNOWN',
    severity: 'error',
    message: `there are no words for the language ${tag}`,
    hint: known.length === 0 ? 'Check the folder of the languages.' : `Choose one of ${known.join(', ')}.`,
  };
}
