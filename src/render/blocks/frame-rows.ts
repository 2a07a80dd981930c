import type { Paragraph } from '../../model/document.ts';
import { measureLines } from '../text.tsx';
import { MANY_SIGNS } from '../theme.ts';
import type { Theme, TypeRole } from '../theme.ts';
import { widestWord } from './fit-words.ts';
import { runsFor } from './primitives.tsx';

/** White between the line of a frame and what stands in it. */
export const SIDE = 18;
export const BULLET_INDENT = 16;
/** White kept free after the words of an item. */
export const AFTER_ITEM = 10;
const MOST_LINES = 4;

export function itemRole(theme: Theme, role: Paragraph['role'], items: readonly Paragraph[]): TypeRole {
  if (role === 'small') return theme.type.small;
  return items.length > MANY_SIGNS ? theme.type.lead : theme.type.frameItem;
}

/** Items one under another, in so many columns side by side. */
export type FrameRow = readonly (readonly Paragraph[])[];

export interface FrameRows {
  readonly rows: readonly FrameRow[];
  /** White between rows, and between the items of a column. */
  readonly gap: number;
  /** Of all rows with the white between them, in points. */
  readonly height: number;
}

interface Measured {
  readonly item: Paragraph;
  /** Height over the whole width. */
  readonly whole: number;
  /** Height in one of two columns; undefined where a word has no room, or the item would be long. */
  readonly half: number | undefined;
}

function measureItem(item: Paragraph, role: TypeRole, theme: Theme): Measured {
  const widthOf = (columns: number): number =>
    (theme.width - 2 * SIDE) / columns - BULLET_INDENT - AFTER_ITEM;
  const linesIn = (width: number): number =>
    measureLines({ runs: runsFor(item.inlines, role), size: role.size, width, setting: 'balanced' }).lines;
  const text = item.inlines.map(({ value }) => value).join('');
  const lines = linesIn(widthOf(2));
  // Bold words are wider, so the widest is measured in bold.
  const fits = widestWord(text, { ...role, weight: 700 }) <= widthOf(2) && lines <= MOST_LINES;
  return {
    item,
    whole: linesIn(widthOf(1)) * role.lineHeight,
    half: fits ? lines * role.lineHeight : undefined,
  };
}

/** How the signs of a frame stand: the way that takes the least room, with two side by side where both are short. */
export function frameRows(items: readonly Paragraph[], theme: Theme): FrameRows {
  const measured = items.map((item) => measureItem(item, itemRole(theme, item.role, items), theme));
  const isMany = items.length > MANY_SIGNS;
  const gap = theme.space.betweenSigns;
  const inRows = lowestRows(measured, gap);
  // Rows as high as their longer item would take too much room where there are many.
  const inColumns = isMany ? lowestColumns(measured, gap) : undefined;
  return inColumns === undefined || inColumns.height > inRows.height ? inRows : inColumns;
}

/** Down one column and then the next, broken where the taller column is shortest. */
function lowestColumns(measured: readonly Measured[], gap: number): FrameRows | undefined {
  const heights = measured.flatMap(({ half }) => (half === undefined ? [] : [half]));
  if (heights.length < measured.length) return undefined;
  const tall = (column: readonly number[]): number =>
    column.reduce((sum, height) => sum + height, gap * (column.length - 1));
  const taller = (at: number): number => Math.max(tall(heights.slice(0, at)), tall(heights.slice(at)));
  const breaks = measured.slice(1).map((_, index) => index + 1);
  const best = breaks.reduce((found, at) => (taller(at) < taller(found) ? at : found), breaks[0] ?? 1);
  const items = measured.map(({ item }) => item);
  return { rows: [[items.slice(0, best), items.slice(best)]], gap, height: taller(best) };
}

/** One after another, two of them in a row where that takes less room than two rows. */
function lowestRows(measured: readonly Measured[], gap: number): FrameRows {
  const none: FrameRows = { rows: [], gap, height: 0 };
  // The best way to set what follows each place, found from the end.
  const best: FrameRows[] = [none];
  for (const [index, one] of [...measured.entries()].reverse()) {
    const next = measured[index + 1];
    const alone = above([[one.item]], one.whole, best[0] ?? none);
    const isPair = next !== undefined && one.half !== undefined && next.half !== undefined;
    const pair = isPair
      ? above([[one.item], [next.item]], Math.max(one.half, next.half), best[1] ?? none)
      : alone;
    best.unshift(pair.height <= alone.height ? pair : alone);
  }
  return best[0] ?? none;
}

function above(row: FrameRow, height: number, { rows, gap, height: below }: FrameRows): FrameRows {
  return { rows: [row, ...rows], gap, height: rows.length === 0 ? height : height + gap + below };
}
