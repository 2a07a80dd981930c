import type { TextCounts } from './formulas.ts';

/** A word begins and ends with a letter; apostrophes and hyphens within it belong to it. */
const wordPattern = /\p{L}[\p{L}\p{M}’'-]*/gu;
const sentenceEnd = /[.!?:;…]+(?=\s|["”»)]|$)/u;

/**
 * Counts of texts that each stand by themselves: a heading or a table cell is a sentence, with a full stop or without.
 * Numbers are not words.
 */
export function countTexts(texts: readonly string[], syllablesOf: (word: string) => number): TextCounts {
  const sentences = texts
    .flatMap((text) => text.split(sentenceEnd))
    .map((sentence) => sentence.match(wordPattern) ?? [])
    .filter((words) => words.length > 0);
  const lengths = sentences.flat().map(syllablesOf);
  return {
    sentences: sentences.length,
    words: lengths.length,
    syllables: lengths.reduce((sum, length) => sum + length, 0),
    longWords: lengths.filter((length) => length >= 3).length,
  };
}
