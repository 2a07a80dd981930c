import { citationFaults } from './citation-complete.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

export const aftercareSourcePresent: EvidenceRule = {
  name: 'aftercare-source-present',
  description: 'every fact on aftercare names a source that can be found by its citation',
  check: (evidence) => {
    const sources = new Set(evidence.aftercareSources.map(({ id }) => id));
    const sourceless = evidence.aftercare
      .filter(({ source }) => !sources.has(source))
      .map((fact) =>
        faultIn(evidence, fact, {
          code: 'EVIDENCE_NO_CITATION',
          message: `its source ${fact.source} is not in aftercare-sources.yaml`,
          hint: 'Add the source, or correct the id.',
          at: ['source'],
        }),
      );
    const cited = evidence.aftercareSources.flatMap((source) => citationFaults(evidence, source));
    return [...sourceless, ...cited];
  },
};
