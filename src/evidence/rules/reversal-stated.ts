import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

/** "Can it be undone?" is asked of every choice, so an option without an answer would stand on the page with a guess. */
export const reversalStated: EvidenceRule = {
  name: 'reversal-stated',
  description: 'of every option that a person may choose it is said whether it can be undone',
  check: (evidence) => {
    const stated = new Set(evidence.reversibility.map(({ option }) => option));
    return evidence.options
      .filter((option) => option.choosable && !stated.has(option.figures_from))
      .map((option) =>
        faultIn(evidence, option, {
          code: 'EVIDENCE_INVALID',
          message: `nothing says whether ${option.code} can be undone`,
          hint: 'Add it to reversibility.yaml.',
        }),
      );
  },
};
