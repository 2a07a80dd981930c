import { failure, success } from '../diagnostics/diagnostic.ts';
import type { Result } from '../diagnostics/diagnostic.ts';
import { failAll } from '../diagnostics/fail-all.ts';
import type { Workspace } from '../io/workspace.ts';
import type { TranslationUnit } from '../model/translation.ts';
import { changeWords } from './change-words.ts';
import { listUnits } from './list-units.ts';
import { baseTag, listLanguages, readLocale } from './read-locale.ts';
import type { LocaleFiles } from './read-locale.ts';
import { readNotes } from './read-notes.ts';
import { readLengths } from './text-lengths.ts';
import { digestsOf } from './words-digest.ts';
import { fileOf } from './words.ts';

/** The words of all languages, for those who translate and review them. */
export interface Languages {
  /** The language that the others are translated from. */
  readonly base: string;
  /** Name of each language in itself, by tag. */
  readonly names: ReadonlyMap<string, string>;
  /** Digest of every text with its source: 16 hex digits for the source, then 16 for the text. */
  readonly digestsOf: (tag: string) => ReadonlyMap<string, string>;
  /** Every text to translate; a language that is not there yet has no targets. */
  readonly unitsOf: (tag: string, isReviewed: (key: string) => boolean) => readonly TranslationUnit[];
  /** The files of a language with other texts for some keys: path and content of those that change. */
  readonly change: (tag: string, texts: ReadonlyMap<string, string>) => ReadonlyMap<string, string>;
}

/** Fails with everything that is wrong with any file of words. */
export async function openLanguages(workspace: Workspace, folder: string): Promise<Result<Languages>> {
  const tags = await listLanguages(workspace, folder);
  const read = await Promise.all(tags.map((tag) => readLocale(workspace, folder, tag)));
  const files = new Map(
    read.flatMap((each) => (each.ok ? [[each.value.words.tag, each.value] as const] : [])),
  );
  if (files.size < read.length) return failAll(read);
  const base = files.get(baseTag);
  if (base === undefined) return failure([noBase(folder)]);
  const lengths = await readLengths(workspace, folder);
  if (!lengths.ok) return lengths;
  const longestOf = lengths.value;
  const notes = notesOf(base);
  return success({
    base: baseTag,
    names: new Map([...files].map(([tag, { words }]) => [tag, words.settings.name])),
    digestsOf: (tag) => digestsOf((files.get(tag) ?? base).words, base.words),
    unitsOf: (tag, isReviewed) => {
      const words = files.get(tag)?.words ?? null;
      return listUnits({ base: base.words, words, tag, notes, longestOf, isReviewed });
    },
    change: (tag, texts) => changedFiles(files.get(tag), texts),
  });
}

function notesOf({ texts }: LocaleFiles): ReadonlyMap<string, string> {
  return new Map(texts.flatMap(([name, text]) => [...readNotes(text, name.replace(/\.yaml$/, ''))]));
}

function changedFiles(
  files: LocaleFiles | undefined,
  texts: ReadonlyMap<string, string>,
): ReadonlyMap<string, string> {
  if (files === undefined) return new Map();
  const { words } = files;
  const before = new Map(files.texts.map(([name, text]) => [`${words.folder}/${name}`, text]));
  const changes = [...texts].filter(([key, text]) => words.entries.get(key)?.text !== text);
  const paths = [...new Set(changes.map(([key]) => fileOf(words, key)))];
  return new Map(
    paths.map((path) => {
      const own = new Map(changes.filter(([key]) => fileOf(words, key) === path));
      return [path, changeWords(before.get(path) ?? '{}', own)];
    }),
  );
}

function noBase(folder: string) {
  const message = `${folder} has no ${baseTag}, from which the others are translated`;
  return {
    code: 'LOCALE_UNKNOWN',
    severity: 'error',
    message,
    hint: 'Check the folder of the languages.',
  } as const;
}
