import { LineCounter, isMap, isPair, isSeq, parseDocument } from 'yaml';
import type { Document, ParsedNode } from 'yaml';

import type { Diagnostic, SourceSpan } from '../diagnostics/diagnostic.ts';

export type DataPath = readonly (string | number)[];

/** A parsed data file that can still say where each value stands. */
export interface ParsedFile {
  readonly content: unknown;
  /** The value at a path, or the nearest parent that is there. */
  readonly spanAt: (path: DataPath) => SourceSpan;
  /** The key at the end of a path. */
  readonly spanOfKey: (path: DataPath, key: string) => SourceSpan;
  readonly problems: readonly Diagnostic[];
}

/** Reads YAML 1.2. `file` is the name a person can open. */
export function parseDataFile(file: string, text: string): ParsedFile {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, version: '1.2', uniqueKeys: true });
  const spanOf = (offset: number): SourceSpan => {
    const { line, col } = lines.linePos(offset);
    return { file, line: Math.max(line, 1), column: Math.max(col, 1) };
  };
  const problems = [...document.errors, ...document.warnings].map((fault): Diagnostic => {
    const [message = ''] = fault.message.split('\n');
    return {
      code: 'EVIDENCE_INVALID',
      severity: 'error',
      message,
      hint: 'Correct the YAML.',
      span: spanOf(fault.pos[0]),
    };
  });
  return {
    content: problems.length === 0 ? document.toJS() : undefined,
    spanAt: (path) => spanOf(offsetAt(document, path)),
    spanOfKey: (path, key) => spanOf(offsetOfKey(document, path, key)),
    problems,
  };
}

function offsetAt(document: Document.Parsed, path: DataPath): number {
  for (let length = path.length; length >= 0; length -= 1) {
    const node = nodeAt(document, path.slice(0, length));
    if (node?.range) return node.range[0];
  }
  return 0;
}

function offsetOfKey(document: Document.Parsed, path: DataPath, key: string): number {
  const node = nodeAt(document, path);
  if (!isMap(node)) return offsetAt(document, path);
  const pair = node.items.find((item) => isPair(item) && String(item.key) === key);
  const keyNode = pair?.key as ParsedNode | null | undefined;
  return keyNode?.range[0] ?? offsetAt(document, path);
}

function nodeAt(document: Document.Parsed, path: DataPath): ParsedNode | undefined {
  let node: unknown = document.contents;
  for (const step of path) {
    if (!isMap(node) && !isSeq(node)) return undefined;
    node = node.get(step, true);
  }
  return (node ?? undefined) as ParsedNode | undefined;
}
