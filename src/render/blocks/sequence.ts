import type { Block } from '../../model/document.ts';
import type { Theme } from '../theme.ts';
import type { Unit } from '../unit.ts';
import { sectionsOf, titlesOf } from './titles.ts';
import { keepLast } from './unit-parts.ts';
import type { Place } from './unit-parts.ts';

/**
 * How far white may be closed up to save a page: between topics from 30 to 22, between blocks from 18 to 12, over a note
 * from 10 to 7.
 */
function shrinkOf(gap: number): Pick<Unit, 'gapShrink'> {
  if (gap >= 28) return { gapShrink: 8 };
  if (gap >= 18) return { gapShrink: 6 };
  return gap >= 10 ? { gapShrink: 3 } : {};
}

export type UnitsOf = (block: Block, place: Place) => readonly Unit[];

/**
 * What a block is to its neighbours. A note explains what is before it and is never parted from it; a lead-in
 * announces what comes after it.
 */
type Part = 'note' | 'lead-in' | 'plain';

const shownTypes: ReadonlySet<Block['type']> = new Set(['strip', 'table', 'line-board', 'drawing', 'key']);
const announcedTypes: ReadonlySet<Block['type']> = new Set([
  'strip',
  'table',
  'line-board',
  'drawing',
  'list',
  'matters',
  'warning-frames',
  'calendar',
  'checklist',
  'tick-items',
  'talk',
  'teach-back',
]);
/** What a person signs for, and who spoke for them, stand on the page with the signatures. */
const signedTypes: ReadonlySet<Block['type']> = new Set(['answers', 'interpreter', 'ticks', 'write-in']);
const tickedTypes: ReadonlySet<Block['type']> = new Set(['checklist', 'tick-items']);
const between: ReadonlySet<Block['type']> = new Set(['heading', 'paragraph']);

function isSmall(block: Block | undefined): boolean {
  return block?.type === 'paragraph' && block.role === 'small';
}

function isNotes(block: Extract<Block, { readonly type: 'list' }>): boolean {
  return block.items.every(([first]) => first?.role === 'small');
}

/** Whether what stands here is about what was shown just before. */
function explains(previous: Block, { before }: Spot): boolean {
  return shownTypes.has(previous.type) || before === 'note';
}

/** Whether the first block after a run of paragraphs is one that paragraphs announce. */
function announces(blocks: readonly Block[], index: number): boolean {
  const next = blocks.slice(index + 1).find((block) => block.type !== 'paragraph' || isSmall(block));
  return next !== undefined && announcedTypes.has(next.type);
}

interface Spot {
  readonly blocks: readonly Block[];
  readonly index: number;
  /** What the block before is. */
  readonly before: Part;
}

function partOf(spot: Spot): Part {
  const block = spot.blocks[spot.index];
  const previous = spot.blocks[spot.index - 1];
  if (block === undefined) return 'plain';
  if (leadsToSignatures(spot)) return 'lead-in';
  if (previous === undefined) return block.type === 'paragraph' ? leadsOrPlain(spot) : 'plain';
  if (belongsToBefore(block, previous)) return 'note';
  // The numbered notes right under a table.
  if (block.type === 'list') return isNotes(block) && explains(previous, spot) ? 'note' : 'plain';
  return block.type === 'paragraph' ? partOfParagraph(block, previous, spot) : 'plain';
}

/** Whether only what is signed for, and the sentence that is signed, stand between here and the signatures. */
function leadsToSignatures({ blocks, index }: Spot): boolean {
  const next = blocks.slice(index).find(({ type }) => !signedTypes.has(type) && !between.has(type));
  return signedTypes.has(blocks[index]?.type ?? 'signatures') && next?.type === 'signatures';
}

/** A key is read with its pictures, the choice to tick with the points it rests on, a signature with what it is for. */
function belongsToBefore(block: Block, previous: Block): boolean {
  if (block.type === 'key' || block.type === 'signatures') return true;
  return block.type === 'ticks' && (previous.type === 'matters' || previous.type === 'tick-items');
}

function partOfParagraph(block: Block, previous: Block, spot: Spot): Part {
  // Sentences that follow each other are read together.
  if (previous.type === 'paragraph' && !isSmall(block) && leadsOrPlain(spot) === 'plain') return 'note';
  if (!explains(previous, spot)) return leadsOrPlain(spot);
  return isSmall(block) || leadsOrPlain(spot) === 'plain' ? 'note' : 'lead-in';
}

function leadsOrPlain({ blocks, index }: Spot): Part {
  return announces(blocks, index) ? 'lead-in' : 'plain';
}

function partsOf(blocks: readonly Block[]): readonly Part[] {
  const parts: Part[] = [];
  blocks.forEach((_, index) => parts.push(partOf({ blocks, index, before: parts[index - 1] ?? 'plain' })));
  return parts;
}

/** White between two blocks that follow each other. */
function gapBetween(before: Block, next: Block, { theme, part }: { theme: Theme; part: Part }): number {
  const { space } = theme;
  if (before.type === 'cover') return space.afterCover;
  if (next.type === 'topic' || (next.type === 'heading' && next.level === 2)) return space.betweenTopics;
  if (before.type === 'heading') return afterHeading(before.level, next, theme);
  if (before.type === 'paragraph') return afterParagraph(before, next, theme);
  return part === 'note' ? gapOfNote(before, next, theme) : gapOfPair(before, next, theme);
}

/** What to say belongs to the frames above it, short lists to the calendar. */
function gapOfPair(before: Block, next: Block, { space }: Theme): number {
  if (before.type === 'warning-frames' && next.type === 'say') return space.betweenFrames;
  if (before.type === 'calendar' && next.type === 'asides') return space.noteAfterStrip;
  return space.betweenBlocks;
}

function afterHeading(level: 1 | 2 | 3, next: Block, { space }: Theme): number {
  if (level === 1) return next.type === 'paragraph' ? space.afterPageTitle : space.headToRows + 4;
  if (level === 3) return space.afterSmallHeading;
  return next.type === 'paragraph' ? space.questionToIntro : space.headToRows;
}

function afterParagraph(before: Block, next: Block, { space }: Theme): number {
  if (next.type === 'paragraph') return space.betweenParagraphs;
  if (next.type === 'calendar') return space.headToRows;
  if (next.type === 'list') return isSmall(before) && isNotes(next) ? space.betweenNotes : space.betweenSteps;
  return announcedTypes.has(next.type) ? space.noteAfterStrip : space.betweenBlocks;
}

/** A key under its own pictures stands close; one that is about the pictures to come stands apart. */
function gapOfNote(before: Block, next: Block, { space }: Theme): number {
  const apart = next.type === 'key' && (before.type !== 'strip' || before.layout === 'text');
  return apart ? space.betweenBlocks : space.noteAfterStrip;
}

interface Piece {
  readonly block: Block;
  readonly part: Part;
  readonly units: readonly Unit[];
}

interface Progress {
  readonly units: readonly Unit[];
  readonly before?: Block;
}

/** What the cover opens stays whole, since as a rule the first page has room for it. */
function openedBy(before: Block | undefined, units: readonly Unit[], { flow }: Theme): readonly Unit[] {
  if (before?.type !== 'cover' || flow === 'stacked') return units;
  return units.map((unit) => ({ ...unit, divisible: false }));
}

/**
 * A sentence that ends a list to tick stands with the last line of it, not alone under a heading that is repeated; a key
 * stands with the first of the pictures that are read with it.
 */
function keptTo(
  units: readonly Unit[],
  before: Block,
  { block, part }: Omit<Piece, 'units'>,
): readonly Unit[] {
  const ends = part === 'plain' && block.type === 'paragraph' && tickedTypes.has(before.type);
  const isRead = before.type === 'key' && block.type === 'strip';
  return ends || isRead ? keepLast(units) : units;
}

function append({ units, before }: Progress, { block, part, units: own }: Piece, theme: Theme): Progress {
  const whole = openedBy(before, own, theme);
  const [first, ...others] = part === 'lead-in' ? keepLast(whole) : whole;
  if (first === undefined) return before === undefined ? { units } : { units, before };
  if (before === undefined) return { units: [first, ...others], before: block };
  const gapBefore = gapBetween(before, block, { theme, part });
  const spaced: readonly Unit[] = [{ ...first, gapBefore, ...shrinkOf(gapBefore) }, ...others];
  if (part !== 'note')
    return { units: [...keptTo(units, before, { block, part }), ...spaced], before: block };
  const group = units.at(-1)?.group;
  const joined = group === undefined ? spaced : spaced.map((unit) => ({ ...unit, group }));
  if (!isNoteList(block)) return { units: [...boundTo(units, before, block), ...joined], before: block };
  return { units: [...keepLast(units), ...notesOf(joined, theme)], before: block };
}

/** A note is never parted from what it explains; one sentence from another only if that spares a page nearly empty. */
function boundTo(units: readonly Unit[], before: Block, note: Block): readonly Unit[] {
  const last = units.at(-1);
  const alike = before.type === 'paragraph' && note.type === 'paragraph' && isSmall(before) === isSmall(note);
  if (last === undefined || !alike) return keepLast(units);
  return [...units.slice(0, -1), { ...last, keepsRow: true }];
}

/** Numbered notes are looked up from the rows above them: where a table must break, it breaks between rows. */
function isNoteList(block: Block): boolean {
  return block.type === 'list' && isNotes(block);
}

/**
 * The first two of many stay with the rows, and the others may go on where no page holds all; none goes on alone. In large
 * print the first stays with its row.
 */
function notesOf(units: readonly Unit[], { flow }: Theme): readonly Unit[] {
  const last = units.length - 1;
  const keeps = (index: number): boolean =>
    flow !== 'stacked' && index < last && (index === 0 || index === last - 1);
  return units.map((unit, index) => ({
    ...unit,
    explains: true,
    ...(keeps(index) ? { keepWithNext: true } : {}),
  }));
}

function within(topic: string | undefined, units: readonly Unit[]): readonly Unit[] {
  return topic === undefined ? units : units.map((unit) => ({ ...unit, topic }));
}

/** Units of blocks one under another, with the white between them and what may not be parted. */
export function unitsInSequence(blocks: readonly Block[], place: Place, unitsOf: UnitsOf): readonly Unit[] {
  const parts = partsOf(blocks);
  const titles = titlesOf(blocks, place);
  const sections = sectionsOf(blocks, place);
  const start: Progress = { units: [] };
  return blocks.reduce((progress, block, index) => {
    const { theme, continued, headingTag } = place;
    const here: Place = { theme, continued, headingTag, key: `${place.key}${index}`, ...titles[index] };
    const units = within(sections[index], unitsOf(block, here));
    const piece: Piece = { block, part: parts[index] ?? 'plain', units };
    return append(progress, piece, place.theme);
  }, start).units;
}
