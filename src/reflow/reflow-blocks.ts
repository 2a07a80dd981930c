import type { Calendar } from '../model/calendar.ts';
import type { Block, Paragraph, Table, Topic } from '../model/document.ts';
import { listDays } from './list-days.ts';
import { reflowStrip } from './reflow-strip.ts';
import { stackTable, stackWithNotes } from './stack-table.ts';
import type { CitedNotes } from './stack-table.ts';
import { checklistItems, matterItems, talkItems } from './stack-ticks.ts';
import { thinTicks } from './thin-ticks.ts';

/**
 * Blocks for large print: what needs columns is set one under another, everything else stays. `colon` stands between a
 * label and its words, white included.
 */
export function reflowBlocks(blocks: readonly Block[], colon: string): readonly Block[] {
  return keysFirst(sayLast(blocks)).flatMap((block, index, all) => {
    const [before, next] = [all[index - 1], all[index + 1]];
    if (block.type === 'table' && isNotesOf(next, block)) return stackWithNotes(block, next, colon);
    return before?.type === 'table' && isNotesOf(block, before) ? [] : reflowBlock(block, colon);
  });
}

/** Whether these are the numbered notes of the table, of which is known where each is cited. */
function isNotesOf(block: Block | undefined, table: Table): block is CitedNotes {
  return (
    block?.type === 'list' &&
    block.citedIn !== undefined &&
    table.rows.every(({ group }) => group === undefined)
  );
}

/** Pictures that take a page or more are read with their key at hand: it stands over them, not after the last. */
function keysFirst(blocks: readonly Block[]): readonly Block[] {
  const isMoved = (block: Block | undefined, before: Block | undefined): boolean =>
    block?.type === 'key' && before?.type === 'strip' && before.layout !== 'text';
  return blocks.flatMap((block, index) => {
    const next = blocks[index + 1];
    if (isMoved(block, blocks[index - 1])) return [];
    return next !== undefined && isMoved(next, block) ? [next, block] : [block];
  });
}

/** Frames of signs take most of a page each: what to say follows them all, so that none is parted for it. */
function sayLast(blocks: readonly Block[]): readonly Block[] {
  const last = blocks.findLastIndex(({ type }) => type === 'warning-frames');
  const isMoved = ({ type }: Block, index: number): boolean => type === 'say' && index < last;
  const stays = (block: Block, index: number): boolean => !isMoved(block, index);
  return [...blocks.slice(0, last + 1).filter(stays), ...blocks.filter(isMoved), ...blocks.slice(last + 1)];
}

function reflowBlock(block: Block, colon: string): readonly Block[] {
  switch (block.type) {
    case 'topic':
      return [reflowTopic(block, colon)];
    case 'paragraph':
      return splitAtDots(block);
    case 'strip':
      return reflowStrip(block);
    case 'line-board':
      return [{ ...block, lines: block.lines.map(thinTicks) }];
    case 'table':
      return stackTable(block, colon);
    case 'calendar':
      return [listDays(block)];
    case 'checklist':
      return [checklistItems(block)];
    case 'matters':
      return [matterItems(block)];
    case 'talk':
      return [talkItems(block)];
    default:
      return [block];
  }
}

const dot = ' · ';

/** What stands on one line with a dot between has a line each. */
function splitAtDots(paragraph: Paragraph): readonly Paragraph[] {
  const [first, ...others] = paragraph.inlines;
  if (first?.type !== 'text' || others.length > 0 || paragraph.role !== 'small') return [paragraph];
  return first.value.split(dot).map((value) => ({ ...paragraph, inlines: [{ ...first, value }] }));
}

/** Over a list of days stand words about a list, not about a calendar. */
function reflowTopic(topic: Topic, colon: string): Topic {
  const calendar = topic.blocks.find((block): block is Calendar => block.type === 'calendar');
  const blocks = reflowBlocks(topic.blocks, colon);
  return { ...topic, blocks, intro: calendar === undefined ? topic.intro : [introOf(calendar)] };
}

function introOf({ listed, origin }: Calendar): Paragraph {
  return { type: 'paragraph', role: 'body', inlines: [{ type: 'text', value: listed }], origin };
}
