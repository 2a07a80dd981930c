import type { DocumentTree, TextRun } from '../model/document.ts';
import { holdsFigure, theCase } from '../model/statement.ts';
import { expectedText } from '../model/tree-text.ts';

export interface RecordOfDocument {
  readonly record: string;
  /** Cells of the comparison that print a figure from it, sorted. */
  readonly cells: readonly string[];
}

/** The evidence records whose figures a document prints, sorted by id. */
export function recordsOf(tree: DocumentTree): readonly RecordOfDocument[] {
  const cellsByRecord = new Map<string, Set<string>>();
  for (const { cell, records } of expectedText(tree).flatMap((piece) => piece.figures)) {
    for (const record of records) {
      const cells = cellsByRecord.get(record) ?? new Set();
      cellsByRecord.set(record, cells.add(cell));
    }
  }
  return [...cellsByRecord]
    .map(([record, cells]) => ({ record, cells: [...cells].sort(byText) }))
    .sort((a, b) => byText(a.record, b.record));
}

export interface StatementOfDocument {
  /** For example `undo:bypass` or `caution:reflux-sleeve` (see model/statement.ts). */
  readonly statement: string;
  /** Whether a number stands in what is printed of it: the words for some people leave the figures out. */
  readonly figures: boolean;
}

/**
 * The rows of the evidence, other than records, that whole sentences of a document stand on, sorted by id. The case is
 * none of them: every document is made from it.
 */
export function statementsOf(tree: DocumentTree): readonly StatementOfDocument[] {
  const figuresByStatement = new Map<string, boolean>();
  for (const { value, statements } of nodesIn(tree.blocks, isStanding)) {
    for (const id of statements.filter((statement) => statement !== theCase)) {
      figuresByStatement.set(id, (figuresByStatement.get(id) ?? false) || holdsFigure(value));
    }
  }
  return [...figuresByStatement]
    .map(([statement, figures]) => ({ statement, figures }))
    .sort((a, b) => byText(a.statement, b.statement));
}

/** Runs stand at every depth and in every kind of block, so the tree is searched as plain data. */
function nodesIn<T extends object>(node: unknown, wanted: (node: object) => node is T): readonly T[] {
  if (typeof node !== 'object' || node === null) return [];
  if (wanted(node)) return [node];
  return Object.values(node).flatMap((child) => nodesIn(child, wanted));
}

type StandingRun = TextRun & Required<Pick<TextRun, 'statements'>>;

function isStanding(node: object): node is StandingRun {
  return 'type' in node && node.type === 'text' && 'statements' in node;
}

function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
