// Sources: readsight 1.0.5, ruTS 0.19.0 and alt-legibilidade 0.1.2, run by reading-level.readsight-ruts-alt.py; the
// documentation of ruTS 0.19.0 for its riddle; textstat 0.7 for LIX of the riddle. All run or read in November 2026.
import { describe, expect, it } from 'vitest';

import { countTexts } from '../../src/readability/count-text.ts';
import { findFormulas } from '../../src/readability/formulas-of-language.ts';
import { lix, obornevaEase } from '../../src/readability/formulas.ts';
import { countRussianSyllables } from '../../src/readability/russian-syllables.ts';
import reference from './reading-level.readsight-ruts-alt.json' with { type: 'json' };

type Language = keyof typeof reference.texts;

function knownOf(language: string): NonNullable<ReturnType<typeof findFormulas>> {
  const known = findFormulas(language);
  if (known === undefined) throw new Error(`no formulas for ${language}`);
  return known;
}

describe.each(reference.readings)('$formula of the $language text by $by', (reading) => {
  const { language, formula, words, sentences, syllables, score } = reading;
  const known = knownOf(language);
  const counts = { words, sentences, syllables, wideWords: reading.wideWords ?? 0, longWords: 0 };

  it('has the score that the program prints for its own counts', () => {
    const value = known.formulas.find(({ code }) => code === formula)?.value ?? lix;
    // readsight rounds to one or two places.
    expect(Math.abs(value(counts) - score)).toBeLessThan(reading.by === 'readsight' ? 0.051 : 1e-9);
  });

  it('is taken from as many words, sentences and long words', () => {
    const ours = countTexts([reference.texts[language as Language]], known.syllablesOf);
    // alt-legibilidade counts no long words.
    const wideWords = reading.wideWords ?? ours.wideWords;
    expect(ours).toMatchObject({ words, sentences, wideWords });
  });
});

describe('syllables of the texts', () => {
  const counted = (language: Language): number => {
    const { syllablesOf } = knownOf(language);
    return countTexts([reference.texts[language]], syllablesOf).syllables;
  };
  const theirs = (language: string, by: string): number =>
    reference.readings.find((reading) => reading.language === language && reading.by === by)?.syllables ?? 0;

  it('are those of ruTS, vowel for vowel', () => {
    expect(counted('ru')).toBe(theirs('ru', 'ruTS'));
  });

  it('are near those of alt-legibilidade, which takes every ia, ie and io for one', () => {
    expect(Math.abs(counted('pt') - theirs('pt', 'alt-legibilidade'))).toBeLessThanOrEqual(4);
  });

  it('are not fewer than those of readsight, which follows the places where a printer may divide a word', () => {
    expect(counted('fr')).toBeGreaterThanOrEqual(theirs('fr', 'readsight'));
  });
});

describe('the riddle in the documentation of ruTS', () => {
  const riddle = 'Ног нет, а хожу, рта нет, а скажу, когда спать, когда вставать, когда работу начинать';
  const counts = countTexts([riddle], countRussianSyllables);

  it('has the two scores that stand there', () => {
    expect(obornevaEase(counts)).toBeCloseTo(87.16833333333334, 9);
    expect(lix(counts)).toBeCloseTo(28.333333333333336, 9);
  });
});
