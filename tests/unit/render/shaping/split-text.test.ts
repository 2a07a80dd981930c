import { beforeAll, describe, expect, it } from 'vitest';

import { isPlain, splitByTypeface } from '../../../../src/render/shaping/split-text.ts';
import { loadSampleFonts, scriptSamples } from '../../../helpers/script-samples.tsx';

const familiesOf = (text: string): readonly (readonly [string, string])[] =>
  splitByTypeface(text).map((part) => [part.text, part.typeface.family] as const);

describe('a text in more than one script', () => {
  beforeAll(loadSampleFonts);

  it('is set in the typeface of each, digits always in that of the other pages', () => {
    expect(familiesOf('BMI为44。')).toEqual([
      ['BMI', 'Fira Sans'],
      ['为', 'Noto Sans SC'],
      ['44', 'Fira Sans'],
      ['。', 'Noto Sans SC'],
    ]);
    expect(familiesOf('555-0142로')).toEqual([
      ['555-0142', 'Fira Sans'],
      ['로', 'Noto Sans KR'],
    ]);
  });

  it('gives marks and brackets to what stands before them, else after', () => {
    expect(familiesOf('（BMI）')).toEqual([
      ['（', 'Noto Sans SC'],
      ['BMI', 'Fira Sans'],
      ['）', 'Noto Sans SC'],
    ]);
    expect(familiesOf('(يوم)')).toEqual([['(يوم)', 'Vazirmatn']]);
    expect(familiesOf('है।')).toEqual([['है।', 'Noto Sans Devanagari']]);
  });

  it('sets both quotation marks of a pair alike and narrow, in Chinese words or around others', () => {
    expect(familiesOf('“体重”')).toEqual([
      ['“', 'Fira Sans'],
      ['体重', 'Noto Sans SC'],
      ['”', 'Fira Sans'],
    ]);
    expect(familiesOf('写“IU”和“未知”：')).toEqual([
      ['写', 'Noto Sans SC'],
      ['“IU”', 'Fira Sans'],
      ['和', 'Noto Sans SC'],
      ['“', 'Fira Sans'],
      ['未知', 'Noto Sans SC'],
      ['”', 'Fira Sans'],
      ['：', 'Noto Sans SC'],
    ]);
    expect(familiesOf('“체중”')).toEqual([['“체중”', 'Noto Sans KR']]);
  });

  it('keeps what a reader takes for one letter in one typeface', () => {
    expect(familiesOf('क्ष')).toHaveLength(1);
    expect(familiesOf('يوماً')).toHaveLength(1);
  });

  it('is put together again by its parts', () => {
    for (const { text } of scriptSamples)
      expect(
        familiesOf(text)
          .map(([part]) => part)
          .join(''),
      ).toBe(text);
  });

  it('needs no look at its letters where all are Latin or Cyrillic', () => {
    expect(isPlain('Ợ nóng, серьёзное, 23 lb ≥ 5 €')).toBe(true);
    expect(isPlain('23 公斤')).toBe(false);
    expect(familiesOf('')).toEqual([]);
  });
});
