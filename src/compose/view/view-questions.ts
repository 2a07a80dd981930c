import type { Markup } from '../../model/locale.ts';
import { cautionStatement } from '../../model/statement.ts';
import { healthQuestions } from './health-questions.ts';
import { cautionText, mayState, patientCautions } from './patient-cautions.ts';
import { meaningOfDrawn } from './say-meanings.ts';
import { sayAsked } from './say-time.ts';
import type { NamedOption, Scene } from './scene.ts';
import { optionList } from './scene.ts';
import { count, group, list, markup, text } from './shape.ts';
import type { Viewed } from './shape.ts';
import { aboutOptions } from './view-health.ts';
import { joined, runIn, standingOn } from './words.ts';

export const questionsShape = group({
  groups: list(group({ heading: text, items: list(group({ words: markup, lines: count })) })),
  steps: list(markup),
});
export type QuestionsView = Viewed<typeof questionsShape>;

/** Writing lines under a question. */
const room = 1;
const generalQuestions = ['why_these', 'nothing', 'if_it_fails'];
const lifeQuestions = ['eating', 'work', 'cost', 'trouble'];
const decisionSteps = ['first', 'numbers', 'matters', 'talk'];

/** Questions worth asking, chosen by the case, and the steps of deciding. */
export function viewQuestions(scene: Scene): QuestionsView {
  const { words } = scene;
  const groups: readonly (readonly [string, readonly Markup[]])[] = [
    ['general', generalQuestions.map((key) => words.say(`questions.general.${key}`))],
    ['options', optionQuestions(scene)],
    ['health', [...ownHealth(scene), ...conflictQuestion(scene)]],
    ['points', askLines(scene)],
    ['unknown', unknownQuestions(scene)],
    ['life', lifeQuestions.map((key) => words.say(`questions.life.${key}`))],
  ];
  return {
    groups: groups
      .filter(([, items]) => items.length > 0)
      .map(([key, items]) => ({
        heading: words.plain(`questions.headings.${key}`),
        items: items.map((item) => ({ words: item, lines: room })),
      })),
    steps: decisionSteps.map((key) => words.say(`questions.steps.${key}`)),
  };
}

/** One question for all options of a kind, and one for those under study. */
function optionQuestions(scene: Scene): readonly Markup[] {
  const kinds = [...new Set(scene.options.map(({ column }) => column.kind))];
  const byKind = kinds.map((kind) => {
    const option = namesOf(
      scene,
      scene.options.filter(({ column }) => column.kind === kind),
    );
    return scene.words.say(`questions.options.${kind}`, { option });
  });
  const studied = scene.options.filter(({ tag }) => tag !== '');
  if (studied.length === 0) return byKind;
  return [...byKind, scene.words.say('questions.options.under_study', { option: namesOf(scene, studied) })];
}

function namesOf(scene: Scene, options: readonly NamedOption[]): string {
  return scene.format.list(
    options.map(({ inText }) => inText),
    'and',
  );
}

function ownHealth(scene: Scene): readonly Markup[] {
  const { case: file, comparison } = scene;
  return healthQuestions
    .filter(({ applies }) => applies(file, comparison.person))
    .map(({ key }) => scene.words.say(`questions.health.${key}`));
}

/** One question, however many cautions pull in different directions: the page says them side by side. */
function conflictQuestion(scene: Scene): readonly Markup[] {
  const { conflicts } = scene.comparison;
  if (conflicts.length === 0) return [];
  const options = conflicts.flatMap(({ to, from }) => [to, ...from]);
  const cautions = conflicts.flatMap(({ caution, against }) => [caution, ...against]);
  const words = scene.words.say('questions.conflict', { options: optionList(scene, options, 'and') });
  return [standingOn([...new Set(cautions)].map(cautionStatement), words)];
}

/** Warnings that stand on usual practice are printed as what to ask; here, under a head that says whose words they are. */
function askLines(scene: Scene): readonly Markup[] {
  return patientCautions(scene)
    .filter((hit) => !mayState(scene, hit))
    .map((hit) => runIn(scene.words, aboutOptions(scene, hit), cautionText(scene, hit)));
}

/**
 * One question an outcome about what no study says for people like this person, with the time that is meant: another
 * page may have a figure of an earlier one.
 */
function unknownQuestions(scene: Scene): readonly Markup[] {
  const { weight, topics } = scene.comparison;
  const rows = [weight.main, ...topics.flatMap((topic) => (topic.picture === null ? [] : [topic.picture]))];
  return rows.flatMap(({ outcome, asked, cells }) => {
    const options = scene.options.filter(({ code }) =>
      cells.some((cell) => cell.option === code && cell.state === 'not-known'),
    );
    if (options.length === 0) return [];
    const name = scene.words.plain('common.quote', { words: scene.words.plain(`outcomes.${outcome}.name`) });
    const question = scene.words.say('questions.unknown.option', {
      option: namesOf(scene, options),
      outcomes: name,
      time: sayAsked(scene, asked, outcome === weight.main.outcome ? 'at' : 'by'),
    });
    return [joined(question, ...meaningOfDrawn(scene, outcome))];
  });
}
