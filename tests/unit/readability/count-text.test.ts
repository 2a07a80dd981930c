import { describe, expect, it } from 'vitest';

import { countTexts } from '../../../src/readability/count-text.ts';
import { countFrenchSyllables } from '../../../src/readability/french-syllables.ts';
import { countPortugueseSyllables } from '../../../src/readability/portuguese-syllables.ts';
import { countRussianSyllables } from '../../../src/readability/russian-syllables.ts';
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

  it('calls a word wide from seven letters, and counts no marks between and over them', () => {
    expect(countTexts(['L’estomac e\u0301troits low-dose'], one).wideWords).toBe(3);
    expect(countTexts(['L’e\u0301te\u0301 e\u0301troit low-dos'], one).wideWords).toBe(0);
  });
});

// Words in which the rules part or join vowels; tests/external counts many more words as two outside sources do.
describe('syllables of French words', () => {
  it.each([
    ['opération', 4],
    ['l’opération', 4],
    ['table', 1],
    ['années', 2],
    ['les', 1],
    ['bien', 1],
    ['client', 2],
    ['nuit', 1],
    ['fruit', 1],
    ['cruel', 2],
    ['moyen', 2],
    ['feuille', 1],
    ['naïf', 2],
    ['théâtre', 2],
    ['réunion', 3],
    ['mangeons', 2],
    ['quatre', 1],
    ['guérir', 2],
    ['cœur', 1],
    ['elle-même', 2],
    ['kg', 1],
  ])('%s has %d', (word, syllables) => {
    expect(countFrenchSyllables(word)).toBe(syllables);
  });
});

describe('syllables of Portuguese words', () => {
  it.each([
    ['operação', 4],
    ['cirurgia', 4],
    ['história', 3],
    ['água', 2],
    ['área', 2],
    ['dia', 2],
    ['ainda', 3],
    ['raiz', 2],
    ['rainha', 3],
    ['reino', 2],
    ['saúde', 3],
    ['mãe', 1],
    ['corações', 3],
    ['muito', 2],
    ['quais', 1],
    ['sangue', 2],
    ['guiar', 2],
    ['poeta', 3],
    ['kg', 1],
  ])('%s has %d', (word, syllables) => {
    expect(countPortugueseSyllables(word)).toBe(syllables);
  });
});

describe('syllables of Russian words', () => {
  it.each([
    ['операция', 5],
    ['ёж', 1],
    ['в', 0],
    ['врач', 1],
    ['Appetit', 3],
  ])('%s has %d', (word, syllables) => {
    expect(countRussianSyllables(word)).toBe(syllables);
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
