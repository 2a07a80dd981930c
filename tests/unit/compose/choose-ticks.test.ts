import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { chooseEnds, chooseTicks } from '../../../src/compose/choose-ticks.ts';

const kilograms = 1;
const pounds = 1 / 0.45359237;
const weight = fc.double({ min: 40, max: 300, noNaN: true });

describe('axes', () => {
  it('gives five or six round numbers in each unit and holds every value', () => {
    fc.assert(
      fc.property(fc.array(weight, { minLength: 1, maxLength: 12 }), (values) => {
        const ends = chooseEnds(values, [pounds, kilograms]);
        expect(ends.min).toBeLessThanOrEqual(Math.min(...values));
        expect(ends.max).toBeGreaterThanOrEqual(Math.max(...values));
        for (const scale of [pounds, kilograms]) {
          const ticks = chooseTicks(ends, scale);
          expect(ticks.length).toBeGreaterThanOrEqual(5);
          expect(ticks.length).toBeLessThanOrEqual(6);
          expect(Math.min(...ticks)).toBeGreaterThanOrEqual(ends.min * scale - 1e-6);
          expect(Math.max(...ticks)).toBeLessThanOrEqual(ends.max * scale + 1e-6);
          expect(ticks.every(Number.isInteger)).toBe(true);
        }
      }),
      { numRuns: 500, examples: [[[97.28155339805826, 40]]] },
    );
  });

  it('does not stretch a difference of a kilogram over the page', () => {
    const { min, max } = chooseEnds([114, 115], [kilograms]);
    expect(max - min).toBeGreaterThanOrEqual(20);
  });

  it('keeps equal steps', () => {
    const ticks = chooseTicks({ min: 60, max: 130 }, kilograms);
    const steps = ticks.slice(1).map((tick, index) => tick - (ticks[index] ?? 0));
    expect(new Set(steps).size).toBe(1);
  });
});
