// Sources: van de Laar 2011 (PubMed 21197603) and 2012 (doi 10.1007/s11695-012-0736-7), group means of BMI before and after with the percents they print; CDC worked BMI examples as reprinted; 2022 indications of two societies (doi of soard.org S1550-7289(22)00641-4).
import { describe, expect, it } from 'vitest';

import { weightForPerson } from '../../src/compare/weight-for-person.ts';
import { describeSubject } from '../../src/compare/describe-person.ts';
import { noteThresholds } from '../../src/compare/note-thresholds.ts';
import type { IndicationNote, WeightAt } from '../../src/model/comparison.ts';
import type { RecordOf } from '../../src/model/evidence-record.ts';
import { bodyMassIndex, poundsToKilograms } from '../../src/model/quantity.ts';
import {
  makeCase,
  makeEvidence,
  makeWeightRecord,
  readDefinitions,
  today,
} from '../helpers/compare-inputs.ts';

const heightM = 1.65;

/** A person 165 cm tall of a BMI, and what a percent in a metric makes of them. */
function bmiAfter(bmiBefore: number, metric: 'TWL' | 'EWL' | 'EBMIL', percent: number): number {
  const base = describeSubject(makeCase(), makeEvidence([]), today);
  const weightKg = bmiBefore * heightM * heightM;
  const subject = { ...base, bmi: bmiBefore, person: { ...base.person, heightM, weightKg, bmi: bmiBefore } };
  const record = makeWeightRecord({
    value: { metric, estimate: percent, unit: '%', reference: 'before-this-operation' },
  }) as RecordOf<'weight'>;
  return (weightForPerson(record, subject) as WeightAt).bmi;
}

describe('weight metrics', () => {
  it('turn the percent of total weight that goes with 44.9 to 28.8 back into 28.8', () => {
    expect(bmiAfter(44.9, 'TWL', 35.9)).toBeCloseTo(28.8, 1);
  });

  it('turn the percent of excess BMI of the group means back into the BMI reached', () => {
    expect(bmiAfter(44.9, 'EBMIL', 80.9)).toBeCloseTo(28.8, 1);
  });

  it('treat percent of excess weight over BMI 25 and of excess BMI alike', () => {
    expect(bmiAfter(47.5, 'EWL', 70)).toBeCloseTo(bmiAfter(47.5, 'EBMIL', 70), 10);
  });

  it('place the registry mean of 47.5 to 28.9 between what its halves print', () => {
    expect(bmiAfter(47.5, 'TWL', 40.2)).toBeLessThan(28.9);
    expect(bmiAfter(47.5, 'TWL', 37.7)).toBeGreaterThan(28.9);
    expect(bmiAfter(47.5, 'EBMIL', 95.3)).toBeLessThan(28.9);
    expect(bmiAfter(47.5, 'EBMIL', 77.2)).toBeGreaterThan(28.9);
  });

  it('compute BMI as the worked examples do', () => {
    expect(Math.abs(bodyMassIndex(68, 1.65) - 24.98)).toBeLessThanOrEqual(0.005);
    expect(Math.abs(bodyMassIndex(poundsToKilograms(150), 65 * 0.0254) - 24.96)).toBeLessThanOrEqual(0.005);
  });
});

describe('thresholds of the 2022 indications', () => {
  const cases: readonly (readonly [
    bmi: number,
    threshold: 'standard' | 'asian',
    notes: readonly IndicationNote[],
  ])[] = [
    [35, 'standard', []],
    [34.9, 'standard', ['under-35']],
    [30, 'standard', ['under-35']],
    [29.9, 'standard', ['under-30']],
    [27.5, 'asian', ['asian-27-5']],
    [27.4, 'asian', ['asian-25']],
    [25, 'asian', ['asian-25']],
    [24.9, 'asian', ['under-30']],
    [18.4, 'standard', ['under-18-5', 'under-30']],
  ];

  it('are the ones of the definitions that were read at their source', () => {
    const read = readDefinitions().filter(({ seen }) => seen === 'page');
    const first = (id: string): number => parseFloat(String(read.find((entry) => entry.id === id)?.value));
    expect(first('indication-recommended-2022')).toBe(35);
    expect(first('indication-consider-2022')).toBe(30);
    expect(first('indication-asian-2022')).toBe(27.5);
    expect(first('asian-obesity-2022')).toBe(25);
  });

  it.each(cases)('say of a BMI of %s with %s cut-offs: %j', (bmi, threshold, notes) => {
    const base = describeSubject(makeCase(), makeEvidence([]), today);
    expect(noteThresholds({ ...base, bmi, person: { ...base.person, threshold } })).toEqual(notes);
  });
});
