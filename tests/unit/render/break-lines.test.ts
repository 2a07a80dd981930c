import { describe, expect, it } from 'vitest';
import { breakWords } from '../../../src/render/break-lines.ts';

/** Letters 10 wide, spaces 10; a comma at the end is a pause. */
function words(text: string) {
  return text.split(' ').map((word) => ({ width: word.length * 10, space: 10, pause: word.endsWith(',') }));
}

function lines(text: string, measure: number, setting: 'filled' | 'balanced') {
  const all = text.split(' ');
  const starts = breakWords(words(text), measure, setting);
  return starts.map((start, line) => all.slice(start, starts[line + 1] ?? all.length).join(' '));
}

describe('breakWords', () => {
  it('fills lines as far as they go', () => {
    expect(lines('one two three four five six', 130, 'filled')).toEqual(['one two three', 'four five six']);
  });

  it('never widens the measure for a word that is wider than it, and tightens past a lone word', () => {
    const of = (...widths: number[]) => widths.map((width) => ({ width, space: 4, pause: false }));
    expect(breakWords(of(62, 47, 10), 60, 'filled')).toEqual([0, 1, 2]);
    expect(breakWords(of(50, 31, 14, 8), 60, 'filled')).toEqual([0, 1, 2]);
  });

  it('tightens filled prose until two words stand on the last line', () => {
    expect(lines('these are some words it so', 250, 'filled')).toEqual(['these are some words', 'it so']);
  });

  it('leaves one long word alone on the last line', () => {
    expect(lines('one two three unforgettable', 160, 'filled')).toEqual(['one two three', 'unforgettable']);
  });

  it('leaves one short word alone when another line would be needed to avoid it', () => {
    expect(lines('abcdefghijkl abcdefghijkl it', 120, 'filled')).toEqual([
      'abcdefghijkl',
      'abcdefghijkl',
      'it',
    ]);
  });

  it('makes balanced lines as equal as can be', () => {
    expect(lines('How much might I weigh', 200, 'balanced')).toEqual(['How much', 'might I weigh']);
  });

  it('rather breaks balanced lines after a pause, unless that makes them very unequal', () => {
    expect(lines('aaaaaaaaaa, bb cccccccccc', 240, 'balanced')).toEqual(['aaaaaaaaaa,', 'bb cccccccccc']);
    expect(lines('aa, bbbbbbbbbb cccccccccc', 240, 'balanced')).toEqual(['aa, bbbbbbbbbb', 'cccccccccc']);
  });

  it('gives no line for no words, and one line for a word wider than the measure', () => {
    expect(breakWords([], 100, 'filled')).toEqual([]);
    expect(lines('unforgettable', 50, 'balanced')).toEqual(['unforgettable']);
  });
});
