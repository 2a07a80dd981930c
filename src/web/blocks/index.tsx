import { Fragment } from 'react';
import type { ReactElement } from 'react';
import type { Block } from '../../model/document.ts';
import type { OfType, Place } from '../place.ts';
import { HeadingOf, Paragraphs } from '../words.tsx';
import { calendarBlock } from './calendar.tsx';
import { drawingBlock } from './drawing.tsx';
import { interpreterBlock, signaturesBlock } from './fields.tsx';
import { factsBlock, keyBlock, listBlock, ticksBlock, writeInBlock } from './lists.tsx';
import { asidesBlock, calloutBlock, panelBlock } from './panels.tsx';
import { coverBlock, headingBlock, paragraphBlock } from './prose.tsx';
import { answersBlock, sayBlock } from './sentence.tsx';
import { stripBlock } from './strip.tsx';
import { tableBlock } from './table.tsx';
import { checklistBlock, mattersBlock, talkBlock, teachBackBlock, tickItemsBlock } from './tick-tables.tsx';
import { warningBlock } from './warning-frames.tsx';
import { lineBoardBlock } from './weight-lines.tsx';

type Made = ReactElement | null;

/** One entry for each type of block; a new type does not compile until it is here. */
const elementsByType: { readonly [T in Block['type']]: (block: OfType<T>, place: Place) => Made } = {
  paragraph: paragraphBlock,
  strip: stripBlock,
  'line-board': lineBoardBlock,
  drawing: drawingBlock,
  table: tableBlock,
  callout: calloutBlock,
  panel: panelBlock,
  key: keyBlock,
  matters: mattersBlock,
  ticks: ticksBlock,
  list: listBlock,
  'write-in': writeInBlock,
  facts: factsBlock,
  heading: headingBlock,
  cover: coverBlock,
  topic: topicBlock,
  'warning-frames': warningBlock,
  say: sayBlock,
  answers: answersBlock,
  asides: asidesBlock,
  calendar: calendarBlock,
  checklist: checklistBlock,
  'tick-items': tickItemsBlock,
  talk: talkBlock,
  'teach-back': teachBackBlock,
  signatures: signaturesBlock,
  interpreter: interpreterBlock,
};

function elementOf<T extends Block['type']>(block: OfType<T>, place: Place): Made {
  const make: (block: OfType<T>, place: Place) => Made = elementsByType[block.type];
  return make(block, place);
}

function topicBlock(block: OfType<'topic'>, place: Place): ReactElement {
  const heading = place.heading(2, block.question);
  return (
    <section className="topic">
      <HeadingOf heading={heading} className="question" />
      <Paragraphs paragraphs={block.intro} place={place} />
      {blockElements(block.blocks, { ...place, title: block.question, inTopic: true })}
    </section>
  );
}

/** Blocks one after another; each stands under the last heading before it, else under that of its topic. */
export function blockElements(blocks: readonly Block[], place: Place): readonly ReactElement[] {
  let here = place;
  return blocks.map((block, index) => {
    const element = elementOf(block, here);
    if (block.type === 'heading') here = { ...here, title: block.text };
    return <Fragment key={index}>{element}</Fragment>;
  });
}
