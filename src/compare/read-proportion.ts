import type { Bounds, Proportion, SetAsideReason } from '../model/comparison.ts';
import type { RecordOf } from '../model/evidence-record.ts';
import { exactInterval, upperLimitOfNone } from './exact-interval.ts';
import { scoreInterval } from './score-interval.ts';
import { enoughPeople } from './enough-people.ts';
import { monthsOf } from './weigh-time.ts';

type ShareRecord = RecordOf<'risk'> | RecordOf<'benefit'>;

/** With fewer people than this on either side of a share the score interval is too narrow; the exact one is not. */
const fewPeople = 5;

/** A published share as a proportion, or why it is none. */
export function readProportion(record: ShareRecord): Proportion | SetAsideReason {
  const { value } = record;
  if (value.rate !== undefined) return { code: 'other-measure', kind: 'rate' };
  const share = readShare(value);
  if (share === undefined)
    return { code: 'other-measure', kind: value.low === undefined ? 'count' : 'range' };
  // What is too few to tell in a surgeon's own count is too few in a published one.
  if (value.n !== undefined && value.n < enoughPeople) return { code: 'too-few-people', n: value.n };
  if (share > 0)
    return { kind: 'proportion', value: share, ...countsOf(value), ...withInterval(record, share) };
  const n = countWatched(record);
  if (value.n === undefined || n === undefined) return { code: 'group-size-unknown' };
  return { kind: 'proportion', value: 0, events: 0, n: value.n, zero: { n, upper: upperLimitOfNone(n) } };
}

function countsOf({ events, n }: ShareRecord['value']): Pick<Proportion, 'events' | 'n'> {
  return { ...(events === undefined ? {} : { events }), ...(n === undefined ? {} : { n }) };
}

/**
 * People in whom nothing was seen. Those who were lost cannot show that nothing happened, so the people seen count;
 * after the first months the number at the start alone says nothing.
 */
function countWatched({ value, followed, time }: ShareRecord): number | undefined {
  if (value.n === undefined) return undefined;
  if (followed?.seen !== undefined) return followed.seen > 0 ? Math.min(value.n, followed.seen) : undefined;
  const early = time.basis === 'peri-operative' || (monthsOf(time) ?? Infinity) <= 3;
  return value.n_is === 'start' && !early ? undefined : value.n;
}

/** As published: events of people where both are given, else percent. */
function readShare({ events, n, percent }: ShareRecord['value']): number | undefined {
  if (events !== undefined && n !== undefined) return events / n;
  return percent === undefined ? undefined : percent / 100;
}

function withInterval(
  record: ShareRecord,
  share: number,
): { readonly interval?: NonNullable<Proportion['interval']> } {
  const { low, high, interval } = record.value;
  // Only these two are 95 % and about the share itself: a range is of other studies, an unstated bracket is unknown.
  if (low !== undefined && high !== undefined && (interval === 'ci95' || interval === 'cri95')) {
    return { interval: { low: low / 100, high: high / 100, basis: 'published' } };
  }
  const people = countPeople(record);
  if (people === undefined) return {};
  const events = Math.min(record.value.events ?? Math.round(share * people), people);
  return { interval: intervalOf(events, people) };
}

/** People behind the share; unknown when a percent is given with the number at the start only. */
function countPeople({ value, followed }: ShareRecord): number | undefined {
  if (value.events !== undefined || value.n_is === undefined) return value.n;
  return followed?.seen;
}

function intervalOf(events: number, n: number): Bounds & { readonly basis: 'exact' | 'score' } {
  return Math.min(events, n - events) < fewPeople
    ? { ...exactInterval(events, n), basis: 'exact' }
    : { ...scoreInterval(events, n), basis: 'score' };
}
