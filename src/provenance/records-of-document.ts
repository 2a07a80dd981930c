import type { DocumentTree } from '../model/document.ts';

export interface RecordOfDocument {
  readonly record: string;
  /** Cells of the comparison that print a figure from it, sorted. */
  readonly cells: readonly string[];
}

/** The evidence records whose figures a document prints, sorted by id. */
export function recordsOf(tree: DocumentTree): readonly RecordOfDocument[] {
  const cellsByRecord = new Map<string, Set<string>>();
  for (const { cell, records } of figuresIn(tree.blocks)) {
    for (const record of records) {
      const cells = cellsByRecord.get(record) ?? new Set();
      cellsByRecord.set(record, cells.add(cell));
    }
  }
  return [...cellsByRecord]
    .map(([record, cells]) => ({ record, cells: [...cells].sort(byText) }))
    .sort((a, b) => byText(a.record, b.record));
}

interface Figure {
  readonly cell: string;
  readonly records: readonly string[];
}

/** Figures stand at every depth and in every kind of block, so the tree is searched as plain data. */
function figuresIn(node: unknown): Figure[] {
  if (typeof node !== 'object' || node === null) return [];
  if (isFigure(node)) return [node];
  return Object.values(node).flatMap(figuresIn);
}

function isFigure(node: object): node is Figure {
  return 'type' in node && node.type === 'figure' && 'cell' in node && 'records' in node;
}

function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
