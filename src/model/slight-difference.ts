import type { MissingReason } from './comparison-reasons.ts';

/** A study of which only the mean is known speaks for people this near to it, kg/m². */
export const nearMean = 5;

/** Under this BMI (kg/m²) a study of second operations that does not state BMI is no guide at all. */
export const lowestForUnknown = 30;

/**
 * Whether a figure would be shown if this were the only way in which its people differ, or the only thing not stated:
 * where it is the reason that none is shown, something else does not fit either.
 *
 * @param bmi of the person, kg/m²
 */
export function isSlight(reason: MissingReason, bmi: number): boolean {
  switch (reason.code) {
    case 'indication-mixed':
    case 'indication-unknown':
    case 'age-unknown':
    case 'stages':
    case 'removed-before':
    case 'several-operations':
      return true;
    case 'bmi-unknown':
      return Math.round(bmi * 10) / 10 >= lowestForUnknown;
    case 'bmi-mean-only':
      return Math.abs(reason.yours - reason.mean) <= nearMean;
    default:
      return false;
  }
}
