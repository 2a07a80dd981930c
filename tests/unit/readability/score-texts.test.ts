import { describe, expect, it } from 'vitest';

import { findFormulas } from '../../../src/readability/formulas-of-language.ts';
import { readDocument, tooHard } from '../../../src/readability/index.ts';
import { scoreTexts } from '../../../src/readability/score-texts.ts';
import { shippedWords } from '../../helpers/locale-words.ts';
import { paragraph, smallTree, words } from '../../helpers/small-tree.ts';

const easy = Array.from({ length: 20 }, () => 'You eat less and you feel full soon.');
const hard = Array.from(
  { length: 20 },
  () =>
    'Gastrointestinal complications necessitate comprehensive postoperative surveillance by interdisciplinary specialists.',
);

describe('how hard texts are to read', () => {
  it('is told by two formulas of the language, each with its limit', () => {
    expect(scoreTexts(easy, 'en').map(({ formula, passes }) => [formula, passes])).toEqual([
      ['flesch-kincaid', true],
      ['smog', true],
    ]);
    expect(scoreTexts(hard, 'en').map(({ passes }) => passes)).toEqual([false, false]);
  });

  it.each([
    [
      'es',
      'Usted come menos y se llena pronto.',
      'Las complicaciones gastrointestinales requieren vigilancia.',
    ],
    [
      'fr',
      'Vous mangez moins et vous avez moins faim.',
      'Les complications gastriques nécessitent des consultations.',
    ],
    [
      'pt-BR',
      'Você come menos e sente fome mais tarde.',
      'As complicações gastrintestinais necessitam acompanhamento.',
    ],
    [
      'ru',
      'Вы едите мало, и вам хватит.',
      'Послеоперационные осложнения требуют междисциплинарного наблюдения.',
    ],
  ])('tells plain sentences from heavy ones in %s, by both', (language, plain, heavy) => {
    const passes = (sentence: string): readonly boolean[] =>
      scoreTexts(
        Array.from({ length: 30 }, () => sentence),
        language,
      ).map((result) => result.passes);
    expect([passes(plain), passes(heavy)]).toEqual([
      [true, true],
      [false, false],
    ]);
  });

  it.each(['fr', 'pt-BR', 'ru'])('is explained in %s with the limits that are held', async (tag) => {
    const written = await shippedWords(tag);
    const numbers = written.entries.get('sources.reading.intro')?.text.match(/\d+/g);
    expect([...new Set(numbers)]).toEqual(findFormulas(tag)?.formulas.map(({ limit }) => String(limit)));
  });

  it('is not told of a language without a formula, nor of hardly any text', () => {
    expect(scoreTexts(easy, 'zh')).toEqual([]);
    expect(scoreTexts(easy.slice(0, 3), 'en')).toEqual([]);
  });
});

describe('a document', () => {
  const treeOf = (texts: readonly string[]): ReturnType<typeof smallTree> =>
    smallTree(texts.map((text) => paragraph('t.hbs:1', [words(text)])));

  it('is read by its whole sentences alone', () => {
    const names = Array.from({ length: 100 }, () => 'Gastrointestinal interdisciplinary surveillance');
    expect(readDocument(treeOf([...easy, ...names]))).toEqual(readDocument(treeOf(easy)));
  });

  it('is warned of once for each formula that finds it too hard', () => {
    expect(tooHard(readDocument(treeOf(easy)))).toEqual([]);
    const warnings = tooHard(readDocument(treeOf(hard)));
    expect(warnings.map(({ code, severity }) => [code, severity])).toEqual([
      ['READING_LEVEL', 'warning'],
      ['READING_LEVEL', 'warning'],
    ]);
    expect(warnings[0]?.message).toMatch(
      /^comparison is harder to read than it should be: \d+\.\d by flesch-kincaid, the limit is 6$/,
    );
  });
});

describe('a document in a language without a formula', () => {
  const treeOf = (sentence: string, count: number): ReturnType<typeof smallTree> =>
    smallTree(
      Array.from({ length: count }, () => paragraph('t.hbs:1', [words(sentence)])),
      { language: 'vi' },
    );

  it('is read by how long its sentences are', () => {
    const { results, sentences } = readDocument(treeOf('Quý vị ăn ít hơn. Quý vị no sớm.', 5));
    expect(results).toEqual([]);
    expect(sentences).toEqual({ average: 4.5, longest: 5, limit: 15, passes: true });
  });

  it('is not read by a few of them, nor elsewhere', () => {
    expect(readDocument(treeOf('Quý vị ăn ít hơn.', 9)).sentences).toBeNull();
    const english = Array.from({ length: 20 }, () => paragraph('t.hbs:1', [words('You eat less.')]));
    expect(readDocument(smallTree(english)).sentences).toBeNull();
  });

  it('is warned of once they have fifteen words on average', () => {
    const sentenceOf = (length: number): string => `${Array.from({ length }, () => 'ăn').join(' ')}.`;
    expect(tooHard(readDocument(treeOf(sentenceOf(14), 20)))).toEqual([]);
    expect(tooHard(readDocument(treeOf(sentenceOf(15), 20))).map(({ message }) => message)).toEqual([
      'comparison is harder to read than it should be: 15.0 words a sentence, it should be under 15',
    ]);
  });

  it.each(['ar', 'hi', 'ht', 'ko', 'tl', 'vi', 'zh-Hans'])('says in %s what it keeps to', async (tag) => {
    const written = await shippedWords(tag);
    const numbers = written.entries.get('sources.reading.none')?.text.match(/\d+/g);
    expect([findFormulas(tag), numbers]).toEqual([undefined, ['15']]);
  });
});
