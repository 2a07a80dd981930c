import { describe, expect, it } from 'vitest';

import { countTexts } from '../../../src/readability/count-text.ts';
import { countSpanishSyllables } from '../../../src/readability/spanish-syllables.ts';

const one = (): number => 1;

describe('counting a text', () => {
  it('takes each text for a sentence of its own, ended or not', () => {
    expect(countTexts(['A sleeve', 'You eat less. You feel full.'], one)).toMatchObject({
      sentences: 3,
      words: 8,
    });
  });

  it('does not end a sentence inside a number or an address', () => {
    expect(countTexts(['You weigh 119.5 kg, see doi.org/10.1 for it.'], one).sentences).toBe(1);
  });

  it('counts no numbers, and no sentence without a word', () => {
    expect(countTexts(['12 of 100.', '555-0128', ''], one)).toMatchObject({ sentences: 1, words: 1 });
  });

  it('keeps what apostrophes and hyphens join', () => {
    expect(countTexts(['Don’t stop low-dose shots'], one).words).toBe(4);
  });

  it('calls a word long from three syllables', () => {
    const lengths: Readonly<Record<string, number>> = { ab: 2, abc: 3, abcd: 4 };
    expect(countTexts(['ab abc abcd'], (word) => lengths[word] ?? 0)).toMatchObject({
      syllables: 9,
      longWords: 2,
    });
  });
});

// Word division as the Real Academia Española teaches it (Ortografía 2010); the words are our own choice, from memory.
describe('syllables of Spanish words', () => {
  it.each([
    ['país', 2],
    ['aéreo', 4],
    ['ahí', 2],
    ['ciudad', 2],
    ['guitarra', 3],
    ['pingüino', 3],
    ['averiguáis', 4],
    ['Uruguay', 3],
    ['hoy', 1],
    ['muy', 1],
    ['leer', 2],
    ['poeta', 3],
    ['búho', 2],
    ['caída', 3],
    ['línea', 3],
    ['oír', 2],
    ['y', 1],
    ['ayer', 2],
    ['que', 1],
    ['operación', 4],
    ['estómago', 4],
    ['kg', 1],
  ])('%s has %d', (word, syllables) => {
    expect(countSpanishSyllables(word)).toBe(syllables);
  });
});
