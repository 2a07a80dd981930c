import { exitCodes } from '../../diagnostics/codes.ts';
import { checkEvidence, listRecords, loadEvidence, reviewState, showRecord } from '../../evidence/index.ts';
import { placesIn } from '../../installation.ts';
import { canonicalJson, sha256 } from '../../io/digest.ts';
import type { EvidenceBase } from '../../model/evidence.ts';
import { SeenSchema } from '../../model/study.ts';
import type { Call, Context } from '../context.ts';
import { textOption } from '../context.ts';
import { dayOf } from '../day-of.ts';
import { printDiagnostics } from '../print-diagnostics.ts';
import { exitCodeOf } from '../report-outcomes.ts';
import { showRecordDetails, showRecords, showReview } from '../show-record.ts';

type Look = (evidence: EvidenceBase, call: Call, context: Context) => number;

const looks: ReadonlyMap<string, Look> = new Map([
  ['list', listThem],
  ['show', showOne],
  ['due', showDue],
]);

/** plainleaf evidence list | show ID | due | lint */
export async function run(call: Call, context: Context): Promise<number> {
  const { workspace, root } = context;
  const [what = '', ...more] = call.files;
  const look = looks.get(what);
  if ((look === undefined && what !== 'lint') || more.length !== (what === 'show' ? 1 : 0)) {
    return refuse(context, 'evidence takes list, show ID, due or lint');
  }
  const places = placesIn(root);
  const folder = places.evidence;
  if (look === undefined) return lint(folder, call, context);
  const digester = { sha256, canonicalJson };
  const loaded = await loadEvidence(workspace, {
    folder,
    cache: places.cache,
    digester,
  });
  if (loaded.ok) return look(loaded.value, call, context);
  await printDiagnostics(context, loaded.diagnostics);
  return exitCodeOf(loaded.diagnostics);
}

function listThem(evidence: EvidenceBase, call: Call, context: Context): number {
  const option = textOption(call, 'option');
  const outcome = textOption(call, 'outcome');
  const seen = SeenSchema.optional().safeParse(textOption(call, 'seen'));
  if (!seen.success) return refuse(context, '--seen takes page, page-2nd or memory');
  const unknown = findUnknown(evidence.options, option) ?? findUnknown(evidence.outcomes, outcome);
  if (unknown !== undefined) return refuse(context, unknown);
  const rows = listRecords(evidence, {
    ...(option === undefined ? {} : { option }),
    ...(outcome === undefined ? {} : { outcome }),
    ...(seen.data === undefined ? {} : { seen: seen.data }),
  });
  print(call, context, { value: rows.map(({ record }) => record), text: () => showRecords(rows) });
  return 0;
}

function showOne(evidence: EvidenceBase, call: Call, context: Context): number {
  const id = call.files[1] ?? '';
  const details = showRecord(evidence, id);
  if (details === undefined)
    return refuse(context, `there is no record ${id}; plainleaf evidence list shows all`);
  print(call, context, { value: details, text: () => showRecordDetails(details) });
  return 0;
}

function showDue(evidence: EvidenceBase, call: Call, context: Context): number {
  const state = reviewState(evidence, dayOf(call, context));
  print(call, context, { value: state, text: () => showReview(state) });
  return 0;
}

async function lint(folder: string, call: Call, context: Context): Promise<number> {
  const diagnostics = await checkEvidence(context.workspace, folder);
  if (call.options.has('json')) context.terminal.out(JSON.stringify({ diagnostics }, null, 2));
  else await printDiagnostics(context, diagnostics);
  if (diagnostics.length === 0 && !call.options.has('json'))
    context.terminal.out('The evidence is in order.');
  return exitCodeOf(diagnostics);
}

function findUnknown(
  defined: readonly { readonly code: string }[],
  code: string | undefined,
): string | undefined {
  if (code === undefined || defined.some((one) => one.code === code)) return undefined;
  return `there is no ${code}; there are ${defined.map((one) => one.code).join(', ')}`;
}

function print(
  call: Call,
  { terminal }: Context,
  { value, text }: { readonly value: unknown; readonly text: () => string },
): void {
  terminal.out(call.options.has('json') ? JSON.stringify(value, null, 2) : text());
}

function refuse({ terminal }: Context, why: string): number {
  terminal.err(`plainleaf: ${why}.\nRun plainleaf evidence --help.`);
  return exitCodes.usage;
}
