import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { TableRow } from '../../model/document.ts';
import type { Theme } from '../theme.ts';
import type { Unit } from '../unit.ts';
import { ContinuedHead } from './continued-head.tsx';
import { GroupBand, Row, TableHead, columnBoxes } from './table-row.tsx';
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

function withBand(shape: RowShape, row: TableRow, lined: boolean): ReactElement {
  const band = row.group === undefined ? null : <GroupBand shape={shape} text={row.group} />;
  const cells =
    row.cells.length === 0 ? null : <Row shape={shape} row={row} lined={lined && band === null} />;
  return (
    <>
      {band}
      {cells}
    </>
  );
}

/** One unit for the head, one a row. A band is kept with the row under it and repeated where its rows go on. */
export function tableUnits(block: OfType<'table'>, place: Place): readonly Unit[] {
  const { theme, key } = place;
  const { rows } = block;
  if (rows.length === 0) return [];
  const shape: RowShape = { theme, table: block, boxes: columnBoxes(block, theme) };
  const id = `${key}.table`;
  const head = inTable(id, <TableHead shape={shape} />, theme);
  const headUnit = {
    key: `${key}.head`,
    origin: block.origin,
    element: head,
    gapBefore: 0,
    keepWithNext: true,
  };
  let group: string | undefined;
  const rowUnits = rows.map((row, index): Unit => {
    const continued = group;
    group = row.group ?? group;
    const afterBand = index > 0 && rows[index - 1]?.cells.length === 0;
    const element = inTable(id, withBand(shape, row, index > 0 && !afterBand), theme);
    const band =
      row.group !== undefined || continued === undefined ? null : (
        <GroupBand shape={shape} text={continued} />
      );
    return {
      key: `${key}.row.${index}`,
      origin: row.origin,
      element,
      gapBefore: 0,
      keepWithNext: row.group !== undefined && row.cells.length === 0 && index < rows.length - 1,
      continuation: (
        <ContinuedHead place={place}>
          <TableHead shape={shape} />
          {band}
        </ContinuedHead>
      ),
    };
  });
  // A long dense table is read row by row: it may break anywhere. A table of choices is compared: it stays whole.
  if (block.layout === 'dense') return [headUnit, ...rowUnits];
  return [{ ...headUnit, group: key }, ...groupRows(rowUnits, key)];
}
