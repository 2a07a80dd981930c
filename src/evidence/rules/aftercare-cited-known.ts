import type { AftercareFact } from '../../model/aftercare.ts';
import type { PointSource } from '../../model/evidence-rules.ts';
import { isPrintable } from '../../model/evidence.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule, Fault } from './rule.ts';

/** Cautions and ways back may stand on facts on aftercare. */
export const aftercareCitedKnown: EvidenceRule = {
  name: 'aftercare-cited-known',
  description:
    'a fact on aftercare that a caution or a reversal stands on is there, and was read if that says so',
  check: (evidence) => {
    const facts = new Map(evidence.aftercare.map((fact) => [fact.id, fact]));
    return [...evidence.cautions, ...evidence.reversibility].flatMap((entry) =>
      entry.sources.flatMap((point, index) => {
        const fault = point.aftercare === undefined ? undefined : faultOf(point, facts.get(point.aftercare));
        return fault === undefined
          ? []
          : [faultIn(evidence, entry, { ...fault, at: ['sources', index, 'aftercare'] })];
      }),
    );
  },
};

function faultOf(point: PointSource, fact: AftercareFact | undefined): Fault | undefined {
  if (fact === undefined) {
    const message = `${String(point.aftercare)} is no fact on aftercare`;
    return { code: 'EVIDENCE_UNKNOWN_CODE', message, hint: 'Correct the id.' };
  }
  if (!isPrintable(point) || isPrintable(fact)) return undefined;
  const message = `it says that ${fact.id} was read on a page, and that fact says otherwise`;
  const related = { message: 'the fact', entry: fact };
  return { code: 'EVIDENCE_UNVERIFIED', message, hint: 'Read the source, or correct seen.', related };
}
