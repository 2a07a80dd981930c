import type { Cell, ComparisonTable, KnownCell } from '../../model/comparison.ts';

/** A cell with the denominator of the table or picture that shows it first. */
export interface ShownCell<C extends Cell = Cell> {
  readonly cell: C;
  readonly denominator: 100 | 1000;
}

/** Every cell that a patient page may show, each once: weights, then topics in their order, then stays. */
export function cellsShown(comparison: ComparisonTable): readonly ShownCell[] {
  const found = new Map<string, ShownCell>();
  const add = (cell: Cell, denominator: 100 | 1000): void => {
    if (!found.has(cell.id)) found.set(cell.id, { cell, denominator });
  };
  for (const row of [comparison.weight.main, ...comparison.weight.over]) for (const cell of row.cells) add(cell, 100);
  for (const { picture, rows, denominator } of comparison.topics) {
    for (const cell of picture?.cells ?? []) add(cell, picture?.denominator ?? denominator);
    for (const row of rows) for (const cell of row.cells) add(cell, denominator);
  }
  for (const option of comparison.options) add(option.stay, 100);
  return [...found.values()];
}

export function knownCells(comparison: ComparisonTable): readonly ShownCell<KnownCell>[] {
  return cellsShown(comparison).filter((shown): shown is ShownCell<KnownCell> => shown.cell.state === 'known');
}
