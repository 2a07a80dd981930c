import { packetsOf, summarizeOutcomes } from '../batch/index.ts';
import type { Outcome } from '../batch/index.ts';
import { exitCodes, stageOf } from '../diagnostics/codes.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { countOf } from './align-columns.ts';
import type { Context } from './context.ts';
import { printDiagnostics } from './print-diagnostics.ts';
import { sayOpenGroup } from './say-open-group.ts';
import { showSummary } from './show-summary.ts';

type Made = Extract<Outcome, { made: true }>;

/** One line a packet. Names of people never stand here: a case goes by its reference. */
export function outcomeLine(outcome: Outcome): string {
  const about = `${(outcome.caseReference ?? outcome.file).padEnd(10)}  ${(outcome.language ?? '').padEnd(5)}`;
  if (!outcome.made) return `${about}  not made   ${codesOf(outcome.diagnostics)}`;
  return `${about}  ${countOf(outcome.pages, 'page').padEnd(9)}  ${outcome.state.padEnd(7)}  ${filesOf(outcome)}`;
}

function filesOf({ written }: Made): string {
  if (written === undefined) return 'can be made';
  return written.html === undefined ? written.pdf : `${written.pdf} and .html`;
}

/** Why packets were not made, how many were, and of many how each language stands. */
export async function reportOutcomes(context: Context, outcomes: readonly Outcome[]): Promise<void> {
  for (const outcome of outcomes) {
    if (outcome.made) continue;
    context.terminal.err(
      `\n${[outcome.caseReference, outcome.language, outcome.file].filter((part) => part !== undefined).join('  ')}`,
    );
    await printDiagnostics(context, outcome.diagnostics);
  }
  const packets = packetsOf(outcomes);
  const made = packets.filter((packet) => packet.made).length;
  const notMade = packets.length - made;
  context.terminal.out(
    `\n${countOf(made, 'packet')} made${notMade === 0 ? '' : `, ${String(notMade)} not made`}.`,
  );
  // One packet says all of this itself.
  if (packets.length > 1) context.terminal.out(`\n${showSummary(summarizeOutcomes(outcomes))}`);
}

/** Outcomes for machines; diagnostics without excerpts. */
export function outcomesAsJson(outcomes: readonly Outcome[]): string {
  const packets = outcomes.map(({ file, caseReference, language, ...rest }) => ({
    file,
    case: caseReference,
    language,
    made: rest.made,
    ...(rest.made
      ? { ...aboutPacket(rest), ...rest.written, warnings: rest.warnings }
      : { diagnostics: rest.diagnostics }),
  }));
  const made = outcomes.filter((outcome) => outcome.made).length;
  const { open, ...summary } = summarizeOutcomes(outcomes);
  const said = open.map((group) => ({ ...group, ...sayOpenGroup(group) }));
  return JSON.stringify(
    { packets, made, notMade: outcomes.length - made, summary: { ...summary, open: said } },
    null,
    2,
  );
}

function aboutPacket({ pages, state, open }: Pick<Made, 'pages' | 'state' | 'open'>): object {
  return { pages, state, open: open.map(({ code }) => code) };
}

/** Exit code of the first thing that went wrong; 0 if nothing did. */
export function exitCodeOf(diagnostics: readonly Diagnostic[]): number {
  const first = diagnostics.find(({ severity }) => severity === 'error');
  return first === undefined ? 0 : exitCodes[stageOf(first.code)];
}

/** Exit code of the first packet that was not made; 0 if all were. */
export function exitCodeOfOutcomes(outcomes: readonly Outcome[]): number {
  const first = outcomes.find((outcome) => !outcome.made);
  return first?.made === false ? exitCodeOf(first.diagnostics) : 0;
}

function codesOf(diagnostics: readonly Diagnostic[]): string {
  const codes = [
    ...new Set(diagnostics.filter(({ severity }) => severity === 'error').map(({ code }) => code)),
  ];
  const [first = 'INTERNAL', ...more] = codes;
  return more.length === 0 ? first : `${first} and ${countOf(more.length, 'more kind')}`;
}
