import { createHash } from 'node:crypto';

import { success } from '../diagnostics/diagnostic.ts';
import type { Result } from '../diagnostics/diagnostic.ts';
import { failAll } from '../diagnostics/fail-all.ts';
import type { Workspace } from '../io/workspace.ts';
import type { Locale } from '../model/locale.ts';
import { makeFormatter } from './formatter.ts';
import { baseTag, listLanguages, readLocale } from './read-locale.ts';
import type { LocaleFiles } from './read-locale.ts';
import { makeTranslator } from './translator.ts';
import { digestOfScope, digestsOf } from './words-digest.ts';
import type { Words } from './words.ts';

export { lintEvidenceWords } from './lint-evidence-words.ts';
export { lintLocales } from './lint-locales.ts';
export { openLanguages } from './open-languages.ts';
export type { Languages } from './open-languages.ts';
export { listLanguages } from './read-locale.ts';
export { readReviewRecord, writeReviewEntry, writeReviewRecord } from './review-files.ts';
export { digestOfScope } from './words-digest.ts';

/**
 * Opens one language of a folder of languages. Fails with LOCALE_UNKNOWN or LOCALE_INVALID; missing words show only
 * when they are asked for, or by `lintLocales`.
 */
export async function openLocale(workspace: Workspace, folder: string, tag: string): Promise<Result<Locale>> {
  const read = await readLocale(workspace, folder, tag);
  if (!read.ok) return read;
  const base = tag === baseTag ? read : await readLocale(workspace, folder, baseTag);
  // A folder without the base language has no sources either.
  return success(makeLocale(read.value, base.ok ? base.value.words : read.value.words));
}

/** Opens all languages of a folder, by tag. Fails with everything that is wrong with any. */
export async function openLocales(
  workspace: Workspace,
  folder: string,
): Promise<Result<ReadonlyMap<string, Locale>>> {
  const tags = await listLanguages(workspace, folder);
  const read = await Promise.all(tags.map((tag) => readLocale(workspace, folder, tag)));
  const files = read.flatMap((result) => (result.ok ? [result.value] : []));
  if (files.length < read.length) return failAll(read);
  const base = files.find(({ words }) => words.tag === baseTag)?.words;
  return success(new Map(files.map((each) => [each.words.tag, makeLocale(each, base ?? each.words)])));
}

function makeLocale({ words, texts }: LocaleFiles, base: Words): Locale {
  const { settings, tag } = words;
  const formatter = makeFormatter(settings);
  return {
    tag,
    direction: settings.direction,
    firstWeekday: settings.first_weekday,
    smallAfterColon: settings.small_after_colon === true,
    passive: settings.passive,
    readerWords: settings.reader_words,
    glossary: words.glossary,
    name: settings.name,
    translator: makeTranslator(words, formatter),
    formatter,
    commonWords: settings.common_words,
    digest: digestOf(texts),
    wordsDigest: (scope) => digestOfScope(digestsOf(words, base), scope),
  };
}

/** Names and contents with their lengths, so that no two sets of files have the same digest. */
function digestOf(texts: readonly (readonly [name: string, text: string])[]): string {
  const hash = createHash('sha256');
  for (const part of texts.flat()) hash.update(`${String(Buffer.byteLength(part))}:${part}`);
  return hash.digest('hex');
}
