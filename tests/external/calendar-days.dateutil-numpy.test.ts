// Source: Python 3.11.7 datetime, python-dateutil 4.0.0 (relativedelta) and numpy 2.4.6 (busday_offset), run by calendar-days.dateutil-numpy.py; their answers are in the JSON beside it. Made 2026-11-28; numbers only.
import { describe, expect, it } from 'vitest';
import { planAftercare } from '../../src/aftercare/index.ts';
import { nextVisitingDay } from '../../src/aftercare/due-days.ts';
import { addDays, addMonths, daysBetween, weekdayOf } from '../../src/model/calendar-day.ts';
import type { Weekday } from '../../src/model/calendar-day.ts';
import { aftercareInput } from '../helpers/aftercare-inputs.ts';
import reference from './calendar-days.dateutil-numpy.json' with { type: 'json' };

type Step = readonly [from: string, count: number, to: string];

describe('days against datetime, dateutil and numpy', () => {
  it('counts days forwards and backwards, and the days between', () => {
    const steps = reference.days as unknown as readonly Step[];
    expect(steps.map(([from, count]) => addDays(from, count))).toEqual(steps.map(([, , to]) => to));
    expect(steps.map(([from, , to]) => daysBetween(from, to))).toEqual(steps.map(([, count]) => count));
  });

  it('counts months, with the last day of a shorter month', () => {
    const steps = reference.months as unknown as readonly Step[];
    expect(steps.map(([from, count]) => addMonths(from, count))).toEqual(steps.map(([, , to]) => to));
  });

  it('knows the day of the week', () => {
    expect(reference.weekdays.map(([date = '']) => weekdayOf(date))).toEqual(
      reference.weekdays.map(([, weekday]) => weekday),
    );
  });

  it('finds the next day on which a clinic sees people', () => {
    const found = reference.visiting.map(({ date, weekdays, closed }) =>
      nextVisitingDay(date, { closed }, weekdays as readonly Weekday[]),
    );
    expect(found).toEqual(reference.visiting.map(({ visit }) => visit));
  });

  it.each(reference.calendars)('dates the visits after $date', ({ date, closed, counted, visits, next }) => {
    const visit = (after: string, every?: string) => ({
      after,
      with: ['surgeon'],
      ...(every === undefined ? {} : { every }),
    });
    const follow_up = {
      sleeve: [
        visit('2 weeks'),
        visit('6 weeks'),
        visit('3 months'),
        visit('6 months'),
        visit('12 months', '12 months'),
      ],
    };
    const visiting = { weekdays: ['monday', 'tuesday', 'thursday', 'friday'], closed };
    const plan = planAftercare(aftercareInput({ protocol: { follow_up }, visiting, date }));
    expect(plan.visits.map((one) => one.counted)).toEqual(counted);
    expect(plan.visits.map((one) => one.date)).toEqual(visits);
    expect(plan.laterVisits.map(({ then }) => then.next.counted)).toEqual([next]);
  });
});
