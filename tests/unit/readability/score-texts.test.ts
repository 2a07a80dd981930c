import { describe, expect, it } from 'vitest';

import { readDocument, tooHard } from '../../../src/readability/index.ts';
import { scoreTexts } from '../../../src/readability/score-texts.ts';
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
    const facil = Array.from({ length: 20 }, () => 'Usted come menos y se llena pronto.');
    const dificil = Array.from(
      { length: 20 },
      () => 'Las complicaciones gastrointestinales requieren vigilancia interdisciplinaria.',
    );
    expect(scoreTexts(facil, 'es').map(({ passes }) => passes)).toEqual([true, true]);
    expect(scoreTexts(dificil, 'es').map(({ passes }) => passes)).toEqual([false, false]);
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
