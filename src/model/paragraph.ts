/** Words in a run, as they stand in paragraphs, cells and sentences of a document. */
export type Inline = TextRun | FigureRun;

export interface TextRun {
  readonly type: 'text';
  readonly value: string;
  readonly bold?: boolean;
  /** Only where the language differs from the document's. */
  readonly language?: string;
  /** Rows of the evidence that the words stand on, as a sentence on undoing does (see statement.ts). */
  readonly statements?: readonly string[];
}

/** A figure in words, tied to the cell and records it comes from. */
export interface FigureRun {
  readonly type: 'figure';
  readonly value: string;
  /** The same with the number of people it is out of, for where the sentence that says it is not on the same page. */
  readonly alone?: string;
  readonly cell: string;
  readonly records: readonly string[];
  readonly bold?: boolean;
}

/** Words of a name or a label: plain, or in runs where any of it is in another language than the document. */
export type Label = string | readonly Inline[];

/** What the read-back gate must treat as more than a sentence. */
export type Duty = 'caution' | 'phone' | 'standard';

export interface NodeBase {
  /** Template file and line, for messages. */
  readonly origin: string;
}

export interface Paragraph extends NodeBase {
  readonly type: 'paragraph';
  readonly role: 'body' | 'lead' | 'number' | 'strong' | 'small';
  readonly inlines: readonly Inline[];
  readonly duty?: Duty;
}
