import { describe, expect, it } from 'vitest';

import { describeSubject } from '../../../src/compare/describe-person.ts';
import type { Subject } from '../../../src/compare/subject.ts';
import type { Caution } from '../../../src/model/evidence-rules.ts';
import { comparePerson, hitOf, readCautionPairs } from '../../helpers/caution-pairs.ts';
import type { CautionPair, Person } from '../../helpers/caution-pairs.ts';
import { compareWell, makeCase, readShippedEvidence, today } from '../../helpers/compare-inputs.ts';

const pairs = readCautionPairs();
const { cautions } = readShippedEvidence();

describe('every caution of the evidence', () => {
  it('has one pair of cases, and no pair is of a rule that is not there', () => {
    const rules = pairs.map(({ rule }) => rule).sort();
    expect(rules).toEqual(cautions.map(({ id }) => id).sort());
  });

  it.each(pairs)(
    '$rule is called up for $option by each case that its words name',
    ({ rule, option, when }) => {
      for (const person of when) expect(hitOf(comparePerson(person, [option]), rule, option)).toBeDefined();
    },
  );

  it.each(pairs)(
    '$rule is not called up for $option by a near miss',
    ({ rule, option, not_when: misses }) => {
      for (const person of misses)
        expect(hitOf(comparePerson(person, [option]), rule, option)).toBeUndefined();
    },
  );

  it.each(pairs)(
    '$rule says nothing of other options',
    ({ rule, option, when: [person], not_for: others }) => {
      const table = comparePerson(person, [option, ...others]);
      for (const other of others) expect(hitOf(table, rule, other)).toBeUndefined();
      expect(hitOf(table, rule, option)?.options).toEqual([option]);
    },
  );
});

/** So that a pair cannot leave out what is easiest to get wrong. */
describe('the pairs', () => {
  const limited = cautions.filter(({ when }) => when.bmi !== undefined || when.age !== undefined);

  it.each(limited)('of $id stand on both sides of each limit', ({ id, when }) => {
    const pair = pairOf(id);
    const within = pair.when.map(subjectOf);
    const beyond = pair.not_when.map(subjectOf);
    for (const { limits, read, step } of limitsOf(when)) {
      const { low, below } = limits;
      const first = [
        ...(low === undefined ? [] : [low]),
        ...(below === undefined ? [] : [round(below - step)]),
      ];
      const out = [
        ...(low === undefined ? [] : [round(low - step)]),
        ...(below === undefined ? [] : [below]),
      ];
      expect(within.map(read)).toEqual(expect.arrayContaining(first));
      expect(beyond.map(read)).toEqual(expect.arrayContaining(out));
    }
  });

  const coded = cautions.filter(({ when }) => codesOf(when).length > 0);

  it.each(coded)('of $id call it up by each thing that it names', ({ id, when }) => {
    const { rule, option, when: people } = pairOf(id);
    const called = people.flatMap(
      (person) => hitOf(comparePerson(person, [option]), rule, option)?.triggers ?? [],
    );
    expect(new Set(called)).toEqual(new Set(codesOf(when)));
  });

  it('find with all records what they find without, since no caution looks at a figure', () => {
    const health = {
      conditions: ['severe-reflux', 'transplant'],
      medicines: ['steroid'],
      smoking: 'current',
    };
    const options = ['sleeve', 'band', 'balloon'];
    const whole = compareWell(readShippedEvidence(), { health, decision: { options } });
    expect(whole.cautions).toEqual(comparePerson({ health }, options).cautions);
    expect(whole.cautions.length).toBeGreaterThan(10);
  });
});

function pairOf(id: string): CautionPair {
  const pair = pairs.find(({ rule }) => rule === id);
  if (pair === undefined) throw new Error(`no pair for ${id}`);
  return pair;
}

function subjectOf({ patient = {}, health = {} }: Person): Subject {
  return describeSubject(makeCase({ patient, health }), readShippedEvidence(), today);
}

interface Limit {
  readonly limits: { readonly low?: number | undefined; readonly below?: number | undefined };
  readonly read: (subject: Subject) => number;
  /** The smallest difference that counts: a tenth of a BMI, a year of age. */
  readonly step: number;
}

function limitsOf({ bmi, age }: Caution['when']): readonly Limit[] {
  return [
    ...(bmi === undefined ? [] : [{ limits: bmi, read: (subject: Subject) => subject.bmi, step: 0.1 }]),
    ...(age === undefined ? [] : [{ limits: age, read: (subject: Subject) => subject.person.age, step: 1 }]),
  ];
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}

function codesOf({
  condition = [],
  medicine = [],
  history = [],
  pregnancy,
  smoking,
}: Caution['when']): string[] {
  return [
    ...[condition].flat().map((code) => `condition:${code}`),
    ...[medicine].flat().map((code) => `medicine:${code}`),
    ...[history].flat().map((code) => `history:${code}`),
    ...(pregnancy === undefined ? [] : [`pregnancy:${pregnancy}`]),
    ...(smoking === undefined ? [] : [`smoking:${smoking}`]),
  ];
}
