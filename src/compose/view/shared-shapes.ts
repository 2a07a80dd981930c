import type { Markup } from '../../model/locale.ts';
import { asMarkup } from './words.ts';
import { count, flag, group, list, markup, optional, text } from './shape.ts';
import type { Viewed } from './shape.ts';

/** One paragraph. `duty` is empty for most. */
export const lineShape = group({ role: text, duty: text, words: markup });
export type Line = Viewed<typeof lineShape>;

export const rowShape = group({
  name: markup,
  tag: text,
  people: optional(group({ of: count, filled: count, may: count, half: flag, alt: text })),
  range: optional(
    group({ average: count, low: optional(count), high: optional(count), meaning: text, alt: text }),
  ),
  unknown: optional(group({ of: text, alt: text })),
  wayBack: optional(group({ possible: text, alt: text })),
  lines: list(lineShape),
});
export type Row = Viewed<typeof rowShape>;

export const tableShape = group({
  /** Sentence over the table, for example its time. */
  lead: list(lineShape),
  columns: list(group({ label: text, width: text, align: text })),
  rows: list(group({ group: text, tag: text, cells: list(group({ lines: list(lineShape) })) })),
  /** Numbered as the cells cite them. */
  notes: list(markup),
});
export type TableView = Viewed<typeof tableShape>;

/** A table of choices: each note is told with the row that cites it first, from 0. */
export const choiceTableShape = group({
  ...tableShape.fields,
  /** The number of the first note: they go on from those of the table before. */
  firstNote: count,
  notes: list(group({ row: count, words: markup })),
});
export type ChoiceTableView = Viewed<typeof choiceTableShape>;

export function body(words: Markup): Line {
  return { role: 'body', duty: '', words };
}

export function lineOf(role: 'body' | 'lead' | 'number' | 'strong' | 'small', words: Markup): Line {
  return { role, duty: '', words };
}

export function withDuty(duty: 'caution' | 'phone' | 'standard', words: Markup): Line {
  return { role: 'body', duty, words };
}

const noPicture = { people: null, range: null, unknown: null, wayBack: null };

/** A row without a picture; spread over it what the row has. */
export function plainRow(
  option: { readonly name: string | Markup; readonly tag: string },
  lines: readonly Line[],
): Row {
  const { name, tag } = option;
  return { ...noPicture, name: typeof name === 'string' ? asMarkup(name) : name, tag, lines };
}
