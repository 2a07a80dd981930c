import type { Markup } from '../../model/locale.ts';
import { clinicianAftercare } from './clinician-aftercare.ts';
import { clinicianCautions } from './clinician-cautions.ts';
import { clinicianBackground, clinicianFacts } from './clinician-facts.ts';
import { clinicianFigures, figurePartShape } from './clinician-figures.ts';
import { clinicianKey } from './clinician-key.ts';
import { clinicianOthers } from './clinician-others.ts';
import { clinicianSetAside } from './clinician-set-aside.ts';
import type { Scene } from './scene.ts';
import { flag, group, list, markup, text } from './shape.ts';
import type { Viewed } from './shape.ts';
import { tableShape } from './shared-shapes.ts';
import { ownWords } from './view-matters.ts';
import { reasonInWords, surgeonFirst } from './view-opinion.ts';
import { joined } from './words.ts';

export const clinicianShape = group({
  title: text,
  facts: list(group({ label: text, value: text })),
  background: list(markup),
  decision: list(markup),
  /** Those that the patient pages print, then those that none prints; empty where nothing is known. */
  figures: list(figurePartShape),
  others: list(markup),
  cautions: tableShape,
  hasCautions: flag,
  setAside: tableShape,
  hasSetAside: flag,
  ids: markup,
  /** What no page says of the time after the treatment, by why. */
  aftercare: list(markup),
});
export type ClinicianView = Viewed<typeof clinicianShape>;

/** Everything the patient pages stand on, with ids, and what was set aside. */
export function viewClinician(scene: Scene): ClinicianView {
  const cautions = clinicianCautions(scene);
  const setAside = clinicianSetAside(scene);
  return {
    title: scene.words.plain(`clinician-sheet.title_for.${scene.comparison.person.asked}`, {
      count: scene.options.length,
    }),
    facts: clinicianFacts(scene),
    background: clinicianBackground(scene),
    decision: decisionLines(scene),
    figures: clinicianFigures(scene),
    others: clinicianOthers(scene),
    cautions,
    hasCautions: cautions.rows.length > 0,
    setAside,
    hasSetAside: setAside.rows.length > 0,
    ids: clinicianKey(scene),
    aftercare: clinicianAftercare(scene),
  };
}

/** What the person said matters, and what the surgeon has written. */
function decisionLines(scene: Scene): readonly Markup[] {
  const { words } = scene;
  const { matters_most: said, leaning, advised_against: advised } = scene.case.decision;
  const name = (code: string): string => scene.options.find((option) => option.code === code)?.inText ?? code;
  return [
    ...(said.length === 0
      ? []
      : [joined(words.say('clinician-sheet.matters'), ...said.map((matter) => ownWords(scene, matter)))]),
    ...(leaning === null
      ? [words.say('clinician-sheet.no_leaning')]
      : [
          joined(
            words.say('clinician-sheet.leaning', {
              surgeon: surgeonFirst(scene),
              option: name(leaning.option),
            }),
            ...leaning.reasons.map((reason) =>
              reasonInWords(scene, reason, { stance: 'for', option: leaning.option }),
            ),
          ),
        ]),
    ...advised.map((entry) =>
      joined(
        words.say('clinician-sheet.advised', { option: name(entry.option) }),
        ...entry.reasons.map((reason) =>
          reasonInWords(scene, reason, { stance: 'against', option: entry.option }),
        ),
      ),
    ),
  ];
}
