import type { Diagnostic } from './diagnostic.ts';

const nowhere = { file: '', line: 0, column: 0 };

/** Order of reading: file, line, column, then code; those without a place come first. */
export function comparePositions(a: Diagnostic, b: Diagnostic): number {
  const [left, right] = [a.span ?? nowhere, b.span ?? nowhere];
  return (
    compareText(left.file, right.file) ||
    left.line - right.line ||
    left.column - right.column ||
    compareText(a.code, b.code)
  );
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : Number(a > b);
}
