import type { Pooled } from '../model/comparison.ts';
import type { Candidate } from './assess-record.ts';
import { fitLogitNormal } from './logit-normal.ts';
import type { CountedShare } from './logit-normal.ts';
import { standardErrors95 } from './score-interval.ts';

/** Fewer studies say nothing about how much studies differ. */
const fewestStudies = 4;

/**
 * Random-effects mean of shares by the binomial-normal model, which holds for rare events and for studies that saw
 * none; with its 95 % interval, the 95 % interval in which the share of a further study is expected, and I² in
 * percent. Undefined for fewer than four studies, and where nobody or everybody had the event.
 */
export function poolShares(counts: readonly CountedShare[]): Pooled | undefined {
  const events = sum(counts.map((study) => study.events));
  if (counts.length < fewestStudies || events === 0 || events === sum(counts.map(({ n }) => n)))
    return undefined;
  const { mean, between, error } = fitLogitNormal(counts);
  const around = (half: number): { low: number; high: number } => ({
    low: shareOf(mean - half),
    high: shareOf(mean + half),
  });
  return {
    value: shareOf(mean),
    ...around(standardErrors95 * error),
    studies: counts.length,
    heterogeneity: heterogeneityOf(counts, between * between),
    expected: around(standardErrors95 * Math.hypot(between, error)),
  };
}

/**
 * I² in percent: what part of the differences between studies is not chance, against the variance of a typical study
 * (Higgins and Thompson, Stat Med 2002;21:1539-1558, formula 9). Half a person is added where a cell is empty.
 */
function heterogeneityOf(counts: readonly CountedShare[], between: number): number {
  const weights = counts.map(({ events, n }) => {
    const empty = events === 0 || events === n ? 0.5 : 0;
    return 1 / (1 / (events + empty) + 1 / (n - events + empty));
  });
  const total = sum(weights);
  const typical =
    ((counts.length - 1) * total) / (total * total - sum(weights.map((weight) => weight * weight)));
  return (100 * between) / (between + typical);
}

/** Counts of records whose group is stated; a published percent of it is a whole number of people. */
export function countsOf(candidates: readonly Candidate[]): readonly CountedShare[] {
  return candidates.flatMap(({ value }) => {
    if (value.kind !== 'proportion' || value.n === undefined) return [];
    return [{ events: value.events ?? Math.round(value.value * value.n), n: value.n }];
  });
}

function shareOf(logit: number): number {
  return 1 / (1 + Math.exp(-logit));
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
