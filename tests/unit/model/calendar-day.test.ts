import { describe, expect, it } from 'vitest';
import {
  addDays,
  addMonths,
  daysBetween,
  isLeapYear,
  monthLength,
  weekdayOf,
} from '../../../src/model/calendar-day.ts';

describe('days of the calendar', () => {
  it('pass over the ends of months and years, and over leap days', () => {
    expect(addDays('2026-12-31', 1)).toBe('2027-01-01');
    expect(addDays('2028-02-28', 1)).toBe('2028-02-29');
    expect(addDays('2027-02-28', 1)).toBe('2027-03-01');
    expect(addDays('2100-02-28', 1)).toBe('2100-03-01');
    expect(addDays('2000-02-28', 1)).toBe('2000-02-29');
    expect(addDays('2027-01-01', -1)).toBe('2026-12-31');
    expect(addDays('1970-01-01', 0)).toBe('1970-01-01');
    expect(daysBetween('2027-03-01', '2028-03-01')).toBe(366);
    expect(daysBetween('2028-03-01', '2027-03-01')).toBe(-366);
  });

  it('months later fall on the last day of a shorter month', () => {
    expect(addMonths('2027-01-31', 1)).toBe('2027-02-28');
    expect(addMonths('2028-01-31', 1)).toBe('2028-02-29');
    expect(addMonths('2027-05-31', 1)).toBe('2027-06-30');
    expect(addMonths('2028-02-29', 12)).toBe('2029-02-28');
    expect(addMonths('2027-01-15', -1)).toBe('2026-12-15');
    expect(addMonths('2027-03-31', -1)).toBe('2027-02-28');
    expect(addMonths('2026-12-14', 24)).toBe('2028-12-14');
  });

  it('know leap years and the lengths of months', () => {
    expect([1900, 2000, 2024, 2026, 2100].filter(isLeapYear)).toEqual([2000, 2024]);
    expect([1, 2, 4, 12].map((month) => monthLength(2027, month))).toEqual([31, 28, 30, 31]);
    expect(monthLength(2028, 2)).toBe(29);
    expect(monthLength(2028, 13)).toBe(0);
  });

  it('know the day of the week, also before 1970', () => {
    expect(weekdayOf('2026-12-14')).toBe('monday');
    expect(weekdayOf('1970-01-01')).toBe('thursday');
    expect(weekdayOf('1969-12-28')).toBe('sunday');
    expect(weekdayOf('1900-01-01')).toBe('monday');
  });
});
