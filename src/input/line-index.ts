import type { SourceSpan } from '../diagnostics/diagnostic.ts';

/** Turns offsets of a text into lines and columns, both from 1; columns count UTF-16 units, as editors do. */
export interface LineIndex {
  span(start: number, end: number): SourceSpan;
}

export function indexLines(text: string, file: string): LineIndex {
  const starts = [0];
  for (let at = text.indexOf('\n'); at !== -1; at = text.indexOf('\n', at + 1)) starts.push(at + 1);
  const place = (offset: number): [number, number] => {
    const bounded = Math.min(Math.max(offset, 0), text.length);
    const line = countUpTo(starts, bounded);
    return [line, bounded - (starts[line - 1] ?? 0) + 1];
  };
  return {
    span: (start, end) => {
      const [line, column] = place(start);
      const [endLine, endColumn] = place(Math.max(start, end));
      return { file, line, column, endLine, endColumn };
    },
  };
}

/** How many of the rising numbers are not above the limit. */
function countUpTo(rising: readonly number[], limit: number): number {
  let [low, high] = [0, rising.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((rising[middle] ?? 0) <= limit) low = middle + 1;
    else high = middle;
  }
  return low;
}
