import type { DocumentTree } from '../model/document.ts';
import { measureFurniture } from './measure-furniture.ts';
import { editionOf } from './theme.ts';

/** One page, in points, y downwards from the top edge. */
export interface PageGeometry {
  readonly width: number;
  readonly height: number;
  /** White at the start and end of every line of the body. */
  readonly margin: number;
  readonly contentWidth: number;
  readonly bodyTop: number;
  readonly bodyHeight: number;
}

/** ISO 216 A4 and ANSI letter. */
const papers = { letter: { width: 612, height: 792 }, a4: { width: 595.28, height: 841.89 } } as const;

type Tree = Pick<DocumentTree, 'paper' | 'audience' | 'edition' | 'furniture' | 'language'>;

/** The page of a document: what its header and footer leave. Call loadFonts first. */
export function pageGeometry(tree: Tree): PageGeometry {
  const { width, height } = papers[tree.paper];
  const { width: contentWidth } = editionOf(tree);
  const { bodyTop, belowBody } = measureFurniture(tree);
  return {
    width,
    height,
    contentWidth,
    margin: (width - contentWidth) / 2,
    bodyTop,
    bodyHeight: height - bodyTop - belowBody,
  };
}
