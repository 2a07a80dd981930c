import type { DocumentTree } from '../model/document.ts';
import type { Direction } from '../pictures/palette.ts';
import { pictureColumn } from '../pictures/palette.ts';
import { clinicianEdition } from './edition-clinician.ts';
import { leadType } from './lead-type.ts';
import { largeEdition } from './edition-large.ts';
import { standardEdition } from './edition-standard.ts';
import type { Edition, TypeRole } from './edition.ts';

export type { TypeRole, Weight } from './edition.ts';

export type { Direction } from '../pictures/palette.ts';
export { palette } from '../pictures/palette.ts';

/** Where the first baseline of a text lies below its top, for Fira Sans: ascent 0.935, descent 0.265 of the size. */
export function firstBaseline({ size, lineHeight }: TypeRole): number {
  return (lineHeight - 1.2 * size) / 2 + 0.935 * size;
}

/** Rows of strips and their white, in points. */
export const strip = {
  /** Above the first line of words, where a picture stands beside them. */
  wordsTop: 4,
  /** Above a picture of people: level with the capitals of the words. */
  pictureTop: 8,
  rangeTop: 11,
  bottom: 8,
  /** White between two rows of the picture column, over which it runs on; all of it may be closed up to save a page. */
  pictureGap: 3,
  /** Rows of words without a picture column; the first hangs under its heading. */
  textTop: 8,
  textBottom: 5,
  /** Rows of words in small type alone: lists of sources. */
  smallTextTop: 5,
  smallTextBottom: 3,
  /** White between two such rows, and how much of it may be closed up to save a page. */
  textGap: 4,
  textShrink: 3,
  betweenParagraphs: 3,
  firstTextPadding: 2,
  tagGap: 5,
  columnCorner: 14,
  axisHead: 38,
  axisFoot: 22,
} as const;

/** Names, pictures and words begin at the same three places on every page. They add up to the content width, 492. */
export const columns = {
  name: 106,
  nameGap: 10,
  picture: pictureColumn,
  pictureGap: 14,
  words: 170,
  /** Text and table fields: everything after the name and its gap. */
  field: 376,
  /** The way-back picture with its gap; the words take the rest of the field. */
  wayBack: 60,
  /**
   * Between the columns of a table; more after a column whose numbers end at its edge, and where the words of a script fill
   * their squares, so that heads side by side would read as one.
   */
  tableGap: 8,
  wideTableGap: 16,
  afterEndAligned: 14,
} as const;

const wideScripts: ReadonlySet<string | undefined> = new Set(['Hans', 'Kore', 'Deva']);

/** White between the columns of a table of choices. Points. */
export function tableGapOf(language: string): number {
  const wide = wideScripts.has(new Intl.Locale(language).maximize().script);
  return wide ? columns.wideTableGap : columns.tableGap;
}

/** Everything a block needs to know about the page it will stand on. */
export interface Theme extends Edition {
  readonly direction: Direction;
  readonly language: string;
}

/** The edition that a document is set in. */
export function editionOf({ audience, edition }: Pick<DocumentTree, 'audience' | 'edition'>): Edition {
  if (audience === 'clinician') return clinicianEdition;
  return edition === 'large-print' ? largeEdition : standardEdition;
}

/** White between signs, in points, where a document has a frame of many. */
const BETWEEN_MANY_SIGNS = 5;

/**
 * A frame of more signs is set smaller and closer, so that the page for the fridge stays one page; and all others of the document
 * with it, where they share pages, as they seldom do in large print: what can wait is not larger than what cannot.
 */
export const MANY_SIGNS = 7;

export function themeOf(tree: DocumentTree): Theme {
  const edition = editionOf(tree);
  const frames = tree.blocks.flatMap((block) => (block.type === 'warning-frames' ? block.frames : []));
  const fridge = tree.audience === 'patient' && frames.length > 0;
  const small = edition.flow === 'beside' && frames.some(({ items }) => items.length > MANY_SIGNS);
  const type = small ? { ...edition.type, frameItem: edition.type.lead } : edition.type;
  return {
    ...edition,
    space: small ? { ...edition.space, betweenSigns: BETWEEN_MANY_SIGNS } : edition.space,
    type: leadType(fridge ? { ...type, pageTitle: type.fridgeTitle } : type, tree.language),
    direction: tree.direction,
    language: tree.language,
  };
}

/** Children of a row laid from the start edge to the end edge. */
export function rowDirection(direction: Direction): 'row' | 'row-reverse' {
  return direction === 'rtl' ? 'row-reverse' : 'row';
}

export function alignStart(direction: Direction): 'left' | 'right' {
  return direction === 'rtl' ? 'right' : 'left';
}

export function alignEnd(direction: Direction): 'left' | 'right' {
  return direction === 'rtl' ? 'left' : 'right';
}

/** Distance from the start edge as a style, for absolutely placed boxes. */
export function fromStart(direction: Direction, offset: number): { left: number } | { right: number } {
  return direction === 'rtl' ? { right: offset } : { left: offset };
}

/** White at the start and the end edge within a box. */
export function padding(
  direction: Direction,
  { start, end }: { readonly start: number; readonly end: number },
): { paddingLeft: number; paddingRight: number } {
  const [left, right] = direction === 'rtl' ? [end, start] : [start, end];
  return { paddingLeft: left, paddingRight: right };
}

/** White before a box in a row. */
export function gapStart(
  direction: Direction,
  gap: number,
): { marginLeft: number } | { marginRight: number } {
  return direction === 'rtl' ? { marginRight: gap } : { marginLeft: gap };
}

export function fromEnd(direction: Direction, offset: number): { left: number } | { right: number } {
  return direction === 'rtl' ? { left: offset } : { right: offset };
}
