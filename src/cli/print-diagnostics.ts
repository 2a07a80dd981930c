import { formatDiagnostics } from '../diagnostics/format.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Context } from './context.ts';

/** Shows diagnostics with the lines they speak of, at most so many; identifying values are masked by the format. */
export async function printDiagnostics(
  { workspace, terminal }: Context,
  diagnostics: readonly Diagnostic[],
  limit = 20,
): Promise<void> {
  if (diagnostics.length === 0) return;
  const files = new Set(diagnostics.flatMap(({ span }) => (span === undefined ? [] : [span.file])));
  const texts = new Map<string, string>();
  for (const file of files) {
    if (await workspace.exists(file)) texts.set(file, await workspace.readText(file));
  }
  terminal.err(formatDiagnostics(diagnostics, { source: (file) => texts.get(file), limit }));
}
