import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { EvidenceBase } from '../model/evidence.ts';
import type { EvidenceRecord } from '../model/evidence-record.ts';
import { isPastReview, reviewOf } from '../model/review.ts';

/**
 * Sources behind the figures of a table that were to be read again before its day, and the whole release when its own
 * review is past. The figures stay, since they are the best there is; the pages say it, and the packet stays a draft.
 */
export function warnOfReview(
  evidence: EvidenceBase,
  { recordsUsed, date }: { readonly recordsUsed: readonly string[]; readonly date: string },
): readonly Diagnostic[] {
  const used = new Set(recordsUsed);
  const past = evidence.records
    .filter(({ id }) => used.has(id))
    .filter((one) => isPastReview(evidence, one, date));
  const studies = [...new Set(past.map(({ study }) => study))].sort((a, b) => (a < b ? -1 : 1));
  return [
    ...(evidence.nextReview < date ? [wholeRelease(evidence)] : []),
    ...studies.map((study) =>
      oneSource(
        evidence,
        study,
        past.filter((record) => record.study === study),
      ),
    ),
  ];
}

function wholeRelease({ version, nextReview }: EvidenceBase): Diagnostic {
  return {
    code: 'EVIDENCE_PAST_REVIEW',
    severity: 'warning',
    message: `the evidence ${version} was to be looked over by ${nextReview}`,
    hint: 'Install a newer release; until then the packet stays a draft.',
  };
}

function oneSource(evidence: EvidenceBase, study: string, records: readonly EvidenceRecord[]): Diagnostic {
  const by = records.map((record) => reviewOf(evidence, record).by).sort((a, b) => (a < b ? -1 : 1))[0] ?? '';
  return {
    code: 'EVIDENCE_PAST_REVIEW',
    severity: 'warning',
    message: `${study} was to be read again by ${by}; on it stands ${records.map(({ id }) => id).join(', ')}`,
    hint: `Read it again (plainleaf evidence due --by ${by} says where) and set seen_on; until then the packet stays a draft.`,
    path: study,
  };
}
