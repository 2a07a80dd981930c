import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

/** Percents that are counted from a body weight, and so cannot be turned into kilograms without knowing which. */
const percentMetrics: ReadonlySet<string> = new Set(['TWL', 'EWL', 'EBMIL', 'BMI-percent']);

export const referenceWeightStated: EvidenceRule = {
  name: 'reference-weight-stated',
  description: 'a percent of weight, and a share who lost some percent, says from which weight it counts',
  check: (evidence) =>
    evidence.records.flatMap((record) => {
      const counts =
        (record.kind === 'weight' && percentMetrics.has(record.value.metric)) ||
        ((record.kind === 'risk' || record.kind === 'benefit') && record.outcome.startsWith('responder-'));
      if (!counts || record.value.reference !== undefined) return [];
      return [
        faultIn(evidence, record, {
          code: 'EVIDENCE_UNIT',
          message: 'the percent does not say from which weight it counts',
          hint: 'Add reference; write unstated if the source does not say.',
          at: ['value'],
        }),
      ];
    }),
};
