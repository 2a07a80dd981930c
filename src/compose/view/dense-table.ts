import type { Markup } from '../../model/locale.ts';
import type { Scene } from './scene.ts';
import { body } from './shared-shapes.ts';
import type { TableView } from './shared-shapes.ts';

interface Column {
  readonly key: string;
  /** Percent of the page. */
  readonly width: number;
  readonly align?: string;
}

export interface DenseRow {
  readonly group: string;
  readonly cells: readonly Markup[];
}

/** Heads of a table of the clinician sheet, from `clinician-sheet.<table>.<key>`. */
export function labels(scene: Scene, table: string, columns: readonly Column[]): TableView['columns'] {
  return columns.map(({ key, width, align }) => ({
    label: scene.words.plain(`clinician-sheet.${table}.${key}`),
    width: String(width),
    align: align ?? 'start',
  }));
}

/** A band over the whole width that names the rows under it. */
export function groupRow(name: string): DenseRow {
  return { group: name, cells: [] };
}

export function denseTable(columns: TableView['columns'], rows: readonly DenseRow[]): TableView {
  return {
    lead: [],
    columns,
    rows: rows.map(({ group, cells }) => ({
      group,
      tag: '',
      cells: cells.map((words) => ({ lines: words.markup === '' ? [] : [body(words)] })),
    })),
    notes: [],
  };
}
