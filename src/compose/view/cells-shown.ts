import type { Cell, ComparisonTable, KnownCell } from '../../model/comparison.ts';

/** A cell with the denominator of the table or picture that shows it first. */
export interface ShownCell<C extends Cell = Cell> {
  readonly cell: C;
  readonly denominator: 100 | 1000;
}

/**
 * Every cell that a patient page may show, each once: weights, then topics in their order, what only the record of the
 * talk says, then stays.
 */
export function cellsShown(comparison: ComparisonTable): readonly ShownCell[] {
  const weights = [comparison.weight.main, ...comparison.weight.over].flatMap(({ cells }) => cells);
  const stays = comparison.options.map((option) => option.stay);
  const all = [
    ...outOf(weights, 100),
    ...topicCells(comparison),
    ...outOf(comparison.furtherHarms, 1000),
    ...outOf(stays, 100),
  ];
  const ids = all.map(({ cell }) => cell.id);
  return all.filter(({ cell }, index) => ids.indexOf(cell.id) === index);
}

/** Cells of the topics: of the picture first, then of the table. */
export function topicCells({ topics }: Pick<ComparisonTable, 'topics'>): readonly ShownCell[] {
  return topics.flatMap(({ picture, rows, denominator }) => [
    ...(picture === null ? [] : outOf(picture.cells, picture.denominator)),
    ...rows.flatMap((row) => outOf(row.cells, denominator)),
  ]);
}

function outOf(cells: readonly Cell[], denominator: 100 | 1000): readonly ShownCell[] {
  return cells.map((cell) => ({ cell, denominator }));
}

export function knownCells(comparison: ComparisonTable): readonly ShownCell<KnownCell>[] {
  return cellsShown(comparison).filter(
    (shown): shown is ShownCell<KnownCell> => shown.cell.state === 'known',
  );
}
