import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { readSource } from '../batch/index.ts';
import { placesIn } from '../installation.ts';
import { withFiles } from '../io/overlay.ts';
import { lintLocales } from '../localize/index.ts';
import { checkReturned, readXliff } from '../xliff/index.ts';
import { countOf } from './align-columns.ts';
import type { LanguagesCall } from './languages-desk.ts';
import { printDiagnostics } from './print-diagnostics.ts';

/**
 * Takes the texts of a file that a translator sent back into the words of its language. Nothing is written if one text
 * must be refused, or if the words would have a fault that they did not have before.
 */
export async function importLanguage({
  context,
  languages,
  subject: file,
}: LanguagesCall): Promise<number | readonly Diagnostic[]> {
  const { workspace, root, terminal } = context;
  const source = await readSource(workspace, file);
  if (!source.ok) return source.diagnostics;
  const read = readXliff(source.value.text, file);
  if (!read.ok) return read.diagnostics;
  const { language, units } = read.value;
  if (!languages.names.has(language)) return [noFolder(language, file)];
  const refused = checkReturned(
    units,
    languages.unitsOf(language, () => false),
  );
  if (refused.length > 0) return refused;
  const texts = new Map(
    units.flatMap(({ key, target }) => (target === null ? [] : [[key, target] as const])),
  );
  const changed = languages.change(language, texts);
  const folder = placesIn(root).locales;
  const before = new Set((await lintLocales(workspace, folder)).map(faultName));
  const found = await lintLocales(withFiles(workspace, changed), folder);
  const fresh = found.filter((fault) => !before.has(faultName(fault)));
  if (fresh.some(({ severity }) => severity === 'error')) return fresh;
  for (const [path, text] of changed) await workspace.write(path, text);
  await printDiagnostics(context, fresh);
  terminal.out(`${countOf(texts.size, 'text')} read, ${countOf(changed.size, 'file')} of words changed`);
  return 0;
}

function faultName({ code, path, message }: Diagnostic): string {
  return [code, path, message].join(' ');
}

function noFolder(language: string, file: string): Diagnostic {
  return {
    code: 'LOCALE_UNKNOWN',
    severity: 'error',
    message: `there is no folder for the language ${language}`,
    hint: 'Make one with its locale.yaml and glossary.yaml first, as DEVELOPERS.md says.',
    span: { file, line: 1, column: 1 },
  };
}
