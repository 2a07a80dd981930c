import { syllable } from 'syllable';

import type { ReadingResult } from '../model/reading-level.ts';
import { countTexts } from './count-text.ts';
import { fernandezHuerta, fleschKincaidGrade, smogGrade, szigrisztPazos } from './formulas.ts';
import type { TextCounts } from './formulas.ts';
import { countSpanishSyllables } from './spanish-syllables.ts';

interface Formula {
  readonly code: ReadingResult['formula'];
  readonly value: (counts: TextCounts) => number;
  readonly limit: number;
  readonly easier: ReadingResult['easier'];
}

interface LanguageFormulas {
  readonly syllablesOf: (word: string) => number;
  readonly formulas: readonly [Formula, Formula];
}

/**
 * Limits for a patient's page. English: grade 6 (AMA, from memory), and 8 by SMOG, which runs two grades higher because
 * it asks for full comprehension. Spanish has no grades: 80 begins "easy" on the first scale, as it does on Flesch's
 * where that is grade 6; 65 begins "fairly easy" on the INFLESZ scale (An Sist Sanit Navar 2008;31:135-152).
 */
const formulasOf: Readonly<Record<string, LanguageFormulas>> = {
  en: {
    syllablesOf: syllable,
    formulas: [
      { code: 'flesch-kincaid', value: fleschKincaidGrade, limit: 6, easier: 'lower' },
      { code: 'smog', value: smogGrade, limit: 8, easier: 'lower' },
    ],
  },
  es: {
    syllablesOf: countSpanishSyllables,
    formulas: [
      { code: 'fernandez-huerta', value: fernandezHuerta, limit: 80, easier: 'higher' },
      { code: 'szigriszt-pazos', value: szigrisztPazos, limit: 65, easier: 'higher' },
    ],
  },
};

/** Fewer words say nothing about how hard a text is. */
const fewestWords = 100;

/**
 * How hard texts are to read, by two published formulas of their language. Empty for a language without an accepted
 * formula and for fewer than 100 words.
 */
export function scoreTexts(texts: readonly string[], language: string): readonly ReadingResult[] {
  const known = formulasOf[language.split('-')[0] ?? ''];
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
