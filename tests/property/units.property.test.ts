import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bodyMassIndex,
  heightBounds,
  inchesToMetres,
  kilogramsToPounds,
  metresToInches,
  parseHeight,
  parseWeight,
  poundsToKilograms,
  weightBounds,
} from '../../src/model/quantity.ts';

const kilograms = fc.double({ min: weightBounds.low, max: weightBounds.high, noNaN: true });
const metres = fc.double({ min: heightBounds.low, max: heightBounds.high, noNaN: true });

describe('units', () => {
  it('there and back gives the same weight and the same height', () => {
    fc.assert(
      fc.property(kilograms, metres, (kg, m) => {
        expect(poundsToKilograms(kilogramsToPounds(kg))).toBeCloseTo(kg, 10);
        expect(inchesToMetres(metresToInches(m))).toBeCloseTo(m, 12);
      }),
    );
  });

  it('a weight means the same written in pounds as in kilograms, to half a hundredth of a pound', () => {
    fc.assert(
      fc.property(fc.double({ min: 31, max: 399, noNaN: true }), (kg) => {
        const inPounds = parseWeight(`${kilogramsToPounds(kg).toFixed(2)} lb`);
        const inKilograms = parseWeight(`${kg.toFixed(2)} kg`);
        expect(inPounds?.written).toBe('lb');
        expect(Math.abs((inPounds?.kg ?? 0) - (inKilograms?.kg ?? 1000))).toBeLessThan(0.0073);
      }),
    );
  });

  it('a height means the same in feet and inches, centimeters and meters', () => {
    fc.assert(
      fc.property(fc.integer({ min: 48, max: 90 }), (inches) => {
        const feet = parseHeight(`${String(Math.floor(inches / 12))} ft ${String(inches % 12)} in`);
        expect(feet?.m).toBeCloseTo(inches * 0.0254, 12);
        expect(parseHeight(`${(inches * 2.54).toFixed(1)} cm`)?.m).toBeCloseTo(inches * 0.0254, 2);
        expect(parseHeight(`${(inches * 0.0254).toFixed(3)} m`)?.m).toBeCloseTo(inches * 0.0254, 3);
      }),
    );
  });

  it('more weight never gives a lower BMI, more height never a higher one', () => {
    fc.assert(
      fc.property(kilograms, metres, fc.double({ min: 0.1, max: 50, noNaN: true }), (kg, m, more) => {
        expect(bodyMassIndex(kg + more, m)).toBeGreaterThan(bodyMassIndex(kg, m));
        expect(bodyMassIndex(kg, m + more / 100)).toBeLessThan(bodyMassIndex(kg, m));
      }),
    );
  });

  it('no text is read as a weight or height outside its bounds', () => {
    fc.assert(
      fc.property(fc.stringMatching(/^\d{1,4}(\.\d{1,3})? (kg|lb|cm|m|ft|in)( \d{1,2} in)?$/), (text) => {
        const [weight, height] = [parseWeight(text), parseHeight(text)];
        expect(
          weight === undefined || (weight.kg >= weightBounds.low && weight.kg <= weightBounds.high),
        ).toBe(true);
        expect(height === undefined || (height.m >= heightBounds.low && height.m <= heightBounds.high)).toBe(
          true,
        );
      }),
    );
  });
});
