import type { Duty, FigureRun, Inline, Label, Paragraph } from './paragraph.ts';

/** What a printed text is: read aloud, checked and searched for differently. */
export type TextKind = 'heading' | 'paragraph' | 'name' | 'label' | 'counter';

/** One text as a renderer prints it, whole, before it is broken into lines. */
export interface TextPiece {
  readonly text: string;
  readonly kind: TextKind;
  /** Template file and line of the node it belongs to. */
  readonly origin: string;
  readonly duty?: Duty;
  /** The figures within the text, in order. */
  readonly figures: readonly FigureRun[];
  /** Parts of it that are in another language than the document, in order. */
  readonly foreign: readonly string[];
}

export type Texts = readonly TextPiece[];
export interface Place {
  readonly origin: string;
}

export function piece(kind: TextKind, label: Label, { origin }: Place): TextPiece {
  if (typeof label !== 'string') return inlinePiece(kind, label, { origin });
  return { text: label, kind, origin, figures: [], foreign: [] };
}

export function optional(kind: TextKind, label: Label | undefined, place: Place): Texts {
  return label === undefined ? [] : [piece(kind, label, place)];
}

/** A label that is a figure and nothing else, such as the number of a point in a picture. */
export function figurePiece(
  { label, cell, records }: { readonly label: string } & Pick<FigureRun, 'cell' | 'records'>,
  place: Place,
): TextPiece {
  return { ...piece('label', label, place), figures: [{ type: 'figure', value: label, cell, records }] };
}

/** Words of a run of inlines as they stand on paper. */
export function inlineText(inlines: readonly Inline[]): string {
  return inlines.map((inline) => inline.value).join('');
}

/** A name or a label as it stands on paper. */
export function labelText(label: Label): string {
  return typeof label === 'string' ? label : inlineText(label);
}

/** A text that is in one language as a whole. */
export function labelIn(language: string | undefined, text: string): Label {
  return language === undefined ? text : [{ type: 'text', value: text, language }];
}

/** A name or a label in runs. */
export function labelRuns(label: Label): readonly Inline[] {
  return typeof label === 'string' ? [{ type: 'text', value: label }] : label;
}

export function inlinePiece(kind: TextKind, inlines: readonly Inline[], place: Place): TextPiece {
  const figures = inlines.filter((inline) => inline.type === 'figure');
  const foreign = inlines.flatMap((inline) =>
    inline.type === 'text' && inline.language !== undefined ? [inline.value] : [],
  );
  return { ...piece(kind, inlineText(inlines), place), figures, foreign };
}

export function textOfParagraph(paragraph: Paragraph): TextPiece {
  const text = inlinePiece('paragraph', paragraph.inlines, paragraph);
  return paragraph.duty === undefined ? text : { ...text, duty: paragraph.duty };
}

export function textsOfParagraphs(paragraphs: readonly Paragraph[]): Texts {
  return paragraphs.map(textOfParagraph);
}
