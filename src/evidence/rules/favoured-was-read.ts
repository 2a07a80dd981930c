import type { Caution } from '../../model/evidence-rules.ts';
import { isCautionRead } from '../../model/statement.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

/** To point to another option is a claim about it, so usual practice alone does not do it. */
export const favouredWasRead: EvidenceRule = {
  name: 'favoured-was-read',
  description:
    'a caution that holds up another option was read on a page, and touches an option that it does not hold up',
  check: (evidence) =>
    evidence.cautions.flatMap((caution) => {
      const message = faultOf(caution);
      return message === undefined
        ? []
        : [
            faultIn(evidence, caution, {
              code: 'EVIDENCE_INVALID',
              message,
              hint: 'Read the source, or leave favours out.',
              at: ['favours'],
            }),
          ];
    }),
};

function faultOf(caution: Caution): string | undefined {
  const { favours, options } = caution;
  if (favours === undefined) return undefined;
  if (!isCautionRead(caution)) return 'an option is held up as better, but no source was read';
  return options.every((option) => favours.includes(option))
    ? 'every option that this touches is held up as better'
    : undefined;
}
