import { failure, success } from '../diagnostics/diagnostic.ts';
import type { Diagnostic, Result } from '../diagnostics/diagnostic.ts';
import type { Workspace } from '../io/workspace.ts';
import type { EvidenceBase } from '../model/evidence.ts';
import { recallEvidence, storeEvidence } from './cache.ts';
import { digestDataFiles, tryToReadFiles } from './data-files.ts';
import type { DataFile, Digester } from './data-files.ts';
import { buildEvidenceBase } from './evidence-set.ts';
import type { EvidenceLists } from './evidence-set.ts';
import { byPlace, lintEvidence } from './lint-evidence.ts';
import { readEvidence } from './read-evidence.ts';

export interface EvidenceSource {
  /** Folder of the data files. */
  readonly folder: string;
  readonly digester: Digester;
  /** Folder for a prepared copy; left out, the files are read anew by every process. */
  readonly cache?: string;
}

/** The last evidence of each workspace, so that a batch reads it once. */
const loaded = new WeakMap<Workspace, EvidenceBase>();

/**
 * Reads, validates and lints the evidence. It succeeds only if there is no error at all: a release with one bad
 * figure is not used. Diagnostics come in order of file and line.
 */
export async function loadEvidence(
  workspace: Workspace,
  source: EvidenceSource,
): Promise<Result<EvidenceBase>> {
  const files = await tryToReadFiles(workspace, source.folder);
  if (!files.ok) return files;
  const digest = digestDataFiles(files.value, source.digester);
  const known = loaded.get(workspace);
  if (known?.digest === digest) return success(known);
  const lists = await obtainLists(workspace, source, { files: files.value, digest });
  if (!lists.ok) return lists;
  const evidence = buildEvidenceBase(lists.value, digest);
  loaded.set(workspace, evidence);
  return success(evidence);
}

/** Everything that is wrong with the data files, whether or not a prepared copy exists; empty if nothing is. */
export async function checkEvidence(workspace: Workspace, folder: string): Promise<readonly Diagnostic[]> {
  const files = await tryToReadFiles(workspace, folder);
  if (!files.ok) return files.diagnostics;
  const read = readAndLint(files.value, folder);
  return read.ok ? [] : read.diagnostics;
}

interface Snapshot {
  readonly files: readonly DataFile[];
  readonly digest: string;
}

async function obtainLists(
  workspace: Workspace,
  source: EvidenceSource,
  snapshot: Snapshot,
): Promise<Result<EvidenceLists>> {
  const { cache, folder } = source;
  if (cache === undefined) return readAndLint(snapshot.files, folder);
  const recalled = await recallEvidence(workspace, cache, snapshot.digest);
  if (recalled !== undefined) return success(recalled);
  const read = readAndLint(snapshot.files, folder);
  if (read.ok) await storeEvidence(workspace, cache, { digest: snapshot.digest, lists: read.value });
  return read;
}

function readAndLint(files: readonly DataFile[], folder: string): Result<EvidenceLists> {
  const read = readEvidence(files, folder);
  if (!read.ok) return failure([...read.diagnostics].sort(byPlace));
  const faults = lintEvidence(read.value);
  return faults.length === 0 ? success(read.value) : failure(faults);
}
