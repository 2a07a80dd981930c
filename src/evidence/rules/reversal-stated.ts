import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

/**
 * "Can it be undone?" is asked of every choice, so an option without an answer would stand on the page with a guess; and
 * what takes a part out of the body cannot be undone as if nothing had been.
 */
export const reversalStated: EvidenceRule = {
  name: 'reversal-stated',
  description:
    'of every option that a person may choose it is said whether it can be undone, and never "yes" where a part is taken out',
  check: (evidence) => {
    const stated = new Set(evidence.reversibility.map(({ option }) => option));
    return [
      ...evidence.options
        .filter((option) => option.choosable && !stated.has(option.figures_from))
        .map((option) =>
          faultIn(evidence, option, {
            code: 'EVIDENCE_INVALID',
            message: `nothing says whether ${option.code} can be undone`,
            hint: 'Add it to reversibility.yaml.',
          }),
        ),
      ...evidence.reversibility
        .filter(({ undo }) => undo.takes_out !== undefined && undo.possible === 'yes')
        .map((entry) =>
          faultIn(evidence, entry, {
            code: 'EVIDENCE_INVALID',
            message: `${entry.option} takes a part out, and is said to be undone altogether`,
            hint: 'Write partly or no, or leave takes_out out.',
          }),
        ),
    ];
  },
};
