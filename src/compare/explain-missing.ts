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
  if (at('value').some(({ reason }) => reason.code !== 'group-size-unknown'))
    return { code: 'not-convertible' };
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
    : { code: 'other-time', longestMonths: Math.max(...months) };
}

/**
 * The difference that most records share, in the words of the one that came nearest, so that the sentence is true
 * of all: "these studies were in people with a BMI of 35 or more".
 */
function mostCommon(refusals: readonly Refusal[]): MissingReason {
  const reasons = refusals.map(({ reason }) => reason as MatchReason);
  const counts = new Map<string, number>();
  for (const { code } of reasons) counts.set(code, (counts.get(code) ?? 0) + 1);
  const ranked = [...reasons].sort(
    (a, b) =>
      (counts.get(b.code) ?? 0) - (counts.get(a.code) ?? 0) ||
      compareText(a.code, b.code) ||
      gap(a) - gap(b) ||
      compareText(JSON.stringify(a), JSON.stringify(b)),
  );
  return ranked[0] ?? { code: 'no-record' };
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
