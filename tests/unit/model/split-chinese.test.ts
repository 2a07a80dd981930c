import { describe, expect, it } from 'vitest';

import { splitChinese, splitChineseProse, splitChineseWords } from '../../../src/model/split-chinese.ts';

describe('a Chinese sentence', () => {
  it('may end a line after nearly every character, but never before a comma, a stop or a closing bracket', () => {
    const pieces = splitChinese('外科医生切除大部分胃（约80%）。每天，都要喝水');
    expect(pieces.join('')).toBe('外科医生切除大部分胃（约80%）。每天，都要喝水');
    expect(pieces.length).toBeGreaterThan(12);
    expect(pieces.filter((piece) => /^[，。：；、？！）》”%]/.test(piece))).toEqual([]);
  });

  it('never ends one after an opening bracket, or within a number or a Latin word', () => {
    const pieces = splitChinese('体重（约118.4公斤）BMI为44，电话555-0142');
    expect(pieces.filter((piece) => /[（《“]$/.test(piece))).toEqual([]);
    for (const whole of ['118.4', 'BMI', '44']) {
      expect(pieces.filter((piece) => piece.includes(whole))).toHaveLength(1);
    }
  });

  it('keeps a number with what it counts, also at the end', () => {
    const pieces = splitChinese('每1,000人中有40人，6个月后87\u00a0公斤，共12');
    for (const whole of ['1,000人', '40人', '6个月', '87\u00a0公斤', '12'])
      expect(pieces.filter((piece) => piece.includes(whole))).toHaveLength(1);
  });

  it('keeps a range whole, and "of each" with its number', () => {
    const pieces = splitChinese('大约每1,000人中有1至12人，或者3到4人');
    for (const whole of ['每1,000人', '1至12人', '3到4人'])
      expect(pieces.filter((piece) => piece.includes(whole))).toHaveLength(1);
  });

  it('keeps a date whole', () => {
    const pieces = splitChinese('手术日是2026年12月17日，下次在2027年6月');
    for (const whole of ['2026年12月17日', '2027年6月'])
      expect(pieces.filter((piece) => piece.includes(whole))).toHaveLength(1);
  });

  it('keeps a number with the word that it numbers, a unit with its stroke, and the mark of a footnote', () => {
    const pieces = splitChinese('很确定。研究13、25。见注4，BMI是32.2\u00a0kg/m²，按流程*，每天');
    for (const whole of ['研究13、', '注4，', 'kg/m²，', '程*，'])
      expect(pieces.filter((piece) => piece.includes(whole))).toHaveLength(1);
    expect(splitChinese('研究pubmed.gov/x').length).toBeGreaterThan(2);
  });

  it('keeps a short term between marks whole in running text, and parts a longer one', () => {
    expect(splitChineseProse('袖状胃手术：体重')).toEqual(['袖', '状', '胃', '手', '术：', '体重']);
    expect(splitChineseProse('（死亡，渗漏，糖尿病缓解')).toEqual(['（死亡，', '渗漏，', '糖尿病缓解']);
    expect(splitChineseProse('胆囊切除术，再')).toHaveLength(6);
    const long = '您每天都要喝水，不要停';
    expect(splitChineseProse(long)).toEqual(['您', '每', '天', '都', '要', '喝', '水，', '不要停']);
  });

  it('is the only text that is split: Korean and all others break at spaces', () => {
    expect(splitChinese('위소매절제술')).toEqual(['위소매절제술']);
    expect(splitChinese('желудка')).toEqual(['желудка']);
    expect(splitChinese('')).toEqual([]);
  });
});

describe('a Chinese heading', () => {
  it.each([
    ['改换手术，10年', ['改换', '手术，', '10年']],
    ['胆囊切除术，2年', ['胆囊', '切除术，', '2年']],
  ])('is parted between words only: %s', (heading, words) => {
    const pieces = splitChineseWords(heading);
    expect(pieces.join('')).toBe(heading);
    for (const word of words) expect(pieces.some((piece) => piece.includes(word))).toBe(true);
  });

  it('may be parted where a sentence may, and nowhere else', () => {
    const heading = '我的体重（约118.4公斤）可能怎样随时间变化？';
    const allowed = new Set<number>();
    splitChinese(heading).reduce((at, piece) => (allowed.add(at + piece.length), at + piece.length), 0);
    const pieces = splitChineseWords(heading);
    expect(pieces.length).toBeGreaterThan(5);
    let at = 0;
    for (const piece of pieces) expect(allowed).toContain((at += piece.length));
  });
});
