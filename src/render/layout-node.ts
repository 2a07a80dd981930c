import type { Semantics } from './unit.ts';

/** The part of a typesetter's node that plainleaf reads or makes. Lengths in points, y downwards from the page's top. */
export interface LayoutNode {
  readonly type: string;
  readonly style: Readonly<Record<string, unknown>>;
  readonly props: NodeMarks;
  readonly box: Partial<Box>;
  readonly children: readonly (LayoutNode | TextNode)[];
  /** Lines of a TEXT node; the typesetter leaves those alone that are there already. */
  readonly lines?: readonly SetTextLine[];
}

/** Literal text inside a TEXT node. */
export interface TextNode {
  readonly type: 'TEXT_INSTANCE';
  readonly value: string;
}

export interface NodeMarks extends Readonly<Record<string, unknown>> {
  readonly sem?: Semantics;
  readonly artifact?: boolean;
  /** Set by Lines when a word is wider than its column. */
  readonly overrun?: boolean;
  readonly lineKey?: string;
  /** Lines that are set already. */
  readonly setLines?: readonly SetTextLine[];
  /** Set by Lines on a line that ends within a word. */
  readonly divided?: boolean;
}

/** Relative to the parent's box. */
export interface Box {
  readonly top: number;
  readonly left: number;
  readonly width: number;
  readonly height: number;
}

export interface SetNode extends LayoutNode {
  readonly box: Box & Readonly<Record<string, number>>;
  readonly children: readonly (SetNode | TextNode)[];
}

/** A line and the face each of its runs was set in. Points. */
interface SetTextLine {
  readonly box: { readonly height: number };
  /** From the top of the line to its baseline. */
  ascent: number;
  readonly runs: readonly {
    readonly attributes: { readonly font?: readonly SetFace[] };
    /** Of the face, above the baseline and below it (less than nought); none where plainleaf shaped the run. */
    readonly ascent?: number;
    readonly descent: number;
    /** Those drawn, from left to right. */
    readonly glyphs?: object[];
  }[];
}

interface SetFace {
  readonly type: string;
  glyphForCodePoint(codePoint: number): object;
}

export function isText(node: LayoutNode | TextNode): node is TextNode {
  return node.type === 'TEXT_INSTANCE';
}

/** Nodes that the painter draws in one piece. */
export function isLeaf(node: LayoutNode): boolean {
  return node.type !== 'VIEW' && node.type !== 'PAGE' && node.type !== 'DOCUMENT';
}

export function childNodes(node: SetNode): readonly SetNode[] {
  return node.children.filter((child): child is SetNode => !isText(child));
}

/** Literal text of a node and all it holds, in order. */
export function textOf(node: LayoutNode | TextNode): string {
  return isText(node) ? node.value : node.children.map(textOf).join('');
}
