import { compareOptions } from '../../src/compare/index.ts';
import type { EvidenceBase } from '../../src/model/evidence.ts';
import type { EvidenceRecord } from '../../src/model/evidence-record.ts';
import type { ReasonCheck, ReasonCode } from '../../src/model/reason-check.ts';
import { makeCase, makeClinic, makeEvidence, today } from './compare-inputs.ts';
import type { CaseChanges } from './compare-inputs.ts';

export interface AskedReason {
  readonly option?: string;
  readonly stance?: 'for' | 'against';
  readonly changes?: CaseChanges;
  readonly evidence?: Partial<EvidenceBase>;
  readonly records?: readonly EvidenceRecord[];
  readonly clinic?: object;
}

/** How one reason for the sleeve (unless another option is named) is judged. */
export function check(code: ReasonCode, asked: AskedReason = {}): ReasonCheck {
  const { option = 'sleeve', stance = 'for', changes = {}, records = [] } = asked;
  const reasons = [{ code }];
  const said =
    stance === 'for' ? { leaning: { option, reasons } } : { advised_against: [{ option, reasons }] };
  const given = makeCase({
    ...changes,
    decision: { options: ['sleeve', 'bypass', 'no-operation'], ...changes.decision, ...said },
  });
  const evidence = { ...makeEvidence(records), ...asked.evidence };
  const clinic = makeClinic({ ...asked.clinic });
  const result = compareOptions({ case: given, clinic, evidence, date: today });
  const [only, second] = result.ok ? result.value.reasons : [];
  if (only === undefined || second !== undefined) throw new Error('one reason was asked for');
  return only;
}
