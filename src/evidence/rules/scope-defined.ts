import type { EvidenceRecord } from '../../model/evidence-record.ts';
import type { EvidenceSet } from '../evidence-set.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

export const scopeDefined: EvidenceRule = {
  name: 'scope-defined',
  description:
    'a figure that counts less or more than its outcome says in its definition what it counts, as does one of new cases alone, or of operations counted as one',
  check: (evidence) =>
    evidence.records.flatMap((record) => [
      ...wrongScope(evidence, record),
      ...wrongNew(evidence, record),
      ...wrongTogether(evidence, record),
    ]),
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

function wrongTogether(evidence: EvidenceSet, record: EvidenceRecord) {
  if (record.together === undefined) return [];
  const choosable = evidence.options.find(({ code }) => code === record.option)?.choosable === true;
  if (!choosable && record.definition !== undefined) return [];
  const message = `the figure names operations counted together, and ${choosable ? 'is of one option alone' : 'nothing says so'}`;
  const hint = 'Only a record of a group has "together", and its definition names the operations.';
  return [faultIn(evidence, record, { code: 'EVIDENCE_INVALID', message, hint, at: ['together'] })];
}
