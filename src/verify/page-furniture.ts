import type { DocumentTree } from '../model/document.ts';
import { furnitureTexts, pageNumberText } from '../model/tree-text.ts';
import { comparisonFor } from './normalize-text.ts';

export type FurniturePart = 'tab' | 'header' | 'footer' | 'page-number' | 'edge';

interface Piece {
  readonly part: FurniturePart;
  readonly compact: string;
}

export interface PageReading {
  /** Compact text of the page without its furniture. */
  readonly body: string;
  readonly absent: readonly FurniturePart[];
}

/** Page of a document, from 1, and how many it has. */
export interface PagePlace {
  readonly page: number;
  readonly pages: number;
}

/**
 * Takes the furniture off a page's compact text. It is painted last, so it stands at the end; in which order is
 * the renderer's own affair. A piece that is not at the end is taken from where it stands last.
 */
export function takeFurniture(text: string, tree: DocumentTree, place: PagePlace): PageReading {
  const edges = (tree.furniture.draftEdges ?? []).map(comparisonFor(tree)).filter(isNotEmpty);
  const seen = new Set<string>();
  const waiting = piecesOf(tree, place);
  let left = withoutEndings(text, edges, seen);
  for (;;) {
    const index = waiting.findIndex((piece) => left.endsWith(piece.compact));
    const [piece] = index < 0 ? [] : waiting.splice(index, 1);
    if (piece === undefined) break;
    left = withoutEndings(left.slice(0, left.length - piece.compact.length), edges, seen);
  }
  const absent: FurniturePart[] = edges.every((edge) => seen.has(edge)) ? [] : ['edge'];
  for (const { part, compact } of waiting) {
    const start = left.lastIndexOf(compact);
    if (start < 0) absent.push(part);
    else left = left.slice(0, start) + left.slice(start + compact.length);
  }
  return { body: left, absent };
}

/** The words on a draft's edges stand there as often as the page is high. Adds to `seen` those that it takes. */
function withoutEndings(text: string, endings: readonly string[], seen: Set<string>): string {
  const ending = endings.find((each) => text.endsWith(each));
  if (ending === undefined) return text;
  seen.add(ending);
  return withoutEndings(text.slice(0, -ending.length), endings, seen);
}

/** Longest first, so that a piece that ends like a longer one is not taken for it. */
function piecesOf(tree: DocumentTree, { page, pages }: PagePlace): Piece[] {
  const { furniture } = tree;
  const compactText = comparisonFor(tree);
  const number = pageNumberText(furniture, page, pages);
  const partOf = (text: string): FurniturePart => {
    if (text === number) return 'page-number';
    if (text === furniture.tab) return 'tab';
    return text === furniture.header.start || text === furniture.header.end ? 'header' : 'footer';
  };
  return furnitureTexts(tree, page, pages)
    .map((text) => ({ part: partOf(text), compact: compactText(text) }))
    .filter(({ compact }) => isNotEmpty(compact))
    .sort((a, b) => b.compact.length - a.compact.length);
}

function isNotEmpty(text: string): boolean {
  return text !== '';
}
