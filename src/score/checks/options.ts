import type { Strip, Table } from '../../model/document.ts';
import { labelText } from '../../model/text-piece.ts';
import { comparisonOf, ofType } from '../pages.ts';
import type { Pages, Placed } from '../pages.ts';
import { isWordsOf, textsOf, wordsOf } from '../words-of.ts';

export type Board = Placed<Strip | Table>;

/** Strips and tables of the comparison under a question. */
export function boardsUnder(pages: Pages, key: string, variables: readonly string[] = []): readonly Board[] {
  const words = wordsOf(pages.locale, key, variables);
  return boards(pages).filter(({ topic }) => topic !== undefined && isWordsOf(topic.question, words));
}

/** Every strip and table of the comparison that has a row an option. */
export function boards(pages: Pages): readonly Board[] {
  return ofType(comparisonOf(pages), 'strip', 'table');
}

/** What the rows of a strip or table are called. */
export function rowNames({ block }: Board): readonly string[] {
  return block.type === 'strip'
    ? block.rows.map(({ name }) => labelText(name))
    : block.rows.map(({ cells: [first = []] }) => textsOf(first.slice(0, 1)));
}

/** The options as the first strip lists them. */
export function optionNames(pages: Pages): readonly string[] {
  const [choices] = boardsUnder(pages, 'comparison.choices.question');
  return choices === undefined ? [] : rowNames(choices);
}

/** The boards that say something in a row for each option. */
export function namingAll(pages: Pages, boards: readonly Board[]): readonly Board[] {
  const names = optionNames(pages);
  return names.length === 0 ? [] : boards.filter((board) => names.every((name) => saysOf(board, name)));
}

function saysOf(board: Board, option: string): boolean {
  const at = rowNames(board).indexOf(option);
  if (at === -1) return false;
  if (board.block.type === 'strip') return textsOf(board.block.rows[at]?.words ?? []) !== '';
  const [, ...cells] = board.block.rows[at]?.cells ?? [];
  return cells.length > 0 && cells.every((cell) => textsOf(cell) !== '');
}
