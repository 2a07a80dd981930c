import type { Block, Inline, List, Paragraph, Strip, StripRow, Table, TableRow } from '../model/document.ts';
import { afterLabel, listComma } from '../model/list-marks.ts';

/**
 * A table as rows of words: what names a row, then each head with what stands under it, `colon` between the two. A band
 * becomes a heading.
 */
export function stackTable(table: Table, colon: string): readonly Block[] {
  return groupsOf(table.rows).flatMap(({ group, rows }): readonly Block[] => {
    const shown = rows.length === 0 ? [] : [stripOf(table, rows, colon)];
    if (group === undefined) return shown;
    return [{ type: 'heading', level: 3, text: group, origin: table.origin }, ...shown];
  });
}

function stripOf({ columns, origin }: Table, rows: readonly TableRow[], colon: string): Strip {
  return { type: 'strip', layout: 'text', rows: rows.map((row) => stackRow(columns, row, colon)), origin };
}

/** Notes of which is known where each is cited first. */
export type CitedNotes = List & Required<Pick<List, 'citedIn'>>;

/**
 * A table of large print goes on for pages: each row is followed by the notes that it is the first to cite, so that
 * nobody looks for them pages further on.
 */
export function stackWithNotes(table: Table, notes: CitedNotes, colon: string): readonly Block[] {
  const ends = [...new Set(notes.citedIn)].map((row) => row + 1);
  const cuts = [...new Set([...ends, table.rows.length])].sort((a, b) => a - b);
  return cuts.flatMap((end, index) => {
    const strip = stripOf(table, table.rows.slice(cuts[index - 1] ?? 0, end), colon);
    return [index === 0 ? strip : { ...strip, goesOn: true }, ...notesCitedIn(notes, end - 1)];
  });
}

function notesCitedIn(notes: CitedNotes, row: number): readonly List[] {
  const { citedIn, first = 1, ...list } = notes;
  const index = citedIn.indexOf(row);
  if (index === -1) return [];
  return [{ ...list, items: list.items.filter((_, at) => citedIn[at] === row), first: first + index }];
}

interface Group {
  readonly group: string | undefined;
  readonly rows: readonly TableRow[];
}

/** Rows by the band that they stand under. A band may be a row of its own. */
function groupsOf(rows: readonly TableRow[]): readonly Group[] {
  const groups: { group: string | undefined; rows: TableRow[] }[] = [];
  for (const row of rows) {
    if (row.group !== undefined || groups.length === 0) groups.push({ group: row.group, rows: [] });
    if (row.cells.length > 0) groups.at(-1)?.rows.push(row);
  }
  return groups;
}

function stackRow(columns: Table['columns'], { cells, tag, origin }: TableRow, colon: string): StripRow {
  const [first = [], ...others] = cells;
  const name = first.slice(0, 1).filter(({ inlines }) => inlines.every(isPlain));
  const rest = first.slice(name.length);
  const words = others.flatMap((cell, index) => labelled(columns[index + 1]?.label ?? '', cell, colon));
  return {
    name: name.flatMap(({ inlines }) => inlines.map(({ value }) => value)).join(''),
    ...(tag === undefined ? {} : { tag }),
    words: [...rest, ...words],
    origin,
  };
}

/** A figure, and words that stand on rows of the evidence, keep what they are tied to: they never become a bare name. */
function isPlain(inline: Inline): boolean {
  return inline.type === 'text' && inline.statements === undefined && inline.language === undefined;
}

/** The head of a column and what stands under it, on one line where there is room. */
function labelled(label: string, cell: readonly Paragraph[], colon: string): readonly Paragraph[] {
  const [first, ...others] = cell;
  if (first === undefined || label === '') return cell;
  const bold = first.role === 'number' || first.role === 'strong';
  const values = first.inlines.map(standAlone).map((inline) => (bold ? { ...inline, bold } : inline));
  const lead = text(label + afterLabel(label, colon));
  const goesOn = others.findIndex((other) => !isRemark(other));
  const remarks = goesOn === -1 ? others : others.slice(0, goesOn);
  const inlines = [
    lead,
    ...values,
    ...remarks.flatMap((remark) => [text(listComma(label)), ...remark.inlines]),
  ];
  return [{ ...first, role: 'body', inlines }, ...others.slice(remarks.length)];
}

/** Rows go over pages, away from the sentence over the table: each figure says what it is out of. */
function standAlone(inline: Inline): Inline {
  if (inline.type === 'text' || inline.alone === undefined) return inline;
  const { alone: value, ...figure } = inline;
  return { ...figure, value };
}

function text(value: string): Inline {
  return { type: 'text', value };
}

/** Words under a figure that are no sentence of their own: at what time it was, which note is about it. */
function isRemark({ role, inlines: [first] }: Paragraph): boolean {
  return role === 'small' && first !== undefined && /^\p{Ll}/u.test(first.value);
}
