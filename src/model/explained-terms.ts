import type { DocumentTree } from './document.ts';
import type { GlossaryTerm } from './glossary.ts';
import type { TextPiece } from './text-piece.ts';
import { expectedText } from './tree-text.ts';
import { wholeWords } from './word-forms.ts';

/** A medical word that a document uses before it says what the word means, or without ever saying it. */
export interface UnexplainedTerm {
  readonly term: GlossaryTerm;
  /** Where it stands first. */
  readonly piece: TextPiece;
}

/** Names of publications keep the words of those who wrote them. */
const reference = /doi\.org|PubMed|\w\.[a-z]{2,}(?::\d+)?\//u;

/**
 * Terms of the glossary whose first use in a document comes without their explanation: it must stand in the same
 * paragraph or before it, or, where the term is in a title, a name or a label, in the words right under that.
 */
export function findUnexplained(
  tree: DocumentTree,
  glossary: readonly GlossaryTerm[],
): readonly UnexplainedTerm[] {
  const pieces = expectedText(tree).filter(({ text }) => !reference.test(text));
  const texts = pieces.map(({ text }) => tidy(text));
  return glossary.flatMap((term) => {
    const used = formsOf(term);
    const first = texts.findIndex((text) => used.test(text));
    const piece = pieces[first];
    if (piece === undefined) return [];
    const said = texts.slice(0, lastOf(pieces, first) + 1);
    const explained = term.explained.some((words) => said.some((text) => text.includes(tidy(words))));
    return explained ? [] : [{ term, piece }];
  });
}

/** The last text that a reader takes in together with the one at `first`. */
function lastOf(pieces: readonly TextPiece[], first: number): number {
  if (pieces[first]?.kind === 'paragraph') return first;
  const under = pieces.findIndex(({ kind }, index) => index > first && kind === 'paragraph');
  if (under !== first + 1) return first;
  const next = pieces.findIndex(({ kind }, index) => index > under && kind !== 'paragraph');
  return (next === -1 ? pieces.length : next) - 1;
}

function formsOf({ words }: GlossaryTerm): RegExp {
  return wholeWords(words.map(tidy));
}

function tidy(text: string): string {
  return text.normalize('NFC').replace(/\s+/gu, ' ').trim().toLowerCase();
}
