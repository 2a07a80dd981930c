import { exitCodes } from '../../diagnostics/codes.ts';
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { checkChanges, checkEvidence, diffEvidence } from '../../evidence/index.ts';
import { listRecords, loadEvidence, reviewState, showRecord } from '../../evidence/index.ts';
import { placesIn } from '../../installation.ts';
import { canonicalJson, sha256 } from '../../io/digest.ts';
import { lintEvidenceWords } from '../../localize/index.ts';
import type { EvidenceBase } from '../../model/evidence.ts';
import { SeenSchema } from '../../model/study.ts';
import type { Call, Context } from '../context.ts';
import { textOption } from '../context.ts';
import { dayOf } from '../day-of.ts';
import { printDiagnostics } from '../print-diagnostics.ts';
import { exitCodeOf } from '../report-outcomes.ts';
import { showRecordDetails, showRecords } from '../show-record.ts';
import { showReleaseDifference, showRelease } from '../show-release.ts';
import { showReview } from '../show-review.ts';

type Look = (evidence: EvidenceBase, call: Call, context: Context) => number | Promise<number>;

interface Looking {
  readonly look: Look;
  /** How many words follow its name. */
  readonly takes: number;
}

const looks: ReadonlyMap<string, Looking> = new Map([
  ['list', { look: listThem, takes: 0 }],
  ['show', { look: showOne, takes: 1 }],
  ['due', { look: showDue, takes: 0 }],
  ['release', { look: showState, takes: 0 }],
  ['diff', { look: showDiff, takes: 1 }],
]);

/** plainleaf evidence list | show ID | due | release | diff FOLDER | lint */
export async function run(call: Call, context: Context): Promise<number> {
  const { workspace, root } = context;
  const [what = '', ...more] = call.files;
  const looking = looks.get(what);
  if ((looking === undefined && what !== 'lint') || more.length !== (looking?.takes ?? 0)) {
    return refuse(context, 'evidence takes list, show ID, due, release, diff FOLDER or lint');
  }
  const places = placesIn(root);
  if (looking === undefined) return lint(call, context);
  const source = { folder: places.evidence, cache: places.cache, digester };
  const loaded = await loadEvidence(workspace, source);
  if (loaded.ok) return looking.look(loaded.value, call, context);
  await printDiagnostics(context, loaded.diagnostics);
  return exitCodeOf(loaded.diagnostics);
}

const digester = { sha256, canonicalJson };

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
  const state = reviewState(evidence, textOption(call, 'by') ?? dayOf(call, context));
  print(call, context, { value: state, text: () => showReview(state) });
  return 0;
}

function showState(evidence: EvidenceBase, call: Call, context: Context): number {
  const { version, date, nextReview, reviewMonths, digest, changes, earlier } = evidence;
  const value = { version, date, nextReview, reviewMonths, digest, changes, earlier };
  print(call, context, { value, text: () => showRelease(evidence) });
  return 0;
}

/** From the release in another folder to this one. */
async function showDiff(evidence: EvidenceBase, call: Call, context: Context): Promise<number> {
  const folders = { before: call.files[1] ?? '', after: placesIn(context.root).evidence };
  const found = await diffEvidence(context.workspace, folders, digester);
  if (found.ok) print(call, context, { value: found.value, text: () => showReleaseDifference(found.value) });
  const faults = found.ok ? checkChanges(evidence, found.value) : found.diagnostics;
  await printDiagnostics(context, faults);
  return exitCodeOf(faults);
}

async function lint(call: Call, context: Context): Promise<number> {
  const diagnostics = await lintAll(context);
  if (call.options.has('json')) context.terminal.out(JSON.stringify({ diagnostics }, null, 2));
  else await printDiagnostics(context, diagnostics);
  if (diagnostics.length === 0 && !call.options.has('json'))
    context.terminal.out('The evidence is in order.');
  return exitCodeOf(diagnostics);
}

/** The data first; what words they call for is known only once they are in order. */
async function lintAll({ workspace, root }: Context): Promise<readonly Diagnostic[]> {
  const places = placesIn(root);
  const faults = await checkEvidence(workspace, places.evidence);
  if (faults.length > 0) return faults;
  const source = { folder: places.evidence, cache: places.cache, digester };
  const loaded = await loadEvidence(workspace, source);
  return loaded.ok ? lintEvidenceWords(workspace, places.locales, loaded.value) : loaded.diagnostics;
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
