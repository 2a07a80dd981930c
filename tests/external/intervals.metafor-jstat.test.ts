// Sources: base R binom.test and prop.test (R 4.2.2), R package binom as printed in the statsmodels tests, Wijma 2015 (25/28, 9/28, 2/28), mpmath 1.3.0 for large counts, jstat 1.9.6 as a second library. Numbers only, in intervals.reference.json.
import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';

import { exactInterval, upperLimitOfNone } from '../../src/compare/exact-interval.ts';
import { scoreInterval } from '../../src/compare/score-interval.ts';
import reference from './intervals.reference.json' with { type: 'json' };

const { jStat } = createRequire(import.meta.url)('jstat') as {
  readonly jStat: { readonly beta: { readonly inv: (p: number, a: number, b: number) => number } };
};

describe('intervals of a share', () => {
  it.each(reference.metafor_table.rows)('agree with R for $x of $n', (row) => {
    const exact = exactInterval(row.x, row.n);
    const score = scoreInterval(row.x, row.n);
    expect(exact.low).toBeCloseTo(row.clopper_pearson_lb, 10);
    expect(exact.high).toBeCloseTo(row.clopper_pearson_ub, 10);
    expect(score.low).toBeCloseTo(row.wilson_lb, 10);
    expect(score.high).toBeCloseTo(row.wilson_ub, 10);
  });

  it.each(reference.r_binom_prints)('agree with the printed $id', ({ id, inputs, expected, tolerance }) => {
    const { low, high } = (id.includes('wilson.') ? scoreInterval : exactInterval)(inputs.events, inputs.n);
    expect(Math.abs(low - expected.low)).toBeLessThanOrEqual(tolerance);
    expect(Math.abs(high - expected.high)).toBeLessThanOrEqual(tolerance);
  });

  it.each(reference.large_counts.rows)(
    'stay exact in a registry: $events of $n',
    ({ events, n, low, high }) => {
      const exact = exactInterval(events, n);
      expect(Math.abs(exact.low - low)).toBeLessThanOrEqual(1e-8 * low);
      expect(Math.abs(exact.high - high)).toBeLessThanOrEqual(1e-8 * high);
    },
  );

  it('agree with a second library over a grid of counts', () => {
    for (const n of [1, 2, 7, 28, 100, 212, 5000, 370_369]) {
      for (const events of [0, 1, 2, 5, Math.floor(n / 3), n - 1, n].filter(
        (count) => count >= 0 && count <= n,
      )) {
        const { low, high } = exactInterval(events, n);
        const expectedLow = events === 0 ? 0 : jStat.beta.inv(0.025, events, n - events + 1);
        const expectedHigh = events === n ? 1 : jStat.beta.inv(0.975, events + 1, n - events);
        expect(Math.abs(low - expectedLow), `low of ${events}/${n}`).toBeLessThan(1e-9);
        expect(Math.abs(high - expectedHigh), `high of ${events}/${n}`).toBeLessThan(1e-9);
      }
    }
  });

  it('give the limit of none as the upper end of the exact interval', () => {
    for (const n of [1, 20, 212, 41_866]) {
      expect(upperLimitOfNone(n)).toBeCloseTo(exactInterval(0, n).high, 12);
    }
  });
});
