import { failure, success } from '../diagnostics/diagnostic.ts';
import type { Diagnostic, Result } from '../diagnostics/diagnostic.ts';
import type { Workspace } from '../io/workspace.ts';
import { GlossarySchema } from '../model/glossary.ts';
import type { GlossaryTerm } from '../model/glossary.ts';
import { TermsSchema, termsOf } from '../model/terms.ts';
import { LocaleSettingsSchema } from '../model/locale-settings.ts';
import { readSettings } from './read-settings.ts';
import { readWords } from './read-words.ts';
import type { Entry, Words } from './words.ts';

export interface LocaleFiles {
  readonly words: Words;
  /** Name and content of every file, in order of name. */
  readonly texts: readonly (readonly [name: string, text: string])[];
}

/** The language that the others are translated from. */
export const baseTag = 'en';

const settingsFile = 'locale.yaml';
const glossaryFile = 'glossary.yaml';
const termsFile = 'terms.yaml';

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
  const textOf = (file: string): string => texts.find(([name]) => name === file)?.[1] ?? '';
  const settings = readSettings(textOf(settingsFile), `${home}/${settingsFile}`, LocaleSettingsSchema);
  const glossary = readSettings(textOf(glossaryFile) || '{}', `${home}/${glossaryFile}`, GlossarySchema);
  const trade = readSettings(textOf(termsFile) || '{}', `${home}/${termsFile}`, TermsSchema);
  const files = texts
    .filter(([name]) => ![settingsFile, glossaryFile, termsFile].includes(name))
    .map(([name, text]) => readWords(text, `${home}/${name}`, name.slice(0, -'.yaml'.length)));
  const faults = [settings, glossary, trade].flatMap((read) => (read.ok ? [] : read.diagnostics));
  const unread = [...faults, ...files.flatMap((file) => file.diagnostics)];
  if (!settings.ok || !glossary.ok || !trade.ok || unread.length > 0) return failure(unread);
  const entries = new Map(
    files.flatMap((file) => file.entries).map((entry): [string, Entry] => [entry.key, entry]),
  );
  const terms = Object.entries(glossary.value).map(([id, term]): GlossaryTerm => ({ id, ...term }));
  return success({
    words: {
      tag,
      folder: home,
      settings: settings.value,
      glossary: terms,
      terms: termsOf(trade.value),
      entries,
    },
    texts,
  });
}

function unknownLanguage(tag: string, known: readonly string[]): Diagnostic {
  return {
    code: 'LOCALE_UNKNOWN',
    severity: 'error',
    message: `there are no words for the language ${tag}`,
    hint: known.length === 0 ? 'Check the folder of the languages.' : `Choose one of ${known.join(', ')}.`,
  };
}
