import { z } from 'zod';

import type { Workspace } from '../io/workspace.ts';
import { EvidenceListsSchema } from './evidence-set.ts';
import type { EvidenceLists } from './evidence-set.ts';

/** Raise it when rules or schemas change, so that copies prepared under the old ones are made anew. */
const cacheVersion = 11;

const StoredSchema = z.strictObject({
  version: z.literal(cacheVersion),
  digest: z.string(),
  lists: EvidenceListsSchema,
});

/** The prepared copy for a digest; undefined if there is none, or if it is stale or broken. */
export async function recallEvidence(
  workspace: Workspace,
  cache: string,
  digest: string,
): Promise<EvidenceLists | undefined> {
  const path = cachePath(cache, digest);
  if (!(await workspace.exists(path))) return undefined;
  const stored = StoredSchema.safeParse(parseJson(await workspace.readText(path)));
  return stored.success && stored.data.digest === digest ? stored.data.lists : undefined;
}

/** Keeps a copy that has passed every rule. A disk that refuses it costs time, not correctness. */
export async function storeEvidence(
  workspace: Workspace,
  cache: string,
  { digest, lists }: { readonly digest: string; readonly lists: EvidenceLists },
): Promise<void> {
  try {
    await workspace.write(cachePath(cache, digest), JSON.stringify({ version: cacheVersion, digest, lists }));
  } catch {
    return;
  }
}

function cachePath(cache: string, digest: string): string {
  return `${cache}/evidence-${digest}.json`;
}

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
