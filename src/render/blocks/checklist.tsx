import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { Checklist, ChecklistRow } from '../../model/care-blocks.ts';
import type { Theme } from '../theme.ts';
import type { Unit } from '../unit.ts';
import { Paragraphs, Words, stripRole } from './primitives.tsx';
import { BoxCell, TickRow, columnWidth, tickTableUnits } from './tick-table.tsx';
import type { TickColumn } from './tick-table.tsx';
import type { OfType, Place } from './unit-parts.ts';

const BOX = 15;
/** The box before an item with its gap. */
const FIRST = 24;
const DATE_BOX = 17;
const DATE = 72;
/** White beside the head of a date. */
const DATE_SIDE = 4;
const ROW = 32;
const PADDING = 7;
/** White kept free after the words of an item. */
const AFTER_ITEM = 14;

function dateWidths({ columns }: Checklist, theme: Theme): readonly number[] {
  return columns.map((label) => columnWidth(label, theme, { least: DATE, white: 2 * DATE_SIDE }));
}

function columnsOf(block: Checklist, theme: Theme): readonly TickColumn[] {
  const widths = dateWidths(block, theme);
  const taken = widths.reduce((sum, width) => sum + width, block.box ? FIRST : 0);
  return [
    ...(block.box ? [{ label: '', width: FIRST, align: 'start' } as const] : []),
    { label: block.head, width: theme.width - taken, align: 'start' },
    ...block.columns.map((label, index): TickColumn => ({
      label,
      width: widths[index] ?? DATE,
      start: DATE_SIDE,
      end: DATE_SIDE,
      align: 'center',
    })),
  ];
}

interface RowProps {
  readonly theme: Theme;
  readonly block: Checklist;
  readonly row: ChecklistRow;
  readonly lined: boolean;
}

function Item({
  theme,
  row,
  width,
}: Pick<RowProps, 'theme' | 'row'> & { readonly width: number }): ReactElement {
  const measure = width - AFTER_ITEM;
  return (
    <View sem={{ tag: 'TH', scope: 'Row' }} style={{ width, paddingVertical: PADDING }}>
      <Words
        theme={theme}
        text={row.name}
        role={theme.type.name}
        width={width}
        measure={measure}
        sem={{ tag: 'P' }}
      />
      <Paragraphs
        theme={theme}
        paragraphs={row.detail}
        roleOf={stripRole}
        width={width}
        measure={measure}
        gap={0}
      />
    </View>
  );
}

function Row({ theme, block, row, lined }: RowProps): ReactElement {
  const widths = dateWidths(block, theme);
  const item = columnsOf(block, theme)[block.box ? 1 : 0]?.width ?? theme.width;
  return (
    <TickRow theme={theme} lined={lined} least={ROW}>
      {block.box ? <BoxCell theme={theme} width={FIRST} size={BOX} align="start" /> : null}
      <Item theme={theme} row={row} width={item} />
      {widths.map((width, index) => (
        <BoxCell key={index} theme={theme} width={width} size={DATE_BOX} due={row.due[index] ?? true} />
      ))}
    </TickRow>
  );
}

/** Things to get or take: a box, the item with its dose, and a box for each date. */
export function checklistUnits(block: OfType<'checklist'>, place: Place): readonly Unit[] {
  const { theme } = place;
  const rows = block.rows.map((row, index) => ({
    origin: row.origin,
    element: <Row theme={theme} block={block} row={row} lined={index > 0} />,
  }));
  return tickTableUnits({ origin: block.origin, columns: columnsOf(block, theme), rows }, place);
}
