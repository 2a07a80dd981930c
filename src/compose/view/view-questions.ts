import type { Cell } from '../../model/comparison.ts';
import type { Markup } from '../../model/locale.ts';
import { healthQuestions } from './health-questions.ts';
import type { NamedOption, Scene } from './scene.ts';
import { count, group, list, markup, text } from './shape.ts';
import type { Viewed } from './shape.ts';
import { aboutOptions, mayState, patientCautions } from './view-health.ts';
import { joined } from './words.ts';

export const questionsShape = group({
  groups: list(group({ heading: text, items: list(group({ words: markup, lines: count })) })),
  steps: list(markup),
});
export type QuestionsView = Viewed<typeof questionsShape>;

/** Writing lines under a question. */
const room = 1;
const generalQuestions = ['why_these', 'nothing', 'if_it_fails'];
const lifeQuestions = ['eating', 'work', 'help', 'cost', 'trouble'];
const decisionSteps = ['first', 'numbers', 'matters', 'talk', 'choose'];

/** Questions worth asking, chosen by the case, and the steps of deciding. */
export function viewQuestions(scene: Scene): QuestionsView {
  const { words } = scene;
  const groups: readonly (readonly [string, readonly Markup[]])[] = [
    ['general', generalQuestions.map((key) => words.say(`questions.general.${key}`))],
    ['options', scene.options.flatMap((option) => optionQuestions(scene, option))],
    ['health', [...ownHealth(scene), ...askLines(scene)]],
    ['unknown', scene.options.flatMap((option) => unknownQuestion(scene, option))],
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

function optionQuestions(scene: Scene, option: NamedOption): readonly Markup[] {
  const variables = { option: option.inText };
  const study = option.tag === '' ? [] : [scene.words.say('questions.options.under_study', variables)];
  return [scene.words.say(`questions.options.${option.column.kind}`, variables), ...study];
}

function ownHealth(scene: Scene): readonly Markup[] {
  const { case: file, comparison } = scene;
  return healthQuestions
    .filter(({ applies }) => applies(file, comparison.person))
    .map(({ key }) => scene.words.say(`questions.health.${key}`));
}

/** Warnings that stand on usual practice are printed as what to ask; here with room for the answer. */
function askLines(scene: Scene): readonly Markup[] {
  return patientCautions(scene)
    .filter((hit) => !mayState(scene, hit))
    .map((hit) => {
      const about = aboutOptions(scene, hit);
      return joined(about, scene.words.say(`cautions.${hit.id}.ask`));
    });
}

/** One question an option about what no study says for people like this person. */
function unknownQuestion(scene: Scene, option: NamedOption): readonly Markup[] {
  const { weight, topics } = scene.comparison;
  const rows = [weight.main, ...topics.flatMap((topic) => (topic.picture === null ? [] : [topic.picture]))];
  const unknown = rows
    .map((row): Cell | undefined => row.cells.find((cell) => cell.option === option.code))
    .filter((cell) => cell?.state === 'not-known')
    .map((cell) => scene.words.plain(`outcomes.${cell.outcome}.name`));
  const names = unknown.filter((name, index) => unknown.indexOf(name) === index);
  if (names.length === 0) return [];
  return [
    scene.words.say('questions.unknown.option', {
      option: option.inText,
      outcomes: scene.format.list(
        names.map((name) => scene.words.plain('common.quote', { words: name })),
        'and',
      ),
    }),
  ];
}
