// Source: US Centers for Disease Control and Prevention, "How is BMI calculated?", worked examples 68 kg, 165 cm = 24.98 and 150 lb, 5 ft 5 in (65 in) = 24.96; read in reprints (women-info.com, sharecare.com), 2026-11; numbers only.
import { describe, expect, it } from 'vitest';
import { bodyMassIndex, parseHeight, parseWeight } from '../../src/model/quantity.ts';

function bmiOf(weight: string, height: string): number {
  return bodyMassIndex(parseWeight(weight)?.kg ?? NaN, parseHeight(height)?.m ?? NaN);
}

describe('BMI against worked examples', () => {
  it('68 kg at 165 cm is 24.98', () => {
    expect(Math.abs(bmiOf('68 kg', '165 cm') - 24.98)).toBeLessThanOrEqual(0.005);
    expect(bmiOf('68 kg', '1.65 m')).toBeCloseTo(bmiOf('68 kg', '165 cm'), 10);
  });

  it('150 lb at 5 ft 5 in is 24.96', () => {
    expect(Math.abs(bmiOf('150 lb', '5 ft 5 in') - 24.96)).toBeLessThanOrEqual(0.005);
  });
});
