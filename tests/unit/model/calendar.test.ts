import { describe, expect, it } from 'vitest';
import {
  ribbonLabel,
  ribbonLabelFits,
  ribbonPieces,
  stagesWithoutLabel,
} from '../../../src/model/calendar.ts';
import { loadFonts } from '../../../src/render/fonts.ts';
import { textWidth } from '../../../src/render/measure-text.ts';
import { calendarOf, sixWeeks, stages } from '../../helpers/sample-care-documents.ts';

function shape(week: number): readonly unknown[] {
  return ribbonPieces(sixWeeks, week).map(({ index, column, days, begins, labelled }) => [
    index,
    column,
    days,
    begins ? 'begins' : 'goes on',
    labelled ? 'labelled' : 'bare',
  ]);
}

describe('pieces of the ribbon', () => {
  it('follow the stages through a week, and leave out the days before the first', () => {
    expect(shape(0)).toEqual([
      [0, 4, 2, 'begins', 'labelled'],
      [1, 6, 1, 'begins', 'bare'],
    ]);
    expect(shape(2)).toEqual([
      [1, 0, 4, 'goes on', 'labelled'],
      [2, 4, 3, 'begins', 'labelled'],
    ]);
  });

  it('say where a stage begins on the first day of a week, and where it goes on over it', () => {
    const weeks = calendarOf({ before: 0, days: 14, begins: [0, 7] });
    expect(ribbonPieces(weeks, 1).map(({ index, begins }) => [index, begins])).toEqual([[1, true]]);
    const one = calendarOf({ before: 0, days: 14, begins: [0] });
    expect(ribbonPieces(one, 1).map(({ index, begins }) => [index, begins])).toEqual([[0, false]]);
  });

  it('end with the last day, and are none where no stage is set', () => {
    const short = calendarOf({ before: 2, days: 3, begins: [1] });
    expect(ribbonPieces(short, 0).map(({ column, days }) => [column, days])).toEqual([[3, 2]]);
    expect(ribbonPieces(calendarOf({ before: 0, days: 7, begins: [] }), 0)).toEqual([]);
    expect(ribbonPieces(short, 5)).toEqual([]);
  });

  it('part where a stage was left and taken up again', () => {
    const days = calendarOf({ before: 0, days: 7, begins: [0] });
    const [week = []] = days.weeks;
    const gap = week.map((day, index) => {
      if (day === null || index !== 3) return day;
      const { stage, ...bare } = day;
      return stage === undefined ? day : bare;
    });
    expect(
      ribbonPieces({ ...days, weeks: [gap] }, 0).map(({ column, days: length, begins }) => [
        column,
        length,
        begins,
      ]),
    ).toEqual([
      [0, 3, true],
      [4, 3, true],
    ]);
  });
});

describe('labels of the ribbon', () => {
  it('never claim room that their letters would not have, whatever letters they are', async () => {
    await loadFonts();
    const alphabets = [
      [0x21, 0x7e],
      [0xa1, 0x17f],
      [0x1a0, 0x1b0],
      [0x400, 0x45f],
      [0x1ea0, 0x1ef9],
    ] as const;
    const letters = alphabets.flatMap(([from, to]) =>
      Array.from({ length: to - from + 1 }, (_, index) => String.fromCodePoint(from + index)),
    );
    const { before, side, after, size } = ribbonLabel;
    const tooWide: string[] = [];
    for (const letter of letters) {
      // As many letters as are said to fit three days; one more does not.
      let label = letter;
      while (ribbonLabelFits(label + letter, 3)) label += letter;
      const room = (3 * 492) / 7 - before - 2 * side - after;
      if (textWidth(label, { size, weight: 600 }) > room) tooWide.push(letter);
    }
    expect(tooWide).toEqual([]);
  });

  it('are not left out where there is plainly room', async () => {
    await loadFonts();
    const { before, side, after, size } = ribbonLabel;
    for (const [label, days] of [
      ['Clear liquids', 2],
      ['Alimentos blandos', 2],
      ['All foods, small bites', 3],
      ['Soft', 1],
    ] as const) {
      expect(ribbonLabelFits(label, days)).toBe(true);
      const room = (days * 492) / 7 - before - 2 * side - after;
      expect(textWidth(label, { size, weight: 600 })).toBeLessThan(room);
    }
    expect(ribbonLabelFits('Clear liquids', 1)).toBe(false);
  });

  it('that fit nowhere are listed, so that no pattern goes without its name', () => {
    expect(stagesWithoutLabel(sixWeeks)).toEqual([]);
    const day = calendarOf({ before: 0, days: 7, begins: [0, 1] });
    expect(stagesWithoutLabel(day).map(({ label }) => label)).toEqual([stages[0]?.label]);
  });
});
