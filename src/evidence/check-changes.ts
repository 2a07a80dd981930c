import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { EvidenceBase } from '../model/evidence.ts';
import type { Changes } from '../model/release.ts';
import type { EvidenceDifference, ListDifference } from './diff-evidence.ts';

/**
 * Whether a release says truly what it changed. Only a difference from the release right before it can tell; of any
 * other nothing is said.
 */
export function checkChanges(
  { changes, earlier }: Pick<EvidenceBase, 'changes' | 'earlier'>,
  { before, lists }: EvidenceDifference,
): readonly Diagnostic[] {
  const [last] = earlier;
  if (last?.version !== before.version) return [];
  if (last.digest !== before.digest)
    return [fault(`the folder is not release ${last.version} as it was published: its digest is another`)];
  const found = lists.find(({ list }) => list === 'records') ?? nothing;
  return (['added', 'changed', 'withdrawn'] as const).flatMap((what) => {
    const told = toldBy(changes, what);
    return [
      ...found[what]
        .filter((id) => !told.includes(id))
        .map((id) => fault(`${id} was ${what}, and the release does not say so`)),
      ...told
        .filter((id) => !found[what].includes(id))
        .map((id) => fault(`the release says that ${id} was ${what}, and it was not`)),
    ];
  });
}

function toldBy(changes: Changes | null, what: keyof Changes): readonly string[] {
  if (changes === null) return [];
  return what === 'withdrawn' ? changes.withdrawn.map(({ record }) => record) : changes[what];
}

const nothing: ListDifference = { list: 'records', added: [], changed: [], withdrawn: [] };

function fault(message: string): Diagnostic {
  const hint = 'Correct changes in release.yaml.';
  return { code: 'EVIDENCE_INVALID', severity: 'error', message, hint, path: 'changes' };
}
