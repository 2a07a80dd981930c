import { describe, expect, it } from 'vitest';

import { weightForPerson } from '../../../src/compare/weight-for-person.ts';
import type { SetAsideReason, WeightAt } from '../../../src/model/comparison.ts';
import type { RecordOf } from '../../../src/model/evidence-record.ts';
import { makeSubject, makeWeightRecord } from '../../helpers/compare-inputs.ts';

interface Scene {
  readonly weight?: string;
  readonly people?: object;
}

/** 163 cm and 100 kg (BMI 37.6) unless changed. */
function weigh(value: object, { weight = '100 kg', people = {} }: Scene = {}): WeightAt | SetAsideReason {
  const record = makeWeightRecord({
    value: { unit: '%', reference: 'before-this-operation', ...value },
    people: { indication: 'first-operation', diabetes: 'unknown', ...people },
  }) as RecordOf<'weight'>;
  return weightForPerson(record, makeSubject({ patient: { weight } }));
}

const square = 1.63 ** 2;

describe('weightForPerson', () => {
  it('applies a percent of total weight to the weight of today', () => {
    expect(weigh({ metric: 'TWL', estimate: 25 })).toMatchObject({
      averageKg: 75,
      changeKg: -25,
      twlPercent: 25,
      bmi: expect.closeTo(75 / square, 10) as number,
      computed: false,
    });
  });

  it('warns of a weight that would be too low: under a BMI of 18.5, and under 20 in who starts below 30', () => {
    const warningAt = (weight: string, estimate: number): unknown => {
      const found = weigh({ metric: 'TWL', estimate }, { weight });
      return 'warning' in found ? found.warning : undefined;
    };
    // 163 cm: a BMI of 18.5 is 49.2 kg, one of 20 is 53.1 kg.
    expect(warningAt('100 kg', 51)).toBe('under-18-5');
    expect(warningAt('100 kg', 50)).toBeUndefined();
    expect(warningAt('79 kg', 33)).toBe('under-20');
    expect(warningAt('79 kg', 32)).toBeUndefined();
    expect(warningAt('79 kg', 38)).toBe('under-18-5');
  });

  it('shows a gain as a gain', () => {
    expect(weigh({ metric: 'TWL', estimate: -2 })).toMatchObject({
      averageKg: 102,
      changeKg: 2,
      twlPercent: -2,
    });
  });

  it.each(['EWL', 'EBMIL'])(
    'takes %s as a share of the weight over BMI 25, and says it is computed',
    (metric) => {
      const excess = 100 - 25 * square;
      expect(weigh({ metric, estimate: 50 })).toMatchObject({
        averageKg: expect.closeTo(100 - excess / 2, 10) as number,
        computed: true,
      });
      expect(weigh({ metric, estimate: 50 }, { weight: '71 kg' })).toEqual({
        code: 'not-convertible',
        metric,
      });
    },
  );

  it('does not apply a percent of excess far from the people it was measured in', () => {
    const value = { metric: 'EWL', estimate: 50 };
    const not = { code: 'not-convertible', metric: 'EWL' };
    expect(weigh(value, { people: { bmi: { mean: 47.6 } } })).toMatchObject({ computed: true });
    expect(weigh(value, { people: { bmi: { median: 47.7 } } })).toEqual(not);
    expect(weigh(value, { weight: '132 kg' })).toMatchObject({ computed: true });
    expect(weigh(value, { weight: '133 kg' })).toEqual(not);
  });

  it.each(['kg', 'BMI', 'BMI-reached'])(
    'does not apply %s that other people lost, however alike',
    (metric) => {
      const not = { code: 'not-convertible', metric };
      expect(weigh({ metric, estimate: 20 }, { people: { bmi: { mean: 37.6 } } })).toEqual(not);
      expect(weigh({ metric, estimate: 20 })).toEqual(not);
    },
  );

  it.each(['before-first-operation', 'unstated'])(
    'does not apply a percent of the weight %s',
    (reference) => {
      expect(weigh({ metric: 'TWL', estimate: 25, reference })).toEqual({
        code: 'reference-weight',
        reference,
      });
    },
  );

  it('takes a percent without a reference for unstated', () => {
    expect(weigh({ metric: 'TWL', estimate: 25, reference: undefined })).toEqual({
      code: 'reference-weight',
      reference: 'unstated',
    });
  });

  it('refuses metrics it does not know, other outcomes and figures without an average', () => {
    expect(weigh({ metric: 'loss-since-switch', estimate: 8 })).toEqual({
      code: 'not-convertible',
      metric: 'loss-since-switch',
    });
    expect(weigh({ metric: 'TWL', low: 28, high: 30, interval: 'range' })).toEqual({
      code: 'other-measure',
      kind: 'range',
    });
    const regain = makeWeightRecord({
      outcome: 'weight-regain',
      value: { metric: 'kg', estimate: 5, unit: 'kg' },
    }) as RecordOf<'weight'>;
    expect(weightForPerson(regain, makeSubject())).toEqual({
      code: 'other-measure',
      kind: 'weight-regain',
    });
  });
});

describe('spread of people and uncertainty of an average', () => {
  it('says two in three only from a standard deviation', () => {
    expect(weigh({ metric: 'TWL', estimate: 25, sd: 10 })).toMatchObject({
      spread: { low: 65, high: 85, basis: 'sd', share: 'two-in-three' },
    });
    expect(weigh({ metric: 'TWL', estimate: 25, sd: 10 })).not.toHaveProperty('uncertainty');
  });

  it('says half from quartiles and all from a range', () => {
    expect(weigh({ metric: 'TWL', estimate: 25, low: 20, high: 31, interval: 'iqr' })).toMatchObject({
      spread: { low: 69, high: 80, basis: 'iqr', share: 'half' },
    });
    expect(weigh({ metric: 'TWL', estimate: 25, low: 2, high: 50, interval: 'range' })).toMatchObject({
      spread: { low: 50, high: 98, share: 'all' },
    });
  });

  it.each(['ci95', 'ci98', 'cri95'])(
    'takes %s for the uncertainty of the average, never for a spread',
    (interval) => {
      const weight = weigh({ metric: 'TWL', estimate: 25, low: 24, high: 26, interval });
      expect(weight).toMatchObject({ uncertainty: { low: 74, high: 76 } });
      expect(weight).not.toHaveProperty('spread');
    },
  );

  it('widens a standard error to a 95 % interval', () => {
    expect(weigh({ metric: 'TWL', estimate: 25, se: 1 })).toMatchObject({
      uncertainty: { low: expect.closeTo(73.04, 2) as number, high: expect.closeTo(76.96, 2) as number },
    });
  });

  it('takes an unnamed bracket for neither', () => {
    const weight = weigh({ metric: 'TWL', estimate: 25, low: 20, high: 30, interval: 'unstated' });
    expect(weight).not.toHaveProperty('spread');
    expect(weight).not.toHaveProperty('uncertainty');
  });

  it('keeps both when both are given', () => {
    const weight = weigh({ metric: 'TWL', estimate: 25, sd: 10, low: 24, high: 26, interval: 'ci95' });
    expect(weight).toMatchObject({ spread: { basis: 'sd' }, uncertainty: { low: 74, high: 76 } });
  });

  it('converts the spread of a computed weight with the weight itself', () => {
    const weight = weigh({ metric: 'EWL', estimate: 60, sd: 20 }, { people: { bmi: { mean: 38 } } });
    const excess = 100 - 25 * square;
    expect(weight).toMatchObject({
      spread: {
        low: expect.closeTo(100 - 0.8 * excess, 8) as number,
        high: expect.closeTo(100 - 0.4 * excess, 8) as number,
      },
    });
  });
});
