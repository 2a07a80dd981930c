import { openFile } from '../../batch/index.ts';
import type { Call, Context } from '../context.ts';
import { textOption } from '../context.ts';
import { dayOf } from '../day-of.ts';
import { openPrepared } from '../open-prepared.ts';
import { printDiagnostics } from '../print-diagnostics.ts';
import { exitCodeOf } from '../report-outcomes.ts';
import { showComparison } from '../show-comparison.ts';

/** plainleaf compare CASE */
export async function run(call: Call, context: Context): Promise<number> {
  const prepared = await openPrepared(context);
  if (typeof prepared === 'number') return prepared;
  const { workspace, terminal } = context;
  const clinic = textOption(call, 'clinic');
  const opened = await openFile(
    { workspace, prepared, clinic, date: dayOf(call, context) },
    call.files[0] ?? '',
  );
  if (!opened.ok) {
    await printDiagnostics(context, opened.diagnostics);
    return exitCodeOf(opened.diagnostics);
  }
  const { case: asked, comparison } = opened.value;
  terminal.out(
    call.options.has('json') ? JSON.stringify(comparison, null, 2) : showComparison(asked.case, comparison),
  );
  return 0;
}
