import { diagnosticCatalogue, stageOf } from './codes.ts';
import type { Diagnostic, SourceSpan } from './diagnostic.ts';
import { mask, redactLine } from './redact.ts';

export interface FormatOptions {
  /** Text of a file, for excerpts; undefined leaves the excerpt out. */
  readonly source?: (file: string) => string | undefined;
  /** How many diagnostics are shown before "… and n more"; 20 unless given. */
  readonly limit?: number;
}

const widestExcerpt = 100;

/**
 * Diagnostics for people: where, what, the line with a caret, what to do. Values of identifying fields never appear.
 * Order is kept as given.
 */
export function formatDiagnostics(diagnostics: readonly Diagnostic[], options: FormatOptions = {}): string {
  const limit = options.limit ?? 20;
  const readLines = rememberLines(options.source);
  const shown = diagnostics.slice(0, limit).map((diagnostic) => formatOne(diagnostic, readLines));
  if (diagnostics.length > limit) shown.push(`… and ${String(diagnostics.length - limit)} more`);
  return shown.join('\n\n');
}

/** One JSON object a line, for machines; no excerpt, so no value of the file. */
export function formatJsonLines(diagnostics: readonly Diagnostic[]): string {
  return diagnostics
    .map(({ code, severity, message, hint, span, path, related }) =>
      JSON.stringify({
        code,
        severity,
        message,
        hint: hint ?? diagnosticCatalogue[code].todo,
        span,
        path,
        related,
      }),
    )
    .join('\n');
}

type ReadLines = (file: string) => readonly string[] | undefined;

function rememberLines(source: FormatOptions['source']): ReadLines {
  const seen = new Map<string, readonly string[] | undefined>();
  return (file) => {
    if (!seen.has(file))
      seen.set(
        file,
        source?.(file)
          ?.replace(/^\ufeff/, '')
          .split(/\r?\n/),
      );
    return seen.get(file);
  };
}

function formatOne(diagnostic: Diagnostic, readLines: ReadLines): string {
  const { code, severity, message, path, span } = diagnostic;
  const head = [span === undefined ? '' : place(span), `${severity} ${code}`, path ?? ''].filter(
    (part) => part !== '',
  );
  const lines = [head.join('  '), `  ${message}`];
  if (span !== undefined) lines.push(...excerpt(span, readLines(span.file), isShownWhole(diagnostic)));
  for (const other of diagnostic.related ?? []) lines.push(`  see ${place(other.span)}: ${other.message}`);
  lines.push(`  hint: ${diagnostic.hint ?? diagnosticCatalogue[code].todo}`);
  return lines.map(printable).join('\n');
}

// Evidence, words and templates hold nothing about a person; any other file may.
function isShownWhole({ code }: Diagnostic): boolean {
  return stageOf(code) === 'evidence' || stageOf(code) === 'words';
}

function place({ file, line, column }: SourceSpan): string {
  return `${file}:${String(line)}:${String(column)}`;
}

function excerpt(span: SourceSpan, lines: readonly string[] | undefined, whole: boolean): string[] {
  const raw = lines?.[span.line - 1];
  if (lines === undefined || raw === undefined) return [];
  const text = whole ? raw : redactLine(lines, span.line - 1);
  if (text.trim() === '') return [];
  const [start, end] = caretRange(span, raw, text);
  // A long line is cut so that the place stays in sight.
  const from =
    text.length > widestExcerpt ? Math.max(0, Math.min(start - 40, text.length - widestExcerpt)) : 0;
  const shown = from === 0 ? text.slice(0, widestExcerpt) : mask + text.slice(from + 1, from + widestExcerpt);
  const gutter = `  ${String(span.line)} | `;
  const carets = '^'.repeat(countLetters(text.slice(start, Math.min(end, from + widestExcerpt))));
  const before = ' '.repeat(countLetters(text.slice(from, start)));
  return [gutter + shown, `${' '.repeat(gutter.length - 2)}| ${before}${carets}`];
}

/** Where the carets stand in the text as shown, which may end earlier than the line does. */
function caretRange(span: SourceSpan, raw: string, shown: string): [number, number] {
  const isOneLine = span.endLine === undefined || span.endLine === span.line;
  const written = (isOneLine ? (span.endColumn ?? 0) : raw.length + 1) - 1;
  const start = Math.min(span.column - 1, shown.length - 1);
  return [start, Math.min(Math.max(written, start + 1), shown.length)];
}

function countLetters(text: string): number {
  return Array.from(text).length;
}

// A file may hold bytes that would move the cursor or turn the order of a terminal's text round.
function printable(line: string): string {
  return line.replace(/\t/g, ' ').replace(/[\p{Cc}\p{Cs}\u2028\u2029\u202a-\u202e\u2066-\u2069]/gu, '·');
}
