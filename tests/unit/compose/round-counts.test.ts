import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import {
  lowerCount,
  rangeCount,
  roundedChange,
  roundShare,
  upperCount,
} from '../../../src/compose/round-counts.ts';
import type { RoundedShare } from '../../../src/compose/round-counts.ts';
import { InternalError } from '../../../src/diagnostics/diagnostic.ts';

const denominator = fc.constantFrom<100 | 1000>(100, 1000);
const share = fc.double({ min: 1e-9, max: 1 - 1e-9, noNaN: true });

/** Where a share stands among the counts, so that two can be put in order. */
function rank(rounded: RoundedShare): number {
  switch (rounded.kind) {
    case 'none-seen':
      return 0;
    case 'fewer-than-one':
      return 0.5;
    case 'count':
    case 'everyone':
      return rounded.count;
    case 'all-but-fewer-than-one':
      return rounded.count + 0.5;
  }
}

describe('shares of people as whole people', () => {
  it('adds both sides up to the denominator', () => {
    fc.assert(
      fc.property(share, denominator, (value, of) => {
        const rounded = roundShare({ value }, of);
        return rounded.kind !== 'count' || rounded.count + rounded.rest === of;
      }),
    );
  });

  it('never gives a larger share a smaller count', () => {
    fc.assert(
      fc.property(share, share, denominator, (a, b, of) => {
        const [low, high] = a < b ? [a, b] : [b, a];
        return rank(roundShare({ value: low }, of)) <= rank(roundShare({ value: high }, of));
      }),
    );
  });

  it('never turns something into nothing, nor nearly everybody into everybody', () => {
    fc.assert(
      fc.property(share, denominator, (value, of) => {
        const rounded = roundShare({ value }, of);
        if (rounded.kind === 'count') return rounded.count >= 1 && rounded.rest >= 1;
        return rounded.kind === 'fewer-than-one' || rounded.kind === 'all-but-fewer-than-one';
      }),
    );
  });

  it('keeps a count that is whole already, whatever the machine makes of the division', () => {
    for (const of of [100, 1000] as const) {
      for (let count = 1; count < of; count += 1) {
        expect(roundShare({ value: count / of }, of)).toEqual({ kind: 'count', count, rest: of - count });
      }
    }
  });

  it('says fewer than one only under one, and rounds halves up', () => {
    expect(roundShare({ value: 0.0006 }, 1000).kind).toBe('fewer-than-one');
    expect(roundShare({ value: 0.001 }, 1000)).toEqual({ kind: 'count', count: 1, rest: 999 });
    expect(roundShare({ value: 0.0245 }, 1000)).toEqual({ kind: 'count', count: 25, rest: 975 });
    expect(roundShare({ value: 0.9996 }, 1000)).toEqual({ kind: 'all-but-fewer-than-one', count: 999 });
    expect(roundShare({ value: 1 }, 100)).toEqual({ kind: 'everyone', count: 100 });
  });

  it('gives the upper limit where none were seen', () => {
    // Clopper and Pearson 1934, none of n: the one-sided 97.5 % limit is 1 − 0.025^(1/n); for 212 people 17.25 in 1,000.
    const upper = 1 - 0.025 ** (1 / 212);
    expect(roundShare({ value: 0, zero: { n: 212, upper } }, 1000)).toEqual({
      kind: 'none-seen',
      n: 212,
      upTo: 18,
    });
  });

  it('refuses none of an unknown number, and shares that cannot be', () => {
    expect(() => roundShare({ value: 0 }, 100)).toThrow(InternalError);
    expect(() => roundShare({ value: 1.01 }, 100)).toThrow(InternalError);
    expect(() => roundShare({ value: Number.NaN }, 100)).toThrow(InternalError);
  });
});

describe('limits of a range', () => {
  it('never narrows a range', () => {
    fc.assert(
      fc.property(share, denominator, (value, of) => {
        const people = value * of;
        return lowerCount(value, of) <= people + 1e-6 && upperCount(value, of) >= people - 1e-6;
      }),
    );
  });

  it('says what is below one, and what is none', () => {
    expect(rangeCount(0, 100)).toBe('none');
    expect(rangeCount(0.004, 100)).toBe('fewer-than-one');
    expect(rangeCount(0.18, 100)).toBe(18);
  });
});

describe('changes', () => {
  it('equals what the reader gets by subtracting the numbers printed', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 40, max: 400, noNaN: true }),
        fc.double({ min: 40, max: 400, noNaN: true }),
        (from, to) => Math.round(from) + roundedChange(from, to) === Math.round(to),
      ),
    );
  });
});
