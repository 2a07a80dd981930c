import type { Duty, FigureRun, Inline, Paragraph } from './paragraph.ts';

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
}

export type Texts = readonly TextPiece[];
export interface Place {
  readonly origin: string;
}

export function piece(kind: TextKind, text: string, { origin }: Place): TextPiece {
  return { text, kind, origin, figures: [] };
}

export function optional(kind: TextKind, text: string | undefined, place: Place): Texts {
  return text === undefined ? [] : [piece(kind, text, place)];
}

/** Words of a run of inlines as they stand on paper. */
export function inlineText(inlines: readonly Inline[]): string {
  return inlines.map((inline) => inline.value).join('');
}

export function inlinePiece(kind: TextKind, inlines: readonly Inline[], place: Place): TextPiece {
  const figures = inlines.filter((inline) => inline.type === 'figure');
  return { ...piece(kind, inlineText(inlines), place), figures };
}

export function textOfParagraph(paragraph: Paragraph): TextPiece {
  const text = inlinePiece('paragraph', paragraph.inlines, paragraph);
  return paragraph.duty === undefined ? text : { ...text, duty: paragraph.duty };
}

export function textsOfParagraphs(paragraphs: readonly Paragraph[]): Texts {
  return paragraphs.map(textOfParagraph);
}
