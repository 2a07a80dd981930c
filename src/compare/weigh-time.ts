import type { Horizon } from '../model/comparison.ts';
import type { RecordTime } from '../model/evidence-record.ts';

/** A time that is asked about, and which published times may stand for it. Bounds in `unit`, both included. */
export interface TimeWindow {
  readonly asked: Horizon;
  readonly unit: 'days' | 'months' | 'any';
  readonly from: number;
  readonly to: number;
}

/** At least one. */
export type TimeWindows = readonly [TimeWindow, ...(readonly TimeWindow[])];

/**
 * The first month: harms are counted by 30 days in registries, but trials and older series count the stay in
 * hospital or 90 days. All are early harm (92 days: three months as some write it).
 */
export const firstMonth: TimeWindow = { asked: { days: 30 }, unit: 'days', from: 0, to: 92 };

/** In hospital, before anything is counted in days: about half a month, so that 30 days comes first. */
const stayDays = 15;

/**
 * Weight moves most in the first two years, so the windows are narrow there, with one exception: trials of
 * medicines end at 68 or 72 weeks (16 to 17 months) and give no other time near a year. Later a tenth to a fifth
 * either side changes little. The cell keeps the true time.
 */
export const weightWindows: TimeWindows = [
  months(12, 10, 18),
  months(24, 21, 30),
  months(36, 31, 48),
  months(60, 54, 72),
  months(120, 108, 144),
];

/** Shown only where it is known and five years are not, for any option: as long as some people were followed. */
export const standInMonths = 36;

/** The main time of the later years too. */
export const fiveYears = months(60, 48, 72);

/**
 * Later harms, side effects and benefits, longest first. They add up over time, so a window is a fifth either
 * side; the first year reaches to 18 months for the trials of medicines.
 */
export const laterWindows: TimeWindows = [
  months(120, 96, 144),
  fiveYears,
  months(36, 29, 43),
  months(24, 19, 28),
  months(12, 9, 18),
];

/** The stay in hospital has no time to compare. */
export const anyTime: TimeWindow = { asked: {}, unit: 'any', from: 0, to: 0 };

export type TimeVerdict =
  /** `steps`: distance in tenths of the time asked; `rank`: how exactly the time is meant, 0 best. */
  | { readonly inside: true; readonly steps: number; readonly rank: number }
  | { readonly inside: false; readonly why: 'other-time' | 'time-unclear' };

const ranks: Readonly<Record<RecordTime['basis'], number>> = {
  by: 0,
  at: 0,
  'peri-operative': 0,
  'mean-follow-up': 1,
  unclear: 2,
};

const daysPerMonth = 365.25 / 12;

export function weighTime(time: RecordTime, window: TimeWindow): TimeVerdict {
  if (window.unit === 'any') return { inside: true, steps: 0, rank: ranks[time.basis] };
  const value = timeIn(time, window.unit);
  if (value === undefined)
    return { inside: false, why: time.basis === 'unclear' ? 'time-unclear' : 'other-time' };
  if (value < window.from || value > window.to) return { inside: false, why: 'other-time' };
  const asked = window.asked.days ?? window.asked.months ?? 0;
  return { inside: true, steps: Math.floor((Math.abs(value - asked) / asked) * 10), rank: ranks[time.basis] };
}

/** Months since treatment, where a number is stated. */
export function monthsOf(time: Partial<RecordTime>): number | undefined {
  return time.months ?? (time.days === undefined ? undefined : time.days / daysPerMonth);
}

function timeIn(time: RecordTime, unit: 'days' | 'months'): number | undefined {
  if (unit === 'months') return monthsOf(time);
  if (time.days === undefined && time.months === undefined)
    return time.basis === 'peri-operative' ? stayDays : undefined;
  return time.days ?? (time.months ?? 0) * daysPerMonth;
}

function months(asked: number, from: number, to: number): TimeWindow {
  return { asked: { months: asked }, unit: 'months', from, to };
}
