import fc from 'fast-check';
import { createElement } from 'react';
import { beforeAll, describe, expect, it } from 'vitest';
import { breakWords, lineWidth } from '../../src/render/break-lines.ts';
import type { Word } from '../../src/render/break-lines.ts';
import { softHyphen } from '../../src/render/divide-word.ts';
import { loadFonts } from '../../src/render/fonts.ts';
import type { SetNode } from '../../src/render/layout-node.ts';
import { isText } from '../../src/render/layout-node.ts';
import { textWidth } from '../../src/render/measure-text.ts';
import { setGalleys } from '../../src/render/set-galley.ts';
import { setRuns } from '../../src/render/set-runs.ts';
import type { Run } from '../../src/render/run.ts';
import { Lines } from '../../src/render/text.tsx';

const word: fc.Arbitrary<Word> = fc.record(
  {
    width: fc.integer({ min: 5, max: 150 }),
    space: fc.constant(4),
    pause: fc.constantFrom('mark' as const, 'sentence' as const),
  },
  { requiredKeys: ['width', 'space'] },
);
const words = fc.array(word, { minLength: 1, maxLength: 40 });
const measure = fc.integer({ min: 60, max: 440 });
const setting = fc.constantFrom('filled' as const, 'balanced' as const);

function widthsOf(list: readonly Word[], starts: readonly number[]): readonly number[] {
  return starts.map((start, line) => lineWidth(list, start, starts[line + 1] ?? list.length));
}

/** First fit, written again without regard to the code under test. */
function firstFit(list: readonly Word[], limit: number): readonly number[] {
  const starts = [0];
  list.forEach((_, index) => {
    if (index > 0 && lineWidth(list, starts.at(-1) ?? 0, index + 1) > limit + 0.001) starts.push(index);
  });
  return starts;
}

/** Unevenness as the design has it: squares of the widths, less a bonus for each line that ends after a pause or sentence. */
function unevenness(list: readonly Word[], starts: readonly number[], limit: number): number {
  const squares = widthsOf(list, starts).reduce((sum, width) => sum + (width / limit) ** 2, 0);
  const ends = starts.slice(1).map((start) => list[start - 1]?.pause);
  const bonuses = ends.map((pause): number => (pause === 'mark' ? 0.03 : pause === 'sentence' ? 0.08 : 0));
  return squares - bonuses.reduce((sum, bonus) => sum + bonus, 0);
}

/** Every way to set the words in so many lines. */
function everyBreaking(list: readonly Word[], lines: number, limit: number): readonly (readonly number[])[] {
  const from = (start: number, left: number): readonly (readonly number[])[] => {
    const allowed = (end: number) => end - start === 1 || lineWidth(list, start, end) <= limit + 0.001;
    if (left === 1) return allowed(list.length) ? [[start]] : [];
    return Array.from({ length: list.length - start - 1 }, (_, index) => start + index + 1)
      .filter(allowed)
      .flatMap((end) => from(end, left - 1).map((rest) => [start, ...rest]));
  };
  return from(0, lines);
}

describe('line breaking', () => {
  it('keeps lines within the measure unless a line is one word', () => {
    fc.assert(
      fc.property(words, measure, setting, (list, limit, mode) => {
        const starts = breakWords(list, limit, mode);
        widthsOf(list, starts).forEach((width, line) => {
          const count = (starts[line + 1] ?? list.length) - (starts[line] ?? 0);
          expect(width <= limit + 0.001 || count === 1).toBe(true);
        });
      }),
    );
  });

  it('begins with the first word, goes forward, and takes no more lines than first fit', () => {
    fc.assert(
      fc.property(words, measure, setting, (list, limit, mode) => {
        const starts = breakWords(list, limit, mode);
        expect(starts[0]).toBe(0);
        expect([...new Set(starts)].sort((a, b) => a - b)).toEqual(starts);
        expect(starts.length).toBeLessThanOrEqual(firstFit(list, limit).length);
      }),
    );
  });

  it('keeps lines within the measure where words stay together, and takes as many words a line as stay', () => {
    const tied = fc.array(fc.record({ word, tie: fc.constantFrom('stays', 'leans', undefined) }), {
      minLength: 1,
      maxLength: 40,
    });
    fc.assert(
      fc.property(tied, measure, setting, (list, limit, mode) => {
        const all = list.map(({ word: own, tie }) => (tie === undefined ? own : { ...own, tie }));
        const starts = breakWords(all, limit, mode);
        expect([...new Set(starts)].sort((a, b) => a - b)).toEqual(starts);
        widthsOf(all, starts).forEach((width, line) => {
          const count = (starts[line + 1] ?? all.length) - (starts[line] ?? 0);
          expect(width <= limit + 0.001 || count === 1).toBe(true);
        });
      }),
    );
  });

  it('balances at least as evenly as first fit, and as evenly as any breaking into as many lines', () => {
    const few = fc.array(word, { minLength: 1, maxLength: 10 });
    fc.assert(
      fc.property(few, measure, (list, limit) => {
        const own = breakWords(list, limit, 'balanced');
        const cost = unevenness(list, own, limit);
        for (const other of everyBreaking(list, own.length, limit))
          expect(cost).toBeLessThanOrEqual(unevenness(list, other, limit) + 1e-9);
        expect(cost).toBeLessThanOrEqual(unevenness(list, firstFit(list, limit), limit) + 1e-9);
      }),
    );
  });

  it('ends filled prose in one short word only where every measure with as many lines does', () => {
    fc.assert(
      fc.property(words, measure, (list, limit) => {
        const starts = breakWords(list, limit, 'filled');
        const alone = (at: readonly number[]) =>
          at.length > 1 && at.at(-1) === list.length - 1 && (list.at(-1)?.width ?? 0) < limit / 3;
        if (!alone(starts)) return;
        const tighter = Array.from({ length: limit }, (_, less) => firstFit(list, limit - less));
        const asLong = tighter.filter((other) => other.length === starts.length);
        expect(asLong.every(alone)).toBe(true);
      }),
    );
  });
});

interface TypesetLine {
  readonly string: string;
  readonly xAdvance: number;
}

/** Lines as the typesetter left them. */
function textLines(node: SetNode | undefined): readonly { text: string; width: number }[] {
  if (node === undefined) return [];
  const own = (node.lines ?? []) as unknown as readonly TypesetLine[];
  const below =
    node.type === 'TEXT' ? [] : node.children.flatMap((child) => (isText(child) ? [] : textLines(child)));
  return [...own.map((line) => ({ text: line.string, width: line.xAdvance })), ...below];
}

describe('runs of text', () => {
  beforeAll(() => loadFonts());

  const letters = fc.constantFrom(
    'a',
    'i',
    'W',
    'fi',
    'T',
    'o',
    '.',
    ',',
    '2',
    'é',
    'ñ',
    '-',
    '\u00a0',
    '\u202f',
    ' ',
    '  ',
  );
  const run: fc.Arbitrary<Run> = fc.record({
    text: fc.array(letters, { minLength: 1, maxLength: 60 }).map((list) => list.join('')),
    weight: fc.constantFrom(400 as const, 600 as const, 700 as const),
  });

  it('come back whole: the same letters in the same weight, one space between words, a hyphen only in a divided word', () => {
    fc.assert(
      fc.property(fc.array(run, { minLength: 1, maxLength: 4 }), measure, setting, (runs, limit, mode) => {
        const lines = setRuns(runs, { size: 13, measure: limit, setting: mode });
        const marked = (list: readonly Run[]) =>
          list.flatMap(({ text, weight }) =>
            Array.from(text.replace(/\u202f/g, '\u00a0'), (letter) => `${letter}${weight}`),
          );
        const added = (letter: string): boolean => [' ', '\u00a0', softHyphen].includes(letter.charAt(0));
        const letters = (list: readonly Run[]) => marked(list).filter((letter) => !added(letter));
        expect(lines.flatMap((line) => letters(line.runs))).toEqual(letters(runs));
        const text = lines
          .map((line) => line.runs.map((part) => part.text).join('') + (line.spaceAfter ? ' ' : ''))
          .join('');
        for (const line of lines) {
          const said = line.runs.map((part) => part.text).join('');
          expect(said.slice(0, -1)).not.toContain(softHyphen);
          expect(said.endsWith(softHyphen) && line.spaceAfter).toBe(false);
        }
        // Words that no line holds together are parted where a tie is: there stands a space.
        const spaced = (all: string): string => all.replace(/[\u202f\u00a0 ]+/g, ' ').trim();
        expect(spaced(text.replaceAll(softHyphen, ''))).toBe(spaced(runs.map((part) => part.text).join('')));
        expect(text).not.toContain('  ');
      }),
    );
  });

  it('have the width that the typesetter gives their lines, and are not broken again by it', async () => {
    const paragraph = fc.tuple(fc.array(run, { minLength: 1, maxLength: 4 }), measure, setting);
    await fc.assert(
      fc.asyncProperty(fc.array(paragraph, { minLength: 1, maxLength: 10 }), async (paragraphs) => {
        const elements = paragraphs.map(([runs, limit, mode]) =>
          createElement(Lines, { runs, size: 13, lineHeight: 18, width: limit, setting: mode }),
        );
        const [blocks = []] = await setGalleys([{ width: 492, elements }]);
        paragraphs.forEach(([runs, limit, mode], index) => {
          const lines = setRuns(runs, { size: 13, measure: limit, setting: mode });
          const set = textLines(blocks[index]?.node);
          // A divided word is handed to the typesetter with a hyphen, which is exchanged for a soft one of the same width.
          expect(set.map((line) => line.text.trimEnd())).toEqual(
            lines.map((line) =>
              line.runs
                .map((part) => part.text)
                .join('')
                .replace(softHyphen, '-')
                .trimEnd(),
            ),
          );
          set.forEach((line, at) => {
            const space =
              lines[at]?.spaceAfter === true
                ? textWidth(' ', { weight: lines[at].runs.at(-1)?.weight ?? 400, size: 13 })
                : 0;
            expect(line.width).toBeCloseTo((lines[at]?.width ?? 0) + space, 6);
          });
        });
      }),
      { numRuns: 20 },
    );
  });
});
