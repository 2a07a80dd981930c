import type { People } from '../model/evidence-record.ts';
import { coverRange, distanceFrom, makeRange } from './cover-range.ts';
import type { Range } from './cover-range.ts';
import type { Difference } from './subject.ts';

/** Years outside the ages of a study that still count as near. */
const nearYears = 5;

/**
 * Most studies of weight-loss treatment took people up to 60 or 65. One that does not state ages is not taken to
 * speak for older people without saying so.
 */
const oldestTaken = 65;

const floors: Readonly<Record<string, number>> = { 'over-60': 60, 'over-65': 65, 'over-70': 70 };
const youngAdultsEnd = 30;
const adolescentsEnd = 19;

/** Ages covered, in years. No upper end: not stated. */
export function coverAge(people: People): Range {
  const { low, high } = coverRange(people.age);
  const floor = floors[people.group ?? ''];
  if (floor !== undefined) return makeRange(Math.max(floor, low ?? floor), high);
  if (people.group === 'adolescents') return makeRange(low, high ?? adolescentsEnd);
  return makeRange(low, people.group === 'young-adults' ? (high ?? youngAdultsEnd) : high);
}

/** Adult figures never apply under 18, and those of adolescents never after. */
export function differInGeneration(people: People, yours: number): Difference | undefined {
  const adolescents = people.group === 'adolescents';
  if (yours < 18 && !adolescents) return { reason: { code: 'adults-only', yours }, excludes: true };
  if (yours >= 18 && adolescents) return { reason: { code: 'adolescents-only', yours }, excludes: true };
  return undefined;
}

export function differInAge(people: People, yours: number): Difference | undefined {
  const range = coverAge(people);
  const beyond = distanceFrom(range, yours);
  if (beyond > 0) return { reason: { code: 'age-outside', ...range, yours }, excludes: beyond > nearYears };
  const topKnown = range.high !== undefined || (range.low ?? 0) >= 60;
  return yours > oldestTaken && !topKnown
    ? { reason: { code: 'age-unknown', yours }, excludes: false }
    : undefined;
}
