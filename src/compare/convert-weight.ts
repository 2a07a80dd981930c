import type { Person } from '../model/comparison.ts';
import type { RecordOf } from '../model/evidence-record.ts';
import { centreOf } from './match-bmi.ts';
import type { Subject } from './subject.ts';

/** From a value in a metric to a weight in kg. */
export type Conversion = (value: number) => number;

interface Metric {
  /** What must hold for the metric to say something about one person. */
  readonly needs: 'nothing' | 'excess';
  readonly convert: (person: Person) => Conversion;
}

/** Excess weight counts from this BMI, kg/m². */
const idealBmi = 25;
/** Under this BMI (kg/m²) the excess is so small that a percent of it says nothing. */
const lowestForExcess = 27;
/**
 * Heavier people lose a smaller part of their excess: 77 against 95 % in the halves of one registry (van de Laar
 * 2012). So a percent of excess holds for a BMI within this distance (kg/m²) of the study's own, and where that is
 * not stated under the BMI at which most studies of operations end.
 */
const reachOfExcess = 10;
const highestForExcess = 50;

/** Both kinds of excess are the same share of the weight over BMI 25 (van de Laar 2011: 100 (B0 - Bt) / (B0 - 25)). */
const excess: Metric = {
  needs: 'excess',
  convert:
    ({ weightKg, heightM }) =>
    (percent) =>
      weightKg - (percent / 100) * (weightKg - idealBmi * heightM * heightM),
};

/** Kilograms and BMI points lost belong to the weight those people started at, so they say nothing about another's. */
const metrics: ReadonlyMap<string, Metric> = new Map([
  [
    'TWL',
    {
      needs: 'nothing',
      convert:
        ({ weightKg }) =>
        (percent) =>
          weightKg * (1 - percent / 100),
    },
  ],
  ['EWL', excess],
  ['EBMIL', excess],
] as const);

/** How a record's figures become this person's weight; undefined where they cannot. */
export function chooseConversion(record: RecordOf<'weight'>, subject: Subject): Conversion | undefined {
  const metric = metrics.get(record.value.metric);
  if (metric === undefined) return undefined;
  if (metric.needs === 'excess' && !hasLikeExcess(record, subject)) return undefined;
  return metric.convert(subject.person);
}

function hasLikeExcess(record: RecordOf<'weight'>, { bmi }: Subject): boolean {
  const centre = centreOf(record.people.bmi);
  if (bmi < lowestForExcess) return false;
  return centre === undefined ? bmi < highestForExcess : Math.abs(bmi - centre) <= reachOfExcess;
}
