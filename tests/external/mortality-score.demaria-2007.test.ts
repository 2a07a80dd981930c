// Sources: DeMaria 2007, derivation (doi 10.1016/j.soard.2007.01.005) and validation (doi 10.1097/SLA.0b013e318157206e), abstracts read at mysciencework.com and scholars.duke.edu/individual/pub774443, 2026-11; definitions and numbers only.
import { describe, expect, it } from 'vitest';

import { tallyFactors } from '../../src/compare/score-mortality.ts';
import { scoredFactors } from '../../src/model/mortality-score.ts';
import type { FactorState, MortalityScore, ScoredFactor } from '../../src/model/mortality-score.ts';
import { compareWell, readShippedEvidence } from '../helpers/compare-inputs.ts';
import { withoutRecords } from '../helpers/caution-pairs.ts';

const evidence = withoutRecords(readShippedEvidence());
const none: Readonly<Record<ScoredFactor, FactorState>> = {
  'bmi-50-or-more': 'no',
  male: 'no',
  hypertension: 'no',
  'clot-risk': 'no',
  'age-45-or-more': 'no',
};

/** The class of people of whom these are told and nothing else holds. */
function classWith(factors: readonly ScoredFactor[]): string {
  const { classes, points } = tallyFactors({
    ...none,
    ...Object.fromEntries(factors.map((factor) => [factor, 'yes'])),
  });
  expect(points).toEqual({ low: factors.length, high: factors.length });
  expect(classes.low).toBe(classes.high);
  return classes.low;
}

function scoreOf(patient: object, health: object): MortalityScore | null {
  return compareWell(evidence, { patient: { ...patient }, health: { ...health } }).mortalityScore;
}

describe('the mortality score as it was published', () => {
  it('gives one point to each of five things and makes three classes: 0 to 1, 2 to 3, 4 to 5', () => {
    const published = ['A', 'A', 'B', 'B', 'C', 'C'];
    expect(published.map((_, points) => classWith(scoredFactors.slice(0, points)))).toEqual(published);
    // Whichever they are.
    expect(published.map((_, points) => classWith(scoredFactors.slice(5 - points)))).toEqual(published);
  });

  it('counts a BMI of 50 or more and an age of 45 or more, both included', () => {
    const all = { conditions: ['high-blood-pressure', 'previous-clot'] };
    const edge = { sex: 'male', height: '2 m', weight: '200 kg', born: '1981-11-25' };
    expect(scoreOf(edge, all)).toMatchObject({
      points: { low: 5, high: 5 },
      classes: { low: 'C', high: 'C' },
    });
    const below = { sex: 'female', height: '2 m', weight: '199.6 kg', born: '1981-11-26' };
    expect(scoreOf(below, {})).toMatchObject({ points: { low: 0 }, classes: { low: 'A', high: 'A' } });
  });

  it('is class B for a woman of 52 with a BMI of 44 and high blood pressure', () => {
    const woman = { height: '2 m', weight: '176 kg', born: '1974-05-01' };
    expect(scoreOf(woman, { conditions: ['high-blood-pressure'] })).toMatchObject({
      points: { low: 2 },
      classes: { low: 'B', high: 'B' },
    });
  });
});

describe('the rows of the evidence on the score', () => {
  const rows = evidence.riskFactors.filter(({ factor }) => factor.startsWith('osmrs-class-'));
  const sizes = (study: string): readonly (number | undefined)[] =>
    rows.filter((row) => row.study === study).map(({ n }) => n);

  it('hold the classes of the validation: 2,164, 2,142 and 125 people, 4,431 in all', () => {
    expect(sizes('osmrs-validation-2007')).toEqual([2164, 2142, 125]);
    expect(2164 + 2142 + 125).toBe(4431);
  });

  it('hold the deaths of class C there, 3 of 125, as the 2.4% that is printed', () => {
    const row = rows.find(({ id }) => id === 'osmrs-class-c.bypass.death.osmrs-validation-2007');
    expect(row).toMatchObject({ events: 3, n: 125, estimate: 2.4 });
    expect((100 * 3) / 125).toBeCloseTo(2.4, 10);
  });

  it('hold the shares of the derivation and the odds of each thing that gives a point', () => {
    const derived = rows.filter(({ study }) => study === 'osmrs-derivation-2007');
    expect(derived.map(({ estimate }) => estimate)).toEqual([0.31, 1.9, 7.56]);
    const odds = scoredFactors.map(
      (name) =>
        evidence.riskFactors.find(({ factor, study }) => factor === name && study === 'osmrs-derivation-2007')
          ?.estimate,
    );
    expect(odds).toEqual([3.6, 2.8, 2.78, 2.62, 1.64]);
  });
});
