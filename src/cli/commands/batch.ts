import { listCases } from '../../batch/index.ts';
import { exitCodes } from '../../diagnostics/codes.ts';
import { countOf } from '../align-columns.ts';
import type { Call, Context } from '../context.ts';
import { makeFiles } from '../make-files.ts';
import { printDiagnostics } from '../print-diagnostics.ts';
import { exitCodeOf } from '../report-outcomes.ts';

/** plainleaf batch FOLDER */
export async function run(call: Call, context: Context): Promise<number> {
  const cases = await listCases(context.workspace, call.files[0] ?? '.');
  if (!cases.ok) {
    await printDiagnostics(context, cases.diagnostics);
    return exitCodeOf(cases.diagnostics);
  }
  return makeFiles(call, context, {
    files: cases.value,
    tellWarnings: async (warnings) => {
      const advice = 'plainleaf check FILE shows those of a case';
      if (warnings.length > 0) context.terminal.err(`${countOf(warnings.length, 'warning')}; ${advice}.`);
      return Promise.resolve();
    },
    exitCode: (outcomes) => (outcomes.every(({ made }) => made) ? 0 : exitCodes.batch),
  });
}
