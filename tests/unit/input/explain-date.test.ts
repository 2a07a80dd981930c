import { describe, expect, it } from 'vitest';
import { explainDate } from '../../../src/input/explain-date.ts';

describe('a date that is refused', () => {
  it.each([
    ['2026-1-5', 'Write 2026-01-05.'],
    ['2026/12/31', 'Write 2026-12-31.'],
    ['2026.12.31', 'Write 2026-12-31.'],
    ['31/12/2026', 'Write 2026-12-31.'],
    ['31.12.2026', 'Write 2026-12-31.'],
    ['12/31/2026', 'Write 2026-12-31.'],
    ['03/04/2026', 'Write year-month-day, for example 2026-12-31.'],
    ['31/31/2026', 'Write year-month-day, for example 2026-12-31.'],
    ['31 December 2026', 'Write year-month-day, for example 2026-12-31.'],
    ['2026-02-30', 'Check the day and the month.'],
    ['2026-2-30', 'Write year-month-day, for example 2026-12-31.'],
    ['2026-12', 'Check the day and the month.'],
    [2026, 'Write year-month-day, for example 2026-12-31.'],
  ])('%s: %s', (written, hint) => {
    expect(explainDate(written, 'date')).toMatchObject({ code: 'CASE_BAD_DATE', hint });
  });

  it.each([
    ['2019-3', 'Write 2019-03.'],
    ['2019/03', 'Write 2019-03.'],
    ['31/3/2019', 'Write 2019-03-31.'],
    ['2019-13', 'Check the day and the month.'],
    ['2019-17-3', 'Write a year, year-month or year-month-day, for example 2019, 2019-03 or 2019-03-31.'],
    ['spring 2019', 'Write a year, year-month or year-month-day, for example 2019, 2019-03 or 2019-03-31.'],
    [19, 'Write a year, year-month or year-month-day, for example 2019, 2019-03 or 2019-03-31.'],
  ])('%s, where a year or month is enough: %s', (written, hint) => {
    expect(explainDate(written, 'partial-date')).toMatchObject({ code: 'CASE_BAD_DATE', hint });
  });

  it('a date of birth is never said again, not even put right', () => {
    for (const written of ['31/12/1981', '1981-1-5', '1981.12.31']) {
      const { message, hint } = explainDate(written, 'birth-date');
      expect(message + hint).not.toContain('1981');
      expect(hint).toBe('Write year-month-day, for example 2026-12-31.');
    }
  });
});
