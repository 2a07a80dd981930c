import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Axis } from '../../../src/model/document.ts';
import type { RangePicture } from '../../../src/pictures/range.ts';
import {
  drawRange,
  gridOffsets,
  placeOnAxis,
  rangeSizes,
  unknownRangeBox,
} from '../../../src/pictures/range.ts';
import { boundsOf, subpaths } from '../../helpers/path-points.ts';

const axis: Axis = {
  min: 60,
  max: 140,
  today: { at: 122, label: 'You today' },
  top: { unit: 'kilograms', ticks: [80, 100, 121, 140].map((at) => ({ at, label: String(at) })) },
};

function picture(changes: Partial<RangePicture> = {}): RangePicture {
  return {
    type: 'range',
    average: 93,
    low: 82,
    high: 105,
    meaning: 'spread',
    alt: 'On average 93 kg.',
    ...changes,
  };
}

describe('a range bar', () => {
  it('places a weight true to the axis, lowest at the start', () => {
    expect(placeOnAxis(axis, 60, rangeSizes)).toBe(14);
    expect(placeOnAxis(axis, 140, rangeSizes)).toBe(178);
    expect(placeOnAxis(axis, 100, rangeSizes)).toBe(96);
  });

  it('holds values beyond the axis at its ends', () => {
    expect(placeOnAxis(axis, 10, rangeSizes)).toBe(14);
    expect(placeOnAxis(axis, 500, rangeSizes)).toBe(178);
    expect(placeOnAxis({ min: 90, max: 90 }, 90, rangeSizes)).toBe(96);
  });

  it('draws a band for a spread of people and no whisker', () => {
    const bar = drawRange(picture(), axis, { sizes: rangeSizes, direction: 'ltr' });
    const band = boundsOf(subpaths(bar.band).flat());
    expect(band.left).toBeCloseTo(placeOnAxis(axis, 82, rangeSizes), 1);
    expect(band.right).toBeCloseTo(placeOnAxis(axis, 105, rangeSizes), 1);
    expect(band.bottom - band.top).toBe(rangeSizes.bandHeight);
    expect(bar.whisker).toBe('');
  });

  it('draws a whisker for the uncertainty of an average and no band', () => {
    const bar = drawRange(picture({ meaning: 'uncertainty' }), axis, { sizes: rangeSizes, direction: 'ltr' });
    expect(bar.band).toBe('');
    expect(subpaths(bar.whisker)).toHaveLength(3);
  });

  it('draws neither when only the average is known', () => {
    const bare = { type: 'range', average: 93, alt: 'On average 93 kg.' } as const;
    for (const meaning of ['none', 'spread', 'uncertainty'] as const) {
      const bar = drawRange({ ...bare, meaning }, axis, { sizes: rangeSizes, direction: 'ltr' });
      expect([bar.band, bar.whisker]).toEqual(['', '']);
    }
  });

  it('draws a bar of 4.4 at the average with a halo of 1.5, and a line from there to today', () => {
    const bar = drawRange(picture(), axis, { sizes: rangeSizes, direction: 'ltr' });
    const average = boundsOf(subpaths(bar.average).flat());
    const halo = boundsOf(subpaths(bar.halo).flat());
    expect(average.right - average.left).toBeCloseTo(4.4, 1);
    expect((average.right + average.left) / 2).toBeCloseTo(placeOnAxis(axis, 93, rangeSizes), 1);
    expect(halo.right - average.right).toBeCloseTo(1.5, 1);
    const change = boundsOf(subpaths(bar.change).flat());
    expect(change.right).toBeCloseTo(placeOnAxis(axis, 122, rangeSizes), 1);
  });

  it('drops a grid line that would read as today', () => {
    expect(gridOffsets(axis, rangeSizes)).toEqual(
      [80, 100, 140].map((at) => placeOnAxis(axis, at, rangeSizes)),
    );
  });

  it('puts the leaf of what is not known between the start of the plot and today', () => {
    const box = unknownRangeBox(axis, rangeSizes);
    expect(box.start).toBe(14);
    expect(box.start + box.width).toBeCloseTo(placeOnAxis(axis, 122, rangeSizes) - 7);
    expect(unknownRangeBox({ ...axis, today: { at: 62, label: 'You today' } }, rangeSizes).width).toBe(164);
  });

  it('never leaves the picture column, in either direction, and is the mirror image in right to left', () => {
    const weight = fc.double({ min: 20, max: 300, noNaN: true });
    const meaning = fc.constantFrom('spread' as const, 'uncertainty' as const, 'none' as const);
    fc.assert(
      fc.property(fc.tuple(weight, weight, weight), meaning, ([average, low, high], kind) => {
        const shown = picture({
          average,
          low: Math.min(low, high),
          high: Math.max(low, high),
          meaning: kind,
        });
        const left = drawRange(shown, axis, { sizes: rangeSizes, direction: 'ltr' });
        const right = drawRange(shown, axis, { sizes: rangeSizes, direction: 'rtl' });
        for (const part of ['change', 'band', 'whisker', 'today', 'halo', 'average'] as const) {
          const points = subpaths(left[part]).flat();
          const mirrored = subpaths(right[part]).flat();
          for (const [x, y] of points) {
            expect(x).toBeGreaterThanOrEqual(0);
            expect(x).toBeLessThanOrEqual(192);
            expect(y).toBeGreaterThanOrEqual(0);
            expect(y).toBeLessThanOrEqual(30);
          }
          points.forEach(([x], index) => {
            expect(mirrored[index]?.[0]).toBeCloseTo(192 - x, 1);
          });
        }
      }),
      { numRuns: 100 },
    );
  });
});
