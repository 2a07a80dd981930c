import { parseAllDocuments } from 'yaml';
import type { Document, YAMLError } from 'yaml';
import { comparePositions } from '../diagnostics/compare-positions.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { explainYaml } from './explain-yaml.ts';
import { indexLines } from './line-index.ts';
import type { LineIndex } from './line-index.ts';
import { readTree } from './read-tree.ts';
import type { Tree } from './read-tree.ts';
import { scanText } from './scan-text.ts';

export interface Parsed {
  readonly lines: LineIndex;
  /** What the text says; absent when it is not YAML, or not safe to read. */
  readonly tree?: Tree;
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * Reads one YAML 1.2 document (core schema). Refuses what the format leaves out: aliases, anchors, tags, directives,
 * duplicate keys, further documents, over 1 MiB, over 32 levels. Never throws.
 */
export function parseYaml(text: string, file: string): Parsed {
  const body = text.replace(/^\ufeff/, '');
  const lines = indexLines(body, file);
  const refusals = scanText(body);
  const refused = refusals.map(({ code, start, end, message, hint }): Diagnostic => ({
    code,
    severity: 'error',
    message,
    hint,
    span: lines.span(start, end),
  }));
  if (refusals.some(({ fatal }) => fatal)) return { lines, diagnostics: refused };
  const documents = parseAllDocuments(body, {
    version: '1.2',
    schema: 'core',
    strict: true,
    stringKeys: true,
    uniqueKeys: false,
    prettyErrors: false,
    logLevel: 'silent',
  });
  const [first, second] = documents;
  const extra = second === undefined ? [] : [refuseSecond(second, lines)];
  const broken = explainErrors(first?.errors ?? [], lines, refused);
  if (broken.length > 0 || refused.some(({ code }) => code === 'YAML_SYNTAX'))
    return { lines, diagnostics: [...refused, ...broken, ...extra].sort(comparePositions) };
  const tree = readTree(first?.contents ?? null, body, lines);
  return { lines, tree, diagnostics: [...refused, ...tree.diagnostics, ...extra] };
}

function refuseSecond(document: Document.Parsed, lines: LineIndex): Diagnostic {
  const start = document.contents?.range[0] ?? document.range[0];
  return {
    code: 'YAML_MANY_DOCUMENTS',
    severity: 'error',
    message: 'a second document starts here',
    hint: 'Write one case or clinic profile a file, and remove the line --- between them.',
    span: lines.span(start, start + 1),
  };
}

/** One error a line: the first is the cause, the rest mostly follow from it. Places already refused are left out,
 * and so is what comes after a quote that is never closed. */
function explainErrors(
  errors: readonly YAMLError[],
  lines: LineIndex,
  refused: readonly Diagnostic[],
): Diagnostic[] {
  const taken = new Set(refused.map(({ span }) => span?.line));
  const found: Diagnostic[] = [];
  const cause = refused.find(({ code }) => code === 'YAML_SYNTAX')?.span?.line ?? Infinity;
  for (const error of errors) {
    const span = lines.span(error.pos[0], error.pos[1]);
    if (taken.has(span.line) || span.line >= cause) continue;
    taken.add(span.line);
    found.push({ code: 'YAML_SYNTAX', severity: 'error', ...explainYaml(error.code), span });
  }
  return found;
}
