import type { AftercareFact } from '../../model/aftercare.ts';
import { isSubjectOf } from '../../model/aftercare-codes.ts';
import { isWarning } from '../../model/aftercare-rules.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule, Fault } from './rule.ts';

export const aftercareCodeFits: EvidenceRule = {
  name: 'aftercare-code-fits',
  description: 'id, topic, subject and urgency of a fact on aftercare belong together',
  check: (evidence) =>
    evidence.aftercare.flatMap((fact) => faultsOf(fact).map((fault) => faultIn(evidence, fact, fault))),
};

function faultsOf({ id, topic, subject, urgency }: AftercareFact): readonly Fault[] {
  const start = topic === 'unit-conversion' ? 'unit' : topic;
  const code = 'EVIDENCE_INVALID';
  const isEmergency = topic === 'warning-emergency';
  return [
    ...(id.startsWith(`${start}.`)
      ? []
      : [
          {
            code: 'EVIDENCE_ID_MISMATCH' as const,
            message: `the id does not start with ${start}`,
            hint: 'Rename it.',
            at: ['id'],
          },
        ]),
    ...(isSubjectOf(topic, subject)
      ? []
      : [
          {
            code,
            message: `${subject} is no subject of ${topic}`,
            hint: 'Correct one of the two.',
            at: ['subject'],
          } as const,
        ]),
    ...(isWarning(topic) === (urgency !== undefined) &&
    (urgency === undefined || (urgency === 'now') === isEmergency)
      ? []
      : [
          {
            code,
            message: 'how fast to call does not fit the topic',
            hint: urgencyHint,
            at: ['urgency'],
          } as const,
        ]),
  ];
}

const urgencyHint = 'Of warning-emergency write now, of warning-clinic today or visit, of others nothing.';
