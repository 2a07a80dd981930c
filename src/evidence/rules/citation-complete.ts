import type { AftercareSource } from '../../model/aftercare.ts';
import { citationFields } from '../../model/study.ts';
import type { Study } from '../../model/study.ts';
import type { EvidenceSet } from '../evidence-set.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

export const citationComplete: EvidenceRule = {
  name: 'citation-complete',
  description: 'every study can be found by its citation, and says which parts of it were not seen',
  check: (evidence) => evidence.studies.flatMap((study) => citationFaults(evidence, study)),
};

type Cited = Pick<Study | AftercareSource, 'citation' | 'citation_unseen'>;

/** What is wrong with the citation of a study, or of a source of aftercare. */
export function citationFaults(evidence: EvidenceSet, entry: Cited) {
  const undeclared = undeclaredFields(entry).map((field) =>
    faultIn(evidence, entry, {
      code: 'EVIDENCE_NO_CITATION',
      message: `the citation has no ${field}, and citation_unseen does not say so`,
      hint: `Add the ${field}, or name it in citation_unseen.`,
      at: ['citation'],
    }),
  );
  if (canBeFound(entry)) return undeclared;
  const nameless = faultIn(evidence, entry, {
    code: 'EVIDENCE_NO_CITATION',
    message: 'the citation has neither a title nor authors with a journal',
    hint: 'Add the title, or the authors and the journal.',
    at: ['citation'],
  });
  return [nameless, ...undeclared];
}

function canBeFound({ citation }: Cited): boolean {
  return citation.title !== undefined || (citation.authors !== undefined && citation.journal !== undefined);
}

function undeclaredFields({ citation, citation_unseen = [] }: Cited): readonly string[] {
  return citationFields.filter((field) => citation[field] === undefined && !citation_unseen.includes(field));
}
