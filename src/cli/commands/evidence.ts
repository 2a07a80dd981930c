import { exitCodes } from '../../diagnostics/codes.ts';
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { checkChanges, checkEvidence, diffEvidence } from '../../evidence/index.ts';
import { loadEvidence, reviewState, showFact, showRecord } from '../../evidence/index.ts';
import { placesIn } from '../../installation.ts';
import { canonicalJson, sha256 } from '../../io/digest.ts';
import { lintEvidenceWords } from '../../localize/index.ts';
import type { EvidenceBase } from '../../model/evidence.ts';
import type { Call, Context } from '../context.ts';
import { textOption } from '../context.ts';
import { dayOf } from '../day-of.ts';
import { listEvidence } from '../list-evidence.ts';
import { printDiagnostics } from '../print-diagnostics.ts';
import { exitCodeOf } from '../report-outcomes.ts';
import { showFactDetails } from '../show-fact.ts';
import { showRecordDetails } from '../show-record.ts';
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
  const listing = listEvidence(evidence, call);
  if ('refused' in listing) return refuse(context, listing.refused);
  print(call, context, listing);
  return 0;
}

function showOne(evidence: EvidenceBase, call: Call, context: Context): number {
  const id = call.files[1] ?? '';
  const details = showRecord(evidence, id);
  const fact = showFact(evidence, id);
  if (details !== undefined) print(call, context, { value: details, text: () => showRecordDetails(details) });
  else if (fact !== undefined) print(call, context, { value: fact, text: () => showFactDetails(fact) });
  else return refuse(context, `there is no record ${id}, nor a fact; plainleaf evidence list shows all`);
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
