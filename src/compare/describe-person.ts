import type { Case } from '../model/case.ts';
import type { Person } from '../model/comparison.ts';
import type { EvidenceBase } from '../model/evidence.ts';
import { ageOn, bodyMassIndex } from '../model/quantity.ts';
import { historyIndication } from './find-indication.ts';
import type { Subject } from './subject.ts';

/** A severe form includes the plain one. */
const includes: Readonly<Record<string, string>> = {
  'severe-reflux': 'reflux',
  'severe-oesophagitis': 'oesophagitis',
  'large-hiatal-hernia': 'hiatal-hernia',
  'uncontrolled-diabetes': 'type-2-diabetes',
};

/** Trouble with one kind of operation that a case may write as an outcome, and the condition that it is while in place. */
const isConditionInPlace: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  band: { erosion: 'band-erosion', slippage: 'band-slip' },
};

/** The same for trouble with any operation. */
const isCondition: Readonly<Record<string, string>> = {
  'deficiency-iron': 'iron-or-calcium-lack',
  'deficiency-vitamin-b12': 'b12-deficiency',
  clot: 'previous-clot',
};

/** Age in whole years on `date` (ISO), weight in kg, height in m, BMI in kg/m². */
export function describePerson(input: Case, date: string): Person {
  const { patient, health, decision } = input;
  return {
    age: ageOn(patient.born, date),
    sex: patient.sex,
    weightKg: patient.weight.kg,
    heightM: patient.height.m,
    bmi: bodyMassIndex(patient.weight.kg, patient.height.m),
    threshold: patient.ancestry_threshold,
    conditions: health.conditions,
    pregnantNow: health.pregnancy.now,
    asked: decision.asked,
  };
}

export function describeSubject(input: Case, evidence: EvidenceBase, date: string): Subject {
  const person = describePerson(input, date);
  const earlier = input.health.earlier_operations;
  const last = earlier.at(-1);
  const kinds = new Map(evidence.options.map((option) => [option.code, option.kind]));
  const bandInPlace = earlier.some(({ operation, status }) => operation === 'band' && status === 'in-place');
  const conditions = withMilder([...person.conditions, ...troublesOf(input, evidence)]);
  return {
    person,
    bmi: Math.round(person.bmi * 10) / 10,
    operatedBefore: person.asked !== 'first-operation',
    history: historyIndication(person.asked, earlier),
    // A balloon or stitches through the mouth before do not make this a third operation.
    operations: earlier.filter(({ operation }) => (kinds.get(operation) ?? 'operation') === 'operation')
      .length,
    removed: person.asked === 'after-removal' || last?.status === 'removed' || last?.status === 'reversed',
    bandInPlace,
    stages: bandInPlace ? input.plan.stages : undefined,
    conditions,
    alreadyHas: new Map(
      evidence.outcomes.flatMap(({ code, new_without: condition }) =>
        condition !== undefined && conditions.has(condition) ? [[code, condition]] : [],
      ),
    ),
    pastEvents: new Set(input.health.history),
  };
}

/** What an earlier operation gives trouble with is a condition of today, whether or not it is listed as one too. */
function troublesOf({ health }: Case, { outcomes }: EvidenceBase): readonly string[] {
  const newWithout = new Map(outcomes.map((outcome) => [outcome.code, outcome.new_without]));
  return health.earlier_operations.flatMap(({ operation, trouble, status }) => {
    if (trouble === undefined) return [];
    const inPlace = status === 'in-place' ? isConditionInPlace[operation]?.[trouble] : undefined;
    const own = inPlace ?? isCondition[trouble];
    return [own ?? newWithout.get(trouble) ?? trouble];
  });
}

/** The conditions and the milder ones that they include. */
export function withMilder(conditions: readonly string[]): ReadonlySet<string> {
  return new Set(conditions.flatMap((condition) => [condition, includes[condition] ?? condition]));
}
