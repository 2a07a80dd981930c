import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { Paragraph, Table, TableRow } from '../../model/document.ts';
import { columns as grid, firstBaseline, gapStart, palette, rowDirection, tableGapOf } from '../theme.ts';
import type { Theme, TypeRole } from '../theme.ts';
import { Hairline, Paragraphs, Words, cellRole } from './primitives.tsx';
import { Tag } from './tag.tsx';

/** Where each column begins and how wide it is, in points from the start edge. */
export interface ColumnBox {
  readonly start: number;
  readonly width: number;
  readonly align: 'start' | 'end';
}

/** White before a column: that of the strips after a name, more after numbers that end at the edge of theirs. */
function gapBefore(table: Table, index: number, { language }: Theme): number {
  if (index === 0) return 0;
  const choices = table.layout === 'choices';
  if (choices && index === 1) return grid.nameGap;
  if (table.columns[index - 1]?.align === 'end') return grid.afterEndAligned;
  return choices ? tableGapOf(language) : grid.tableGap;
}

/** `choices`: the name column of the strips, then equal columns; `dense`: shares of the whole width in percent. */
export function columnBoxes(table: Table, theme: Theme): readonly ColumnBox[] {
  const { columns } = table;
  const room = theme.width - columns.reduce((sum, _, index) => sum + gapBefore(table, index, theme), 0);
  const widths = table.layout === 'choices' ? choiceWidths(columns.length, room) : shareWidths(table, room);
  let start = 0;
  return columns.map((column, index) => {
    const width = widths[index] ?? 0;
    start += gapBefore(table, index, theme);
    const box = { start, width, align: column.align ?? 'start' };
    start += width;
    return box;
  });
}

function choiceWidths(count: number, room: number): readonly number[] {
  if (count <= 1) return [room];
  const each = (room - grid.name) / (count - 1);
  return [grid.name, ...Array.from({ length: count - 1 }, () => each)];
}

/** Columns without a width share what the others leave, at least a tenth each. */
function shareWidths({ columns }: Table, room: number): readonly number[] {
  const given = columns.reduce((sum, column) => sum + (column.width ?? 0), 0);
  const open = columns.filter((column) => column.width === undefined).length;
  const rest = open === 0 ? 0 : Math.max(100 - given, 10 * open) / open;
  const total = given + rest * open;
  return columns.map((column) => ((column.width ?? rest) / (total || 1)) * room);
}

export interface RowShape {
  readonly theme: Theme;
  readonly table: Table;
  readonly boxes: readonly ColumnBox[];
}

interface TypeOfRows {
  readonly head: TypeRole;
  readonly name: TypeRole;
  readonly padding: number;
  readonly roleOf: (theme: Theme, role: Paragraph['role']) => TypeRole;
}

/** A dense table on a patient's page is set at the floor of 12, on the clinician sheet at 8.5. */
function typeOfRows({ theme, table }: RowShape): TypeOfRows {
  const { type, space } = theme;
  if (table.layout === 'choices' || theme.density === 'clinician')
    return { head: type.tableHead, name: type.name, padding: space.cellPadding, roleOf: cellRole };
  const bold = { ...type.small, weight: 700 as const };
  const dense = (_: Theme, role: Paragraph['role']): TypeRole =>
    role === 'strong' || role === 'number' ? bold : type.small;
  return { head: type.label, name: bold, padding: 5, roleOf: dense };
}

export function TableHead({ shape }: { readonly shape: RowShape }): ReactElement {
  const { theme, table, boxes } = shape;
  const { direction, rules, width } = theme;
  const { head } = typeOfRows(shape);
  const top = rules.tableTop === 0 || table.layout === 'choices' ? 0 : 4;
  const below = theme.density === 'clinician' ? 4 : 6;
  const line = { direction, start: 0, width, color: palette.ink };
  return (
    <View style={{ width, paddingTop: top, paddingBottom: below + rules.tableHead / 2 }}>
      {top === 0 ? null : <Hairline {...line} thickness={rules.tableTop} />}
      <View sem={{ tag: 'TR' }} style={{ flexDirection: rowDirection(direction), alignItems: 'flex-end' }}>
        {table.columns.map((column, index) => (
          <View
            key={index}
            sem={{ tag: column.label === '' ? 'TD' : 'TH', scope: 'Column' }}
            style={cellStyle(boxes, index, theme)}
          >
            <HeadWords theme={theme} label={column.label} role={head} box={boxes[index]} />
          </View>
        ))}
      </View>
      <View style={{ position: 'absolute', bottom: 0, left: 0, width, height: 0 }}>
        <Hairline {...line} thickness={rules.tableHead} />
      </View>
    </View>
  );
}

interface HeadWordsProps {
  readonly theme: Theme;
  readonly label: string;
  readonly role: TypeRole;
  readonly box: ColumnBox | undefined;
}

function HeadWords({ theme, label, role, box }: HeadWordsProps): ReactElement | null {
  if (label === '' || box === undefined) return null;
  const text = { theme, text: label, role, width: box.width, align: box.align } as const;
  return <Words {...text} setting="balanced" sem={{ tag: 'P' }} />;
}

function cellStyle(boxes: readonly ColumnBox[], index: number, theme: Theme): Record<string, number> {
  const box = boxes[index];
  const before = boxes[index - 1];
  if (box === undefined) return {};
  const gap = before === undefined ? box.start : box.start - before.start - before.width;
  return { width: box.width, ...gapStart(theme.direction, gap) };
}

interface CellProps {
  readonly shape: RowShape;
  readonly row: TableRow;
  readonly index: number;
}

/** The first cell names the row; in a table of choices it is a name, whatever role the template gave it. */
function NameCell({ shape, row, index }: CellProps): ReactElement {
  const { theme, table, boxes } = shape;
  const rows = typeOfRows(shape);
  const roleOf = table.layout === 'choices' ? () => rows.name : rows.roleOf;
  return (
    <View sem={{ tag: 'TH', scope: 'Row' }} style={cellStyle(boxes, index, theme)}>
      <CellWords shape={shape} row={row} index={index} roleOf={roleOf} />
      {row.tag === undefined ? null : <Tag theme={theme} text={row.tag} />}
    </View>
  );
}

/** A larger number is lifted, so that its baseline is that of the words beside it. */
function ValueCell({ shape, row, index }: CellProps): ReactElement {
  const { theme, boxes } = shape;
  const { roleOf } = typeOfRows(shape);
  const role = roleOf(theme, row.cells[index]?.[0]?.role ?? 'body');
  const lift = firstBaseline(role) - firstBaseline(roleOf(theme, 'body'));
  return (
    <View sem={{ tag: 'TD' }} style={{ ...cellStyle(boxes, index, theme), marginTop: -lift }}>
      <CellWords shape={shape} row={row} index={index} roleOf={roleOf} />
    </View>
  );
}

/** Short entries that stand in columns are balanced; words that have the page to themselves are filled like others. */
function settingOf({ table }: RowShape): 'filled' | 'balanced' {
  return table.layout === 'dense' || table.columns.length <= 2 ? 'filled' : 'balanced';
}

function CellWords({ shape, row, index, roleOf }: CellProps & Pick<TypeOfRows, 'roleOf'>): ReactElement {
  const box = shape.boxes[index] ?? { width: 0, align: 'start' };
  return (
    <Paragraphs
      theme={shape.theme}
      paragraphs={row.cells[index] ?? []}
      roleOf={roleOf}
      width={box.width}
      gap={0}
      setting={index === 0 && shape.table.layout === 'choices' ? 'balanced' : settingOf(shape)}
      align={box.align}
    />
  );
}

/** White under a row that is left to the planner, which may close it up: only in tables of choices. */
export function shrinkOf({ theme, table }: RowShape): number {
  return table.layout === 'choices' ? theme.space.cellShrink : 0;
}

interface RowProps {
  readonly shape: RowShape;
  readonly row: TableRow;
  /** The first row lies under the rule of the head, or under its group's band: no line of its own. */
  readonly lined: boolean;
}

export function Row({ shape, row, lined }: RowProps): ReactElement {
  const { theme, table } = shape;
  const { padding } = typeOfRows(shape);
  const below = padding - shrinkOf(shape);
  const line = { direction: theme.direction, start: 0, width: theme.width, thickness: theme.rules.row };
  return (
    <View style={{ width: theme.width, paddingTop: padding, paddingBottom: below }}>
      {lined ? <Hairline {...line} /> : null}
      <View sem={{ tag: 'TR' }} style={{ flexDirection: rowDirection(theme.direction) }}>
        {table.columns.map((_, index) =>
          index === 0 ? (
            <NameCell key={index} shape={shape} row={row} index={index} />
          ) : (
            <ValueCell key={index} shape={shape} row={row} index={index} />
          ),
        )}
      </View>
    </View>
  );
}

/** A pale bar with the name of the rows below it. On the clinician sheet it hangs out, so that its text aligns. */
export function GroupBand({
  shape,
  text,
}: {
  readonly shape: RowShape;
  readonly text: string;
}): ReactElement {
  const { theme, table } = shape;
  const hang = theme.density === 'clinician' ? 4 : 0;
  const role = { ...typeOfRows(shape).name, weight: 700 as const };
  const band = {
    backgroundColor: palette.pale,
    marginHorizontal: -hang,
    paddingHorizontal: hang,
    paddingVertical: 2.5,
  };
  return (
    <View style={{ width: theme.width }}>
      <View sem={{ tag: 'TR' }} style={{ width: theme.width + 2 * hang, ...band }}>
        <View
          sem={{ tag: 'TH', scope: 'Row', columnSpan: table.columns.length }}
          style={{ width: theme.width }}
        >
          <Words theme={theme} text={text} role={role} width={theme.width} sem={{ tag: 'P' }} />
        </View>
      </View>
    </View>
  );
}
