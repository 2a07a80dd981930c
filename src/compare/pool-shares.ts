import type { Pooled } from '../model/comparison.ts';
import type { Candidate } from './assess-record.ts';
import { standardErrors95 } from './score-interval.ts';

export interface CountedShare {
  readonly events: number;
  readonly n: number;
}

/** Fewer studies say nothing about how much studies differ. */
const fewestStudies = 4;

/**
 * Under this share the logit of a study is far from normal, and pooling it gives a number that no study found: rare
 * events need exact or generalised-linear methods, so they are not pooled here.
 */
const lowestShare = 0.01;

/**
 * Random-effects mean of shares on the logit scale (DerSimonian and Laird 1986, inverse-variance weights), with its
 * 95 % interval, the 95 % interval in which the share of a further study is expected, and I² in percent. Undefined for
 * fewer than four studies, and where any share is rare, none or all.
 */
export function poolShares(counts: readonly CountedShare[]): Pooled | undefined {
  const shares = counts.map(({ events, n }) => events / n);
  if (counts.length < fewestStudies || shares.some((share) => share < lowestShare || share > 1 - lowestShare))
    return undefined;
  const effects = counts.map(({ events, n }) => Math.log(events / (n - events)));
  const variances = counts.map(({ events, n }) => 1 / events + 1 / (n - events));
  const fixed = weighted(effects, variances);
  const q = sum(effects.map((effect, index) => (effect - fixed.mean) ** 2 / (variances[index] ?? 1)));
  const spare = counts.length - 1;
  const weights = variances.map((variance) => 1 / variance);
  const scale = sum(weights) - sum(weights.map((weight) => weight * weight)) / sum(weights);
  const between = Math.max(0, (q - spare) / scale);
  const { mean, error } = weighted(
    effects,
    variances.map((variance) => variance + between),
  );
  const around = (half: number): { low: number; high: number } => ({
    low: shareOf(mean - half),
    high: shareOf(mean + half),
  });
  return {
    value: shareOf(mean),
    ...around(standardErrors95 * error),
    studies: counts.length,
    heterogeneity: q > spare ? (100 * (q - spare)) / q : 0,
    expected: around(standardErrors95 * Math.sqrt(between + error * error)),
  };
}

/** Counts of records whose group is stated; a published percent of it is a whole number of people. */
export function countsOf(candidates: readonly Candidate[]): readonly CountedShare[] {
  return candidates.flatMap(({ value }) => {
    if (value.kind !== 'proportion' || value.n === undefined) return [];
    return [{ events: value.events ?? Math.round(value.value * value.n), n: value.n }];
  });
}

function weighted(
  effects: readonly number[],
  variances: readonly number[],
): { readonly mean: number; readonly error: number } {
  const weights = variances.map((variance) => 1 / variance);
  const total = sum(weights);
  const mean = sum(effects.map((effect, index) => effect * (weights[index] ?? 0))) / total;
  return { mean, error: Math.sqrt(1 / total) };
}

function shareOf(logit: number): number {
  return 1 / (1 + Math.exp(-logit));
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
