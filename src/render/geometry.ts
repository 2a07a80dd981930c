import type { DocumentTree } from '../model/document.ts';

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

/** Header above the body, footer and its distance from the edge below it. */
const bodyTop = 60;
const belowBody = 82;

/** Content width by reader; the side margins take the rest of the paper. */
const contentWidths = { patient: 492, clinician: 532 } as const;

export function pageGeometry(tree: Pick<DocumentTree, 'paper' | 'audience'>): PageGeometry {
  const { width, height } = papers[tree.paper];
  const contentWidth = contentWidths[tree.audience];
  return {
    width,
    height,
    contentWidth,
    margin: (width - contentWidth) / 2,
    bodyTop,
    bodyHeight: height - bodyTop - belowBody,
  };
}
