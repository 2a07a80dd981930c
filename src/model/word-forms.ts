/** Scripts whose words stand against one another, or whose endings are written onto them. */
const joined = /[\p{Script=Han}\p{Script=Hangul}]/u;
/** A letter of another word: Latin words stand against Chinese ones too. */
export const partOfWord = String.raw`(?:(?![\p{Script=Han}\p{Script=Hangul}])[\p{L}\p{M}\p{N}])`;

/**
 * Finds any of the forms as whole words: "leak" and not "bleak". In Chinese and Korean, where a space does not tell where a
 * word ends, anywhere. Flags are those of a regular expression; `u` is always set.
 */
export function wholeWords(forms: readonly string[], flags = ''): RegExp {
  return new RegExp(forms.map(wholeWord).join('|'), `u${flags}`);
}

function wholeWord(form: string): string {
  const before = joined.test(Array.from(form)[0] ?? '') ? '' : `(?<!${partOfWord})`;
  const after = joined.test(Array.from(form).at(-1) ?? '') ? '' : `(?!${partOfWord})`;
  return before + escapePattern(form) + after;
}

/** Finds any of the forms wherever it stands, also within a word; all of them, in any case. */
export function anywhere(forms: readonly string[]): RegExp {
  return new RegExp(forms.map(escapePattern).join('|'), 'giu');
}

/** Text as a part of a regular expression that means itself. */
export function escapePattern(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`);
}

/** Where a sentence ends: marks with a space after them, and the wide marks of Chinese, which have none. */
const sentenceEnd = /(?<=[.!?:;…؟؛।]["”»)]?)\s+|(?<=[。！？：；]["”」』）]?)(?!["”」』）])\s*/u;

/** Sentences of a text, each with its mark; a part after a colon or semicolon is one too. */
export function sentencesIn(text: string): readonly string[] {
  return text.split(sentenceEnd).filter((sentence) => sentence !== '');
}

const segmenter = new Intl.Segmenter('zh', { granularity: 'word' });
const spacedWord = /[\p{L}\d][\p{L}\p{M}\d.,'’-]*/gu;

/** A number right before what it counts: 24 in 24个月. */
const counting = /\d[\d.,]*(?=\p{Script=Han})/gu;

/**
 * How many words a text has; those of Chinese by dictionary, since no space parts them, a number and what it counts being
 * one, or each date would be six.
 */
export function countWords(text: string): number {
  if (!/\p{Script=Han}/u.test(text)) return (text.match(spacedWord) ?? []).length;
  return Array.from(segmenter.segment(text.replace(counting, ' '))).filter(
    ({ isWordLike }) => isWordLike === true,
  ).length;
}
