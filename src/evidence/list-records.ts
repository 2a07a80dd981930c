import { isPrintable, samePeople } from '../model/evidence.ts';
import type { EvidenceBase } from '../model/evidence.ts';
import type { EvidenceKind, EvidenceRecord, Indication } from '../model/evidence-record.ts';
import { reviewOf } from '../model/review.ts';
import type { Review } from '../model/review.ts';
import type { Seen, Study } from '../model/study.ts';

/** What to list; every key that is given must hold. */
export interface RecordFilter {
  readonly option?: string;
  readonly outcome?: string;
  readonly study?: string;
  readonly kind?: EvidenceKind;
  readonly indication?: Indication;
  readonly seen?: Seen;
  /** true: only what may reach a patient page; false: only what may not. */
  readonly printable?: boolean;
}

export interface RecordRow {
  readonly record: EvidenceRecord;
  /** Always there in evidence that was loaded, since loading refuses a record without its study. */
  readonly study: Study | undefined;
  readonly printable: boolean;
}

/** Records that fit a filter, in file order. */
export function listRecords(evidence: EvidenceBase, filter: RecordFilter = {}): readonly RecordRow[] {
  return evidence.records.filter((record) => fits(record, filter)).map((record) => rowOf(evidence, record));
}

export interface RecordDetails extends RecordRow {
  /** When its source is to be read again; undefined for a figure that nobody has read there. */
  readonly review: Review | undefined;
  /** Other studies that count partly the same people: never pooled with this one. */
  readonly samePeopleAs: readonly Study[];
  readonly siblings: readonly string[];
}

/** One record with its study; undefined if there is none of that id. */
export function showRecord(evidence: EvidenceBase, id: string): RecordDetails | undefined {
  const record = evidence.records.find((candidate) => candidate.id === id);
  if (record === undefined) return undefined;
  const row = rowOf(evidence, record);
  const { study } = row;
  const others = [...evidence.studies.values()].filter((other) => other.id !== study?.id);
  return {
    ...row,
    review: row.printable ? reviewOf(evidence, record) : undefined,
    samePeopleAs: study ? others.filter((other) => samePeople(study, other, { a: record.cohort })) : [],
    siblings: evidence.records
      .filter((other) => other.study === record.study && other !== record)
      .map((other) => other.id),
  };
}

function rowOf(evidence: EvidenceBase, record: EvidenceRecord): RecordRow {
  return { record, study: evidence.studies.get(record.study), printable: isPrintable(record) };
}

function fits(record: EvidenceRecord, filter: RecordFilter): boolean {
  const wanted: readonly (readonly [unknown, unknown])[] = [
    [filter.option, record.option],
    [filter.outcome, record.outcome],
    [filter.study, record.study],
    [filter.kind, record.kind],
    [filter.indication, record.people.indication],
    [filter.seen, record.seen],
    [filter.printable, isPrintable(record)],
  ];
  return wanted.every(([asked, actual]) => asked === undefined || asked === actual);
}
