import { openFile } from '../../batch/index.ts';
import type { OpenCase } from '../../model/packet.ts';
import { openWhatIf } from '../../open-what-if.ts';
import type { Prepared } from '../../prepare.ts';
import type { Call, Context } from '../context.ts';
import { textOption, textsOfOption } from '../context.ts';
import { dayOf } from '../day-of.ts';
import { openPrepared } from '../open-prepared.ts';
import { printDiagnostics } from '../print-diagnostics.ts';
import { exitCodeOf } from '../report-outcomes.ts';
import { showComparison } from '../show-comparison.ts';
import { showDifference } from '../show-difference.ts';

/** plainleaf compare CASE, or what it would be with changes */
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
  const whatIfs = textsOfOption(call, 'what-if');
  if (whatIfs.length > 0) return compareChanged(call, context, { prepared, open: opened.value, whatIfs });
  const { case: asked, comparison } = opened.value;
  terminal.out(
    call.options.has('json') ? JSON.stringify(comparison, null, 2) : showComparison(asked.case, comparison),
  );
  return 0;
}

interface Asked {
  readonly prepared: Prepared;
  readonly open: OpenCase;
  readonly whatIfs: readonly string[];
}

async function compareChanged(call: Call, context: Context, asked: Asked): Promise<number> {
  const { prepared, open, whatIfs } = asked;
  const result = openWhatIf(prepared, open, whatIfs);
  if (!result.ok) {
    await printDiagnostics(context, result.diagnostics);
    return exitCodeOf(result.diagnostics);
  }
  const { changes, difference } = result.value;
  context.terminal.out(
    call.options.has('json')
      ? JSON.stringify({ changes, difference }, null, 2)
      : showDifference(open.case.case, changes, difference),
  );
  return 0;
}
