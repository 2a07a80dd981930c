import { Fragment, isValidElement } from 'react';
import type { ReactNode } from 'react';
import { InternalError } from '../diagnostics/diagnostic.ts';
import type { LayoutNode, TextNode } from './layout-node.ts';
import { printable } from './printable-text.ts';
import { recallLines } from './remember-lines.ts';

interface HostProps {
  readonly lineKey?: string;
  readonly setLines?: NonNullable<LayoutNode['lines']>;
  readonly style?: unknown;
  readonly children?: ReactNode;
}

type Component = (props: unknown) => ReactNode;

/** Node types whose children may be literal text. */
const textHolders = new Set(['TEXT', 'TSPAN']);

/**
 * Elements → the tree that the typesetter takes, by calling components as plain functions. There is no state and no
 * second rendering in a printed page, so React's reconciler (which keeps every root it ever made) is not needed.
 * Throws InternalError for a component with hooks or a class, and for text outside a Text.
 */
export function expandElement(element: ReactNode): readonly LayoutNode[] {
  return expand(element, 'the unit').map((node) => {
    if ('value' in node) throw new InternalError('a unit is bare text; put it into Lines');
    return node;
  });
}

function expand(element: ReactNode, parent: string): readonly (LayoutNode | TextNode)[] {
  if (element === null || element === undefined || typeof element === 'boolean') return [];
  if (typeof element === 'string' || typeof element === 'number') return [textNode(String(element), parent)];
  if (isValidElement<HostProps>(element)) return expandTyped(element.type, element.props, parent);
  if (Symbol.iterator in Object(element))
    return [...(element as Iterable<ReactNode>)].flatMap((child) => expand(child, parent));
  throw new InternalError(`${parent} holds something that is not an element`);
}

function textNode(value: string, parent: string): TextNode {
  if (!textHolders.has(parent))
    throw new InternalError(`text stands directly in ${parent}; put it into Lines`);
  return { type: 'TEXT_INSTANCE', value: printable(value) };
}

function expandTyped(type: unknown, props: HostProps, parent: string): readonly (LayoutNode | TextNode)[] {
  if (typeof type === 'string') return [hostNode(type, props)];
  if (type === Fragment) return expand(props.children, parent);
  if (typeof type === 'function' && !('isReactComponent' in Object(type.prototype)))
    return expand((type as Component)(props), parent);
  throw new InternalError('only plain function components can be set');
}

function hostNode(type: string, { style, children, ...props }: HostProps): LayoutNode {
  const lines = props.setLines ?? (props.lineKey === undefined ? undefined : recallLines(props.lineKey));
  return {
    type,
    box: {},
    style: (style ?? {}) as LayoutNode['style'],
    props,
    children: [...expand(children, type)],
    ...(lines === undefined ? {} : { lines }),
  };
}
