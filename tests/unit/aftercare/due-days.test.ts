import { describe, expect, it } from 'vitest';
import { daysOf, nextVisitingDay } from '../../../src/aftercare/due-days.ts';
import { parseSpan } from '../../../src/model/span.ts';
import type { Span } from '../../../src/model/span.ts';

const week = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday'] as const;
const visiting = { weekdays: [...week], closed: ['2026-12-25', '2026-12-28'] };

function span(text: string | null): Span | null {
  return text === null ? null : (parseSpan(text) ?? null);
}

function rhythm(after: string | null, every: string | null = null, until: string | null = null) {
  return { after: span(after), every: span(every), until: span(until) };
}

function counted(...[after, every, until]: Parameters<typeof rhythm>): readonly string[] {
  return daysOf(rhythm(after, every, until), { date: '2026-12-14' }).due.map((one) => one.counted);
}

describe('the next day on which a clinic sees people', () => {
  it('is the day itself, or the first after it that is neither a weekend nor closed', () => {
    expect(nextVisitingDay('2026-12-24', visiting, week)).toBe('2026-12-24');
    expect(nextVisitingDay('2026-12-25', visiting, week)).toBe('2026-12-29');
    expect(nextVisitingDay('2026-12-26', { closed: [] }, week)).toBe('2026-12-28');
  });

  it('may be a Sunday where the clinic says so, and a week away', () => {
    expect(nextVisitingDay('2026-12-21', { closed: [] }, ['sunday'])).toBe('2026-12-27');
    expect(nextVisitingDay('2026-12-27', { closed: ['2026-12-27'] }, ['sunday'])).toBe('2027-01-03');
  });
});

describe('the days of a rhythm', () => {
  it('once', () => {
    expect(counted('2 weeks')).toEqual(['2026-12-28']);
    expect(counted('5 years')).toEqual(['2031-12-14']);
  });

  it('again and again up to two years after the day, which is still listed', () => {
    const days = counted('12 months', '12 months');
    expect(days).toEqual(['2027-12-14', '2028-12-14']);
    expect(counted('3 months', '9 months')).toEqual(['2027-03-14', '2027-12-14', '2028-09-14']);
  });

  it('go on as a rule with its next day, for life or until a day', () => {
    const forLife = daysOf(rhythm('12 months', '12 months'), { date: '2026-12-14' }).then;
    expect(forLife).toMatchObject({
      every: { count: 12, unit: 'month' },
      next: { counted: '2029-12-14' },
      lastDay: null,
    });
    const ending = daysOf(rhythm('12 months', '12 months', '4 years'), { date: '2026-12-14' }).then;
    expect(ending).toMatchObject({ next: { counted: '2029-12-14' }, lastDay: '2030-12-14' });
  });

  it('end on the day they are said to, which is one of them', () => {
    expect(counted('1 month', '1 month', '3 months')).toEqual(['2027-01-14', '2027-02-14', '2027-03-14']);
    expect(daysOf(rhythm('1 month', '1 month', '3 months'), { date: '2026-12-14' }).then).toBeNull();
    expect(counted('6 months', '1 month', '3 months')).toEqual([]);
  });

  it('begin with their first interval where no time is given', () => {
    expect(counted(null, '6 months')).toEqual(['2027-06-14', '2027-12-14', '2028-06-14', '2028-12-14']);
    expect(counted(null, null)).toEqual([]);
  });

  it('keep the end of a month, however often they are repeated', () => {
    const { due } = daysOf(rhythm('1 month', '1 month', '4 months'), { date: '2027-10-31' });
    expect(due.map((one) => one.counted)).toEqual(['2027-11-30', '2027-12-31', '2028-01-31', '2028-02-29']);
  });

  it('say the time after the day in one unit, and nothing where weeks would meet months', () => {
    const after = (...parts: Parameters<typeof rhythm>) =>
      daysOf(rhythm(...parts), { date: '2026-12-14' }).due.map((one) => one.after);
    expect(after('1 week', '10 days', '30 days')).toEqual([
      { count: 1, unit: 'week' },
      { count: 17, unit: 'day' },
      { count: 27, unit: 'day' },
    ]);
    expect(after('1 year', '6 months')).toEqual([
      { count: 1, unit: 'year' },
      { count: 18, unit: 'month' },
      { count: 24, unit: 'month' },
    ]);
    expect(after('2 weeks', '1 year')).toEqual([{ count: 2, unit: 'week' }, null]);
    expect(counted('2 weeks', '1 year')).toEqual(['2026-12-28', '2027-12-28']);
  });

  it('move where the clinic has its days, and stay where it has none', () => {
    const moved = daysOf(rhythm('11 days'), { date: '2026-12-14', visiting }).due;
    expect(moved).toEqual([
      { after: { count: 11, unit: 'day' }, counted: '2026-12-25', date: '2026-12-29', earliest: null },
    ]);
    const own = daysOf(rhythm('11 days'), { date: '2026-12-14', visiting, weekdays: ['wednesday'] }).due;
    expect(own[0]?.date).toBe('2026-12-30');
    expect(daysOf(rhythm('11 days'), { date: '2026-12-14' }).due[0]?.date).toBe('2026-12-25');
  });
});
