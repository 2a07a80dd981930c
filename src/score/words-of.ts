import type { Locale } from '../model/locale.ts';
import type { Paragraph } from '../model/document.ts';

/** Stands for whatever a variable holds; no locale has it. */
const anything = '\uE000';

/** Words of a key as they stand on a page: without markup, with spaces of one kind. */
export function wordsOf(locale: Locale, key: string, variables: readonly string[] = []): string {
  const values = Object.fromEntries(variables.map((name) => [name, anything]));
  return tidy(plain(locale.translator.text(key, values)));
}

/** Whether a text is the words of a key, whatever its variables hold. */
export function isWordsOf(text: string, words: string): boolean {
  return holdsInOrder(tidy(text), tidy(words).split(anything), true);
}

/** Whether a text has the words of a key in it, whatever its variables hold. */
export function hasWordsOf(text: string, words: string): boolean {
  return holdsInOrder(tidy(text), tidy(words).split(anything), false);
}

function holdsInOrder(text: string, parts: readonly string[], whole: boolean): boolean {
  let from = 0;
  for (const part of parts) {
    const at = text.indexOf(part, from);
    if (at === -1) return false;
    from = at + part.length;
  }
  if (!whole) return true;
  return text.startsWith(parts[0] ?? '') && text.endsWith(parts.at(-1) ?? '');
}

export function textOf({ inlines }: Pick<Paragraph, 'inlines'>): string {
  return tidy(inlines.map(({ value }) => value).join(''));
}

export function textsOf(paragraphs: readonly Paragraph[]): string {
  return paragraphs.map(textOf).join(' ');
}

/** Whole numbers in a text, however they are grouped: "40 out of 1,000" and "40 sur 1 000" have 40 and 1000. */
export function numbersIn(text: string): readonly number[] {
  return [...text.matchAll(/\d{1,3}(?:[.,\s]\d{3}(?!\d))+|\d+/gu)].map(([digits]) =>
    Number(digits.replace(/\D/gu, '')),
  );
}

/** Units as they stand after their number in the words of a key: "mg" in "{{number}} mg". */
export function unitsIn(locale: Locale, key: string, variables: readonly string[]): readonly string[] {
  const [, ...after] = wordsOf(locale, key, variables).split(anything);
  return after.map((unit) => unit.replace(/[()]/gu, '').trim()).filter((unit) => unit !== '');
}

function tidy(text: string): string {
  return text.replace(/\s+/gu, ' ').trim();
}

const references: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };

function plain(markup: string): string {
  return markup
    .replace(/<[^>]+>/gu, '')
    .replace(/&(amp|lt|gt|quot|apos);/gu, (whole, name: string) => references[name] ?? whole);
}
