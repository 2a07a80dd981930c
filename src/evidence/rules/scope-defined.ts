import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

export const scopeDefined: EvidenceRule = {
  name: 'scope-defined',
  description: 'a figure that counts less or more than its outcome says in its definition what it counts',
  check: (evidence) =>
    evidence.records.flatMap((record) => {
      if (record.scope === undefined || record.definition !== undefined) return [];
      const message = `the figure is ${record.scope} than ${record.outcome}, and nothing says what it counts`;
      const hint = 'Write what was counted as the definition.';
      return [faultIn(evidence, record, { code: 'EVIDENCE_INVALID', message, hint, at: ['scope'] })];
    }),
};
