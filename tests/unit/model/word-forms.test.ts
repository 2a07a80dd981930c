import { describe, expect, it } from 'vitest';

import { countWords, sentencesIn, wholeWords } from '../../../src/model/word-forms.ts';

describe('whole words', () => {
  it('are not found inside longer ones', () => {
    expect(wholeWords(['leak']).test('a bleak day')).toBe(false);
    expect(wholeWords(['leak', 'ulcer']).test('an ulcer, a leak')).toBe(true);
  });

  it('end where a vowel sign of Hindi ends, not before it', () => {
    expect(wholeWords(['पेट']).test('पेटी')).toBe(false);
    expect(wholeWords(['पेट']).test('पेट में दर्द')).toBe(true);
  });

  it('are found anywhere in Chinese, and before an ending in Korean', () => {
    expect(wholeWords(['反流']).test('您有胃酸反流的问题')).toBe(true);
    expect(wholeWords(['역류']).test('역류가 있습니다')).toBe(true);
  });

  it('take marks of a pattern as they stand', () => {
    expect(wholeWords(['a.b']).test('axb')).toBe(false);
  });

  it('are counted all, in any case, if asked', () => {
    expect('The man and the dog, then'.match(wholeWords(['the', 'and'], 'gi'))).toHaveLength(3);
  });
});

describe('sentences', () => {
  it('end at the marks of each script', () => {
    expect(sentencesIn('One. Two? Three')).toEqual(['One.', 'Two?', 'Three']);
    expect(sentencesIn('पहला। दूसरा।')).toEqual(['पहला।', 'दूसरा।']);
    expect(sentencesIn('هل تشعر بألم؟ اتصل بنا.')).toEqual(['هل تشعر بألم؟', 'اتصل بنا.']);
  });

  it('end without a space in Chinese, the closing mark with them', () => {
    expect(sentencesIn('他说：“请打电话。”然后走。')).toEqual(['他说：', '“请打电话。”', '然后走。']);
  });

  it('do not end within a number', () => {
    expect(sentencesIn('It is 1.5 mg')).toEqual(['It is 1.5 mg']);
  });
});

describe('words', () => {
  it('are counted by spaces, and in Chinese by dictionary', () => {
    expect(countWords("It's 1,000 well-known words")).toBe(4);
    expect(countWords('请给您的医生打电话')).toBeGreaterThan(4);
    expect(countWords('请给您的医生打电话')).toBeLessThan(9);
    expect(countWords('पेट में दर्द')).toBe(3);
    expect(countWords('24 months: Jan 15, 2029')).toBe(5);
    expect(countWords('24个月：2029年1月15日')).toBe(5);
  });
});
