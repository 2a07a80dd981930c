import type { Call, Context } from '../context.ts';
import { makeFiles } from '../make-files.ts';
import { printDiagnostics } from '../print-diagnostics.ts';
import { exitCodeOfOutcomes } from '../report-outcomes.ts';

/** plainleaf make CASE… */
export async function run(call: Call, context: Context): Promise<number> {
  return makeFiles(call, context, {
    files: call.files,
    tellWarnings: async (warnings) => printDiagnostics(context, warnings),
    exitCode: exitCodeOfOutcomes,
  });
}
