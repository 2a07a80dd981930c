import { isText, textOf } from '../../src/render/layout-node.ts';
import type { SetNode } from '../../src/render/layout-node.ts';

/** A text as it was set, in points from the left and top edge of its unit. */
export interface TextBox {
  readonly text: string;
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Every text of a set block, in painting order. */
export function textBoxes(node: SetNode, left = 0, top = 0): readonly TextBox[] {
  return node.children.flatMap((child) => {
    if (isText(child)) return [];
    const [x, y] = [left + child.box.left, top + child.box.top];
    if (child.type !== 'TEXT') return textBoxes(child, x, y);
    const { width, height } = child.box;
    return [{ text: textOf(child), left: x, top: y, width, height }];
  });
}

/** The room a line keeps for the space at its end, which is not seen. */
const unseen = 6;

/** Pairs of texts of which one is set over the other. */
export function overlaps(boxes: readonly TextBox[]): readonly string[] {
  return boxes.flatMap((one, index) =>
    boxes
      .slice(index + 1)
      .filter(
        (other) =>
          Math.min(one.left + one.width, other.left + other.width) - Math.max(one.left, other.left) >
            unseen &&
          Math.min(one.top + one.height, other.top + other.height) - Math.max(one.top, other.top) > 1,
      )
      .map((other) => `${one.text} | ${other.text}`),
  );
}

/** Texts that reach over the edges of the content. */
export function outside(boxes: readonly TextBox[], width: number): readonly string[] {
  return boxes
    .filter((box) => box.left < -0.5 || box.left + box.width > width + unseen)
    .map(({ text }) => text);
}
