import { pageFurniture } from '../../src/render/furniture.tsx';
import { childNodes } from '../../src/render/layout-node.ts';
import type { SetNode } from '../../src/render/layout-node.ts';
import { makePage } from '../../src/render/make-up.ts';
import type { PlannedDocument } from '../../src/render/make-up.ts';
import { setGalleys } from '../../src/render/set-galley.ts';

/** Letters of a line as they are drawn, in points from the corner of the page; a part of the line above and below is white. */
interface Ink {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** Right edge of the column that the line was set in. */
  readonly columnEnd: number;
}

/** Widths are sums of rounded numbers, and a line may be as wide as its column. */
const tolerance = 1.5;
/** The part of a line's height above capitals, and below the line that letters stand on. */
const whiteAbove = 0.25;
const whiteBelow = 0.25;

/**
 * What is wrong with the words of a page and with those above and below it, from the letters as they were drawn: words
 * over other words, beyond their column or beyond the margins.
 */
export async function textFaults(planned: PlannedDocument): Promise<readonly string[]> {
  const { tree, geometry } = planned.draft;
  const { pages } = planned;
  const { width, height, margin } = geometry;
  const furniture = await setGalleys(
    pages.map((_, index) => ({ width, height, elements: [pageFurniture(tree, index + 1, pages.length)] })),
  );
  return pages.flatMap((page, index) => {
    const { body, repeated } = makePage(planned, page, furniture[index]?.[0]);
    const inks = [...repeated, ...body].flatMap(({ node, left, top }) =>
      inksIn({ ...node, box: { ...node.box, left, top } }, { left: 0, top: 0, columnEnd: width }),
    );
    const inside = { left: margin - tolerance, right: width - margin + tolerance };
    return [
      ...inks
        .filter(({ right, columnEnd }) => right > columnEnd + tolerance)
        .map(() => 'words beyond their column'),
      ...inks
        .filter(({ left, right }) => left < inside.left || right > inside.right)
        .map(() => 'words beyond the margin'),
      ...overlapsOf(inks),
    ].map((fault) => `page ${index + 1}: ${fault}`);
  });
}

interface Corner {
  readonly left: number;
  readonly top: number;
  readonly columnEnd: number;
}

function inksIn(node: SetNode, parent: Corner): readonly Ink[] {
  const left = parent.left + node.box.left;
  const top = parent.top + node.box.top;
  // Words that are turned stand at the edges of a draft, beside the text.
  if (node.style['transform'] !== undefined) return [];
  if (node.type === 'TEXT') return [inkOf(node, { ...parent, left, top })];
  return childNodes(node).flatMap((child) => inksIn(child, { left, top, columnEnd: left + node.box.width }));
}

function inkOf(node: SetNode, { left, top, columnEnd }: Corner): Ink {
  const { width, height } = node.box;
  const drawn = Math.max(0, ...(node.lines ?? []).map((line) => widthOf(line.runs)));
  const align = node.style['textAlign'];
  const before = align === 'right' ? width - drawn : align === 'center' ? (width - drawn) / 2 : 0;
  return {
    left: left + before,
    right: left + before + drawn,
    top: top + height * whiteAbove,
    bottom: top + height * (1 - whiteBelow),
    columnEnd,
  };
}

type SetRun = NonNullable<SetNode['lines']>[number]['runs'][number];

/** A space at the end of a line is not seen. */
function widthOf(runs: readonly SetRun[]): number {
  const glyphs = runs.flatMap((run) => {
    const { positions = [] } = run as { readonly positions?: readonly { readonly xAdvance: number }[] };
    const codes = (run.glyphs ?? []) as readonly { readonly codePoints?: readonly number[] }[];
    return positions.map(({ xAdvance }, index) => ({
      xAdvance,
      blank: codes[index]?.codePoints?.[0] === 0x20,
    }));
  });
  const last = glyphs.findLastIndex(({ blank }) => !blank);
  return glyphs.slice(0, last + 1).reduce((sum, { xAdvance }) => sum + xAdvance, 0);
}

function overlapsOf(inks: readonly Ink[]): readonly string[] {
  return inks.flatMap((ink, index) =>
    inks
      .slice(index + 1)
      .filter(
        (other) =>
          Math.min(ink.right, other.right) - Math.max(ink.left, other.left) > tolerance &&
          Math.min(ink.bottom, other.bottom) - Math.max(ink.top, other.top) > 0,
      )
      .map(({ top }) => `words stand over other words, ${Math.round(top)} points from the top`),
  );
}
