import type { DocumentTree } from '../model/document.ts';
import { expectedText, repeatedTexts } from '../model/tree-text.ts';
import type { TextPiece } from '../model/tree-text.ts';
import { compactText } from './normalize-text.ts';

/** A text of the tree, ready to be looked for. */
export interface ExpectedText extends TextPiece {
  readonly compact: string;
}

export interface Expected {
  readonly texts: readonly ExpectedText[];
  /** Compact; what may stand again at the top of a page. */
  readonly repeated: readonly string[];
  /** How texts are compared. */
  readonly compact: (text: string) => string;
}

/**
 * What a renderer must print in the body of a document, in order, and what it may print again.
 * `compact`: how texts are compared.
 */
export function expectedTexts(tree: DocumentTree, compact = compactText): Expected {
  const texts = expectedText(tree).map((piece) => ({ ...piece, compact: compact(piece.text) }));
  const repeated = repeatedTexts(tree).map((piece) => compact(piece.text));
  return {
    texts: texts.filter((text) => text.compact !== ''),
    repeated: repeated.filter((text) => text !== ''),
    compact,
  };
}

/** Passages marked as being in another language than the document, for example titles of studies, as they are printed. */
export function foreignTexts(tree: DocumentTree): readonly string[] {
  return expectedText(tree).flatMap(({ foreign }) => foreign);
}
