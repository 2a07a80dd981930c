import { LineCounter, isMap, isNode, isScalar, parseDocument } from 'yaml';
import type { Document } from 'yaml';

import type { Diagnostic, SourceSpan } from '../diagnostics/diagnostic.ts';
import { withoutVariables } from './words.ts';
import type { Entry } from './words.ts';

export interface WordsFile {
  readonly entries: readonly Entry[];
  readonly diagnostics: readonly Diagnostic[];
}

interface Reading {
  readonly file: string;
  readonly spanAt: (offset: number | undefined) => SourceSpan;
  readonly entries: Entry[];
  readonly diagnostics: Diagnostic[];
}

/** Reads one file of words; every value is text, however it is written. The namespace is the first part of its keys. */
export function readWords(text: string, file: string, namespace: string): WordsFile {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, schema: 'failsafe', uniqueKeys: true });
  const reading: Reading = {
    file,
    spanAt: (offset) => {
      const { line, col } = lines.linePos(offset ?? 0);
      return { file, line: Math.max(line, 1), column: Math.max(col, 1) };
    },
    entries: [],
    diagnostics: [],
  };
  reportFaults(document, reading);
  if (reading.diagnostics.length === 0) walk(document.contents, namespace, reading);
  return { entries: reading.entries, diagnostics: reading.diagnostics };
}

function reportFaults(document: Document.Parsed, reading: Reading): void {
  for (const fault of [...document.errors, ...document.warnings]) {
    const [message = 'the text is not valid YAML'] = fault.message.split('\n');
    invalid(reading, { offset: fault.pos[0], message, hint: 'Correct the YAML.' });
  }
}

function walk(node: unknown, path: string, reading: Reading): void {
  if (isMap(node)) {
    for (const { key, value } of node.items) walkPair(key, value, { path, reading });
    return;
  }
  const offset = offsetOf(node);
  if (!isScalar(node) || typeof node.value !== 'string' || node.value === '') {
    invalid(reading, { offset, message: `${path} is not a text`, hint: 'Write one text for it.' });
  } else if (/\{\{|\}\}|\$t\(/.test(withoutVariables(node.value))) {
    const hint = 'Write a variable as {{name}}: a letter, then letters, digits or underscores.';
    invalid(reading, { offset, message: `${path} has a variable that cannot be read`, hint });
  } else {
    reading.entries.push({ key: path, text: node.value, span: reading.spanAt(offset) });
  }
}

function walkPair(
  key: unknown,
  value: unknown,
  at: { readonly path: string; readonly reading: Reading },
): void {
  const name = isScalar(key) ? String(key.value) : '';
  if (/^[^.]+$/.test(name)) walk(value ?? key, `${at.path}.${name}`, at.reading);
  else {
    const message = `a key of ${at.path} is empty or has a dot`;
    invalid(at.reading, { offset: offsetOf(key), message, hint: 'Rename the key.' });
  }
}

function offsetOf(node: unknown): number | undefined {
  return isNode(node) ? node.range?.[0] : undefined;
}

interface Fault {
  readonly offset: number | undefined;
  readonly message: string;
  readonly hint: string;
}

function invalid(reading: Reading, fault: Fault): void {
  reading.diagnostics.push({
    code: 'LOCALE_INVALID',
    severity: 'error',
    message: fault.message,
    hint: fault.hint,
    span: reading.spanAt(fault.offset),
  });
}
