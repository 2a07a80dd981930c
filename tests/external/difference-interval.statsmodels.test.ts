// Source: statsmodels 0.15.0 (Python 3), statsmodels.stats.proportion.confint_proportions_2indep(…, compare='diff',
// method='newcomb'), run on eight pairs of shares, small or at their limits, and on two of registry size. Numbers as
// printed; from score intervals our method is that one.
import { describe, expect, it } from 'vitest';

import { differenceInterval } from '../../src/compare/difference-interval.ts';
import { scoreInterval } from '../../src/compare/score-interval.ts';

const printed = [
  { a: [56, 70], b: [48, 80], low: 0.05243147240236498, high: 0.33387265403690614 },
  { a: [9, 10], b: [3, 10], low: 0.1705227239345029, high: 0.809017973535488 },
  { a: [6, 7], b: [2, 7], low: 0.05822792748231209, high: 0.8062496375242278 },
  { a: [5, 56], b: [0, 29], low: -0.038137147903536936, high: 0.19256001385511165 },
  { a: [0, 10], b: [0, 20], low: -0.1611251580528194, high: 0.27753279986288926 },
  { a: [0, 10], b: [0, 10], low: -0.27753279986288926, high: 0.27753279986288926 },
  { a: [10, 10], b: [0, 20], low: 0.6790860371419145, high: 1 },
  { a: [10, 10], b: [0, 10], low: 0.6075093504305241, high: 1 },
  { a: [191, 4831], b: [2414, 46153], low: -0.01830784760683849, high: -0.006567668994923776 },
  { a: [598, 370369], b: [523, 159280], low: -0.0019873349791353617, high: -0.0013679388325494243 },
] as const;

describe('the interval of a difference of two shares', () => {
  it.each(printed)('of $a and $b is what statsmodels prints', ({ a, b, low, high }) => {
    const [first, second] = [a, b].map(([events, n]) => ({ value: events / n, ...scoreInterval(events, n) }));
    if (first === undefined || second === undefined) throw new Error('two shares were given');
    const found = differenceInterval(first, second);
    expect(found.value).toBeCloseTo(a[0] / a[1] - b[0] / b[1], 15);
    expect(found.low).toBeCloseTo(low, 12);
    expect(found.high).toBeCloseTo(high, 12);
  });
});
