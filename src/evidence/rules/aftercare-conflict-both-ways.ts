import type { AftercareFact } from '../../model/aftercare.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule, Fault } from './rule.ts';

/** Neither side of a conflict may print as a rule, whichever of the two a page would take. */
export const aftercareConflictBothWays: EvidenceRule = {
  name: 'aftercare-conflict-both-ways',
  description: 'two facts on aftercare that say otherwise name each other and are about the same treatment',
  check: (evidence) => {
    const facts = new Map(evidence.aftercare.map((fact) => [fact.id, fact]));
    return evidence.aftercare.flatMap((fact) =>
      (fact.conflict_with ?? []).flatMap((other, index) => {
        const fault = faultOf(fact, other, facts.get(other));
        return fault === undefined
          ? []
          : [faultIn(evidence, fact, { ...fault, at: ['conflict_with', index] })];
      }),
    );
  },
};

function faultOf(fact: AftercareFact, id: string, other: AftercareFact | undefined): Fault | undefined {
  const code = 'EVIDENCE_CONFLICT';
  if (id === fact.id) return { code, message: 'a fact cannot conflict with itself', hint: 'Remove it.' };
  if (other === undefined) {
    const message = `it conflicts with ${id}, which is no fact on aftercare`;
    return { code: 'EVIDENCE_UNKNOWN_CODE', message, hint: 'Correct the id.' };
  }
  const related = { message: 'the other fact', entry: other };
  if (other.conflict_with?.includes(fact.id) !== true) {
    const message = `it conflicts with ${id}, which does not say so`;
    return { code, message, hint: `Add ${fact.id} to conflict_with of ${id}.`, related };
  }
  if (touched(fact).some((option) => touched(other).includes(option))) return undefined;
  return {
    code,
    message: `it conflicts with ${id}, which is about other treatments`,
    hint: 'Remove it.',
    related,
  };
}

function touched({ options, extrapolated_to: more = [] }: AftercareFact): readonly string[] {
  return [...options, ...more];
}
