import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { WarningFrame } from '../../model/care-blocks.ts';
import type { Paragraph } from '../../model/document.ts';
import { measureLines } from '../text.tsx';
import { MANY_SIGNS, rowDirection } from '../theme.ts';
import type { Theme, TypeRole } from '../theme.ts';
import { Bulleted } from './bullet-item.tsx';
import { widestWord } from './fit-words.ts';
import { Words, runsFor } from './primitives.tsx';

/** White between the line of a frame and what stands in it. */
export const SIDE = 18;
export const BETWEEN_ITEMS = 8;
const BULLET = 7;
const BULLET_INDENT = 16;
/** White kept free after the words of an item. */
const AFTER_ITEM = 10;
const MOST_LINES = 3;

function roleOf(theme: Theme, role: Paragraph['role'], items: readonly Paragraph[]): TypeRole {
  if (role === 'small') return theme.type.small;
  return items.length > MANY_SIGNS ? theme.type.lead : theme.type.frameItem;
}

function measureWidth(theme: Theme, count: number): number {
  return (theme.width - 2 * SIDE) / count - BULLET_INDENT - AFTER_ITEM;
}

function linesOf(item: Paragraph, role: TypeRole, width: number): number {
  const runs = runsFor(item.inlines, role);
  return measureLines({ runs, size: role.size, width, setting: 'balanced' }).lines;
}

function fits(item: Paragraph, role: TypeRole, width: number): boolean {
  const text = item.inlines.map(({ value }) => value).join('');
  // Bold words are wider, so the widest is measured in bold.
  return widestWord(text, { ...role, weight: 700 }) <= width && linesOf(item, role, width) <= MOST_LINES;
}

/** Two columns, unless an item would be long in one. */
export function itemColumns(items: readonly Paragraph[], theme: Theme): 1 | 2 {
  const width = measureWidth(theme, 2);
  return items.length > 1 && items.every((item) => fits(item, roleOf(theme, item.role, items), width))
    ? 2
    : 1;
}

/** Height of an item alone, with the white after it, in points. */
function itemHeights(items: readonly Paragraph[], theme: Theme): readonly number[] {
  const width = measureWidth(theme, itemColumns(items, theme));
  return items.map((item) => {
    const role = roleOf(theme, item.role, items);
    return linesOf(item, role, width) * role.lineHeight + BETWEEN_ITEMS;
  });
}

function sum(heights: readonly number[]): number {
  return heights.reduce((total, height) => total + height, 0);
}

/** Height of the items as they are set, in points. */
export function itemsHeight(items: readonly Paragraph[], theme: Theme): number {
  const heights = new Map(itemHeights(items, theme).map((height, index) => [items[index], height]));
  const rows = rowsOfColumns(items, theme).map((columns) =>
    Math.max(...columns.map((column) => sum(column.map((item) => heights.get(item) ?? 0)))),
  );
  return rows.length === 0 ? 0 : sum(rows) - BETWEEN_ITEMS;
}

/**
 * Items side by side in rows, or, where there are many, down one column and then the next, broken where the taller
 * column is shortest: rows as high as their longer item would take too much room.
 */
function inRows(items: readonly Paragraph[], theme: Theme): readonly (readonly Paragraph[])[] {
  const count = itemColumns(items, theme);
  return Array.from({ length: Math.ceil(items.length / count) }, (_, row) =>
    items.slice(row * count, (row + 1) * count),
  );
}

function inColumns(items: readonly Paragraph[], theme: Theme): readonly (readonly Paragraph[])[] {
  if (itemColumns(items, theme) === 1) return [items];
  const heights = itemHeights(items, theme);
  const taller = (at: number): number => Math.max(sum(heights.slice(0, at)), sum(heights.slice(at)));
  const breaks = items.slice(1).map((_, index) => index + 1);
  const best = breaks.reduce((found, at) => (taller(at) < taller(found) ? at : found), breaks[0] ?? 1);
  return [items.slice(0, best), items.slice(best)];
}

/** A row of columns, or rows of columns with one item each. */
function rowsOfColumns(
  items: readonly Paragraph[],
  theme: Theme,
): readonly (readonly (readonly Paragraph[])[])[] {
  if (items.length > MANY_SIGNS) return [inColumns(items, theme)];
  return inRows(items, theme).map((row) => row.map((item) => [item]));
}

interface ItemProps {
  readonly theme: Theme;
  readonly item: Paragraph;
  readonly role: TypeRole;
  readonly width: number;
}

function Item({ theme, item, role, width }: ItemProps): ReactElement {
  const [bullet, indent] = [BULLET * theme.scale, BULLET_INDENT * theme.scale];
  const inner = width - indent;
  return (
    <Bulleted theme={theme} width={width} indent={indent} bullet={bullet} role={role}>
      <Words
        theme={theme}
        text={item.inlines}
        role={role}
        width={inner}
        measure={inner - AFTER_ITEM}
        setting="balanced"
        sem={{ tag: 'P' }}
      />
    </Bulleted>
  );
}

interface ColumnProps {
  readonly theme: Theme;
  readonly items: readonly Paragraph[];
  /** Those of the frame, by whose count the size is chosen. */
  readonly all: readonly Paragraph[];
  readonly width: number;
}

interface SingleProps {
  readonly theme: Theme;
  /** Those of the frame. */
  readonly items: readonly Paragraph[];
  readonly index: number;
  readonly width: number;
}

/** One item of a frame that stands on more than one page. */
export function SingleItem({ theme, items, index, width }: SingleProps): ReactElement | null {
  const item = items[index];
  if (item === undefined) return null;
  return <Item theme={theme} item={item} role={roleOf(theme, item.role, items)} width={width} />;
}

interface ItemsProps {
  readonly theme: Theme;
  readonly frame: WarningFrame;
}

function Column({ theme, items, all, width }: ColumnProps): ReactElement {
  return (
    <View style={{ width }}>
      {items.map((item, at) => (
        <View key={at} style={{ marginTop: at === 0 ? 0 : BETWEEN_ITEMS }}>
          <Item theme={theme} item={item} role={roleOf(theme, item.role, all)} width={width} />
        </View>
      ))}
    </View>
  );
}

/** What stands under the head of a frame. */
export function FrameItems({ theme, frame: { items } }: ItemsProps): ReactElement {
  const inner = theme.width - 2 * SIDE;
  const count = itemColumns(items, theme);
  const rows = rowsOfColumns(items, theme);
  return (
    <View sem={{ tag: 'L', numbering: 'Disc' }} style={{ width: inner }}>
      {rows.map((columns, index) => (
        <View
          key={index}
          style={{
            flexDirection: rowDirection(theme.direction),
            marginTop: index === 0 ? 0 : BETWEEN_ITEMS,
          }}
        >
          {columns.map((column, at) => (
            <Column key={at} theme={theme} items={column} all={items} width={inner / count} />
          ))}
        </View>
      ))}
    </View>
  );
}
