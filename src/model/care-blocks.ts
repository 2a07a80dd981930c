import type { Urgency } from './aftercare-codes.ts';
import type { Inline, Label, NodeBase, Paragraph } from './paragraph.ts';

/** When to call and whom, the most urgent first: one frame for each degree of urgency. */
export interface WarningFrames extends NodeBase {
  readonly type: 'warning-frames';
  readonly frames: readonly WarningFrame[];
}

export interface WarningFrame extends NodeBase {
  readonly urgency: Urgency;
  readonly heading: string;
  readonly note?: string;
  readonly phones: readonly FramePhone[];
  /** Which of the numbers comes first, and for what. */
  readonly first?: readonly Inline[];
  readonly items: readonly Paragraph[];
}

/** A number to call. */
export interface FramePhone {
  /** Whose it is. */
  readonly label?: Label;
  /** When somebody answers. */
  readonly hours?: Label;
  readonly number: string;
}

/** A sentence with blanks to fill in by hand. */
export interface Sentence extends NodeBase {
  readonly parts: readonly (SentenceWords | Blank)[];
}

export interface SentenceWords {
  readonly type: 'words';
  readonly inlines: readonly Inline[];
}

export interface Blank {
  readonly type: 'blank';
  /** Of the room that the words of a line leave to its blanks; any unit. */
  readonly share: number;
  /** What is to be written there, for those who hear the page. */
  readonly alt: string;
}

/** Words to say on the phone. */
export interface SayPanel extends NodeBase {
  readonly type: 'say';
  readonly heading: string;
  readonly sentences: readonly Sentence[];
}

/** Sentences to agree to or not, each with a box to tick. */
export interface Answers extends NodeBase {
  readonly type: 'answers';
  readonly heading: string;
  readonly sentences: readonly Sentence[];
}

/** Short lists side by side, at most three. */
export interface Asides extends NodeBase {
  readonly type: 'asides';
  readonly columns: readonly Aside[];
}

export interface Aside {
  readonly heading: string;
  /** Whether a box to tick stands before each item. */
  readonly boxes: boolean;
  readonly items: readonly Paragraph[];
}

/** Things to get, take or have done: a box each, and columns to tick by date. */
export interface Checklist extends NodeBase {
  readonly type: 'checklist';
  /** Head over the items; may be empty. */
  readonly head: string;
  /** Heads of at most four columns. */
  readonly columns: readonly string[];
  /** Whether a box stands before each item. */
  readonly box: boolean;
  readonly rows: readonly ChecklistRow[];
}

export interface ChecklistRow extends NodeBase {
  readonly name: string;
  readonly detail: readonly Paragraph[];
  /** For each column whether there is something to tick. */
  readonly due: readonly boolean[];
}

/** Things to tick one under another, what is to be ticked or written under its words: tables of boxes in large print. */
export interface TickItems extends NodeBase {
  readonly type: 'tick-items';
  readonly items: readonly TickItem[];
}

export interface TickItem extends NodeBase {
  /** Whether a box stands before the words. */
  readonly box: boolean;
  /** None where there is a line to write one's own on. */
  readonly words: readonly Paragraph[];
  /** Words of the boxes under it. */
  readonly boxes: readonly string[];
  /** What belongs on the short line to write on beside the boxes. */
  readonly line?: string;
}

/** What was talked about: a box and a line for initials beside each point, which may take several paragraphs. */
export interface TalkTable extends NodeBase {
  readonly type: 'talk';
  readonly columns: { readonly box: string; readonly line: string };
  readonly statements: readonly (readonly Paragraph[])[];
}

/** Questions whose answers are written down as they were given. */
export interface TeachBack extends NodeBase {
  readonly type: 'teach-back';
  /** Words of the boxes to tick beside each question. */
  readonly boxes: readonly string[];
  /** Lines to write on under each question. */
  readonly lines: number;
  readonly questions: readonly Paragraph[];
}

/** A line to sign or write on, with its label under it. */
export interface Field {
  readonly kind: 'name' | 'signature' | 'date' | 'time';
  readonly label: string;
}

export interface FieldRow extends NodeBase {
  readonly fields: readonly Field[];
}

/** Signatures stand with the block before them, never alone on a page. */
export interface Signatures extends NodeBase {
  readonly type: 'signatures';
  /** Set where nobody may sign: the fields are hatched, and each to sign says this. */
  readonly plate?: string;
  readonly rows: readonly FieldRow[];
}

/** What an interpreter fills in. */
export interface InterpreterBox extends NodeBase {
  readonly type: 'interpreter';
  readonly heading: string;
  /** How the interpreter takes part: a box to tick each. */
  readonly ways: readonly string[];
  readonly body: readonly Paragraph[];
  readonly fields: readonly Field[];
  /** As for signatures. */
  readonly plate?: string;
}
