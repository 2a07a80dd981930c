import { describeOption } from '../../src/compare/describe-option.ts';
import type { OptionDesk } from '../../src/compare/describe-option.ts';
import { describeSubject } from '../../src/compare/describe-person.ts';
import type { EvidenceRecord } from '../../src/model/evidence-record.ts';
import { makeCase, makeClinic, makeEvidence, today } from './compare-inputs.ts';

/** The options of the woman of `makeCase`, of whom these records are all that is known. */
export function makeDesks(records: readonly EvidenceRecord[], codes: readonly string[]): OptionDesk[] {
  const evidence = makeEvidence(records);
  const subject = describeSubject(makeCase(), evidence, today);
  return codes.map((code) => {
    const desk = describeOption(code, { subject, evidence, clinic: makeClinic(), surgeon: 'surgeon-1' });
    if (desk === undefined) throw new Error(`${code} cannot be chosen`);
    return desk;
  });
}
