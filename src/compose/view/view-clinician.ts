import type { Markup } from '../../model/locale.ts';
import { clinicianCautions } from './clinician-cautions.ts';
import { clinicianFigures } from './clinician-figures.ts';
import { clinicianSetAside } from './clinician-set-aside.ts';
import { knownCells } from './cells-shown.ts';
import type { Scene } from './scene.ts';
import { flag, group, list, markup, text } from './shape.ts';
import type { Viewed } from './shape.ts';
import { tableShape } from './shared-shapes.ts';
import { ownWords } from './view-matters.ts';
import { reasonInWords, surgeonName } from './view-opinion.ts';
import { joined } from './words.ts';

export const clinicianShape = group({
  title: text,
  facts: list(group({ label: text, value: text })),
  figures: tableShape,
  hasFigures: flag,
  setAside: tableShape,
  hasSetAside: flag,
  cautions: tableShape,
  hasCautions: flag,
  /** Whether the BMI of any people was assumed, which a sentence then explains. */
  assumed: flag,
  decision: list(markup),
});
export type ClinicianView = Viewed<typeof clinicianShape>;

/** Everything the patient pages stand on, with ids, and what was set aside. */
export function viewClinician(scene: Scene): ClinicianView {
  const figures = clinicianFigures(scene);
  const setAside = clinicianSetAside(scene);
  const cautions = clinicianCautions(scene);
  return {
    title: scene.words.plain(`clinician-sheet.title_for.${scene.comparison.person.asked}`, {
      count: scene.options.length,
    }),
    facts: factsOf(scene),
    figures,
    hasFigures: figures.rows.length > 0,
    setAside,
    hasSetAside: setAside.rows.length > 0,
    cautions,
    hasCautions: cautions.rows.length > 0,
    assumed: knownCells(scene.comparison).some(({ cell }) => cell.lead.bmiBasis === 'assumed'),
    decision: decisionLines(scene),
  };
}

function factsOf(scene: Scene): ClinicianView['facts'] {
  const { words, format, comparison } = scene;
  const { patient, health } = scene.case;
  const { person } = comparison;
  const say = (key: string, value: string): { label: string; value: string } => ({
    label: words.plain(`clinician-sheet.facts.${key}`),
    value: value === '' ? words.plain('clinician-sheet.none') : value,
  });
  return [
    say(
      'person',
      words.plain(`clinician-sheet.person.${person.sex}`, {
        age: person.age,
        born: format.date(patient.born),
      }),
    ),
    say(
      'size',
      words.plain('clinician-sheet.size', {
        cm: format.number(person.heightM * 100, 0),
        kg: format.number(person.weightKg, 1),
        bmi: format.number(person.bmi, 1),
        cutoffs: words.plain(`clinician-sheet.cutoffs.${person.threshold}`),
      }),
    ),
    say('conditions', health.conditions.map((code) => words.plain(`codes.conditions.${code}`)).join('; ')),
    say('medicines', health.medicines.map((code) => words.plain(`codes.medicines.${code}`)).join('; ')),
    say('smoking', words.plain(`clinician-sheet.smoking.${health.smoking}`)),
    say('pregnancy', pregnancyOf(scene)),
    say('earlier', earlierOf(scene)),
  ];
}

function pregnancyOf(scene: Scene): string {
  const { now, planned_within_months: months } = scene.case.health.pregnancy;
  if (now) return scene.words.plain('clinician-sheet.pregnancy.now');
  if (months === null) return '';
  return scene.words.plain('clinician-sheet.pregnancy.planned', { count: months });
}

function earlierOf(scene: Scene): string {
  const { words, format } = scene;
  const { earlier_operations: operations, history } = scene.case.health;
  const past = operations.map((operation) => {
    const name = words.has(`options.${operation.operation}.name`)
      ? words.plain(`options.${operation.operation}.name`)
      : operation.operation;
    const date = operation.date === undefined ? '' : format.date(operation.date);
    const parts = [
      name,
      date,
      words.plain(`clinician-sheet.status.${operation.status}`),
      ...(operation.weight_before === undefined
        ? []
        : [
            words.plain('clinician-sheet.weight_before', {
              kg: format.number(operation.weight_before.kg, 1),
            }),
          ]),
      ...(operation.lowest_weight === undefined
        ? []
        : [
            words.plain('clinician-sheet.lowest_weight', {
              kg: format.number(operation.lowest_weight.kg, 1),
            }),
          ]),
      operation.trouble === undefined
        ? ''
        : words.plain('clinician-sheet.trouble', { what: troubleName(scene, operation.trouble) }),
    ];
    return parts.filter((part) => part !== '').join(', ');
  });
  return [...past, ...history.map((code) => words.plain(`codes.history.${code}`))].join('; ');
}

/** A trouble is coded as a condition or as an outcome. */
function troubleName(scene: Scene, code: string): string {
  const condition = `codes.conditions.${code}`;
  return scene.words.plain(scene.words.has(condition) ? condition : `outcomes.${code}.name`);
}

/** What the person said matters, and what the surgeon has written. */
function decisionLines(scene: Scene): readonly Markup[] {
  const { words } = scene;
  const { matters_most: said, leaning, advised_against: advised } = scene.case.decision;
  const name = (code: string): string => scene.options.find((option) => option.code === code)?.name ?? code;
  return [
    ...(said.length === 0
      ? []
      : [joined(words.say('clinician-sheet.matters'), ...said.map((matter) => ownWords(scene, matter)))]),
    ...(leaning === null
      ? [words.say('clinician-sheet.no_leaning')]
      : [
          joined(
            words.say('clinician-sheet.leaning', {
              surgeon: surgeonName(scene),
              option: name(leaning.option),
            }),
            ...leaning.reasons.map((reason) => reasonInWords(scene, reason)),
          ),
        ]),
    ...advised.map((entry) =>
      joined(
        words.say('clinician-sheet.advised', { option: name(entry.option) }),
        ...entry.reasons.map((reason) => reasonInWords(scene, reason)),
      ),
    ),
  ];
}
