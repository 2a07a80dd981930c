import type { DocumentTree } from '../model/document.ts';
import type { Direction } from '../pictures/palette.ts';
import { pictureColumn } from '../pictures/palette.ts';

export type { Direction } from '../pictures/palette.ts';
export { palette } from '../pictures/palette.ts';

// Lengths are in points, 72 to the inch.
export type Weight = 400 | 600 | 700;

export interface TypeRole {
  readonly size: number;
  readonly lineHeight: number;
  readonly weight: Weight;
}

function role(size: number, lineHeight: number, weight: Weight): TypeRole {
  return { size, lineHeight, weight };
}

/** Where the first baseline of a text lies below its top, for Fira Sans: ascent 0.935, descent 0.265 of the size. */
export function firstBaseline({ size, lineHeight }: TypeRole): number {
  return (lineHeight - 1.2 * size) / 2 + 0.935 * size;
}

const patientType = {
  decision: role(34, 39, 700),
  pageTitle: role(28, 32, 700),
  topic: role(20, 24, 700),
  lean: role(17, 23, 700),
  number: role(16, 20, 700),
  smallHeading: role(15, 19, 700),
  tableNumber: role(15, 17, 700),
  lead: role(14, 20, 400),
  body: role(13, 18, 400),
  strong: role(13, 18, 700),
  cell: role(13, 17, 400),
  name: role(13, 17, 700),
  tableHead: role(13, 17, 600),
  small: role(12, 15, 400),
  label: role(12, 15, 600),
  labelStrong: role(12, 15, 700),
  /** Frames of warning signs: their heads, what they list, the clinic's numbers and the one for an emergency. */
  frameHead: role(22, 26, 700),
  frameItem: role(16.5, 21, 400),
  phone: role(21, 25, 700),
  emergency: role(34, 38, 700),
  /** A day of the calendar. */
  dayNote: role(12, 14.5, 400),
} as const;

export type RoleName = keyof typeof patientType;
export type TypeScale = Readonly<Record<RoleName, TypeRole>>;

/** The sheet for clinicians: small and close. Nothing a patient reads is ever set in it. */
const clinicianType: TypeScale = {
  decision: role(17, 20, 700),
  pageTitle: role(17, 20, 700),
  topic: role(10.5, 13, 700),
  lean: role(10.5, 13, 700),
  number: role(8.5, 11, 700),
  smallHeading: role(9, 12, 700),
  tableNumber: role(8.5, 11, 700),
  lead: role(9, 12, 400),
  body: role(8.5, 11, 400),
  strong: role(8.5, 11, 700),
  cell: role(8.5, 11, 400),
  name: role(8.5, 11, 700),
  tableHead: role(8.5, 11, 700),
  small: role(8.5, 11, 400),
  label: role(8.5, 11, 600),
  labelStrong: role(8.5, 11, 700),
  frameHead: role(10.5, 13, 700),
  frameItem: role(8.5, 11, 400),
  phone: role(10.5, 13, 700),
  emergency: role(10.5, 13, 700),
  dayNote: role(8.5, 11, 400),
};

/** Title of a page that hangs on a fridge. */
const fridgeTitle = role(34, 38, 700);

/** Rows of strips and their white, in points. */
export const strip = {
  /** Above the first line of words, where a picture stands beside them. */
  wordsTop: 4,
  /** Above a picture of people: level with the capitals of the words. */
  pictureTop: 8,
  rangeTop: 11,
  bottom: 8,
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
  /** Between the columns of a table; more after a column whose numbers end at its edge. */
  tableGap: 8,
  afterEndAligned: 14,
} as const;

const patientSpace = {
  betweenTopics: 30,
  afterCover: 28,
  betweenBlocks: 18,
  afterPageTitle: 4,
  afterSmallHeading: 6,
  topicRule: 2.5,
  ruleToQuestion: 9,
  questionToIntro: 4,
  headToRows: 8,
  betweenParagraphs: 6,
  cellPadding: 7,
  /** The part of it under a row that may be closed up to save a page. */
  cellShrink: 3,
  betweenSteps: 8,
  betweenBullets: 6,
  /** Items of a list in small type. */
  betweenNotes: 3,
  /** A key or a note and the strip or table it explains. */
  noteAfterStrip: 10,
  /** Frames of warning signs, and what to say below them; the part that may be closed up to save a page. */
  betweenFrames: 12,
  frameShrink: 4,
} as const;

export type Space = Readonly<Record<keyof typeof patientSpace, number>>;

const clinicianSpace: Space = {
  betweenTopics: 13,
  afterCover: 13,
  betweenBlocks: 8,
  afterPageTitle: 5,
  afterSmallHeading: 3,
  topicRule: 0,
  ruleToQuestion: 0,
  questionToIntro: 2,
  headToRows: 5,
  betweenParagraphs: 3,
  cellPadding: 2.3,
  cellShrink: 0,
  betweenSteps: 3,
  betweenBullets: 2,
  betweenNotes: 2,
  noteAfterStrip: 4,
  betweenFrames: 6,
  frameShrink: 2,
};

/** Strokes of the two densities. */
const patientRules = { tableHead: 1.2, tableTop: 0, row: 0.5, facts: 1.2 } as const;
const clinicianRules = { tableHead: 1, tableTop: 0.6, row: 0.3, facts: 1.6 } as const;

export type Rules = Readonly<Record<keyof typeof patientRules, number>>;

/** Everything a block needs to know about the page it will stand on. */
export interface Theme {
  readonly density: 'patient' | 'clinician';
  readonly direction: Direction;
  readonly language: string;
  /** Content width: 492 on patient pages of either paper, 532 on the clinician sheet. */
  readonly width: number;
  /** Prose measure, about 62 characters of body type. */
  readonly measure: number;
  readonly type: TypeScale;
  readonly space: Space;
  readonly rules: Rules;
}

export function themeOf(tree: DocumentTree): Theme {
  const shared = { direction: tree.direction, language: tree.language };
  if (tree.audience === 'clinician') {
    const sizes = { type: clinicianType, space: clinicianSpace, rules: clinicianRules };
    return { ...shared, density: 'clinician', width: 532, measure: 532, ...sizes };
  }
  const fridge = tree.blocks.some((block) => block.type === 'warning-frames');
  const type: TypeScale = fridge ? { ...patientType, pageTitle: fridgeTitle } : patientType;
  const sizes = { type, space: patientSpace, rules: patientRules };
  return { ...shared, density: 'patient', width: 492, measure: 440, ...sizes };
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
