/** Rows of cells as lines with their columns under one another, two spaces apart. */
export function alignColumns(rows: readonly (readonly string[])[], indent = ''): readonly string[] {
  const widths: number[] = [];
  for (const row of rows) {
    for (const [column, cell] of row.entries()) widths[column] = Math.max(widths[column] ?? 0, cell.length);
  }
  return rows.map((row) =>
    (indent + row.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join('  ')).trimEnd(),
  );
}

/** "1 packet", "2 packets". */
export function countOf(count: number, one: string, many = `${one}s`): string {
  return `${String(count)} ${count === 1 ? one : many}`;
}
