import { describe, expect, it } from 'vitest';

import type { CautionHit } from '../../../src/model/comparison.ts';
import type { Caution } from '../../../src/model/evidence-rules.ts';
import {
  compareWell,
  makeCaution,
  makeClinic,
  makeEvidence,
  readShippedEvidence,
} from '../../helpers/compare-inputs.ts';
import type { CaseChanges } from '../../helpers/compare-inputs.ts';

function fire(
  cautions: readonly Caution[],
  changes: CaseChanges = {},
  said: object = {},
): readonly CautionHit[] {
  return compareWell(makeEvidence([], { cautions }), changes, makeClinic({ cautions: said })).cautions;
}

function fires(when: object, changes: CaseChanges = {}): boolean {
  return fire([makeCaution({ when })], changes).length > 0;
}

const reflux: CaseChanges = { health: { conditions: ['reflux'] } };

describe('when a caution fires', () => {
  it('asks for the condition, medicine or past event it names', () => {
    expect(fires({ condition: 'reflux' })).toBe(false);
    expect(fires({ condition: 'reflux' }, reflux)).toBe(true);
    expect(fires({ medicine: ['steroid', 'aspirin'] }, { health: { medicines: ['aspirin'] } })).toBe(true);
    expect(fires({ history: 'pancreatitis' }, { health: { history: ['pancreatitis'] } })).toBe(true);
  });

  it('asks for every key', () => {
    const when = { condition: 'reflux', smoking: 'current' };
    expect(fires(when, reflux)).toBe(false);
    expect(fires(when, { health: { conditions: ['reflux'], smoking: 'current' } })).toBe(true);
    expect(fires(when, { health: { conditions: ['reflux'], smoking: 'former' } })).toBe(false);
  });

  it('includes the lower end and leaves out the upper end of BMI and age', () => {
    const weigh = (kg: number): CaseChanges => ({ patient: { height: '2 m', weight: `${kg} kg` } });
    expect(fires({ bmi: { low: 30, below: 35 } }, weigh(120))).toBe(true);
    expect(fires({ bmi: { low: 30, below: 35 } }, weigh(139.5))).toBe(true);
    expect(fires({ bmi: { low: 30, below: 35 } }, weigh(140))).toBe(false);
    expect(fires({ bmi: { low: 30, below: 35 } }, weigh(119.5))).toBe(false);
    expect(fires({ age: { low: 65 } }, { patient: { born: '1961-11-25' } })).toBe(true);
    expect(fires({ age: { low: 65 } }, { patient: { born: '1961-11-26' } })).toBe(false);
  });

  it('knows pregnancy now from pregnancy planned, which may come in any month of the plan', () => {
    const planned = (months: number | null, now = false): CaseChanges => ({
      health: { pregnancy: { now, planned_within_months: months } },
    });
    expect(fires({ pregnancy: 'planned' }, planned(0))).toBe(true);
    expect(fires({ pregnancy: 'planned' }, planned(36))).toBe(true);
    expect(fires({ pregnancy: 'planned' }, planned(null))).toBe(false);
    expect(fires({ pregnancy: 'planned' }, planned(null, true))).toBe(false);
    expect(fires({ pregnancy: 'now' }, planned(null, true))).toBe(true);
  });

  it('keeps what is for other BMI cut-offs from people to whom they do not apply', () => {
    const asian: CaseChanges = { patient: { ancestry_threshold: 'asian' } };
    expect(fires({ bmi: { low: 30 }, threshold: 'standard' })).toBe(true);
    expect(fires({ bmi: { low: 30 }, threshold: 'standard' }, asian)).toBe(false);
    expect(fires({ bmi: { low: 30 }, threshold: 'asian' }, asian)).toBe(true);
    expect(fires({ bmi: { low: 30 }, threshold: 'asian' })).toBe(false);
  });

  it('counts what an earlier operation gives trouble with, listed or not', () => {
    const trouble = (code: string): CaseChanges => ({
      health: { earlier_operations: [{ operation: 'band', status: 'in-place', trouble: code }] },
      decision: { asked: 'second-operation', options: ['sleeve'] },
    });
    expect(fires({ condition: 'reflux' }, trouble('reflux'))).toBe(true);
    expect(fires({ condition: 'reflux' }, trouble('severe-reflux'))).toBe(true);
    expect(fires({ condition: 'barrett-oesophagus' }, trouble('barrett'))).toBe(true);
    expect(fires({ condition: 'band-erosion' }, trouble('erosion'))).toBe(true);
    expect(fires({ history: 'pancreatitis' }, trouble('pancreatitis'))).toBe(true);
    expect(fires({ condition: 'reflux' }, trouble('slippage'))).toBe(false);
  });

  it('keeps what is for first operations from people operated before', () => {
    const when = { bmi: { low: 30 }, asked: 'first-operation' };
    const second: CaseChanges = {
      health: { earlier_operations: [{ operation: 'band', status: 'in-place' }] },
      decision: { asked: 'second-operation', options: ['sleeve'] },
    };
    expect(fires(when)).toBe(true);
    expect(fires(when, second)).toBe(false);
    expect(fires({ history: 'stomach-operation' }, second)).toBe(true);
  });
});

describe('what a caution says', () => {
  it('names the options of the case it touches, in their order, and what triggered it', () => {
    const [hit] = fire([makeCaution({ options: ['bypass', 'band', 'sleeve'] })], reflux);
    expect(hit).toEqual({
      id: 'reflux-sleeve',
      options: ['sleeve', 'bypass'],
      effect: 'extra-risk',
      strength: 'moderate',
      basis: 'page',
      triggers: ['condition:reflux'],
    });
    expect(fire([makeCaution({ options: ['band'] })], reflux)).toEqual([]);
  });

  it('touches no operation through the option its figures come from', () => {
    const [hit] = fire([makeCaution({ options: ['usual-care'] })], reflux);
    expect(hit?.options).toEqual(['no-operation']);
  });

  it('is never printed as read when nobody read it', () => {
    const ask = 'Ask your surgeon about reflux.';
    expect(fire([makeCaution({ seen: 'memory', ask })], reflux)[0]?.basis).toBe('practice');
    expect(fire([makeCaution({ basis: 'practice', ask })], reflux)[0]?.basis).toBe('practice');
  });

  it('keeps one that the clinic struck in the table, marked', () => {
    expect(fire([makeCaution()], reflux, { 'reflux-sleeve': 'struck' })[0]?.clinic).toBe('struck');
    expect(fire([makeCaution()], reflux, { 'reflux-sleeve': 'confirmed' })[0]?.clinic).toBe('confirmed');
  });

  it('comes gravest first, then best founded, then by id', () => {
    const rows = [
      makeCaution({ id: 'e', effect: 'needs-check', strength: 'strong' }),
      makeCaution({ id: 'd', effect: 'extra-risk', strength: 'weak' }),
      makeCaution({ id: 'c', effect: 'extra-risk', strength: 'strong' }),
      makeCaution({ id: 'b', effect: 'extra-risk', strength: 'strong' }),
      makeCaution({ id: 'a', effect: 'contra-indicated', strength: 'weak' }),
    ];
    expect(fire(rows, reflux).map(({ id }) => id)).toEqual(['a', 'b', 'c', 'd', 'e']);
  });
});

describe('a severe and a milder form', () => {
  const mild = makeCaution({ id: 'mild', options: ['sleeve', 'bypass'] });
  const severe = makeCaution({ id: 'severe', when: { condition: 'severe-reflux' }, effect: 'prefer-other' });
  const ill: CaseChanges = { health: { conditions: ['severe-reflux'] } };

  it('says the milder one only of options that the severe one does not touch', () => {
    expect(fire([mild, severe], ill).map(({ id, options }) => [id, options])).toEqual([
      ['severe', ['sleeve']],
      ['mild', ['bypass']],
    ]);
  });

  it('says the milder one again when the clinic strikes the severe one', () => {
    const hits = fire([mild, severe], ill, { severe: 'struck' });
    expect(hits.find(({ id }) => id === 'mild')?.options).toEqual(['sleeve', 'bypass']);
  });

  it('keeps rows that name both forms, called up by the severe one', () => {
    const both = makeCaution({ id: 'both', when: { condition: ['reflux', 'severe-reflux'] } });
    const hits = fire([both, severe], ill);
    expect(hits.map(({ id }) => id)).toEqual(['severe', 'both']);
    expect(hits[1]?.triggers).toEqual(['condition:severe-reflux']);
  });

  it('keeps another worry about the same option', () => {
    const ulcer = makeCaution({ id: 'ulcer', when: { condition: 'type-2-diabetes' } });
    const control = makeCaution({ id: 'control', when: { condition: 'uncontrolled-diabetes' } });
    const hits = fire([ulcer, control], { health: { conditions: ['uncontrolled-diabetes'] } });
    expect(hits.map(({ id }) => id)).toEqual(['control', 'ulcer']);
  });
});

describe('the cautions that are shipped', () => {
  const ids = (changes: CaseChanges): readonly string[] =>
    compareWell(readShippedEvidence(), changes).cautions.map(({ id }) => id);

  it('warn of reflux with a sleeve, once', () => {
    expect(ids({ health: { conditions: ['severe-reflux', 'reflux'] } })).toEqual(['severe-reflux-sleeve']);
    expect(ids(reflux)).toEqual(['reflux-sleeve']);
  });

  it('warn of smoking, painkillers and diabetes with a bypass', () => {
    const fired = ids({
      health: { smoking: 'current', medicines: ['anti-inflammatory'], conditions: ['type-2-diabetes'] },
      decision: { options: ['bypass'] },
    });
    expect(fired).toEqual(
      expect.arrayContaining(['smoking-bypass', 'anti-inflammatory-bypass', 'diabetes-bypass-ulcer']),
    );
  });
});
