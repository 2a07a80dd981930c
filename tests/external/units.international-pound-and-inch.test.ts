// Source: international pound and inch (definitions of 1959: 1 lb = 0.45359237 kg, 1 in = 2.54 cm, both exact); US Census Bureau, Statistical Abstract 1999, Appendix IV (1 kg = 2.21 lb, rounded up). Read 2026-11; numbers only.
import { describe, expect, it } from 'vitest';
import {
  inchesToMetres,
  kilogramsToPounds,
  parseHeight,
  parseWeight,
  poundsToKilograms,
} from '../../src/model/quantity.ts';

describe('units against their definitions', () => {
  it('a pound is 0.45359237 kilograms', () => {
    expect(poundsToKilograms(1)).toBe(0.45359237);
    expect(parseWeight('100 lb')?.kg).toBeCloseTo(45.359237, 10);
  });

  it('an inch is 2.54 centimeters', () => {
    expect(inchesToMetres(1) * 100).toBeCloseTo(2.54, 12);
    expect(parseHeight('5 ft 0 in')?.m).toBeCloseTo((60 * 2.54) / 100, 12);
  });

  it('a kilogram is 2.21 pounds in a table that rounds up', () => {
    expect(Math.abs(kilogramsToPounds(1) - 2.21)).toBeLessThanOrEqual(0.01);
  });
});
