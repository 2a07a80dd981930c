import type { Block, DocumentTree } from '../../model/document.ts';
import { themeOf } from '../theme.ts';
import type { Unit } from '../unit.ts';
import { asideUnits } from './asides.tsx';
import { calendarUnits } from './calendar.tsx';
import { answersUnits } from './answers.tsx';
import { calloutUnits } from './callout.tsx';
import { checklistUnits } from './checklist.tsx';
import { ContinuedHead } from './continued-head.tsx';
import { drawingUnits } from './drawing.tsx';
import { factsUnits } from './facts.tsx';
import { signatureUnits } from './fields.tsx';
import { interpreterUnits } from './interpreter.tsx';
import { keyUnits } from './key.tsx';
import { lineBoardUnits } from './line-board.tsx';
import { listUnits, ticksUnits, writeInUnits } from './lists.tsx';
import { mattersUnits } from './matters.tsx';
import { panelUnits } from './panel.tsx';
import { coverUnits, headingUnits, paragraphUnits } from './prose.tsx';
import { sayUnits } from './say.tsx';
import { unitsInSequence } from './sequence.ts';
import { stackedDrawingUnits } from './stacked/drawing.tsx';
import { stackedFactUnits } from './stacked/facts.tsx';
import { stackedKeyUnits } from './stacked/key.tsx';
import { stackedStripUnits } from './stacked/strip.tsx';
import { stackedWarningUnits } from './stacked/warning-frames.tsx';
import { stripUnits } from './strip.tsx';
import { tableUnits } from './table.tsx';
import { talkUnits } from './talk.tsx';
import { teachBackUnits } from './teach-back.tsx';
import { tickItemUnits } from './tick-items.tsx';
import { TopicHead } from './topic.tsx';
import { countHeadings } from './unit-parts.ts';
import type { OfType, Place } from './unit-parts.ts';
import { warningUnits } from './warning-frames.tsx';

/** One entry for each type of block; a new type does not compile until it is here. */
const unitsByType: { readonly [T in Block['type']]: (block: OfType<T>, place: Place) => readonly Unit[] } = {
  paragraph: paragraphUnits,
  strip: stripUnits,
  'line-board': lineBoardUnits,
  drawing: drawingUnits,
  table: tableUnits,
  callout: calloutUnits,
  panel: panelUnits,
  key: keyUnits,
  matters: mattersUnits,
  ticks: ticksUnits,
  list: listUnits,
  'write-in': writeInUnits,
  facts: factsUnits,
  heading: headingUnits,
  cover: coverUnits,
  topic: topicUnits,
  'warning-frames': warningUnits,
  say: sayUnits,
  answers: answersUnits,
  asides: asideUnits,
  calendar: calendarUnits,
  checklist: checklistUnits,
  'tick-items': tickItemUnits,
  talk: talkUnits,
  'teach-back': teachBackUnits,
  signatures: signatureUnits,
  interpreter: interpreterUnits,
};

type UnitsByType = { readonly [T in Block['type']]?: (block: OfType<T>, place: Place) => readonly Unit[] };

/** Blocks that are built otherwise where one thing stands under another. */
const stackedByType: UnitsByType = {
  strip: stackedStripUnits,
  drawing: stackedDrawingUnits,
  key: stackedKeyUnits,
  facts: stackedFactUnits,
  'warning-frames': stackedWarningUnits,
};

function unitsOf<T extends Block['type']>(block: OfType<T>, place: Place): readonly Unit[] {
  const stacked: UnitsByType[T] | undefined =
    place.theme.flow === 'stacked' ? stackedByType[block.type] : undefined;
  const units: (block: OfType<T>, place: Place) => readonly Unit[] = stacked ?? unitsByType[block.type];
  return units(block, place);
}

/** The head of a topic joins the group of what stands first under it, and is never parted from it. */
function topicUnits(block: OfType<'topic'>, place: Place): readonly Unit[] {
  const { theme, key } = place;
  const tag = place.headingTag(2);
  const inside = unitsInSequence(block.blocks, { ...place, key: `${key}.`, title: block.question }, unitsOf);
  const [first, ...others] = inside;
  const head: Unit = {
    key: `${key}.head`,
    origin: block.origin,
    element: <TopicHead theme={theme} text={block.question} tag={tag} intro={block.intro} />,
    gapBefore: 0,
    keepWithNext: first !== undefined,
    ...(first?.group === undefined ? {} : { group: first.group }),
  };
  if (first === undefined) return [head];
  // Whatever stands at the top of a page says which question it belongs to.
  const repeated = <ContinuedHead place={{ ...place, title: block.question }} />;
  const going = others.map((unit) =>
    unit.continuation === undefined ? { ...unit, continuation: repeated } : unit,
  );
  const opening = { ...first, gapBefore: theme.space.headToRows, gapShrink: theme.space.headShrink };
  return [head, opening, ...going].map((unit) => ({ ...unit, topic: key }));
}

/**
 * The pieces of a document that the planner places, in reading order: each of the content width, with the white above
 * it and what it may not be parted from. Call loadFonts first: names and labels are measured here.
 */
export function blockUnits(tree: DocumentTree): readonly Unit[] {
  const place: Place = {
    theme: themeOf(tree),
    key: '',
    continued: tree.furniture.continued,
    headingTag: countHeadings(),
  };
  return unitsInSequence(tree.blocks, place, unitsOf);
}
