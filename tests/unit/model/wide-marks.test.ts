import { describe, expect, it } from 'vitest';

import { continuedHeading } from '../../../src/model/tree-text.ts';
import { spaceBetween } from '../../../src/model/wide-marks.ts';

describe('the space between words on one line', () => {
  it('is none beside a Chinese mark that brings its own white', () => {
    expect(spaceBetween('完了。', '再来')).toBe('');
    expect(spaceBetween('<b>完了。</b>', '再来')).toBe('');
    expect(spaceBetween('“完了。”', '“再来”')).toBe('');
    expect(spaceBetween('我的选择', '<b>（续）</b>')).toBe('');
    expect(spaceBetween('My choices', '(continued)')).toBe(' ');
  });

  it('is none before a bracket that explains a Korean word', () => {
    expect(spaceBetween('내 선택', '(계속)')).toBe('');
    expect(spaceBetween('<b>내 선택</b>', '<b>(계속)')).toBe('');
    expect(spaceBetween('무엇을 선택합니까?', '(계속)')).toBe(' ');
    expect(spaceBetween('내 선택', '다음')).toBe(' ');
  });

  it('holds for a heading that goes on over the page', () => {
    expect(continuedHeading('我的选择', '（续）')).toBe('我的选择（续）');
    expect(continuedHeading('My choices', '(continued)')).toBe('My choices (continued)');
  });
});
