import { expandElement } from '../../src/render/expand-elements.ts';
import type { LayoutNode, TextNode } from '../../src/render/layout-node.ts';
import { isText } from '../../src/render/layout-node.ts';
import type { Semantics, Unit } from '../../src/render/unit.ts';

/** A structure element as the units of a document ask for it: same id, same element. */
export interface SemNode {
  readonly sem: Semantics;
  readonly children: SemNode[];
}

type Node = LayoutNode | TextNode;

/** Structure of the units under one root, as the painter builds it. */
export function structureOf(units: readonly Unit[]): SemNode {
  const root: SemNode = { sem: { tag: 'Sect' }, children: [] };
  const known = new Map<string, SemNode>();
  const visit = (node: Node, owner: SemNode): void => {
    if (isText(node) || node.props.artifact === true) return;
    const { sem } = node.props;
    const here = sem === undefined ? owner : open(sem, owner);
    node.children.forEach((child) => {
      visit(child, here);
    });
  };
  const open = (sem: Semantics, owner: SemNode): SemNode => {
    const earlier = sem.id === undefined ? undefined : known.get(sem.id);
    if (earlier !== undefined) return earlier;
    const opened = { sem, children: [] };
    owner.children.push(opened);
    if (sem.id !== undefined) known.set(sem.id, opened);
    return opened;
  };
  for (const unit of units) for (const node of expandElement(unit.element)) visit(node, root);
  return root;
}

export function elementsOf(root: SemNode, tag: Semantics['tag']): readonly SemNode[] {
  const own = root.sem.tag === tag ? [root] : [];
  return [...own, ...root.children.flatMap((child) => elementsOf(child, tag))];
}

/** Nodes of a type, for example VIEW or SVG, in painting order. */
export function nodesOf(nodes: readonly Node[], type: string): readonly LayoutNode[] {
  return nodes.flatMap((node) => {
    if (isText(node)) return [];
    return [...(node.type === type ? [node] : []), ...nodesOf(node.children, type)];
  });
}
