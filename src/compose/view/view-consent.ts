import { InternalError } from '../../diagnostics/diagnostic.ts';
import type { Cell } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import { roundShare } from '../round-counts.ts';
import { topicCells } from './cells-shown.ts';
import { withDose } from './say-dose.ts';
import { isShare, shareInWords, sourceOf } from './say-share.ts';
import { isFirstMonth, sayLength, sayTime } from './say-time.ts';
import { isWeight, weightInWords } from './say-weight.ts';
import { optionList } from './scene.ts';
import type { NamedOption, Scene } from './scene.ts';
import { group, list, markup, optional, text } from './shape.ts';
import type { Viewed } from './shape.ts';
import { surgeonName } from './view-opinion.ts';
import { studyShape, viewStudies } from './view-study.ts';
import { viewUndo } from './view-undo.ts';
import { asMarkup, bold, figure, joined } from './words.ts';

export const consentShape = group({
  facts: list(group({ label: text, value: text })),
  /** What was explained, each with what the pages say of the chosen option. */
  talk: list(markup),
  teachBack: list(text),
  /** Who interprets, between which languages; null where nobody is needed. */
  interpreter: optional(text),
  yes: list(text),
  /** The panel of an option under study: who oversees it, what is not known. */
  study: studyShape,
  signers: list(text),
  /** What stands on every field to sign while nobody may; empty on a final. */
  plate: text,
});
export type ConsentView = Viewed<typeof consentShape>;

/** The record of the talk about the option that was chosen. The case names it, or the input stage has refused. */
export function viewConsent(scene: Scene): ConsentView {
  const option = chosenOption(scene);
  return {
    facts: factsOf(scene, option),
    talk: talkAbout(scene, option),
    teachBack: ['done', 'worst', 'call'].map((key) => scene.words.plain(`consent.teach_back.${key}`)),
    interpreter: interpreterOf(scene),
    yes: ['choice', 'blood', 'learners'].map((key) =>
      scene.words.plain(`consent.yes.${key}`, { option: option.inText }),
    ),
    study: viewStudies({ ...scene, options: [option] }),
    signers: ['patient', 'surgeon', 'witness'].map((key) => scene.words.plain(`consent.sign.${key}`)),
    plate: scene.state === 'final' ? '' : scene.words.plain('consent.sign.draft'),
  };
}

/** The option that the case has chosen, else the one of no operation, which every case has. */
export function chosenOption(scene: Scene): NamedOption {
  const { chosen } = scene.case.decision;
  const option = scene.options.find(({ code }) => code === (chosen ?? 'no-operation')) ?? scene.options[0];
  if (option === undefined) throw new InternalError('a comparison has no option');
  return option;
}

function factsOf(scene: Scene, option: NamedOption): ConsentView['facts'] {
  const { words, format } = scene;
  const { patient, plan, case: reference } = scene.case;
  const facts: readonly (readonly [key: string, value: string])[] = [
    ['patient', patient.name],
    ['born', format.date(patient.born)],
    ['reference', reference],
    ['option', option.name],
    ['trade', words.plain(`options.${option.code}.trade`)],
    [
      'planned',
      plan.operation_date === undefined ? words.plain('consent.not_yet') : format.date(plan.operation_date),
    ],
    ['surgeon', surgeonName(scene)],
    ['standing', words.plain(`consent.standing.${option.column.standing.maturity}`)],
    ['language', languageOfTalk(scene)],
  ];
  return facts.map(([key, value]) => ({ label: words.plain(`consent.facts.${key}`), value }));
}

function languageOfTalk({ words, format, case: { interpreter }, locale }: Scene): string {
  const { language } = interpreter;
  if (!interpreter.needed || language === undefined) return locale.name;
  return words.plain('consent.interpreted', { language: format.languageName(language) });
}

function interpreterOf({ words, format, case: { interpreter } }: Scene): string | null {
  if (!interpreter.needed) return null;
  const { language } = interpreter;
  return language === undefined
    ? words.plain('consent.interpreter.any')
    : words.plain('consent.interpreter.statement', { language: format.languageName(language) });
}

function talkAbout(scene: Scene, option: NamedOption): readonly Markup[] {
  const { words } = scene;
  const others = scene.options.filter(({ code }) => code !== option.code).map(({ code }) => code);
  const point = (key: string, ...more: readonly Markup[]): Markup =>
    joined(bold(words.say(`consent.talk.${key}`)), ...more);
  return [
    point('choices', words.say('consent.talk.choices_named', { options: optionList(scene, others, 'and') })),
    point('what', words.say(`options.${option.code}.choice`)),
    point('gain', gainOf(scene, option)),
    point('early', harmsOf(scene, option, 'early')),
    point('later', harmsOf(scene, option, 'later')),
    point('undo', ...undoing(scene, option)),
    point('life', words.say(`options.${option.code}.for_life`)),
    point('unknown', words.say(`options.${option.code}.unknown`)),
    point('nothing', nothingOf(scene)),
    point('team', words.say('consent.talk.team_words')),
  ];
}

/** The same sentences as in the comparison. */
function undoing(scene: Scene, option: NamedOption): readonly Markup[] {
  const row = viewUndo(scene).find(({ name }) => name === option.name);
  return (row?.lines ?? []).map(({ words }) => words);
}

/** Weight at the main horizon, else at the longest time known. */
export function gainOf(scene: Scene, option: NamedOption): Markup {
  const { main, over } = scene.comparison.weight;
  const cell = [main, ...over.toReversed()]
    .flatMap(({ cells }) => cells)
    .find((one) => one.option === option.code && one.state === 'known');
  if (cell?.state !== 'known' || !isWeight(cell)) return scene.words.say('consent.talk.none_known_weight');
  return scene.words.say('consent.talk.weight', {
    time: sayLength(scene, cell.lead.horizon),
    weight: withDose(scene, figure(weightInWords(scene, cell.value.averageKg), sourceOf(cell)), cell),
  });
}

function nothingOf(scene: Scene): Markup {
  const nothing = scene.options.find(({ code }) => code === 'no-operation');
  return nothing === undefined ? asMarkup('') : gainOf(scene, nothing);
}

/** Every harm with a figure, in its words: "A leak, in the first month: 3 out of 1,000." Else that none is known. */
function harmsOf(scene: Scene, option: NamedOption, when: 'early' | 'later'): Markup {
  const harms = topicCells(scene.comparison)
    .filter(({ cell }) => cell.option === option.code && isHarmOf(scene, cell, when))
    .map(({ cell }) => harmInWords(scene, cell))
    .filter((words) => words !== null);
  return harms.length === 0 ? scene.words.say('consent.talk.none_known') : joined(...harms);
}

function isHarmOf({ evidence }: Scene, { outcome, asked }: Cell, when: 'early' | 'later'): boolean {
  const groups = evidence.outcomes.find(({ code }) => code === outcome)?.group ?? [];
  const harm = groups.some((name) => name.endsWith('harm') || name === 'living-with-it');
  return harm && isFirstMonth(asked) === (when === 'early');
}

/** All harms of the record are counted out of the same number of people. */
const denominator = 1000;

function harmInWords(scene: Scene, cell: Cell): Markup | null {
  if (cell.state !== 'known' || !isShare(cell)) return null;
  const { words } = scene;
  const said = shareInWords(scene, roundShare(cell.value, denominator), denominator);
  return words.say('consent.talk.harm', {
    outcome: words.plain(`outcomes.${cell.outcome}.name`),
    time: isFirstMonth(cell.asked) ? words.plain('codes.time.first_month') : sayTime(scene, cell.asked, 'by'),
    figure: withDose(scene, figure(said, sourceOf(cell)), cell),
  });
}
