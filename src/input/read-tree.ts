import { isMap, isScalar, isSeq } from 'yaml';
import type { Pair, ParsedNode, Scalar, YAMLMap, YAMLSeq } from 'yaml';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { limits } from './limits.ts';
import type { LineIndex } from './line-index.ts';
import { pathKey } from './finding.ts';
import type { Path } from './finding.ts';

export type Range = readonly [start: number, end: number];

/** Where a value stands, and how it was written. */
export interface Place {
  readonly value: Range;
  readonly key?: Range;
  /** Text of a plain scalar as written, for example 00417. */
  readonly plain?: string;
  /** A plain scalar followed by # on its line: what comes after is not read. */
  readonly cut?: boolean;
}

export interface Tree {
  readonly value: unknown;
  readonly places: ReadonlyMap<string, Place>;
  /** Paths of aliases: what they stand for is not known, so nothing else is said about them. */
  readonly opaque: readonly Path[];
  readonly diagnostics: readonly Diagnostic[];
}

interface Reading {
  readonly lines: LineIndex;
  readonly text: string;
  readonly places: Map<string, Place>;
  readonly opaque: Path[];
  readonly diagnostics: Diagnostic[];
}

/**
 * Turns the parsed nodes into plain values, remembering where each stands. Duplicate keys are found here in linear time
 * (the parser's own check compares every pair).
 */
export function readTree(root: ParsedNode | null, text: string, lines: LineIndex): Tree {
  const reading: Reading = { lines, text, places: new Map(), opaque: [], diagnostics: [] };
  const value = readNode(reading, root, { path: [] });
  return { value, places: reading.places, opaque: reading.opaque, diagnostics: reading.diagnostics };
}

function readNode(reading: Reading, node: ParsedNode | null, { path, key }: Spot): unknown {
  const place = placeOf(reading.text, node, key);
  reading.places.set(pathKey(path), place);
  if (path.length > limits.depth) {
    refuseDepth(reading, place.value);
    return undefined;
  }
  if (isMap(node)) return readMap(reading, node, path);
  if (isSeq(node)) return readSequence(reading, node, path);
  if (isScalar(node)) return node.value;
  if (node === null) return null;
  reading.opaque.push(path);
  return undefined;
}

interface Spot {
  readonly path: Path;
  readonly key?: Range;
}

function placeOf(text: string, node: ParsedNode | null, key: Range | undefined): Place {
  const value: Range = node === null ? (key ?? [0, 0]) : trimRange(text, node.range);
  const withKey = key === undefined ? { value } : { value, key };
  if (!isScalar(node) || node.type !== 'PLAIN') return withKey;
  return { ...withKey, plain: node.source, cut: /^[ \t]+#/.test(text.slice(value[1], value[1] + 80)) };
}

function readSequence(reading: Reading, node: YAMLSeq.Parsed, path: Path): unknown[] {
  return node.items.map((item, index) => readNode(reading, item, { path: [...path, index] }));
}

function readMap(reading: Reading, node: YAMLMap.Parsed, path: Path): Record<string, unknown> {
  const result: Record<string, unknown> = {};
  const seen = new Map<string, Range>();
  for (const pair of node.items) {
    const key = keyOf(pair);
    if (key === undefined) continue;
    const range = trimRange(reading.text, key.range);
    const name = String(key.value);
    const first = seen.get(name);
    if (first !== undefined) {
      refuseDuplicate(reading, range, first);
    } else if (name === '__proto__') {
      refuseKey(reading, range);
    } else {
      seen.set(name, range);
      result[name] = readNode(reading, pair.value, { path: [...path, name], key: range });
    }
  }
  return result;
}

function keyOf(pair: Pair<ParsedNode, ParsedNode | null>): Scalar.Parsed | undefined {
  return isScalar(pair.key) ? pair.key : undefined;
}

/** A node's range may run on over white space; the place to show ends with the last character. */
function trimRange(text: string, range: readonly [number, number, number] | null | undefined): Range {
  const [start, end] = range ?? [0, 0];
  let last = Math.max(start, end);
  while (last > start && /\s/.test(text[last - 1] ?? '')) last -= 1;
  return [start, last];
}

function refuseDepth(reading: Reading, range: Range): void {
  if (reading.diagnostics.some(({ code }) => code === 'YAML_TOO_DEEP')) return;
  const message = `entries are nested over ${limits.depth} deep`;
  const hint = 'Check the indentation, and what was pasted.';
  reading.diagnostics.push({
    code: 'YAML_TOO_DEEP',
    severity: 'error',
    message,
    hint,
    span: reading.lines.span(...range),
  });
}

function refuseDuplicate(reading: Reading, range: Range, first: Range): void {
  reading.diagnostics.push({
    code: 'YAML_DUPLICATE_KEY',
    severity: 'error',
    message: 'this key stands twice in the same place',
    hint: 'Keep one of the two.',
    span: reading.lines.span(...range),
    related: [{ message: 'it was first written here', span: reading.lines.span(...first) }],
  });
}

function refuseKey(reading: Reading, range: Range): void {
  const [message, hint] = ['this key is not part of the format', 'Remove it.'];
  reading.diagnostics.push({
    code: 'CASE_UNKNOWN_FIELD',
    severity: 'error',
    message,
    hint,
    span: reading.lines.span(...range),
  });
}
