import type { TextCounts } from './formulas.ts';

/** A word begins and ends with a letter; apostrophes and hyphens within it belong to it. */
const wordPattern = /\p{L}[\p{L}\p{M}’'-]*/gu;
const sentenceEnd = /[.!?:;…]+(?=\s|["”»)]|$)/u;
const letter = /\p{L}/gu;

/**
 * Counts of texts that each stand by themselves: a heading or a table cell is a sentence, with a full stop or without.
 * Numbers are not words.
 */
export function countTexts(texts: readonly string[], syllablesOf: (word: string) => number): TextCounts {
  const sentences = texts
    .flatMap((text) => text.split(sentenceEnd))
    .map((sentence) => sentence.match(wordPattern) ?? [])
    .filter((words) => words.length > 0);
  const words = sentences.flat();
  const syllables = words.map(syllablesOf);
  const letters = words.map((word) => word.normalize('NFC').match(letter)?.length ?? 0);
  return {
    sentences: sentences.length,
    words: words.length,
    syllables: sum(syllables),
    longWords: syllables.filter((length) => length >= 3).length,
    wideWords: letters.filter((length) => length >= 7).length,
  };
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
