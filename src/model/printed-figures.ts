import type { DocumentTree } from './document.ts';
import { expectedText } from './tree-text.ts';

/** What documents print: which record stands behind a figure of which cell of the comparison. */
export type PrintedFigures = ReadonlySet<string>;

/**
 * Every figure of these documents, taken from the pages as they were made, not from what they were made of: a choice of
 * rows, a line drawn in its place or the clinic's own words can keep a figure off the paper.
 */
export function printedFigures(trees: readonly DocumentTree[]): PrintedFigures {
  const figures = trees.flatMap(expectedText).flatMap((piece) => piece.figures);
  return new Set(figures.flatMap(({ cell, records }) => records.map((record) => keyOf(cell, record))));
}

export function isPrinted(printed: PrintedFigures, cell: string, record: string): boolean {
  return printed.has(keyOf(cell, record));
}

function keyOf(cell: string, record: string): string {
  return `${cell} ${record}`;
}
