// Source: metafor 3.8-1 (R 4.2.2), rma(measure = "PLO", method = "DL") of the dataset dat.debruin2009 of metadat 1.2-0
// (people with HIV whose standard care was of good quality): its counts, and what that package printed.
import { describe, expect, it } from 'vitest';

import { poolShares } from '../../src/compare/pool-shares.ts';

const events = [11, 24, 179, 82, 60, 11, 99, 9, 88, 17, 26, 23, 40];
const people = [29, 33, 326, 240, 110, 29, 244, 17, 215, 26, 138, 55, 54];
const counts = events.map((count, index) => ({ events: count, n: people[index] ?? 0 }));

describe('the pooled share', () => {
  const pooled = poolShares(counts);

  it.each([
    ['value', pooled?.value, 0.469365921340562],
    ['low', pooled?.low, 0.389710265150354],
    ['high', pooled?.high, 0.550613624359598],
    ['expected low', pooled?.expected.low, 0.229302817855495],
    ['expected high', pooled?.expected.high, 0.72449559934165],
    ['heterogeneity', pooled?.heterogeneity, 87.4946204665745],
  ])('has the %s that the package prints', (_, ours, theirs) => {
    expect(ours).toBeCloseTo(theirs, 8);
  });

  it('is none of fewer than four studies, of rare events, and where a study saw none or all', () => {
    expect(poolShares(counts.slice(0, 3))).toBeUndefined();
    expect(poolShares([...counts, { events: 9, n: 1000 }])).toBeUndefined();
    expect(poolShares([...counts, { events: 0, n: 50 }])).toBeUndefined();
    expect(poolShares([...counts, { events: 50, n: 50 }])).toBeUndefined();
    expect(poolShares([...counts, { events: 10, n: 1000 }])?.studies).toBe(14);
  });

  it('does not depend on the order of the studies', () => {
    expect(poolShares(counts.toReversed())?.value).toBeCloseTo(pooled?.value ?? 0, 12);
  });
});
