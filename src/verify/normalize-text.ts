import type { DocumentTree } from '../model/document.ts';
import { escapePattern } from '../model/word-forms.ts';

/** Latin ligatures that a reader may hand back as one character. */
const ligatures: Readonly<Record<string, string>> = {
  ﬀ: 'ff',
  ﬁ: 'fi',
  ﬂ: 'fl',
  ﬃ: 'ffi',
  ﬄ: 'ffl',
  ﬅ: 'st',
  ﬆ: 'st',
};

/** Soft hyphens, zero-width marks and marks of direction: they steer layout and are never seen. */
const unseen = /[\u00ad\u200b-\u200f\u202a-\u202e\u2060\u2066-\u2069\ufeff]/g;

/** One spelling for what looks alike: NFC, ligatures as letters, no unseen marks, single spaces. */
export function foldText(text: string): string {
  return text
    .replace(/[\ufb00-\ufb06]/g, (ligature) => ligatures[ligature] ?? ligature)
    .replace(unseen, '')
    .normalize('NFC')
    .replace(/\s+/g, ' ')
    .trim();
}

/**
 * Folded text without spaces, for comparing what was to be printed with what is read back: lines break anywhere
 * and a reader guesses spaces from gaps, so a space says nothing about the words.
 */
export function compactText(text: string): string {
  return foldText(text).replaceAll(' ', '');
}

const letter = '\\p{L}\\p{Mc}\\p{Nd}';
/** Everything but letters and digits, unless it joins two digits. */
const betweenLetters = new RegExp(`(?<=\\p{Nd})([.,:/–-])(?=\\p{Nd})|[^${letter}]`, 'gu');

/**
 * Compact text without marks and brackets, for lines from right to left: a reader of the file hands those that stand
 * beside a number back in an order of its own. The same holds for a vowel sign over letters that are joined in one glyph.
 * Every letter and digit is compared, in its order.
 */
export function lettersOf(text: string): string {
  return compactText(text).replace(betweenLetters, (_, joint: string | undefined) => joint ?? '');
}

/** How the texts of a document are compared with what is read back of its pages. */
export function comparisonFor({ direction }: Pick<DocumentTree, 'direction'>): (text: string) => string {
  return direction === 'rtl' ? lettersOf : compactText;
}

/** A pattern that finds a figure or a phone number whatever spaces stand in it, but not inside a longer number. */
export function numberPattern(value: string): RegExp {
  const signs = Array.from(compactText(value), escapePattern);
  return new RegExp(`(?<![\\d])(?<!\\d[.,])${signs.join('\\s*')}(?![\\d])(?![.,]\\d)`, 'u');
}
