import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

/** A page says "not possible" from `applies_to`; a record that shows the contrary must not stand beside it. */
export const outcomePossible: EvidenceRule = {
  name: 'outcome-possible',
  description: 'no figure is recorded for an option in which its outcome is said to be impossible',
  check: (evidence) => {
    const kinds = new Map(evidence.options.map(({ code, kind }) => [code, kind]));
    const outcomes = new Map(evidence.outcomes.map((outcome) => [outcome.code, outcome]));
    return evidence.records.flatMap((record) => {
      const kind = kinds.get(record.option);
      const outcome = outcomes.get(record.outcome);
      if (kind === undefined || outcome === undefined || outcome.applies_to.includes(kind)) return [];
      return [
        faultIn(evidence, record, {
          code: 'EVIDENCE_INVALID',
          message: `the outcome ${outcome.code} is said to be impossible with a ${kind} option`,
          hint: 'Add the kind to applies_to of the outcome, or correct the record.',
          at: ['outcome'],
          related: { message: 'the outcome', entry: outcome },
        }),
      ];
    });
  },
};
