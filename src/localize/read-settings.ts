import { LineCounter, parseDocument } from 'yaml';
import type { Document } from 'yaml';
import type { z } from 'zod';

import { failure, success } from '../diagnostics/diagnostic.ts';
import type { Diagnostic, Result, SourceSpan } from '../diagnostics/diagnostic.ts';

/** A file of a language that has a form of its own. Fails with LOCALE_INVALID, each fault at its line. */
export function readSettings<T>(text: string, file: string, schema: z.ZodType<T>): Result<T> {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, uniqueKeys: true });
  const [fault] = [...document.errors, ...document.warnings];
  if (fault !== undefined) {
    const [message = ''] = fault.message.split('\n');
    return failure([invalid(message, spanAt(lines, fault.pos[0], file))]);
  }
  const parsed = schema.safeParse(document.toJS());
  if (parsed.success) return success(parsed.data);
  return failure(
    parsed.error.issues.map((issue) => {
      const path = issue.path.map(String);
      return invalid(
        `${[...path, ''].join(': ')}${issue.message}`,
        spanAt(lines, offsetAt(document, path), file),
      );
    }),
  );
}

/** Where a setting stands, or the nearest parent that is there. */
function offsetAt(document: Document.Parsed, path: readonly string[]): number {
  for (let length = path.length; length > 0; length -= 1) {
    const node = document.getIn(path.slice(0, length), true) as
      { readonly range?: readonly number[] } | undefined;
    if (node?.range?.[0] !== undefined) return node.range[0];
  }
  return 0;
}

function spanAt(lines: LineCounter, offset: number, file: string): SourceSpan {
  const { line, col } = lines.linePos(offset);
  return { file, line: Math.max(line, 1), column: Math.max(col, 1) };
}

function invalid(message: string, span: SourceSpan): Diagnostic {
  const hint = `Correct ${span.file.split('/').at(-1) ?? span.file}.`;
  return { code: 'LOCALE_INVALID', severity: 'error', message, hint, span };
}
