import type {} from '@react-pdf/renderer';
import type { ReactElement } from 'react';

/**
 * The smallest thing the planner moves: one strip row, one paragraph, one call-out. Units of a document are set one
 * under another in a single tall galley, then placed on pages (see plan-pages.ts).
 */
export interface Unit {
  /** Stable within the document, for example `4.row.2`. */
  readonly key: string;
  /** Template file and line, for messages. */
  readonly origin?: string;
  /**
   * A box of exactly the content width; its height is found when it is set. Must not paginate by itself.
   * Components must be plain functions without hooks: they are called directly (see expand-elements.ts).
   */
  readonly element: ReactElement;
  /** White above in points, dropped at the top of a page. */
  readonly gapBefore: number;
  /** By how many points the gap may be closed up to win a place on the page; all gaps of a page shrink alike. */
  readonly gapShrink?: number;
  /** No page break between this unit and the next. */
  readonly keepWithNext: boolean;
  /** The first row of a block, or the last but one, which rather stands with the next (see plan-pages.ts). */
  readonly keepsRow?: boolean;
  /** A numbered note, which is looked up from the rows before it: notes rather stand with a row than alone on a page. */
  readonly explains?: boolean;
  /** Always begins a page (a new document of the packet does so by itself). */
  readonly startsPage?: boolean;
  /** What is repeated above this unit, as an artifact, when a page begins with it: heading "continued", axis, table head. */
  readonly continuation?: ReactElement;
  /** Rows of one strip share a group; a group that fits a page stays whole. */
  readonly group?: string;
  /** Key of the topic, or small heading, it belongs to, whose title is said again where a page begins within it. */
  readonly topic?: string;
  /** Its group may be divided to fill pages better, though not for nothing: the points of a long call-out. */
  readonly divisible?: boolean;
}

/** Structure tag of a node, given as the `sem` property of a View, Text or Svg. See tag-structure.ts. */
export interface Semantics {
  readonly tag:
    | 'Sect'
    | 'H1'
    | 'H2'
    | 'H3'
    | 'P'
    | 'L'
    | 'LI'
    | 'Lbl'
    | 'LBody'
    | 'Table'
    | 'THead'
    | 'TBody'
    | 'TR'
    | 'TH'
    | 'TD'
    | 'Figure'
    | 'Caption'
    | 'Span'
    | 'Div'
    | 'BlockQuote';
  readonly alt?: string;
  readonly language?: string;
  readonly scope?: 'Row' | 'Column' | 'Both';
  /** Columns a table cell reaches over, when more than one. */
  readonly columnSpan?: number;
  /** How the items of a list (L) are counted; told to screen readers. */
  readonly numbering?: 'Decimal' | 'Disc' | 'None';
  /** Several units of one strip or table belong to one structure element: same id, same element. */
  readonly id?: string;
  /** Id of the structure element this one hangs under, when that was opened by an earlier unit. */
  readonly parent?: string;
}

declare module '@react-pdf/renderer' {
  interface NodeProps {
    readonly sem?: Semantics;
    /** Decoration or repetition that a screen reader passes over, with all that is inside. */
    readonly artifact?: boolean;
    /** Set by Lines: tells one setting of a line from every other. */
    readonly lineKey?: string;
    /** Lines that plainleaf has set itself; see shaping/shaped-line.tsx. */
    readonly setLines?: readonly object[];
    /** Set by Lines on a line that ends within a word. */
    readonly divided?: boolean;
  }
}
