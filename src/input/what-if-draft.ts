import { pathKey } from './finding.ts';
import type { Path } from './finding.ts';
import type { Place, Range } from './read-tree.ts';
import { isPlainMap } from './walk-schema.ts';
import type { WhatIfStep } from './what-if-step.ts';

/** The tree of a case while changes are written into it. */
export interface Draft {
  readonly value: unknown;
  readonly places: Map<string, Place>;
}

/** The places under a path, whose items may have moved; the path itself keeps its own. */
export function forgetPlaces({ places }: Draft, path: Path): void {
  const under = `${pathKey(path).slice(0, -1)},`;
  for (const key of places.keys()) if (key.startsWith(under)) places.delete(key);
}

export function placeOf({ at: range, key }: WhatIfStep, start: number): Place {
  return { value: shift(range, start), key: shift(key, start) };
}

export function shift([from, to]: Range, start: number): Range {
  return [from + start, to + start];
}

export function write(draft: Draft, path: Path, value: unknown): void {
  const parent = valueAt(draft.value, path.slice(0, -1));
  if (isPlainMap(parent)) parent[String(path.at(-1))] = value;
}

export function valueAt(value: unknown, path: Path): unknown {
  return path.reduce<unknown>((inner, key) => (isPlainMap(inner) ? inner[String(key)] : undefined), value);
}

export function textAt(draft: Draft, path: Path): string {
  const found = valueAt(draft.value, path);
  return typeof found === 'string' ? found : '';
}

export function textsAt(draft: Draft, path: Path): readonly string[] {
  const found = valueAt(draft.value, path);
  return Array.isArray(found) ? found.filter((item) => typeof item === 'string') : [];
}
