import type { Changes } from '../../model/release.ts';
import type { EvidenceSet } from '../evidence-set.ts';
import type { DataPath } from '../parse-data-file.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

interface Told {
  readonly version: string;
  readonly date: string;
  readonly changes: Changes | null;
  /** Where it stands in the release file. */
  readonly at: DataPath;
}

interface Complaint {
  readonly at: DataPath;
  readonly message: string;
  readonly hint: string;
}

/** Who was given a figure that has since gone is asked years later, so what each release changed is kept. */
export const releaseHistory: EvidenceRule = {
  name: 'release-history',
  description: 'releases are told newest first, each with what it changed, and no withdrawn id comes back',
  check: (evidence) => {
    const releases = releasesOf(evidence);
    return [
      ...releases.flatMap((one, index) => orderFaults(one, releases[index - 1])),
      ...releases.flatMap((one, index) => firstFaults(one, index === releases.length - 1)),
      ...releases.flatMap((one, index) => idFaults(one, releases.slice(0, index), evidence)),
    ].map((complaint) => faultIn(evidence, evidence.release, { code: 'EVIDENCE_INVALID', ...complaint }));
  },
};

/** This release and those before it, the newest first. */
function releasesOf({ release }: EvidenceSet): readonly Told[] {
  return [
    { ...release, at: [] },
    ...release.earlier.map((one, index): Told => ({ ...one, at: ['earlier', index] })),
  ];
}

function orderFaults({ version, date, at }: Told, newer: Told | undefined): readonly Complaint[] {
  const monthFits = version === date.slice(0, 7).replace('-', '.');
  const isBefore = newer === undefined || (date < newer.date && version !== newer.version);
  return [
    ...(monthFits ? [] : [{ at: [...at, 'version'], message: 'the version is not the month of the date' }]),
    ...(isBefore ? [] : [{ at: [...at, 'date'], message: 'the release is not before the one above it' }]),
  ].map((complaint) => ({ ...complaint, hint: 'Correct the date or the version.' }));
}

function firstFaults({ changes, at }: Told, isFirst: boolean): readonly Complaint[] {
  if ((changes === null) === isFirst) return [];
  const message = isFirst
    ? 'the first release has nothing to change'
    : 'the release does not say what it changed';
  const hint = isFirst ? 'Write changes: null.' : 'Write what evidence diff prints.';
  return [{ at: [...at, 'changes'], message, hint }];
}

/** Ids stand once; what was added or changed is still there, or a later release says why not; what is gone stays gone. */
function idFaults(
  { changes, at }: Told,
  later: readonly Told[],
  { records }: EvidenceSet,
): readonly Complaint[] {
  if (changes === null) return [];
  const present = new Set(records.map(({ id }) => id));
  const goneLater = new Set(later.flatMap((one) => withdrawnIds(one.changes)));
  const addedLater = new Set(later.flatMap((one) => one.changes?.added ?? []));
  const kept = [...changes.added, ...changes.changed];
  const gone = withdrawnIds(changes);
  const all = [...kept, ...gone];
  return [
    ...all.filter((id, index) => all.indexOf(id) < index).map((id) => `${id} stands twice in one release`),
    ...kept
      .filter((id) => !present.has(id) && !goneLater.has(id) && !gone.includes(id))
      .map((id) => `${id} is no record, and no later release says that it was withdrawn`),
    ...gone
      .filter((id) => present.has(id) || addedLater.has(id))
      .map((id) => `${id} was withdrawn, and is there again`),
  ].map((message) => ({ at: [...at, 'changes'], message, hint: 'Correct the list, or use a new id.' }));
}

function withdrawnIds(changes: Changes | null): readonly string[] {
  return (changes?.withdrawn ?? []).map(({ record }) => record);
}
