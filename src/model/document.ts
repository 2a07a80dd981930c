import type { Calendar } from './calendar.ts';
import type {
  Answers,
  Asides,
  Checklist,
  InterpreterBox,
  SayPanel,
  Signatures,
  TalkTable,
  TeachBack,
  TickItems,
  WarningFrames,
} from './care-blocks.ts';
import type { DocumentKind } from './codes.ts';
import type { Drawing } from './drawing.ts';
import type { Inline, Label, NodeBase, Paragraph } from './paragraph.ts';
import type { Axis, Picture, Tick } from './picture.ts';

export type { Duty, FigureRun, Inline, Label, Paragraph, TextRun } from './paragraph.ts';
export type { Axis, Picture, Tick } from './picture.ts';

export interface StripRow extends NodeBase {
  readonly name: Label;
  readonly tag?: string;
  readonly picture?: Picture;
  readonly words: readonly Paragraph[];
}

export interface Strip extends NodeBase {
  readonly type: 'strip';
  /** What the picture column holds; `text` has names and a wide field of words. */
  readonly layout: 'range' | 'people' | 'way-back' | 'text';
  readonly axis?: Axis;
  readonly rows: readonly StripRow[];
  /** Whether it goes on from the rows of another, with notes between. */
  readonly goesOn?: boolean;
}

export interface WeightPoint {
  readonly months: number;
  readonly at: number;
  readonly label: string;
  /** The cell of the comparison that the label gives, and the records that it stands on. */
  readonly cell: string;
  readonly records: readonly string[];
  readonly low?: number;
  readonly high?: number;
}

/** Small line over the measured times; nothing is drawn beyond the last. */
export interface WeightLine extends NodeBase {
  readonly type: 'weight-line';
  readonly name: string;
  readonly today: { readonly at: number; readonly label: string };
  readonly points: readonly WeightPoint[];
  readonly min: number;
  readonly max: number;
  readonly timeTicks: readonly Tick[];
  readonly valueTicks: readonly Tick[];
  readonly unknownAfter?: string;
  readonly alt: string;
}

/** Weight lines side by side, two in a row. */
export interface LineBoard extends NodeBase {
  readonly type: 'line-board';
  readonly lines: readonly WeightLine[];
}

export interface Table extends NodeBase {
  readonly type: 'table';
  /** `choices`: name column of the strip then equal columns; `dense`: clinician sheet, widths in percent. */
  readonly layout: 'choices' | 'dense';
  readonly columns: readonly {
    readonly label: string;
    readonly width?: number;
    readonly align?: 'start' | 'end';
  }[];
  readonly rows: readonly TableRow[];
}

export interface TableRow extends NodeBase {
  /** A band over the whole width that names the group of the rows under it. */
  readonly group?: string;
  readonly tag?: string;
  readonly cells: readonly (readonly Paragraph[])[];
}

export interface Callout extends NodeBase {
  readonly type: 'callout';
  readonly kind: 'health' | 'study' | 'interpreter';
  readonly heading: string;
  readonly body: readonly Paragraph[];
}

export interface SurgeonPanel extends NodeBase {
  readonly type: 'panel';
  readonly lead: readonly Inline[];
  readonly body: readonly Paragraph[];
  readonly columns: readonly { readonly heading: string; readonly items: readonly Paragraph[] }[];
  readonly closing: readonly Paragraph[];
}

export interface PictureKey extends NodeBase {
  readonly type: 'key';
  readonly heading: string;
  readonly items: readonly {
    readonly mark: 'had' | 'not' | 'may' | 'spread' | 'average' | 'change' | 'uncertainty' | 'today';
    readonly words: string;
  }[];
}

/** Statements by boxes, to fill in. */
export interface MattersGrid extends NodeBase {
  readonly type: 'matters';
  readonly columns: readonly string[];
  readonly statements: readonly Paragraph[];
  readonly blanks: number;
}

export interface TickList extends NodeBase {
  readonly type: 'ticks';
  readonly heading: string;
  readonly items: readonly string[];
}

export interface List extends NodeBase {
  readonly type: 'list';
  readonly ordered: boolean;
  readonly items: readonly (readonly Paragraph[])[];
  /** Of notes under a table: the row that cites each first, from 0. */
  readonly citedIn?: readonly number[];
  /** The number of the first item, where the list may go on from another; else 1. */
  readonly first?: number;
}

/** A question with room to write. */
export interface WriteIn extends NodeBase {
  readonly type: 'write-in';
  readonly prompt?: Paragraph;
  readonly box: boolean;
  readonly lines: number;
}

export interface Facts extends NodeBase {
  readonly type: 'facts';
  readonly items: readonly Fact[];
}

export interface Fact {
  readonly label: Label;
  readonly value: Label;
}

export interface Heading extends NodeBase {
  readonly type: 'heading';
  /** 1 page title, 2 topic question with its rule, 3 small heading. */
  readonly level: 1 | 2 | 3;
  readonly text: string;
  /** Set where the whole of it is in another language than the document: the name of a language in itself. */
  readonly language?: string;
}

export interface Cover extends NodeBase {
  readonly type: 'cover';
  readonly clinic: string;
  readonly date: string;
  readonly question: string;
  readonly lead: readonly Inline[];
  readonly addressee: string;
}

/** Blocks under one topic question; the renderer keeps the head with the first rows. */
export interface Topic extends NodeBase {
  readonly type: 'topic';
  readonly question: string;
  readonly intro: readonly Paragraph[];
  readonly blocks: readonly Block[];
}

export type Block =
  | Paragraph
  | Strip
  | LineBoard
  | Drawing
  | Table
  | Callout
  | SurgeonPanel
  | PictureKey
  | MattersGrid
  | TickList
  | List
  | WriteIn
  | Facts
  | Heading
  | Cover
  | Topic
  | WarningFrames
  | SayPanel
  | Answers
  | Asides
  | Calendar
  | Checklist
  | TickItems
  | TalkTable
  | TeachBack
  | Signatures
  | InterpreterBox;

/** Header, footer and tab of every page. `{page}` and `{pages}` are put in by the renderer. */
export interface Furniture {
  readonly header: { readonly start: string; readonly end: string };
  readonly headerOnFirstPage: boolean;
  readonly footer: {
    readonly call: string;
    readonly deferral: string;
    readonly id: string;
    readonly page: string;
  };
  /** Phone numbers that must be readable on every page. */
  readonly phones: readonly string[];
  /** More numbers that the clinic gives: wherever one stands in a page, it can be dialled. */
  readonly otherPhones?: readonly string[];
  readonly tab?: string;
  /** Set for a draft: the words for its two edges, that of the reader and that of the clinic's staff. */
  readonly draftEdges?: readonly [string, string];
  /** Suffix of a heading repeated on the next page, for example "continued". */
  readonly continued: string;
}

/**
 * What a document says, in order, with nothing about where it lands on paper.
 * Templates emit it as a closed XML-like vocabulary; renderers and the read-back gate only ever see this tree.
 */
export interface DocumentTree {
  readonly kind: DocumentKind;
  readonly audience: 'patient' | 'clinician';
  readonly language: string;
  readonly direction: 'ltr' | 'rtl';
  readonly paper: 'letter' | 'a4';
  /** Set on what was re-flowed for large print: type of 18 points and more, nothing side by side. */
  readonly edition?: 'large-print';
  readonly title: string;
  /** Between a label and its words on one line, as its language writes it, with the white: ": ". */
  readonly colon: string;
  readonly furniture: Furniture;
  readonly blocks: readonly Block[];
}
