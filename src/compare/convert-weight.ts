import type { MatchLevel, Person } from '../model/comparison.ts';
import type { RecordOf } from '../model/evidence-record.ts';
import { centreOf, nearMean } from './match-bmi.ts';
import type { Subject } from './subject.ts';

/** From a value in a metric to a weight in kg. */
export type Conversion = (value: number) => number;

interface Metric {
  /** What must hold for the metric to say something about one person. */
  readonly needs: 'nothing' | 'excess' | 'like-start';
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
  [
    'kg',
    {
      needs: 'like-start',
      convert:
        ({ weightKg }) =>
        (kg) =>
          weightKg - kg,
    },
  ],
  [
    'BMI',
    {
      needs: 'like-start',
      convert:
        ({ weightKg, heightM }) =>
        (points) =>
          weightKg - points * heightM * heightM,
    },
  ],
  [
    'BMI-reached',
    {
      needs: 'like-start',
      convert:
        ({ heightM }) =>
        (bmi) =>
          bmi * heightM * heightM,
    },
  ],
] as const);

/** How a record's figures become this person's weight; undefined where they cannot. */
export function chooseConversion(
  record: RecordOf<'weight'>,
  subject: Subject,
  match: MatchLevel,
): Conversion | undefined {
  const metric = metrics.get(record.value.metric);
  if (metric === undefined) return undefined;
  if (metric.needs === 'excess' && !hasLikeExcess(record, subject)) return undefined;
  if (metric.needs === 'like-start' && !startsAlike(record, subject, match)) return undefined;
  return metric.convert(subject.person);
}

function hasLikeExcess(record: RecordOf<'weight'>, { bmi }: Subject): boolean {
  const centre = centreOf(record.people.bmi);
  if (bmi < lowestForExcess) return false;
  return centre === undefined ? bmi < highestForExcess : Math.abs(bmi - centre) <= reachOfExcess;
}

/** Kilograms and BMI points grow with the weight at the start, so they hold only for people who start alike. */
function startsAlike(record: RecordOf<'weight'>, subject: Subject, match: MatchLevel): boolean {
  const centre = centreOf(record.people.bmi);
  return match === 'like-you' && centre !== undefined && Math.abs(subject.bmi - centre) <= nearMean;
}
