import { describe, expect, it } from 'vitest';
import { breakWords } from '../../../src/render/break-lines.ts';
import type { Word } from '../../../src/render/break-lines.ts';

/** Letters 10 wide, spaces 10; a comma at the end is a pause, a full stop ends a sentence. */
function words(text: string): readonly Word[] {
  return text.split(' ').map((word) => ({
    width: word.length * 10,
    space: 10,
    ...(word.endsWith(',') ? { pause: 'mark' as const } : {}),
    ...(word.endsWith('.') ? { pause: 'sentence' as const } : {}),
  }));
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
    const of = (...widths: number[]) => widths.map((width) => ({ width, space: 4 }));
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

  it('rather breaks balanced lines between two sentences than after a pause, or a word of the second', () => {
    expect(lines('aaaaaaaa. bb cccccccccc', 200, 'balanced')).toEqual(['aaaaaaaa.', 'bb cccccccccc']);
    expect(lines('aaaaaaaa bb cccccccccc', 200, 'balanced')).toEqual(['aaaaaaaa bb', 'cccccccccc']);
    expect(lines('aaaaa. bb, cccccccc', 130, 'balanced')).toEqual(['aaaaa. bb,', 'cccccccc']);
    expect(lines('aaaaaa. b, cccccccc', 130, 'balanced')).toEqual(['aaaaaa.', 'b, cccccccc']);
  });

  it('ends a line early where its last words stay with the next, and in a narrow column however short it is then', () => {
    const kept = (text: string, measure: number, setting: 'filled' | 'balanced') => {
      const all = text.split(' ');
      const tied = words(text).map((word, index) => ({
        ...word,
        ...(/^\d+$/.test(all[index] ?? '') ? { tie: 'stays' as const } : {}),
        ...(all[index] === 'than' ? { tie: 'leans' as const } : {}),
      }));
      const starts = breakWords(tied, measure, setting);
      return starts.map((start, line) => all.slice(start, starts[line + 1] ?? all.length).join(' '));
    };
    expect(kept('after about 24 months and more', 150, 'filled')).toEqual([
      'after about',
      '24 months',
      'and more',
    ]);
    expect(lines('after about 24 months and more', 150, 'filled')).toEqual([
      'after about 24',
      'months and more',
    ]);
    expect(kept('call 555 010 0199 now then', 130, 'filled')).toEqual(['call', '555 010 0199', 'now then']);
    expect(kept('at night call 555 010 0199', 190, 'filled')).toEqual(['at night call', '555 010 0199']);
    // What leans on a number goes with it where that leaves the line full enough, else the number goes with what it counts.
    expect(kept('there were fewer than 1 now', 210, 'filled')).toEqual(['there were fewer', 'than 1 now']);
    expect(kept('they saw than 24 months', 120, 'filled')).toEqual(['they saw', 'than', '24 months']);
    expect(kept('it than 24 months', 120, 'filled')).toEqual(['it than', '24 months']);
    expect(kept('they see fewer than 1 now', 170, 'balanced')).toEqual(['they see fewer', 'than 1 now']);
    expect(kept('in 24 unforgettable months', 120, 'filled')).toEqual(['in 24', 'unforgettable', 'months']);
    expect(kept('they had 6 weeks of it', 130, 'balanced')).toEqual(['they had', '6 weeks of it']);
    expect(lines('they had 6 weeks of it', 130, 'balanced')).toEqual(['they had 6', 'weeks of it']);
    // A line more, where as many as there is room in would part them; none where no line has room for both.
    expect(kept('they had 6 weeks of it', 120, 'balanced')).toEqual(['they had', '6 weeks', 'of it']);
    expect(kept('in 24 unforgettable months', 120, 'balanced')).toEqual(['in 24', 'unforgettable', 'months']);
    expect(kept('at 17 months', 90, 'filled')).toEqual(['at', '17 months']);
    expect(lines('at 17 months', 90, 'filled')).toEqual(['at 17', 'months']);
  });

  it('gives no line for no words, and one line for a word wider than the measure', () => {
    expect(breakWords([], 100, 'filled')).toEqual([]);
    expect(lines('unforgettable', 50, 'balanced')).toEqual(['unforgettable']);
  });
});
