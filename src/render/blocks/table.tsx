import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { TableRow } from '../../model/document.ts';
import type { Theme } from '../theme.ts';
import type { Unit } from '../unit.ts';
import { ContinuedHead } from './continued-head.tsx';
import { GroupBand, Row, TableHead, columnBoxes, shrinkOf } from './table-row.tsx';
import type { RowShape } from './table-row.tsx';
import { groupRows } from './unit-parts.ts';
import type { OfType, Place } from './unit-parts.ts';

function inTable(id: string, element: ReactElement, theme: Theme): ReactElement {
  return (
    <View sem={{ tag: 'Table', id }} style={{ width: theme.width }}>
      {element}
    </View>
  );
}

interface RowPlace {
  readonly shape: RowShape;
  readonly place: Place;
  readonly index: number;
}

/** Whether a line divides a row from what is above it: not under the head's rule, nor under a band. */
function isLined({ shape, index }: RowPlace): boolean {
  const { rows } = shape.table;
  return index > 0 && rows[index]?.group === undefined && rows[index - 1]?.cells.length !== 0;
}

/** A row with the band of its group above it; a band may also be a row of its own. */
function RowWithBand({ at, row }: { readonly at: RowPlace; readonly row: TableRow }): ReactElement {
  const { shape } = at;
  return (
    <>
      {row.group === undefined ? null : <GroupBand shape={shape} text={row.group} />}
      {row.cells.length === 0 ? null : <Row shape={shape} row={row} lined={isLined(at)} />}
    </>
  );
}

/** Group that each row belongs to, if any. */
function groupsOf(rows: readonly TableRow[]): readonly (string | undefined)[] {
  let group: string | undefined;
  return rows.map((row) => (group = row.group ?? group));
}

/** Heads to repeat above each row; the same element for all rows of a group, which is then set once. */
function continuations({ shape, place }: Omit<RowPlace, 'index'>): readonly ReactElement[] {
  const heads = new Map<string | undefined, ReactElement>();
  const groups = groupsOf(shape.table.rows);
  return shape.table.rows.map((row, index) => {
    const group = row.group === undefined ? groups[index] : undefined;
    const head = heads.get(group) ?? (
      <ContinuedHead place={place}>
        <TableHead shape={shape} />
        {group === undefined ? null : <GroupBand shape={shape} text={group} />}
      </ContinuedHead>
    );
    heads.set(group, head);
    return head;
  });
}

/**
 * Of rows under one band at least two stand on either side of a break, and a band never stands alone; a row without
 * neighbours under its band may.
 */
function staysWithNext(rows: readonly TableRow[], index: number): boolean {
  const begins = (at: number): boolean => at >= rows.length || rows[at]?.group !== undefined;
  if (index + 1 >= rows.length) return false;
  if (rows[index]?.cells.length === 0) return true;
  if (begins(index + 1)) return false;
  const isFirst = index === 0 || begins(index) || rows[index - 1]?.cells.length === 0;
  return isFirst || begins(index + 2);
}

/** One unit for the head, one a row. A band is kept with the row under it and repeated where its rows go on. */
export function tableUnits(block: OfType<'table'>, place: Place): readonly Unit[] {
  const { theme, key } = place;
  const { rows } = block;
  if (rows.length === 0) return [];
  const shape: RowShape = { theme, table: block, boxes: columnBoxes(block, theme) };
  const id = `${key}.table`;
  const heads = continuations({ shape, place });
  const shrink = shrinkOf(shape);
  const rowUnits = rows.map((row, index): Unit => ({
    key: `${key}.row.${index}`,
    origin: row.origin,
    element: inTable(id, <RowWithBand at={{ shape, place, index }} row={row} />, theme),
    gapBefore: index === 0 ? 0 : shrink,
    ...(index === 0 || shrink === 0 ? {} : { gapShrink: shrink }),
    keepWithNext: staysWithNext(rows, index),
    ...(heads[index] === undefined ? {} : { continuation: heads[index] }),
  }));
  const head = inTable(id, <TableHead shape={shape} />, theme);
  const headUnit: Unit = {
    key: `${key}.head`,
    origin: block.origin,
    element: head,
    gapBefore: 0,
    keepWithNext: true,
  };
  // A long dense table is read row by row: it may break anywhere. A table of choices is compared: it stays whole.
  if (block.layout === 'dense') return [headUnit, ...rowUnits];
  return [{ ...headUnit, group: key }, ...groupRows(rowUnits, key)];
}
