import renderNodes from '@react-pdf/render';
import { InternalError } from '../diagnostics/diagnostic.ts';
import { childNodes, isLeaf, isText, textOf } from './layout-node.ts';
import type { Box, SetNode } from './layout-node.ts';
import type { PdfDocument } from './pdf-document.ts';
import { holdsText, placeFigure } from './tag-structure.ts';
import type { Structure, StructureTree } from './tag-structure.ts';

/** Where a node is painted, and under which structure. */
interface Place {
  /** Position of the parent's box on the page, points from its left and top edge. */
  readonly x: number;
  readonly y: number;
  readonly owner: Structure | undefined;
}

export interface Painter {
  /** Paints a set block as content, tagged by the `sem` of its nodes. */
  readonly content: (block: SetNode, corner: { left: number; top: number }) => void;
  /** Paints a block that a screen reader passes over. */
  readonly artifact: (block: SetNode, corner: { left: number; top: number }) => void;
}

export type Listener = (structure: Structure, node: SetNode, top: number) => void;

type PaintAll = (pdf: PdfDocument, root: { children: readonly SetNode[] }) => void;

/** A painter for the current page. `opened` hears of every node that has a structure tag, in reading order. */
export function openPainter(pdf: PdfDocument, tree: StructureTree, opened: Listener): Painter {
  const paint = new TaggedPainter(pdf, tree, opened);
  return {
    content: (block, { left, top }) => {
      paint.node(moved(block, left, top), { x: 0, y: 0, owner: undefined });
    },
    artifact: (block, { left, top }) => {
      paint.artifact(moved(block, left, top), 'Pagination');
    },
  };
}

/** Boxes are relative to the parent, so moving a block moves all that is in it. */
function moved(block: SetNode, left: number, top: number): SetNode {
  return { ...block, box: { ...block.box, left, top } };
}

class TaggedPainter {
  private readonly pdf: PdfDocument;
  private readonly tree: StructureTree;
  private readonly opened: Listener;

  constructor(pdf: PdfDocument, tree: StructureTree, opened: Listener) {
    this.pdf = pdf;
    this.tree = tree;
    this.opened = opened;
  }

  artifact(node: SetNode, type: 'Layout' | 'Pagination'): void {
    this.pdf.markContent('Artifact', { type });
    this.draw(node);
    this.pdf.endMarkedContent();
  }

  node(node: SetNode, place: Place): void {
    const { sem, artifact } = node.props;
    if (artifact === true) {
      this.artifact(node, 'Layout');
      return;
    }
    if (sem === undefined) {
      this.untagged(node, place);
      return;
    }
    const owner = this.tree.open(sem, place.owner);
    this.opened(owner, node, place.y + node.box.top);
    if (sem.tag === 'Figure') this.figure(node, place, owner);
    else this.tagged(node, { ...place, owner });
  }

  private figure(node: SetNode, place: Place, owner: Structure): void {
    const { height } = this.pdf.page;
    const left = place.x + node.box.left;
    const top = place.y + node.box.top;
    placeFigure(owner, [left, height - top - node.box.height, left + node.box.width, height - top]);
    this.marked(node, owner);
  }

  /** A node without a tag of its own belongs to the nearest tagged node around it. */
  private untagged(node: SetNode, place: Place): void {
    if (isDeep(node, hasMarks)) this.inside(node, place);
    else if (textOf(node).trim() === '') this.decoration(node);
    else this.tagged(node, place);
  }

  /** Paints text under its owner: in one piece where that holds nothing but text, else part by part. */
  private tagged(node: SetNode, place: Place): void {
    if (!isLeaf(node) && (isDeep(node, hasMarks) || isDeep(node, isDecoration))) {
      this.inside(node, place);
      return;
    }
    const { owner } = place;
    if (owner === undefined || !holdsText(owner.tag)) {
      if (textOf(node).trim() !== '')
        throw new InternalError(
          `text stands ${owner === undefined ? 'outside any structure' : `directly in ${owner.tag}`}`,
        );
      this.decoration(node);
      return;
    }
    this.marked(node, owner);
  }

  private inside(node: SetNode, place: Place): void {
    if (node.style['transform'] !== undefined || node.style['overflow'] === 'hidden') {
      throw new InternalError('a node with tagged content inside is turned or clipped');
    }
    if (isDecorated(node)) this.artifact({ ...node, children: [] }, 'Layout');
    this.pdf.save();
    this.pdf.translate(node.box.left, node.box.top);
    const corner = { x: place.x + node.box.left, y: place.y + node.box.top };
    for (const child of childNodes(node)) this.node(child, { ...corner, owner: place.owner });
    this.pdf.restore();
  }

  private decoration(node: SetNode): void {
    if (isDeep(node, (part) => isLeaf(part) || isDecorated(part))) this.artifact(node, 'Layout');
  }

  private marked(node: SetNode, { tag, element }: Structure): void {
    element.add(this.pdf.markStructureContent(tag));
    this.draw(node);
    this.pdf.endMarkedContent();
  }

  /** The node and all that is in it, by the painter of @react-pdf, which takes any nodes and not only pages. */
  private draw(node: SetNode): void {
    (renderNodes as unknown as PaintAll)(this.pdf, { children: [node] });
  }
}

function hasMarks(node: SetNode): boolean {
  return node.props.sem !== undefined || node.props.artifact === true;
}

/** Not text: what the marked content of a paragraph must not hold. */
function isDecoration(node: SetNode): boolean {
  return isDecorated(node) || (isLeaf(node) && node.type !== 'TEXT');
}

const borders = ['borderTopWidth', 'borderRightWidth', 'borderBottomWidth', 'borderLeftWidth'] as const;

function isDecorated(node: SetNode): boolean {
  return (
    node.style['backgroundColor'] !== undefined ||
    borders.some((side) => ((node.box as Box & Partial<Record<string, number>>)[side] ?? 0) > 0)
  );
}

/** True if the node or one below it, text leaves aside, meets the condition. */
function isDeep(node: SetNode, condition: (node: SetNode) => boolean): boolean {
  if (condition(node)) return true;
  return !isLeaf(node) && node.children.some((child) => !isText(child) && isDeep(child, condition));
}
