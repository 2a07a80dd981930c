import type { RecordUse } from '../model/comparison.ts';
import type { People, Spread } from '../model/evidence-record.ts';
import { lowestForUnknown, nearMean } from '../model/slight-difference.ts';
import { coverRange, distanceFrom, makeRange, narrow } from './cover-range.ts';
import type { Range } from './cover-range.ts';
import type { Difference, MatchedOption } from './subject.ts';

/** Which BMI (kg/m²) the people had, and how that is known. */
export interface BmiCoverage {
  readonly basis: RecordUse['bmiBasis'];
  readonly range: Range;
  /** Mean or median, when nothing else is stated. */
  readonly centre?: number;
}

/**
 * A study that is silent on BMI is not taken to speak for people above this, kg/m²: in common practice most people
 * in such studies are below it.
 */
const highestTaken = 50;

/** BMI counts to one decimal, so "under 35" ends at 34.9. */
const groupLimits: Readonly<Record<string, Range>> = {
  'bmi-under-35': { high: 34.9 },
  'bmi-50-plus': { low: 50 },
  'bmi-60-plus': { low: 60 },
};
/** Societies consider an operation from here (2022 indications), so "under 35" starts here unless stated. */
const classOne = 30;

/** BMI that the people of a study had: stated, mean ± 2 SD, or the indication of the day. */
export function coverBmi(people: People, option: MatchedOption): BmiCoverage {
  const stated = coverStated(people, option);
  const limit = groupLimits[people.group ?? ''];
  if (limit === undefined) return stated;
  const ownRange = stated.basis === 'stated-range' || stated.basis === 'mean-sd';
  // An upper end that is only assumed does not cut off a group that begins there.
  const known = ownRange || limit.low === undefined ? stated.range : {};
  const { low, high } = narrow(known, limit);
  // A group "50 and over" states a limit; a group "under 35" leaves its lower end to be assumed.
  const basis = ownRange ? stated.basis : limit.low === undefined ? 'assumed' : 'stated-range';
  return { basis, range: makeRange(low ?? classOne, high) };
}

export function differInBmi(coverage: BmiCoverage, yours: number): Difference | undefined {
  const { basis, range, centre } = coverage;
  if (basis === 'unknown') return { reason: { code: 'bmi-unknown' }, excludes: yours < lowestForUnknown };
  if (centre !== undefined) {
    const excludes = Math.abs(yours - centre) > nearMean;
    return { reason: { code: 'bmi-mean-only', mean: centre, yours }, excludes };
  }
  if (distanceFrom(range, yours) === 0) return undefined;
  const { low, high } = range;
  if (basis !== 'assumed' || low === undefined || high === undefined || (yours > high && high < highestTaken))
    return { reason: { code: 'bmi-outside', ...range, yours }, excludes: true };
  return { reason: { code: 'bmi-assumed', low, high, yours }, excludes: yours < low };
}

function coverStated(people: People, option: MatchedOption): BmiCoverage {
  const { bmi } = people;
  const floor = assumedFloor(people, option);
  const covered = cutTail(coverRange(bmi), bmi, floor);
  if (bmi?.low !== undefined) return { basis: 'stated-range', range: covered };
  if (bmi?.high !== undefined) return coverFrom(covered.low ?? floor, bmi.high);
  if (covered.low !== undefined) return { basis: 'mean-sd', range: covered };
  const centre = centreOf(bmi);
  if (centre !== undefined) return { basis: 'mean-only', range: {}, centre };
  return floor === undefined
    ? { basis: 'unknown', range: {} }
    : { basis: 'assumed', range: makeRange(floor, highestTaken) };
}

/**
 * Mean - 2 SD of people with a mean of 44 is near 31, although nobody under 35 was operated on: weights lean to the
 * heavy side, so the lower tail is a matter of arithmetic. It is believed only where so much of a study would lie
 * under the indication of its day (mean - SD: a sixth of the people) that it must have taken such people.
 */
function cutTail(covered: Range, bmi: Spread | undefined, floor: number | undefined): Range {
  const { mean, sd, low } = bmi ?? {};
  if (low !== undefined || mean === undefined || sd === undefined || floor === undefined) return covered;
  return mean - sd < floor ? covered : narrow(covered, { low: floor });
}

/** A range of which only the upper end is stated: after another operation nobody knows where it begins. */
function coverFrom(low: number | undefined, high: number): BmiCoverage {
  return { basis: low === undefined ? 'unknown' : 'stated-range', range: makeRange(low, high) };
}

/** Mean or else median, kg/m². */
export function centreOf(bmi: Spread | undefined): number | undefined {
  return bmi?.mean ?? bmi?.median;
}

/**
 * A study that is silent on BMI followed the indication of its day: 35 and over for a first operation, 30 for
 * everything else. After another operation nothing is assumed.
 */
function assumedFloor(people: People, option: MatchedOption): number | undefined {
  if (option.indication !== 'first-operation' && option.indication !== 'none') return undefined;
  if (people.indication.startsWith('after-') || people.indication === 'band-trouble') return undefined;
  return option.kind === 'operation' && people.group !== 'bmi-under-35' ? 35 : classOne;
}
