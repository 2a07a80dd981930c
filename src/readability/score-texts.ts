import type { ReadingResult } from '../model/reading-level.ts';
import { countTexts } from './count-text.ts';
import { findFormulas } from './formulas-of-language.ts';

/** Fewer words say nothing about how hard a text is. */
const fewestWords = 100;

/**
 * How hard texts are to read, by two published formulas of their language. Empty for a language without them and for
 * fewer than 100 words.
 */
export function scoreTexts(texts: readonly string[], language: string): readonly ReadingResult[] {
  const known = findFormulas(language);
  if (known === undefined) return [];
  const counts = countTexts(texts, known.syllablesOf);
  if (counts.words < fewestWords) return [];
  return known.formulas.map(({ code, value, limit, easier }) => {
    const score = value(counts);
    return {
      formula: code,
      score,
      limit,
      easier,
      passes: easier === 'lower' ? score <= limit : score >= limit,
    };
  });
}
