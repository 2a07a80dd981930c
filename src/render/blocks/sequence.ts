import type { Block } from '../../model/document.ts';
import type { Theme } from '../theme.ts';
import type { Unit } from '../unit.ts';
import { keepLast } from './unit-parts.ts';
import type { Place } from './unit-parts.ts';

/** How far the white between two topics may shrink to save a page: 30 to 22. */
const TOPIC_SHRINK = 8;

export type UnitsOf = (block: Block, place: Place) => readonly Unit[];

/** White between two blocks that follow each other. */
function gapBetween(before: Block, next: Block, theme: Theme): number {
  const { space } = theme;
  if (before.type === 'cover') return space.afterCover;
  if (next.type === 'topic' || (next.type === 'heading' && next.level === 2)) return space.betweenTopics;
  if (before.type === 'heading') return afterHeading(before.level, next, theme);
  if (explains(before, next)) return gapOfNote(before, next, theme);
  if (before.type === 'paragraph') return afterParagraph(next, theme);
  return next.type === 'paragraph' ? space.noteAfterStrip : space.betweenBlocks;
}

function afterParagraph(next: Block, { space }: Theme): number {
  if (next.type === 'paragraph') return space.betweenParagraphs;
  return next.type === 'list' ? space.betweenSteps : space.betweenBlocks;
}

function afterHeading(level: 1 | 2 | 3, next: Block, theme: Theme): number {
  const { space } = theme;
  if (level === 1) return next.type === 'paragraph' ? space.afterPageTitle : space.headToRows + 4;
  if (level === 3) return space.afterSmallHeading;
  return next.type === 'paragraph' ? space.questionToIntro : space.headToRows;
}

/** A key, or a note about the strip, table or board before it: never parted from that. */
function explains(before: Block, next: Block): boolean {
  if (next.type === 'key') return true;
  const shown = ['strip', 'table', 'line-board', 'key'].includes(before.type);
  return shown && next.type === 'paragraph';
}

/** A key under its own pictures stands close; one that is about the pictures to come stands apart. */
function gapOfNote(before: Block, next: Block, { space }: Theme): number {
  const apart = next.type === 'key' && (before.type !== 'strip' || before.layout === 'text');
  return apart ? space.betweenBlocks : space.noteAfterStrip;
}

interface Progress {
  readonly units: readonly Unit[];
  readonly before?: Block;
  /** Group of what came before, which its key and notes join. */
  readonly group?: string;
}

/** Heading that a block repeats where it goes on: that of its topic, or one that stands right above it. */
function titleFor(before: Block | undefined, place: Place): Pick<Place, 'title'> {
  if (before?.type === 'heading' && before.level > 1) return { title: before.text };
  return place.title === undefined ? {} : { title: place.title };
}

function append(
  progress: Progress,
  block: Block,
  { own, theme }: { own: readonly Unit[]; theme: Theme },
): Progress {
  const { before, units } = progress;
  const [first, ...others] = own;
  if (first === undefined) return progress;
  if (before === undefined) return { units: own, before: block, ...groupOf(own) };
  const gapBefore = gapBetween(before, block, theme);
  const shrink = gapBefore >= 22 + TOPIC_SHRINK ? { gapShrink: TOPIC_SHRINK } : {};
  const spaced = [{ ...first, gapBefore, ...shrink }, ...others];
  if (!explains(before, block) || progress.group === undefined)
    return { units: [...units, ...spaced], before: block, ...groupOf(own) };
  const group = progress.group;
  return { units: [...keepLast(units), ...spaced.map((unit) => ({ ...unit, group }))], before: block, group };
}

function groupOf(units: readonly Unit[]): Pick<Progress, 'group'> {
  const group = units.at(-1)?.group;
  return group === undefined ? {} : { group };
}

/** Units of blocks one under another, with the white between them and what may not be parted. */
export function unitsInSequence(blocks: readonly Block[], place: Place, unitsOf: UnitsOf): readonly Unit[] {
  const start: Progress = { units: [] };
  return blocks.reduce((progress, block, index) => {
    const here: Place = { ...place, key: `${place.key}${index}`, ...titleFor(progress.before, place) };
    return append(progress, block, { own: unitsOf(block, here), theme: place.theme });
  }, start).units;
}
