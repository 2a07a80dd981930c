import type { MatchReason, MissingReason } from '../model/comparison.ts';
import { isOfStopped } from './assess-record.ts';
import type { Refusal } from './assess-record.ts';
import { monthsOf } from './weigh-time.ts';

/**
 * Why nothing is known, as one reason that is true of all records: the one of the record that came nearest. An unread
 * figure of people like this person comes first, since nothing else can be said of all studies while it is there;
 * then figures of such people that cannot be used, count something else or are of another time, figures of other people, other
 * unread ones, other figures that count something else.
 */
export function explainMissing(refusals: readonly Refusal[]): MissingReason {
  const at = (stage: Refusal['stage']): readonly Refusal[] =>
    refusals.filter((refusal) => refusal.stage === stage);
  const unread = at('seen').filter(({ fits }) => fits);
  if (unread.some(({ inTime }) => inTime)) return { code: 'not-verified' };
  const unusable = explainUnusable(at('value'));
  if (unusable !== undefined) return unusable;
  const otherwise = at('kind').filter(({ fits }) => fits);
  const atThatTime = countedOtherwise(otherwise.filter(({ inTime }) => inTime));
  if (atThatTime !== undefined) return atThatTime;
  if (at('time').length > 0) return otherTime(at('time'), [...unread, ...otherwise]);
  const people = at('people');
  const inTime = people.filter((refusal) => refusal.inTime);
  if (inTime.length > 0) return mostCommon(inTime);
  if (unread.length > 0) return { code: 'other-time' };
  if (people.length > 0) return mostCommon(people);
  if (at('seen').length > 0) return { code: 'not-verified' };
  return countedOtherwise(at('kind')) ?? { code: 'no-record' };
}

/** Figures of another technique, or that count less or more than the outcome: nobody may read that no study was found. */
function countedOtherwise(refusals: readonly Refusal[]): MissingReason | undefined {
  if (refusals.some(({ reason, record }) => reason.code === 'variant' && !isOfStopped(record)))
    return { code: 'done-otherwise' };
  const isPart = refusals.some(
    ({ reason }) =>
      reason.code === 'other-measure' && (reason.kind === 'narrower' || reason.kind === 'wider'),
  );
  return isPart ? { code: 'counted-in-part' } : undefined;
}

/** Figures of people like this person at that time. */
function explainUnusable(refusals: readonly Refusal[]): MissingReason | undefined {
  const codes = refusals.map(({ reason }) => reason.code);
  if (codes.includes('contradicted')) return { code: 'contradicted' };
  const other = codes.filter((code) => code !== 'group-size-unknown' && code !== 'too-few-people');
  if (other.length > 0) return { code: 'not-convertible' };
  const few = refusals.flatMap(({ reason }) => (reason.code === 'too-few-people' ? [reason.n] : []));
  return few.length > 0 ? { code: 'too-few-people', n: Math.max(...few) } : undefined;
}

/**
 * The longest study of people like this person, named only where none that cannot be shown (`hidden`) is longer and all say
 * when they counted. Where none says it, it may have been at that time.
 */
function otherTime(refusals: readonly Refusal[], hidden: readonly Refusal[]): MissingReason {
  const dated = refusals.filter(({ reason }) => reason.code !== 'time-unclear');
  if (dated.length === 0 && hidden.length === 0) return { code: 'time-unclear' };
  const longest = dated.length === refusals.length ? longestOf(dated) : undefined;
  return longest === undefined || (longestOf(hidden) ?? 0) > longest
    ? { code: 'other-time' }
    : { code: 'other-time', longestMonths: Math.round(longest * 10) / 10 };
}

function longestOf(refusals: readonly Refusal[]): number | undefined {
  const months = refusals.map(({ record }) => monthsOf(record.time)).filter((time) => time !== undefined);
  return months.length === 0 ? undefined : Math.max(...months);
}

/**
 * The difference that most records share, in the words of the one that came nearest, so that the sentence is true
 * of all: "the studies we found were in people with a BMI of 35 or more". Adolescents and people with another history are
 * the farthest.
 */
function mostCommon(refusals: readonly Refusal[]): MissingReason {
  const all = refusals.map(({ reason }) => reason as MatchReason);
  const nearer = all.filter(({ code }) => code !== 'indication' && code !== 'adolescents-only');
  const reasons = nearer.length > 0 ? nearer : all;
  const codes = countBy(reasons.map(({ code }) => code));
  const wordings = countBy(reasons.map((reason) => JSON.stringify(reason)));
  const order = (a: MatchReason, b: MatchReason): number =>
    count(codes, b.code) - count(codes, a.code) ||
    compareText(a.code, b.code) ||
    gap(a) - gap(b) ||
    count(wordings, JSON.stringify(b)) - count(wordings, JSON.stringify(a)) ||
    compareText(JSON.stringify(a), JSON.stringify(b));
  return [...reasons].sort(order)[0] ?? { code: 'no-record' };
}

function countBy(texts: readonly string[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const text of texts) counts.set(text, count(counts, text) + 1);
  return counts;
}

function count(counts: ReadonlyMap<string, number>, text: string): number {
  return counts.get(text) ?? 0;
}

/** How far the person lies from what was studied, in the unit of the reason. */
function gap(reason: MatchReason): number {
  switch (reason.code) {
    case 'bmi-outside':
    case 'bmi-assumed':
    case 'age-outside':
      return Math.max(
        (reason.low ?? reason.yours) - reason.yours,
        reason.yours - (reason.high ?? reason.yours),
      );
    case 'bmi-mean-only':
      return Math.abs(reason.mean - reason.yours);
    default:
      return 0;
  }
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
