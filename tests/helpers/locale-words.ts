import { createNodeWorkspace } from '../../src/io/node-workspace.ts';
import { openLocale } from '../../src/localize/index.ts';
import { readLocale } from '../../src/localize/read-locale.ts';
import type { Words } from '../../src/localize/words.ts';
import type { Locale } from '../../src/model/locale.ts';

const folder = new URL('../../locales', import.meta.url).pathname;

/** The shipped language with this tag; fails the test if it cannot be opened. */
export async function shippedLocale(tag: string): Promise<Locale> {
  const opened = await openLocale(createNodeWorkspace(), folder, tag);
  if (!opened.ok) throw new Error(opened.diagnostics.map(({ message }) => message).join('\n'));
  return opened.value;
}

/** The words of a shipped language as they are written, before variables go in. */
export async function shippedWords(tag: string): Promise<Words> {
  const read = await readLocale(createNodeWorkspace(), folder, tag);
  if (!read.ok) throw new Error(read.diagnostics.map(({ message }) => message).join('\n'));
  return read.value.words;
}
