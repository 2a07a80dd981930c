import type { EvidenceRecord } from '../../model/evidence-record.ts';
import type { EvidenceSet } from '../evidence-set.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

export const scopeDefined: EvidenceRule = {
  name: 'scope-defined',
  description:
    'a figure that counts less or more than its outcome says in its definition what it counts, as does one of new cases alone',
  check: (evidence) =>
    evidence.records.flatMap((record) => [...wrongScope(evidence, record), ...wrongNew(evidence, record)]),
};

function wrongScope(evidence: EvidenceSet, record: EvidenceRecord) {
  if (record.scope === undefined || record.definition !== undefined) return [];
  const message = `the figure is ${record.scope} than ${record.outcome}, and nothing says what it counts`;
  const hint = 'Write what was counted as the definition.';
  return [faultIn(evidence, record, { code: 'EVIDENCE_INVALID', message, hint, at: ['scope'] })];
}

function wrongNew(evidence: EvidenceSet, record: EvidenceRecord) {
  if (record.new_only === undefined) return [];
  const outcome = evidence.outcomes.find(({ code }) => code === record.outcome);
  if (outcome?.new_without !== undefined && record.definition !== undefined) return [];
  const message = `the figure counts new cases of ${record.outcome} alone, and nothing says so or says of what they are free`;
  const hint = 'Write what was counted as the definition, and new_without of the outcome.';
  return [faultIn(evidence, record, { code: 'EVIDENCE_INVALID', message, hint, at: ['new_only'] })];
}
