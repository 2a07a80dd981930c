import { describe, expect, it } from 'vitest';
import type { WeightLine } from '../../../src/model/document.ts';
import {
  drawWeightLine,
  largeLine,
  placeMonth,
  placeWeight,
  smallLine,
} from '../../../src/pictures/weight-line.ts';
import { boundsOf, subpaths } from '../../helpers/path-points.ts';
import { pointSource, weightLine } from '../../helpers/sample-documents.ts';

const line = weightLine('Gastric bypass');

describe.each([
  ['large', largeLine],
  ['small', smallLine],
])('a %s weight line', (_, sizes) => {
  it('has a time scale true to length', () => {
    const [one, five] = [12, 60].map((months) => placeMonth(line, sizes, months) - sizes.plotStart);
    expect((five ?? 0) / (one ?? 1)).toBeCloseTo(5);
    expect(placeMonth(line, sizes, 0)).toBe(sizes.plotStart);
  });

  it('puts the heavier weight higher', () => {
    expect(placeWeight(line, sizes, line.max)).toBeLessThan(placeWeight(line, sizes, line.min));
  });

  it('marks today and every measured time, and nothing else', () => {
    const drawn = drawWeightLine(line, sizes, 'ltr');
    expect(subpaths(drawn.marks)).toHaveLength(1 + line.points.length);
    expect(subpaths(drawn.line)).toHaveLength(1);
    expect(subpaths(drawn.line)[0]).toHaveLength(1 + line.points.length);
  });

  it('draws nothing solid past the last measured time, only dashes', () => {
    const drawn = drawWeightLine(line, sizes, 'ltr');
    const last = placeMonth(line, sizes, 60);
    expect(boundsOf(subpaths(drawn.line + drawn.band).flat()).right).toBeCloseTo(last, 1);
    expect(boundsOf(subpaths(drawn.after).flat()).left).toBeGreaterThan(last);
  });

  it('draws no dashes when nothing is said of the time after, and none when there is no time after', () => {
    const silent: WeightLine = { ...line };
    Reflect.deleteProperty(silent, 'unknownAfter');
    expect(drawWeightLine(silent, sizes, 'ltr').after).toBe('');
    const whole = { ...line, points: [{ months: 120, at: 90, label: '90', ...pointSource }] };
    expect(drawWeightLine(whole, sizes, 'ltr').after).toBe('');
  });

  it('cuts the band where a time has no spread, and has none where no time has', () => {
    const [one, two, five] = line.points;
    if (one === undefined || two === undefined || five === undefined)
      throw new Error('three times are needed');
    const bare = { months: two.months, at: two.at, label: two.label, ...pointSource };
    expect(subpaths(drawWeightLine({ ...line, points: [one, bare, five] }, sizes, 'ltr').band)).toHaveLength(
      1,
    );
    expect(drawWeightLine({ ...line, points: [bare] }, sizes, 'ltr').band).toBe('');
  });

  it('stays inside its box, also with values off the axis, and turns over in right to left', () => {
    const wild = {
      ...line,
      points: [{ months: 24, at: 900, label: '900', ...pointSource, low: -5, high: 1000 }],
    };
    for (const shown of [line, wild]) {
      const parts = (direction: 'ltr' | 'rtl') =>
        subpaths(Object.values(drawWeightLine(shown, sizes, direction)).join('')).flat();
      const bounds = boundsOf(parts('ltr'));
      expect(bounds.left).toBeGreaterThanOrEqual(0);
      expect(bounds.top).toBeGreaterThanOrEqual(0);
      expect(bounds.right).toBeLessThanOrEqual(sizes.width);
      expect(bounds.bottom).toBeLessThanOrEqual(sizes.plotHeight);
      const mirrored = parts('rtl');
      parts('ltr').forEach(([x], index) => {
        expect(mirrored[index]?.[0]).toBeCloseTo(sizes.width - x, 1);
      });
    }
  });

  it('draws a line with no measured time as today alone', () => {
    const drawn = drawWeightLine({ ...line, points: [] }, sizes, 'ltr');
    expect(drawn.line + drawn.band + drawn.after).toBe('');
    expect(subpaths(drawn.marks)).toHaveLength(1);
  });
});
