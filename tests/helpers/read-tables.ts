import type { TableView } from '../../src/compose/view/shared-shapes.ts';
import type { Cell, ComparisonTable } from '../../src/model/comparison.ts';
import { fiveOptions, makeComparison } from './compose-inputs.ts';

/** Markup as a reader sees it. */
export function plain(markup = ''): string {
  return markup
    .replace(/<[^>]*>/g, '')
    .replaceAll('\u00a0', ' ')
    .replaceAll('&amp;', '&');
}

/** The words of each row, a cell each; a band is its name alone. */
export function rowsOf(table: TableView): readonly (readonly string[])[] {
  return table.rows.map(({ group, cells }) =>
    group === ''
      ? cells.map(({ lines }) => lines.map(({ words }) => plain(words.markup)).join(' '))
      : [group],
  );
}

/** The comparison of five options with each cell of the main weights changed. */
export function withMainCells(change: (cell: Cell) => Cell): ComparisonTable {
  const comparison = makeComparison(fiveOptions);
  const main = { ...comparison.weight.main, cells: comparison.weight.main.cells.map(change) };
  return { ...comparison, weight: { ...comparison.weight, main } };
}

/** The comparison with a stay in hospital for its first option. */
export function withStay(comparison: ComparisonTable, stay: Cell): ComparisonTable {
  const [first, ...others] = comparison.options;
  if (first === undefined) throw new Error('no option');
  return { ...comparison, options: [{ ...first, stay }, ...others] };
}

/** The same without the named keys. */
export function without<T extends object, K extends keyof T>(value: T, ...keys: readonly K[]): Omit<T, K> {
  return Object.fromEntries(Object.entries(value).filter(([key]) => !keys.includes(key as K))) as Omit<T, K>;
}
