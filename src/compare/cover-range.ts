import type { Spread } from '../model/evidence-record.ts';

/** Lowest and highest value that a study covered, as far as it says. */
export interface Range {
  readonly low?: number;
  readonly high?: number;
}

/**
 * What a study covered in one measure: its stated limits; where one is missing, mean ± 2 standard deviations
 * of its people. Empty when neither is stated.
 */
export function coverRange(spread: Spread | undefined): Range {
  const { mean, sd } = spread ?? {};
  const known = mean !== undefined && sd !== undefined;
  return makeRange(
    spread?.low ?? (known ? toHundredths(mean - 2 * sd) : undefined),
    spread?.high ?? (known ? toHundredths(mean + 2 * sd) : undefined),
  );
}

/** 47.6 - 2 × 5.6 is 36.400000000000006 to a computer, which would leave out who has exactly 36.4. */
function toHundredths(value: number): number {
  return Math.round(value * 100) / 100;
}

export function makeRange(low: number | undefined, high: number | undefined): Range {
  return { ...(low === undefined ? {} : { low }), ...(high === undefined ? {} : { high }) };
}

/** What both ranges cover. */
export function narrow(a: Range, b: Range): Range {
  return makeRange(larger(a.low, b.low), smaller(a.high, b.high));
}

/** How far a value lies outside: the farther end counts. 0 inside, and towards a side without a limit. */
export function distanceFrom({ low, high }: Range, value: number): number {
  return Math.max(0, (low ?? value) - value, value - (high ?? value));
}

function larger(a: number | undefined, b: number | undefined): number | undefined {
  return a === undefined || b === undefined ? (a ?? b) : Math.max(a, b);
}

function smaller(a: number | undefined, b: number | undefined): number | undefined {
  return a === undefined || b === undefined ? (a ?? b) : Math.min(a, b);
}
