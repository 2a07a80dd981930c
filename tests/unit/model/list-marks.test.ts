import { describe, expect, it } from 'vitest';
import { afterLabel, listComma } from '../../../src/model/list-marks.ts';

describe('marks between words that are set on one line', () => {
  it.each([
    ['Driving', ', '],
    ['गाड़ी', ', '],
    ['운전', ', '],
    ['قيادة', '، '],
    ['开车', '、'],
  ])('a list goes on after %s with the comma of its letters', (before, mark) => {
    expect(listComma(before)).toBe(mark);
  });

  it.each([
    ['Visits', ': ', ': '],
    ['Visites', '\u00a0: ', '\u00a0: '],
    ['复诊', '：', '：'],
    ['Can it be undone?', ': ', ' '],
    ['Peut-on l’annuler\u00a0?', '\u00a0: ', ' '],
    ['能还原吗？', '：', ''],
  ])('a label %s is followed by the colon of its language, unless it has a mark', (label, colon, mark) => {
    expect(afterLabel(label, colon)).toBe(mark);
  });
});
