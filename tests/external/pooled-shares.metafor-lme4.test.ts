// Source: metafor 3.8-1 and lme4 1.1-31 (R 4.2.2), run by pooled-shares.metafor-lme4.R beside this file: three published
// sets of metadat 1.2-0 and two invented ones. The JSON is what the packages printed.
import { describe, expect, it } from 'vitest';
import { z } from 'zod';

import { poolShares } from '../../src/compare/pool-shares.ts';
import { gaussHermite } from '../../src/compare/gauss-hermite.ts';
import printed from './pooled-shares.metafor-lme4.json' with { type: 'json' };

const setSchema = z.object({
  events: z.array(z.number()),
  people: z.array(z.number()),
  value: z.number(),
  low: z.number(),
  high: z.number(),
  expectedLow: z.number(),
  expectedHigh: z.number(),
  heterogeneity: z.number(),
  lme4Value: z.number(),
});
const sets = Object.entries(printed)
  .filter(([name]) => name !== 'made_by')
  .map(([name, set]) => ({ name, ...setSchema.parse(set) }));

describe.each(sets)('the pooled share of $name', (set) => {
  const counts = set.events.map((events, index) => ({ events, n: set.people[index] ?? 0 }));
  const pooled = poolShares(counts);

  it.each([
    ['value', pooled?.value, set.value],
    ['value of the second package', pooled?.value, set.lme4Value],
    ['low', pooled?.low, set.low],
    ['high', pooled?.high, set.high],
    ['expected low', pooled?.expected.low, set.expectedLow],
    ['expected high', pooled?.expected.high, set.expectedHigh],
  ])('has the %s that the package prints', (_, ours, theirs) => {
    // Far under one person in 1,000, the finest that is ever printed.
    expect(ours).toBeCloseTo(theirs, 5);
  });

  it('has the heterogeneity that the package prints, in percent', () => {
    expect(pooled?.heterogeneity).toBeCloseTo(set.heterogeneity, 2);
  });

  it('does not depend on the order of the studies', () => {
    expect(poolShares(counts.toReversed())?.value).toBeCloseTo(pooled?.value ?? 0, 9);
  });
});

describe('pooling', () => {
  it('is none of fewer than four studies, and where nobody or everybody had the event', () => {
    const some = { events: 3, n: 100 };
    expect(poolShares([some, some, some])).toBeUndefined();
    expect(poolShares([some, some, some, some])?.studies).toBe(4);
    expect(poolShares(Array.from({ length: 4 }, () => ({ events: 0, n: 50 })))).toBeUndefined();
    expect(poolShares(Array.from({ length: 4 }, () => ({ events: 50, n: 50 })))).toBeUndefined();
  });
});

// Abramowitz and Stegun, Handbook of Mathematical Functions, table 25.10, n = 5 (from memory).
describe('the nodes of the quadrature', () => {
  it('are those of the table', () => {
    const rounded = gaussHermite(5).map(({ at, weight }) => [at.toFixed(9), weight.toFixed(9)]);
    expect(rounded.slice(2).map(([at]) => Math.abs(Number(at)).toFixed(9))).toEqual([
      '0.000000000',
      '0.958572465',
      '2.020182870',
    ]);
    expect(rounded.slice(2).map(([, weight]) => weight)).toEqual([
      '0.945308720',
      '0.393619323',
      '0.019953242',
    ]);
  });

  it('sum polynomials exactly: the weights give the area, their squares half of it', () => {
    const area = gaussHermite(25).reduce((sum, { weight }) => sum + weight, 0);
    const second = gaussHermite(25).reduce((sum, { at, weight }) => sum + weight * at * at, 0);
    expect(area).toBeCloseTo(Math.sqrt(Math.PI), 12);
    expect(second).toBeCloseTo(Math.sqrt(Math.PI) / 2, 12);
  });
});
