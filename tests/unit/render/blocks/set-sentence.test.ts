import { beforeAll, describe, expect, it } from 'vitest';
import { setSentence } from '../../../../src/render/blocks/set-sentence.ts';
import type { SentenceLine } from '../../../../src/render/blocks/set-sentence.ts';
import { loadFonts } from '../../../../src/render/fonts.ts';
import { sentence } from '../../../helpers/sample-care-documents.ts';

const role = { size: 13, lineHeight: 18, weight: 400 } as const;

beforeAll(async () => {
  await loadFonts();
});

function set(text: string, width = 460): readonly SentenceLine[] {
  return setSentence(sentence(text), role, width);
}

const shown = (lines: readonly SentenceLine[]): readonly string[] =>
  lines.map((line) =>
    line
      .map(({ runs, blank }) => (blank === undefined ? runs.map(({ text }) => text).join('') : '__'))
      .join('|'),
  );

const widthOf = (line: SentenceLine): number => line.reduce((sum, { gap, width }) => sum + gap + width, 0);

describe('a sentence with blanks', () => {
  it('has its words and blanks in order on one line, which the blanks fill by their shares', () => {
    const [line = [], ...others] = set('I have __ since __ .');
    expect(others).toEqual([]);
    expect(shown([line])).toEqual(['I have|__|since|__|.']);
    expect(widthOf(line)).toBeCloseTo(459, 0);
    const blanks = line.filter(({ blank }) => blank !== undefined).map(({ width }) => width - 60);
    expect((blanks[0] ?? 0) / (blanks[1] ?? 1)).toBeCloseTo(2, 5);
  });

  it('takes more lines where there is no room for a hand to write, and never begins one with a mark', () => {
    const lines = set('I have __ since __ .', 150);
    expect(shown(lines)).toEqual(['I have|__|since', '__|.']);
    for (const line of lines) expect(widthOf(line)).toBeLessThanOrEqual(150);
  });

  it('breaks long words before a blank like any others', () => {
    const lines = set('I am Teodora Lindqvist-Abara and I take these medicines every single day: __', 200);
    expect(shown(lines).at(-1)).toMatch(/\|__$/);
    for (const line of lines) expect(widthOf(line)).toBeLessThanOrEqual(200);
    expect(shown(lines).join(' ').replace('|__', '')).toBe(
      'I am Teodora Lindqvist-Abara and I take these medicines every single day:',
    );
  });

  it('keeps what is bold, also within a word', () => {
    const [line = []] = set('I say **n**o to __');
    expect(line[0]?.runs.filter(({ text, weight }) => weight === 700 && text !== ' ')).toMatchObject([
      { text: 'n' },
    ]);
    expect(shown([line])).toEqual(['I say no to|__']);
  });

  it('sets a mark close after a blank and words at a distance', () => {
    const gaps = (text: string) => (set(text)[0] ?? []).map(({ gap }) => gap);
    expect(gaps('A __ .')).toEqual([0, 7, 2]);
    expect(gaps('A __ b')).toEqual([0, 7, 7]);
  });
});
