import type { OptionCode } from './evidence-record.ts';

/** What gives a point each in the mortality score of 2007, by the names that the risk factors of the evidence have. */
export const scoredFactors = [
  'bmi-50-or-more',
  'male',
  'hypertension',
  'clot-risk',
  'age-45-or-more',
] as const;
export type ScoredFactor = (typeof scoredFactors)[number];

/** `not-told`: the case does not say, which is neither yes nor no. */
export type FactorState = 'yes' | 'no' | 'not-told';
export type ScoreClass = 'A' | 'B' | 'C';

/**
 * The mortality score of 2007 as a class, for clinicians. It ranks people of the days of open bypass and is no risk of
 * today, so no share of deaths goes with it.
 */
export interface MortalityScore {
  /** Options of the case that the score was made for. */
  readonly options: readonly OptionCode[];
  readonly factors: Readonly<Record<ScoredFactor, FactorState>>;
  /** Points, 0 to 5: without and with all that the case does not tell. */
  readonly points: { readonly low: number; readonly high: number };
  /** The class of either; two different ones mean that it cannot be told. */
  readonly classes: { readonly low: ScoreClass; readonly high: ScoreClass };
  /** People in class C, in the study with the fewest and in that with the most. */
  readonly highestClass: { readonly low: number; readonly high: number };
  /** The studies it stands on, that which made it first. */
  readonly studies: readonly string[];
}
