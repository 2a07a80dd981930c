import type { SentenceLengths } from '../model/reading-level.ts';
import { countWords, sentencesIn } from '../model/word-forms.ts';

/** Fewer sentences say nothing about how a page is written. */
const fewestSentences = 10;
/** Pages that people with little schooling understood kept to under 15 words a sentence (PMC3318988, for English). */
const mostWords = 15;

/** How long the sentences of texts are, in words; null for fewer than ten. */
export function measureSentences(texts: readonly string[]): SentenceLengths | null {
  const lengths = texts
    .flatMap((text) => sentencesIn(text))
    .map(countWords)
    .filter((words) => words > 0);
  if (lengths.length < fewestSentences) return null;
  const average = lengths.reduce((sum, words) => sum + words, 0) / lengths.length;
  return { average, longest: Math.max(...lengths), limit: mostWords, passes: average < mostWords };
}
