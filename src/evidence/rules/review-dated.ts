import type { AftercareSource } from '../../model/aftercare.ts';
import type { EvidenceRecord } from '../../model/evidence-record.ts';
import type { Study } from '../../model/study.ts';
import type { EvidenceSet } from '../evidence-set.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

/** A day of reading decides when a figure is read again, so a slip of the pen there would keep it in print too long. */
export const reviewDated: EvidenceRule = {
  name: 'review-dated',
  description: 'a source was read after it was published and before the release, and its review comes later',
  check: (evidence) => {
    const studies = new Map(evidence.studies.map((study) => [study.id, study]));
    return [
      ...evidence.studies.flatMap((study) => faultsOf(evidence, study, study)),
      ...evidence.aftercareSources.flatMap((source) => faultsOf(evidence, source, source)),
      ...evidence.records.flatMap((record) => [
        ...faultsOf(evidence, record, studies.get(record.study)),
        ...unreadAddition(evidence, record, studies.get(record.study)),
      ]),
    ];
  },
};

type Read = Study | EvidenceRecord | AftercareSource;

function faultsOf(evidence: EvidenceSet, entry: Read, study: Study | AftercareSource | undefined) {
  const { seen_on: seenOn, review_by: reviewBy } = entry;
  const readOn = seenOn ?? study?.seen_on ?? firstRelease(evidence);
  const faults = [
    ...readingFaults(evidence, seenOn, study).map((message) => ({ at: 'seen_on', message })),
    ...(reviewBy !== undefined && reviewBy <= readOn
      ? [{ at: 'review_by', message: 'the review does not come after the reading' }]
      : []),
  ];
  return faults.map(({ at, message }) =>
    faultIn(evidence, entry, { code: 'EVIDENCE_REVIEW', message, hint: 'Correct the day.', at: [at] }),
  );
}

function readingFaults(
  { release }: EvidenceSet,
  seenOn: string | undefined,
  study: Study | AftercareSource | undefined,
): readonly string[] {
  if (seenOn === undefined) return [];
  const isEarly = Number(seenOn.slice(0, 4)) < (study?.citation.year ?? 0);
  return [
    ...(seenOn > release.date ? ['it was read after the release that holds it'] : []),
    ...(isEarly ? ['it was read before it was published'] : []),
  ];
}

function firstRelease({ release }: EvidenceSet): string {
  return release.earlier.at(-1)?.date ?? release.date;
}

/** What was added later cannot have been read before the first release, from which the interval would count. */
function unreadAddition(evidence: EvidenceSet, record: EvidenceRecord, study: Study | undefined) {
  const { changes, earlier } = evidence.release;
  const added = [changes, ...earlier.map((one) => one.changes)].flatMap((one) => one?.added ?? []);
  if (!added.includes(record.id) || (record.seen_on ?? study?.seen_on) !== undefined) return [];
  return [
    faultIn(evidence, record, {
      code: 'EVIDENCE_REVIEW',
      message: 'the record was added after the first release, and nothing says when its source was read',
      hint: 'Add seen_on to the record or its study.',
      at: ['id'],
    }),
  ];
}
