import type { Shape } from '../view/shape.ts';

/** Where a path starts: `stack` holds the contexts that ../ can reach, innermost last. */
export interface Scope {
  readonly root: Shape;
  readonly stack: readonly Shape[];
}

/**
 * The shape at the end of a path, or null if there is no such path. Optional wrappers are looked through: an absent
 * value prints as nothing, and templates test it with #if.
 */
export function resolvePath(path: hbs.AST.PathExpression, scope: Scope): Shape | null {
  if (path.data) return resolveData(path, scope);
  const start = scope.stack.at(-1 - path.depth);
  return start === undefined ? null : follow(start, path.parts);
}

function resolveData(path: hbs.AST.PathExpression, scope: Scope): Shape | null {
  const [name, ...rest] = path.parts;
  if (name === 'root') return follow(scope.root, rest);
  const counts = name === 'index' || name === 'first' || name === 'last';
  return counts && rest.length === 0 ? { kind: name === 'index' ? 'count' : 'flag' } : null;
}

function follow(start: Shape, parts: readonly string[]): Shape | null {
  let shape: Shape = unwrap(start);
  for (const part of parts) {
    if (shape.kind !== 'group' || !Object.hasOwn(shape.fields, part)) return null;
    const next: Shape | undefined = shape.fields[part];
    if (next === undefined) return null;
    shape = unwrap(next);
  }
  return shape;
}

function unwrap(shape: Shape): Shape {
  return shape.kind === 'optional' ? unwrap(shape.of) : shape;
}
