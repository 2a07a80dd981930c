import type { Block, List } from '../../model/document.ts';
import { foundAt, forPerson, inEach, notApplicable } from '../check.ts';
import type { Check } from '../check.ts';
import { blocksOf, ofType } from '../pages.ts';
import type { Pages, Placed } from '../pages.ts';
import { isWordsOf, wordsOf } from '../words-of.ts';
import { noArithmetic } from './wording.ts';

/** Questions whose lists say what the reader does. */
const actionQuestions = ['comparison.next.question', 'questions.steps.heading', 'operation.before.question'];

const actionBlocks: readonly Block['type'][] = [
  'checklist',
  'calendar',
  'warning-frames',
  'write-in',
  'talk',
];

/** Lists of things to do, each item a step; notes under a table are none. */
export function stepLists(pages: Pages): readonly Placed<List>[] {
  const questions = actionQuestions.map((key) => wordsOf(pages.locale, key));
  return ofType(pages.reader, 'list').filter(
    ({ block, topic }) =>
      topic !== undefined &&
      questions.some((words) => isWordsOf(topic.question, words)) &&
      block.items.length >= 2,
  );
}

function actions(pages: Pages): readonly Placed[] {
  const steps = stepLists(pages).map(({ block }): Block => block);
  return blocksOf(pages.reader).filter(
    ({ block }) => steps.includes(block) || actionBlocks.includes(block.type),
  );
}

/** Every document names something to do. */
export const actionNamed: Check = (pages) => inEach(pages.reader, actions(pages));

/** Steps in a list, or things to do one by one with their day or their box. */
export const actionInSteps: Check = (pages) =>
  foundAt([
    ...stepLists(pages),
    ...ofType(pages.reader, 'checklist').filter(({ block }) => block.rows.length > 1),
    ...ofType(pages.reader, 'calendar'),
  ]);

/** Something to write in, tick or carry. */
export const tool: Check = ({ reader }) =>
  foundAt(ofType(reader, 'write-in', 'matters', 'ticks', 'checklist', 'calendar', 'talk', 'say'));

/** Where nothing has to be worked out, no steps for it are needed. */
export const calculationSteps: Check = (pages) => {
  const { found } = noArithmetic(pages);
  return found === 'met' ? notApplicable : forPerson;
};
