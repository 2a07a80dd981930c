import { citationFields } from '../../model/study.ts';
import type { Study } from '../../model/study.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

export const citationComplete: EvidenceRule = {
  name: 'citation-complete',
  description: 'every study can be found by its citation, and says which parts of it were not seen',
  check: (evidence) =>
    evidence.studies.flatMap((study) => {
      const undeclared = undeclaredFields(study).map((field) =>
        faultIn(evidence, study, {
          code: 'EVIDENCE_NO_CITATION',
          message: `the citation has no ${field}, and citation_unseen does not say so`,
          hint: `Add the ${field}, or name it in citation_unseen.`,
          at: ['citation'],
        }),
      );
      if (canBeFound(study)) return undeclared;
      const nameless = faultIn(evidence, study, {
        code: 'EVIDENCE_NO_CITATION',
        message: 'the citation has neither a title nor authors with a journal',
        hint: 'Add the title, or the authors and the journal.',
        at: ['citation'],
      });
      return [nameless, ...undeclared];
    }),
};

function canBeFound({ citation }: Study): boolean {
  return citation.title !== undefined || (citation.authors !== undefined && citation.journal !== undefined);
}

function undeclaredFields({ citation, citation_unseen = [] }: Study): readonly string[] {
  return citationFields.filter((field) => citation[field] === undefined && !citation_unseen.includes(field));
}
