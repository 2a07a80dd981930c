import type { Markup } from '../../model/locale.ts';
import { outcomeName } from './clinician-ids.ts';
import type { Scene } from './scene.ts';
import { joined, plainSeries } from './words.ts';

interface Fact {
  readonly label: string;
  readonly value: string;
}

/** The short facts of a case, each a few words: they stand in one row. */
export function clinicianFacts(scene: Scene): readonly Fact[] {
  const { words, format, comparison } = scene;
  const { patient, health } = scene.case;
  const { person } = comparison;
  const { sex, age } = person;
  return [
    fact(scene, 'person', words.plain(`clinician-sheet.person.${sex}`, { age })),
    fact(scene, 'born', format.date(patient.born)),
    fact(
      scene,
      'size',
      words.plain('clinician-sheet.size', {
        cm: format.number(person.heightM * 100, 0),
        kg: format.number(person.weightKg, 1),
      }),
    ),
    fact(
      scene,
      'bmi',
      words.plain('clinician-sheet.bmi', {
        bmi: format.number(person.bmi, 1),
        cutoffs: words.plain(`clinician-sheet.cutoffs.${person.threshold}`),
      }),
    ),
    fact(scene, 'smoking', words.plain(`clinician-sheet.smoking.${health.smoking}`)),
  ];
}

/** The longer ones, each a line: in a narrow column a list of illnesses would run down the page. */
export function clinicianBackground(scene: Scene): readonly Markup[] {
  const { health } = scene.case;
  const listed = (kind: 'conditions' | 'medicines', codes: readonly string[]): Markup =>
    background(
      scene,
      kind,
      plainSeries(
        scene.words,
        'clauses',
        codes.map((code) => scene.words.plain(`clinician-sheet.${kind}.${code}`)),
      ),
    );
  return [
    joined(
      listed('conditions', health.conditions),
      listed('medicines', health.medicines),
      background(scene, 'earlier', earlierOf(scene)),
      ...(scene.comparison.person.sex === 'male' ? [] : [background(scene, 'pregnancy', pregnancyOf(scene))]),
    ),
  ];
}

function fact({ words }: Scene, key: string, value: string): Fact {
  return { label: words.plain(`clinician-sheet.facts.${key}`), value };
}

function background({ words }: Scene, key: string, value: string): Markup {
  const said = value === '' ? words.plain('clinician-sheet.none') : value;
  return words.say(`clinician-sheet.background.${key}`, { said });
}

function pregnancyOf(scene: Scene): string {
  const { now, planned_within_months: months } = scene.case.health.pregnancy;
  if (now) return scene.words.plain('clinician-sheet.pregnancy.now');
  if (months === null) return scene.words.plain('clinician-sheet.pregnancy.none');
  return scene.words.plain('clinician-sheet.pregnancy.planned', { count: months });
}

type EarlierOperation = Scene['case']['health']['earlier_operations'][number];

function earlierOf(scene: Scene): string {
  const { earlier_operations: operations, history } = scene.case.health;
  return plainSeries(scene.words, 'clauses', [
    ...operations.map((operation) => operationInWords(scene, operation)),
    ...history.map((code) => scene.words.plain(`clinician-sheet.history.${code}`)),
  ]);
}

function operationInWords(scene: Scene, operation: EarlierOperation): string {
  const { words, format } = scene;
  const { date, weight_before: before, lowest_weight: lowest, trouble } = operation;
  const name = `options.${operation.operation}.name`;
  const tookOut = scene.evidence.reversibility.get(operation.operation)?.undo.takes_out;
  const parts = [
    words.has(name) ? words.plain(name) : operation.operation,
    ...(tookOut === undefined ? [] : [words.plain(`clinician-sheet.took_out.${tookOut}`)]),
    ...(date === undefined ? [] : [format.date(date)]),
    words.plain(`clinician-sheet.status.${operation.status}`),
    ...(before === undefined
      ? []
      : [words.plain('clinician-sheet.weight_before', { kg: format.number(before.kg, 1) })]),
    ...(lowest === undefined
      ? []
      : [words.plain('clinician-sheet.lowest_weight', { kg: format.number(lowest.kg, 1) })]),
    ...(trouble === undefined
      ? []
      : [words.plain('clinician-sheet.trouble', { what: troubleName(scene, trouble) })]),
  ];
  return plainSeries(words, 'items', parts);
}

/** A trouble is coded as a condition or as an outcome. */
function troubleName(scene: Scene, code: string): string {
  const { words } = scene;
  const condition = `clinician-sheet.conditions.${code}`;
  return words.has(condition) ? words.plain(condition) : outcomeName(scene, code);
}
