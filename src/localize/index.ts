import { createHash } from 'node:crypto';

import { success } from '../diagnostics/diagnostic.ts';
import type { Result } from '../diagnostics/diagnostic.ts';
import type { Workspace } from '../io/workspace.ts';
import type { Locale } from '../model/locale.ts';
import { makeFormatter } from './formatter.ts';
import { readLocale } from './read-locale.ts';
import { makeTranslator } from './translator.ts';

export { lintEvidenceWords } from './lint-evidence-words.ts';
export { lintLocales } from './lint-locales.ts';
export { listLanguages } from './read-locale.ts';

/**
 * Opens one language of a folder of languages. Fails with LOCALE_UNKNOWN or LOCALE_INVALID; missing words show only
 * when they are asked for, or by `lintLocales`.
 */
export async function openLocale(workspace: Workspace, folder: string, tag: string): Promise<Result<Locale>> {
  const read = await readLocale(workspace, folder, tag);
  if (!read.ok) return read;
  const { words, texts } = read.value;
  const { settings } = words;
  const formatter = makeFormatter(settings);
  return success({
    tag,
    direction: settings.direction,
    firstWeekday: settings.first_weekday,
    passive: settings.passive,
    readerWords: settings.reader_words,
    glossary: words.glossary,
    name: settings.name,
    translator: makeTranslator(words, formatter),
    formatter,
    commonWords: settings.common_words,
    digest: digestOf(texts),
    reviewed: settings.reviewed,
  });
}

/** Names and contents with their lengths, so that no two sets of files have the same digest. */
function digestOf(texts: readonly (readonly [name: string, text: string])[]): string {
  const hash = createHash('sha256');
  for (const part of texts.flat()) hash.update(`${String(Buffer.byteLength(part))}:${part}`);
  return hash.digest('hex');
}
