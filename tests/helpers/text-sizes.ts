import { pageFurniture } from '../../src/render/furniture.tsx';
import { expandElement } from '../../src/render/expand-elements.ts';
import type { LayoutNode } from '../../src/render/layout-node.ts';
import { isText, textOf } from '../../src/render/layout-node.ts';
import type { PlannedDocument } from '../../src/render/make-up.ts';

type Node = LayoutNode | LayoutNode['children'][number];

/** Every text with its type size in points, one inside another included. */
function sizesIn(node: Node): readonly { readonly text: string; readonly size: number }[] {
  if (isText(node)) return [];
  const size = node.style['fontSize'];
  const own = node.type === 'TEXT' && typeof size === 'number' ? [{ text: textOf(node), size }] : [];
  return [...own, ...node.children.flatMap(sizesIn)];
}

/** Texts of a laid-out document, page furniture and what is repeated on later pages included, smaller than `least`. */
export function textsUnder(plan: PlannedDocument, least: number): readonly string[] {
  const { tree } = plan.draft;
  const count = plan.pages.length;
  const furniture = plan.pages.flatMap((_, index) => expandElement(pageFurniture(tree, index + 1, count)));
  const all = [...plan.blocks.map(({ node }) => node), ...furniture].flatMap(sizesIn);
  if (all.length === 0) throw new Error('the document has no text');
  return all.filter(({ size }) => size < least).map(({ text, size }) => `${text} (${size})`);
}
