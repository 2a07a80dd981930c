import type { AftercareFact } from './aftercare.ts';
import { addMonths } from './calendar-day.ts';
import type { EvidenceBase } from './evidence.ts';
import type { EvidenceRecord } from './evidence-record.ts';

/** When the source of a figure is to be read again. Dates are ISO days. */
export interface Review {
  readonly by: string;
  /** Who set the day: the record, its study, the source of a fact on aftercare, or the interval of the option. */
  readonly setBy: 'record' | 'study' | 'source' | 'interval';
  /** The day on which the source was read, or that of the first release, before which it was. */
  readonly readOn: string;
}

type Reviewed = Pick<EvidenceBase, 'date' | 'earlier' | 'options' | 'reviewMonths' | 'studies'>;

/**
 * The review of a record. A day that the record or its study names wins; else it is so many months after the reading
 * as the option's maturity allows. A source without a day of reading counts from the first release and not from the
 * present one, so that a new release renews nothing that nobody has read again.
 */
export function reviewOf(evidence: Reviewed, record: EvidenceRecord): Review {
  const study = evidence.studies.get(record.study);
  const readOn = record.seen_on ?? study?.seen_on ?? firstRelease(evidence);
  if (record.review_by !== undefined) return { by: record.review_by, setBy: 'record', readOn };
  if (study?.review_by !== undefined) return { by: study.review_by, setBy: 'study', readOn };
  const option = evidence.options.find(({ code }) => code === record.option);
  const months = evidence.reviewMonths[option?.maturity ?? 'under-study'];
  return { by: addMonths(readOn, months), setBy: 'interval', readOn };
}

/** The review of a fact on aftercare, by the least settled of the options that its source speaks of. */
export function reviewOfFact(
  evidence: Omit<Reviewed, 'studies'> & Pick<EvidenceBase, 'aftercareSources'>,
  fact: Pick<AftercareFact, 'source' | 'options'>,
): Review {
  const source = evidence.aftercareSources.get(fact.source);
  const readOn = source?.seen_on ?? firstRelease(evidence);
  if (source?.review_by !== undefined) return { by: source.review_by, setBy: 'source', readOn };
  const named = evidence.options.filter(({ code }) => fact.options.includes(code));
  const intervals = named.map(({ maturity }) => evidence.reviewMonths[maturity]);
  const months = Math.min(evidence.reviewMonths.established, ...intervals);
  return { by: addMonths(readOn, months), setBy: 'interval', readOn };
}

/** Whether the review of a record was due before a day (ISO). */
export function isPastReview(evidence: Reviewed, record: EvidenceRecord, day: string): boolean {
  return reviewOf(evidence, record).by < day;
}

function firstRelease({ date, earlier }: Pick<Reviewed, 'date' | 'earlier'>): string {
  return earlier.at(-1)?.date ?? date;
}
