import type { Bounds } from '../model/comparison.ts';

/** A value with its 95 % interval, in whatever unit. */
export interface Estimate extends Bounds {
  readonly value: number;
}

/**
 * 95 % interval of a difference of two independent values, from the intervals of the two (method of variance estimates
 * recovery; for two shares with score intervals it is Newcombe's hybrid score method). It keeps the lopsidedness of the
 * two, which a difference of rare shares needs.
 */
export function differenceInterval(a: Estimate, b: Estimate): Estimate {
  const value = a.value - b.value;
  return {
    value,
    low: value - Math.hypot(a.value - a.low, b.high - b.value),
    high: value + Math.hypot(a.high - a.value, b.value - b.low),
  };
}
