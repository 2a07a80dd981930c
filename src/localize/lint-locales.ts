import { comparePositions } from '../diagnostics/compare-positions.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Workspace } from '../io/workspace.ts';
import { baseTag, listLanguages, readLocale } from './read-locale.ts';
import { wordsRules } from './rules/index.ts';
import { textsTooLong } from './rules/texts-fit.ts';
import { readLengths } from './text-lengths.ts';

/** Everything wrong with the words of a folder of languages, in order of file and line. */
export async function lintLocales(workspace: Workspace, folder: string): Promise<readonly Diagnostic[]> {
  const tags = new Set([baseTag, ...(await listLanguages(workspace, folder))]);
  const read = await Promise.all([...tags].map((tag) => readLocale(workspace, folder, tag)));
  const unread = read.flatMap((result) => (result.ok ? [] : result.diagnostics));
  const languages = read.flatMap((result) => (result.ok ? [result.value.words] : []));
  const base = languages.find(({ tag }) => tag === baseTag);
  const others = languages.filter(({ tag }) => tag !== baseTag);
  const found = base === undefined ? [] : wordsRules.flatMap((rule) => rule.check({ base, others }));
  const lengths = await readLengths(workspace, folder);
  const long = lengths.ok
    ? languages.flatMap((words) => textsTooLong(words, lengths.value))
    : lengths.diagnostics;
  return [...unread, ...found, ...long].sort(comparePositions);
}
