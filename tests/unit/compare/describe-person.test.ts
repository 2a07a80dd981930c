import { describe, expect, it } from 'vitest';

import { describePerson, withMilder } from '../../../src/compare/describe-person.ts';
import { makeCase, makeSubject, today } from '../../helpers/compare-inputs.ts';

describe('describePerson', () => {
  it('counts age on the day of the comparison and leaves BMI unrounded', () => {
    const person = describePerson(makeCase(), today);
    expect(person.age).toBe(45);
    expect(person.bmi).toBeCloseTo(114.5 / 1.63 ** 2, 10);
    expect(describePerson(makeCase(), '2026-06-01').age).toBe(44);
  });

  it('takes a weight in pounds for the same person as one in kilograms', () => {
    const inPounds = describePerson(makeCase({ patient: { weight: '252 lb' } }), today);
    expect(inPounds.weightKg).toBeCloseTo(114.305, 3);
  });
});

describe('describeSubject', () => {
  it('compares BMI to one decimal, as clinics write it', () => {
    expect(makeSubject().bmi).toBe(43.1);
  });

  it('counts earlier operations without balloons', () => {
    const earlier = [
      { operation: 'balloon', status: 'removed' },
      { operation: 'band', status: 'removed' },
      { operation: 'sleeve', status: 'in-place' },
    ];
    const subject = makeSubject({
      health: { earlier_operations: earlier },
      decision: { asked: 'second-operation' },
    });
    expect(subject.operations).toBe(2);
    expect(subject.removed).toBe(false);
    expect(subject.history).toBe('after-sleeve');
  });

  it('counts an earlier operation that the evidence does not know', () => {
    const health = { earlier_operations: [{ operation: 'other', status: 'in-place' }] };
    expect(makeSubject({ health, decision: { asked: 'second-operation' } }).operations).toBe(1);
  });

  it('knows that the last operation was undone', () => {
    const health = { earlier_operations: [{ operation: 'plication', status: 'reversed' }] };
    expect(makeSubject({ health, decision: { asked: 'second-operation' } }).removed).toBe(true);
  });

  it('counts a severe condition as the plain one too', () => {
    expect([...withMilder(['severe-reflux', 'uncontrolled-diabetes'])]).toEqual([
      'severe-reflux',
      'reflux',
      'uncontrolled-diabetes',
      'type-2-diabetes',
    ]);
  });
});
