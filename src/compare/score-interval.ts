import type { Bounds } from '../model/comparison.ts';

/** Normal quantile of a two-sided 95 % interval. */
const z = 1.959963984540054;

/**
 * Wilson's score 95 % interval of a share, 0 to 1. Close to its nominal coverage unless very few people had the
 * event or very few did not. `n` at least 1.
 */
export function scoreInterval(events: number, n: number): Bounds {
  const share = events / n;
  const middle = share + (z * z) / (2 * n);
  const half = z * Math.sqrt((share * (1 - share)) / n + (z * z) / (4 * n * n));
  const scale = 1 + (z * z) / n;
  return {
    low: events === 0 ? 0 : (middle - half) / scale,
    high: events === n ? 1 : (middle + half) / scale,
  };
}

/** Half width of a 95 % interval in standard errors. */
export const standardErrors95 = z;
