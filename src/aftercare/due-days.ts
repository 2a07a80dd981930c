import type { Due, Repetition } from '../model/aftercare-plan.ts';
import { addDays, addMonths, weekdayOf } from '../model/calendar-day.ts';
import type { Weekday } from '../model/calendar-day.ts';
import type { ClinicProfile } from '../model/clinic.ts';
import { addSpan } from '../model/span.ts';
import type { Span } from '../model/span.ts';

/** Days are listed one by one for so long; what goes on after that is said as a rule. */
export const horizonMonths = 24;

export type Visiting = ClinicProfile['clinic']['visiting'];

/** The day itself if the clinic sees people then, else the next day on which it does. */
export function nextVisitingDay(
  date: string,
  { closed }: Pick<Visiting, 'closed'>,
  weekdays: readonly Weekday[],
): string {
  let day = date;
  // Every week has a visiting day, and the days of closing are finite: the search ends.
  while (!weekdays.includes(weekdayOf(day)) || closed.includes(day)) day = addDays(day, 1);
  return day;
}

/** What is due when: first after a time, then perhaps again and again. */
export interface Rhythm {
  readonly after: Span | null;
  readonly every: Span | null;
  readonly until: Span | null;
}

export interface Counting {
  /** Day 0. */
  readonly date: string;
  /** Where the clinic's days are; left out, days do not move. */
  readonly visiting?: Visiting;
  /** In place of the weekdays of the clinic. */
  readonly weekdays?: readonly Weekday[] | undefined;
}

/**
 * Every day of a rhythm within the horizon, and the first after it if it goes on. What happens once, and the first of a
 * series, is listed however late it is; a series includes the day on which it ends.
 */
export function daysOf(
  rhythm: Rhythm,
  counting: Counting,
): { readonly due: readonly Due[]; readonly then: Repetition | null } {
  const horizon = addMonths(counting.date, horizonMonths);
  const end = rhythm.until === null ? null : addSpan(counting.date, rhythm.until);
  // Without a time of its own a rhythm begins with its first interval.
  const first = rhythm.after === null ? 1 : 0;
  const due: Due[] = [];
  let next = dueAt(rhythm, first, counting);
  while (next !== undefined && (end === null || next.counted <= end)) {
    if (due.length > 0 && rhythm.every !== null && next.counted > horizon)
      return { due, then: { every: rhythm.every, next, lastDay: end } };
    due.push(next);
    next = dueAt(rhythm, first + due.length, counting);
  }
  return { due, then: null };
}

/** The day of a rhythm after so many intervals; undefined if it is not repeated so often. */
function dueAt({ after, every }: Rhythm, times: number, counting: Counting): Due | undefined {
  if (times > 0 && every === null) return undefined;
  const total = every === null ? after : addUp(after, every, times);
  if (total !== null) return makeDue(total, addSpan(counting.date, total), counting);
  const start = after === null ? counting.date : addSpan(counting.date, after);
  return makeDue(null, every === null ? start : addSpan(start, every, times), counting);
}

export function makeDue(after: Span | null, counted: string, { visiting, weekdays }: Counting): Due {
  const date =
    visiting === undefined ? counted : nextVisitingDay(counted, visiting, weekdays ?? visiting.weekdays);
  return { after, counted, date, earliest: null };
}

const smallUnits = { day: 'day', week: 'day', month: 'month', year: 'month' } as const;
const inSmallUnits = { day: 1, week: 7, month: 1, year: 12 } as const;

/** A time and so many intervals in one span, so that the end of a month is not lost on the way; null if days meet months. */
function addUp(after: Span | null, every: Span, times: number): Span | null {
  if (after === null) return { count: every.count * times, unit: every.unit };
  if (times === 0 || after.unit === every.unit)
    return { count: after.count + every.count * times, unit: after.unit };
  if (smallUnits[after.unit] !== smallUnits[every.unit]) return null;
  const count = after.count * inSmallUnits[after.unit] + every.count * inSmallUnits[every.unit] * times;
  return { count, unit: smallUnits[after.unit] };
}

/** Earliest first; what falls on one day keeps its order. */
export function byDate(a: { readonly date: string }, b: { readonly date: string }): number {
  return a.date < b.date ? -1 : Number(a.date > b.date);
}
