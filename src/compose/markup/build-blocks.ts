import type { Block } from '../../model/document.ts';
import { buildCalendar } from './build-calendar.ts';
import {
  buildAnswers,
  buildAsides,
  buildChecklist,
  buildInterpreter,
  buildSay,
  buildSignatures,
  buildTalk,
  buildTeachBack,
  buildWarningFrames,
} from './build-care.ts';
import { buildDrawing } from './build-drawing.ts';
import { buildParagraph, buildParagraphs } from './build-inlines.ts';
import {
  buildCallout,
  buildCover,
  buildFacts,
  buildHeading,
  buildKey,
  buildList,
  buildMatters,
  buildPanel,
  buildTable,
  buildTicks,
  buildWriteIn,
} from './build-parts.ts';
import { buildLineBoard, buildStrip } from './build-strip.ts';
import { checkVocabulary } from './check-vocabulary.ts';
import type { MarkupElement, MarkupNode } from './element.ts';
import { parseMarkup } from './parse-markup.ts';
import { childNamed, refuse, requiredText } from './read-attributes.ts';

const builders: Readonly<Record<string, (element: MarkupElement) => Block>> = {
  p: buildParagraph,
  strip: buildStrip,
  'line-board': buildLineBoard,
  drawing: buildDrawing,
  table: buildTable,
  callout: buildCallout,
  panel: buildPanel,
  key: buildKey,
  matters: buildMatters,
  ticks: buildTicks,
  list: buildList,
  'write-in': buildWriteIn,
  facts: buildFacts,
  heading: buildHeading,
  cover: buildCover,
  topic: buildTopic,
  'warning-frames': buildWarningFrames,
  say: buildSay,
  answers: buildAnswers,
  asides: buildAsides,
  calendar: buildCalendar,
  checklist: buildChecklist,
  talk: buildTalk,
  'teach-back': buildTeachBack,
  signatures: buildSignatures,
  interpreter: buildInterpreter,
};

/**
 * Turns the markup of a template into the blocks of a document. `file` names the template where an element carries
 * no origin of its own. Throws MarkupError for anything outside the vocabulary.
 */
export function buildBlocks(markup: string, file: string): readonly Block[] {
  const nodes = parseMarkup(markup, file);
  checkVocabulary(nodes, file);
  return blocksOf(nodes);
}

function blocksOf(nodes: readonly MarkupNode[]): readonly Block[] {
  return nodes
    .filter((node) => node.type === 'element')
    .filter((element) => element.name !== 'intro')
    .map((element) => {
      const build = builders[element.name];
      if (build === undefined) refuse(element, `<${element.name}> is not a block`);
      return build(element);
    });
}

function buildTopic(element: MarkupElement): Block {
  return {
    type: 'topic',
    question: requiredText(element, 'question'),
    intro: buildParagraphs(childNamed(element, 'intro')),
    blocks: blocksOf(element.children),
    origin: element.origin,
  };
}
