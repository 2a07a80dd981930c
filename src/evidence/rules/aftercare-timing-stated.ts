import type { AftercareFact, AftercareTiming } from '../../model/aftercare.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

/** Dates of a patient's calendar are counted from these numbers. */
export const aftercareTimingStated: EvidenceRule = {
  name: 'aftercare-timing-stated',
  description:
    'a fact on aftercare says when it holds, in one unit, in order and on the right side of the operation',
  check: (evidence) =>
    evidence.aftercare.flatMap((fact) =>
      faultsOf(fact).map((message) =>
        faultIn(evidence, fact, {
          code: 'EVIDENCE_NO_TIME',
          message,
          hint: 'Correct the timing from the source.',
          at: fact.timing === undefined ? [] : ['timing'],
        }),
      ),
    ),
};

function faultsOf({ timing, topic, value }: AftercareFact): readonly string[] {
  if (timing === undefined) return topic === 'unit-conversion' ? [] : ['nothing says when it holds'];
  const bounds = boundsOf(timing);
  const isTwice = timing.every !== undefined && timing.every_months !== undefined;
  return [
    ...(bounds.length > 1 ? ['from and to are in several units'] : []),
    ...(bounds.some(isReversed) ? ['it ends before it begins'] : []),
    ...sideFaults(timing, bounds),
    ...orderFaults(timing),
    ...(isTwice ? ['it is repeated in two ways'] : []),
    ...(timing.length === true ? lengthFaults(value, bounds) : []),
  ];
}

function lengthFaults(value: AftercareFact['value'], bounds: readonly Bounds[]): readonly string[] {
  return [
    ...(bounds.length > 0 ? ['it has a length and a beginning or an end'] : []),
    ...(typeof value === 'string' || 'tests' in value ? ['it has a length, but no amount says which'] : []),
  ];
}

function isReversed({ from, to }: Bounds): boolean {
  return from !== undefined && to !== undefined && from > to;
}

interface Bounds {
  readonly from: number | undefined;
  readonly to: number | undefined;
}

/** Beginning and end in each unit that is used. */
function boundsOf(timing: AftercareTiming): readonly Bounds[] {
  return [
    { from: timing.from_day, to: timing.to_day },
    { from: timing.from_week, to: timing.to_week },
    { from: timing.from_month, to: timing.to_month },
  ].filter(({ from, to }) => from !== undefined || to !== undefined);
}

function sideFaults({ phase }: AftercareTiming, bounds: readonly Bounds[]): readonly string[] {
  const numbers = bounds.flatMap(({ from, to }) => [from, to]).filter((one) => one !== undefined);
  if (phase === 'before-operation')
    return numbers.some((one) => one > 0) ? ['it is before the operation, yet counts days after it'] : [];
  return numbers.some((one) => one < 0) && phase !== 'before-and-after'
    ? ['it is after the operation, yet counts days before it']
    : [];
}

function orderFaults({
  at_weeks: weeks = [],
  at_months: months = [],
  ...timing
}: AftercareTiming): readonly string[] {
  const ranges = [timing.every_months, timing.until_stable_every_months, timing.stable_every_months];
  const turned = ranges.some((one) => Array.isArray(one) && one[0] > one[1]);
  return [
    ...([weeks, months].every(isRising) ? [] : ['its times are not in order']),
    ...(turned ? ['the shorter interval stands second'] : []),
  ];
}

function isRising(numbers: readonly number[]): boolean {
  return numbers.every((one, index) => index === 0 || one > (numbers[index - 1] ?? one));
}
