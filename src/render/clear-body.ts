import type { PageGeometry } from './geometry.ts';
import { childNodes } from './layout-node.ts';
import type { SetNode } from './layout-node.ts';

/** The least white between the body and what stands above or below it, in points. */
const leastWhite = 9;

/**
 * The page with as much body as header and footer leave: a long name or a long line of numbers to call makes them higher.
 * What is turned stands beside the text, at the edges of the paper, and takes nothing.
 */
export function clearBody(geometry: PageGeometry, furniture: SetNode): PageGeometry {
  const bands = bandsIn(furniture, 0);
  const middle = geometry.height / 2;
  const above = bands.filter(({ bottom }) => bottom < middle).map(({ bottom }) => bottom + leastWhite);
  const below = bands.filter(({ bottom }) => bottom >= middle).map(({ top }) => top - leastWhite);
  const bodyTop = Math.max(geometry.bodyTop, ...above);
  const bodyBottom = Math.min(geometry.bodyTop + geometry.bodyHeight, ...below);
  return { ...geometry, bodyTop, bodyHeight: bodyBottom - bodyTop };
}

interface Band {
  readonly top: number;
  readonly bottom: number;
}

/** Where the words of header and footer stand on the page. */
function bandsIn(node: SetNode, above: number): readonly Band[] {
  const top = above + node.box.top;
  if (node.style['transform'] !== undefined) return [];
  if (node.type === 'TEXT') return [{ top, bottom: top + node.box.height }];
  return childNodes(node).flatMap((child) => bandsIn(child, top));
}
