import { prepare } from '../prepare.ts';
import type { Prepared } from '../prepare.ts';
import type { Context } from './context.ts';
import { printDiagnostics } from './print-diagnostics.ts';
import { exitCodeOf } from './report-outcomes.ts';

/** Evidence, templates and words; or, when they are at fault, the exit code after saying why. */
export async function openPrepared(context: Context): Promise<Prepared | number> {
  context.terminal.status('reading the evidence, the templates and the words …');
  const prepared = await prepare(context.workspace, context.root);
  context.terminal.status('');
  if (prepared.ok) return prepared.value;
  await printDiagnostics(context, prepared.diagnostics);
  return exitCodeOf(prepared.diagnostics);
}
