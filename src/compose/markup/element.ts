/** What a template emits, before it is known to be a document. */
export interface MarkupElement {
  readonly type: 'element';
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly MarkupNode[];
  /** Template file and line, for example `comparison/main.hbs:12`. */
  readonly origin: string;
}

export interface MarkupText {
  readonly type: 'text';
  readonly value: string;
}

export type MarkupNode = MarkupElement | MarkupText;

/** Attribute that carries the origin through the template; never part of the vocabulary. */
export const originAttribute = 'origin';

/** Markup that is not well-formed or not in the vocabulary. Holds names of elements only, never their text. */
export class MarkupError extends Error {
  override readonly name = 'MarkupError';
  readonly kind: 'syntax' | 'vocabulary';
  readonly origin: string;

  constructor(kind: 'syntax' | 'vocabulary', message: string, origin: string) {
    super(message);
    this.kind = kind;
    this.origin = origin;
  }
}
