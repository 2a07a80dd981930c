import type { ReactElement } from 'react';
import type { Table, TableRow } from '../../model/document.ts';
import type { OfType, Place } from '../place.ts';
import { Paragraphs, hasWords } from '../words.tsx';
import { Cell, ColumnHeads, RowHead, TableOf } from './table-parts.tsx';
import { Words } from '../whole-words.tsx';

/** A table of more columns keeps them only on a wide page. */
const mostBesideEachOther = 6;

interface RowProps {
  readonly row: TableRow;
  readonly table: Table;
  readonly place: Place;
}

function Row({ row, table, place }: RowProps): ReactElement {
  return (
    <tr role="row">
      {table.columns.map(({ label, align }, index) => {
        const words = <Paragraphs paragraphs={row.cells[index] ?? []} place={place} />;
        if (index > 0)
          return (
            <Cell key={index} label={label} align={align}>
              {words}
            </Cell>
          );
        // A row that goes on with the one above it has no name of its own.
        if (!(row.cells[0] ?? []).some(hasWords) && row.tag === undefined) return <Cell key={index} />;
        return (
          <RowHead key={index}>
            {words}
            {row.tag === undefined ? null : (
              <p className="tag">
                <Words text={row.tag} />
              </p>
            )}
          </RowHead>
        );
      })}
    </tr>
  );
}

interface Group {
  readonly name?: string;
  readonly rows: readonly TableRow[];
}

function hasCells({ cells, tag }: TableRow): boolean {
  return tag !== undefined || cells.some((words) => words.some(hasWords));
}

/** Rows under the band that names them, which may be a row of its own. */
function groupsOf(rows: readonly TableRow[]): readonly Group[] {
  const groups: { name?: string; rows: TableRow[] }[] = [];
  for (const row of rows) {
    const last = groups.at(-1);
    const own = hasCells(row) ? [row] : [];
    if (row.group !== undefined) groups.push({ name: row.group, rows: own });
    else if (last === undefined) groups.push({ rows: [row] });
    else last.rows.push(row);
  }
  return groups;
}

/** Shares of the width, where a dense table gives them. */
function Widths({ table }: { readonly table: Table }): ReactElement | null {
  if (table.layout !== 'dense') return null;
  return (
    <colgroup>
      {table.columns.map(({ width }, index) => (
        <col key={index} {...(width === undefined ? {} : { style: { width: `${String(width)}%` } })} />
      ))}
    </colgroup>
  );
}

export function tableBlock(table: OfType<'table'>, place: Place): ReactElement | null {
  const { columns, rows, layout } = table;
  if (rows.length === 0) return null;
  const aligned = columns.map(({ align }) => align ?? 'start');
  return (
    <TableOf
      caption={place.title}
      className={`${columns.length > mostBesideEachOther ? 'wide' : 'stacked'} ${layout}`}
    >
      <Widths table={table} />
      <ColumnHeads labels={columns.map(({ label }) => label)} aligned={aligned} />
      {groupsOf(rows).map((group, index) => (
        <tbody key={index} role="rowgroup">
          {group.name === undefined ? null : (
            <tr role="row" className="group">
              <th role="rowheader" scope="rowgroup" colSpan={columns.length}>
                <Words text={group.name} />
              </th>
            </tr>
          )}
          {group.rows.map((row, at) => (
            <Row key={at} row={row} table={table} place={place} />
          ))}
        </tbody>
      ))}
    </TableOf>
  );
}
