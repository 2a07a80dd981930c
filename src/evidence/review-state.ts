import { isPrintable } from '../model/evidence.ts';
import type { EvidenceBase } from '../model/evidence.ts';
import type { EvidenceRecord } from '../model/evidence-record.ts';
import { reviewOf, reviewOfFact } from '../model/review.ts';
import type { Study } from '../model/study.ts';
import { listRecords } from './list-records.ts';
import type { RecordRow } from './list-records.ts';

/** A source to read again, with the figures that stand on it. */
export interface DueSource {
  readonly study: string;
  /** The earliest review of its figures, ISO. */
  readonly by: string;
  /** Ids of the records to hold against it. */
  readonly records: readonly string[];
  /** Addresses at which it was read. */
  readonly places: readonly string[];
}

export interface ReviewState {
  /** When the whole is to be looked over, ISO. */
  readonly nextReview: string;
  /** Whether that day has come. */
  readonly due: boolean;
  /** The day up to which reviews are listed, ISO. */
  readonly until: string;
  /** Sources whose review falls on that day or before, the earliest first. */
  readonly sources: readonly DueSource[];
  /** The first review after that day, with the number of its figures; undefined if none is left. */
  readonly next: { readonly by: string; readonly figures: number } | undefined;
  /** The same for facts on aftercare: `study` is then the id of their source, and `records` are theirs. */
  readonly aftercare: readonly DueSource[];
  /** Facts on aftercare that nobody has read at their source. */
  readonly unreadFacts: readonly string[];
  /** Figures that nobody has read at their source. */
  readonly unread: readonly RecordRow[];
  /** Studies whose citation is not wholly confirmed. */
  readonly unconfirmed: readonly Study[];
}

/** What is due for review by a day (ISO). */
export function reviewState(evidence: EvidenceBase, until: string): ReviewState {
  const dated = evidence.records
    .filter(isPrintable)
    .map((record) => ({ record, by: reviewOf(evidence, record).by }))
    .sort((a, b) => byText(a.by, b.by) || byText(a.record.id, b.record.id));
  const coming = dated.filter(({ by }) => by > until);
  const first = coming[0]?.by;
  return {
    nextReview: evidence.nextReview,
    due: until >= evidence.nextReview,
    until,
    sources: sourcesOf(
      evidence,
      dated.filter(({ by }) => by <= until),
    ),
    next:
      first === undefined
        ? undefined
        : { by: first, figures: coming.filter(({ by }) => by === first).length },
    aftercare: dueFacts(evidence, until),
    unreadFacts: evidence.aftercare.filter((fact) => !isPrintable(fact)).map(({ id }) => id),
    unread: listRecords(evidence, { printable: false }),
    unconfirmed: [...evidence.studies.values()].filter((study) => study.citation_unseen !== undefined),
  };
}

interface Dated {
  readonly record: EvidenceRecord;
  readonly by: string;
}

/** One entry a study, in the order of its earliest figure. */
function sourcesOf(evidence: EvidenceBase, dated: readonly Dated[]): readonly DueSource[] {
  return [...new Set(dated.map(({ record }) => record.study))].map((study) => {
    const own = dated.filter(({ record }) => record.study === study);
    const places = own.flatMap(({ record }) => record.seen_at ?? evidence.studies.get(study)?.seen_at ?? []);
    return {
      study,
      by: own[0]?.by ?? '',
      records: own.map(({ record }) => record.id),
      places: [...new Set(places)],
    };
  });
}

/** One entry a source, in the order of its earliest fact. */
function dueFacts(evidence: EvidenceBase, until: string): readonly DueSource[] {
  const dated = evidence.aftercare
    .filter(isPrintable)
    .map((fact) => ({ fact, by: reviewOfFact(evidence, fact).by }))
    .filter(({ by }) => by <= until)
    .sort((a, b) => byText(a.by, b.by) || byText(a.fact.id, b.fact.id));
  return [...new Set(dated.map(({ fact }) => fact.source))].map((study) => {
    const own = dated.filter(({ fact }) => fact.source === study);
    const places = evidence.aftercareSources.get(study)?.seen_at ?? [];
    return { study, by: own[0]?.by ?? '', records: own.map(({ fact }) => fact.id), places };
  });
}

function byText(a: string, b: string): number {
  return a < b ? -1 : Number(a > b);
}
