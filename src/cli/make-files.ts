import type { Outcome } from '../batch/index.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Call, Context } from './context.ts';
import { textOption } from './context.ts';
import { makeEach } from './make-each.ts';
import { dayOf } from './day-of.ts';
import { openPrepared } from './open-prepared.ts';
import { outcomeLine, outcomesAsJson, reportOutcomes } from './report-outcomes.ts';

/** Folder for packets when none is named. */
const defaultOut = 'out';

/** Exit code of a process that Ctrl-C stopped, as shells have it: 128 and the number of the signal. */
const stoppedCode = 130;

export interface Manner {
  /** Exit code for what became of the packets. */
  readonly exitCode: (outcomes: readonly Outcome[]) => number;
  /** How warnings are told, for people. */
  readonly tellWarnings: (warnings: readonly Diagnostic[]) => Promise<void>;
}

/** Makes the packets of some cases and reports on them, in the manner of `make` or of `batch`. */
export async function makeFiles(
  call: Call,
  context: Context,
  asked: Manner & { readonly files: readonly string[] },
): Promise<number> {
  const { terminal, workspace } = context;
  const prepared = await openPrepared(context);
  if (typeof prepared === 'number') return prepared;
  const json = call.options.has('json');
  const input = {
    workspace,
    prepared,
    files: asked.files,
    clinic: textOption(call, 'clinic'),
    date: dayOf(call, context),
    language: textOption(call, 'language'),
    html: call.options.has('html'),
    separate: call.options.has('separate'),
    largePrint: call.options.has('large-print'),
    out: textOption(call, 'out') ?? defaultOut,
  };
  const { outcomes, stopped } = await makeEach(input, terminal, (outcome) => {
    if (!json) terminal.out(outcomeLine(outcome));
  });
  if (json) {
    terminal.out(outcomesAsJson(outcomes));
  } else {
    const warnings = outcomes.flatMap((outcome) => (outcome.made ? outcome.warnings : []));
    if (warnings.length > 0) terminal.err('');
    await asked.tellWarnings(warnings);
    await reportOutcomes(context, outcomes);
  }
  if (stopped) terminal.err('Stopped; what is not listed was not made.');
  return stopped ? stoppedCode : asked.exitCode(outcomes);
}
