import { syllable } from 'syllable';

import type { ReadingResult } from '../model/reading-level.ts';
import * as formula from './formulas.ts';
import type { TextCounts } from './formulas.ts';
import { countFrenchSyllables } from './french-syllables.ts';
import { countPortugueseSyllables } from './portuguese-syllables.ts';
import { countRussianSyllables } from './russian-syllables.ts';
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
 * Two formulas for each language for which two were seen that can be worked out from the text alone; DEVELOPERS.md says
 * where, and why the others have none. The limits for a patient's page:
 * - English: grade 6 (AMA, from memory), and 8 by SMOG, which runs two grades higher because it asks for full comprehension.
 * - Spanish: 80 begins "easy" on the first scale, as it does on Flesch's where that is grade 6; 65 begins "fairly easy" on
 *   the INFLESZ scale (An Sist Sanit Navar 2008;31:135-152).
 * - French: 80 as on Flesch's scale, which the formula was fitted to; LIX under 41 is grade 6 or lower (Anderson 1983, for
 *   English, from the table in koRpus), and 40 begins what Björnsson calls of middling difficulty.
 * - Portuguese: 75 begins "very easy", years 1 to 5 of school; the other is a year of school.
 * - Russian: 80 is class 6 on Flesch's scale; the other is a class.
 */
const formulasOf: Readonly<Record<string, LanguageFormulas>> = {
  en: {
    syllablesOf: syllable,
    formulas: [
      { code: 'flesch-kincaid', value: formula.fleschKincaidGrade, limit: 6, easier: 'lower' },
      { code: 'smog', value: formula.smogGrade, limit: 8, easier: 'lower' },
    ],
  },
  es: {
    syllablesOf: countSpanishSyllables,
    formulas: [
      { code: 'fernandez-huerta', value: formula.fernandezHuerta, limit: 80, easier: 'higher' },
      { code: 'szigriszt-pazos', value: formula.szigrisztPazos, limit: 65, easier: 'higher' },
    ],
  },
  fr: {
    syllablesOf: countFrenchSyllables,
    formulas: [
      { code: 'kandel-moles', value: formula.kandelMoles, limit: 80, easier: 'higher' },
      { code: 'lix', value: formula.lix, limit: 40, easier: 'lower' },
    ],
  },
  pt: {
    syllablesOf: countPortugueseSyllables,
    formulas: [
      { code: 'martins', value: formula.martinsEase, limit: 75, easier: 'higher' },
      { code: 'moreno', value: formula.morenoGrade, limit: 6, easier: 'lower' },
    ],
  },
  ru: {
    syllablesOf: countRussianSyllables,
    formulas: [
      { code: 'oborneva', value: formula.obornevaEase, limit: 80, easier: 'higher' },
      { code: 'solovyev', value: formula.solovyevClass, limit: 6, easier: 'lower' },
    ],
  },
};

/** The formulas of a language by its tag; undefined where none is checked. */
export function findFormulas(tag: string): LanguageFormulas | undefined {
  return formulasOf[tag.split('-')[0] ?? ''];
}
