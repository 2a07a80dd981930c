import type { MatchReason, MissingReason } from '../model/comparison.ts';
import type { Refusal } from './assess-record.ts';
import { monthsOf } from './weigh-time.ts';

/**
 * Why nothing is known, as one reason: the one of the record that came nearest. Figures of people like this person
 * that cannot be converted or are of another time come first, then figures of other people, then unread ones.
 */
export function explainMissing(refusals: readonly Refusal[]): MissingReason {
  const at = (stage: Refusal['stage']): readonly Refusal[] =>
    refusals.filter((refusal) => refusal.stage === stage);
  const values = at('value').map(({ reason }) => reason.code);
  if (values.includes('contradicted')) return { code: 'contradicted' };
  const other = values.filter((code) => code !== 'group-size-unknown' && code !== 'too-few-people');
  if (other.length > 0) return { code: 'not-convertible' };
  const few = at('value').flatMap(({ reason }) => (reason.code === 'too-few-people' ? [reason.n] : []));
  if (few.length > 0) return { code: 'too-few-people', n: Math.max(...few) };
  if (at('time').length > 0) return otherTime(at('time'));
  const people = at('people');
  if (people.length > 0)
    return mostCommon(people.some(({ inTime }) => inTime) ? people.filter(({ inTime }) => inTime) : people);
  return at('seen').length > 0 ? { code: 'not-verified' } : { code: 'no-record' };
}

function otherTime(refusals: readonly Refusal[]): MissingReason {
  const months = refusals.map(({ record }) => monthsOf(record.time)).filter((time) => time !== undefined);
  return months.length === 0
    ? { code: 'other-time' }
    : { code: 'other-time', longestMonths: Math.round(Math.max(...months) * 10) / 10 };
}

/**
 * The difference that most records share, in the words of the one that came nearest, so that the sentence is true
 * of all: "these studies were in people with a BMI of 35 or more". Adolescents and people with another history are
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
    case 'age-outside':
      return Math.max(
        (reason.low ?? reason.yours) - reason.yours,
        reason.yours - (reason.high ?? reason.yours),
      );
    case 'bmi-mean-only':
      return Math.abs(reason.mean - reason.yours);
    case 'bmi-assumed':
      return reason.low - reason.yours;
    default:
      return 0;
  }
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
