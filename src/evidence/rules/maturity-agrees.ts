import type { OptionDefinition } from '../../model/evidence.ts';
import type { EvidenceSet } from '../evidence-set.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

/** Maturity sets how often figures are read again: an option called settled too early would be read too seldom. */
export const maturityAgrees: EvidenceRule = {
  name: 'maturity-agrees',
  description: 'no option is called more settled than the bodies in standing.yaml say',
  check: (evidence) =>
    evidence.options.flatMap((option) => {
      const message = faultOf(option, evidence);
      if (message === undefined) return [];
      const hint = 'Correct the maturity, or the standing.';
      return [faultIn(evidence, option, { code: 'EVIDENCE_REVIEW', message, hint, at: ['maturity'] })];
    }),
};

function faultOf({ code, maturity }: OptionDefinition, { standing }: EvidenceSet): string | undefined {
  const entries = standing.filter(({ option }) => option === code);
  const underStudy = entries.filter((entry) => entry.standing === 'under-study');
  const newer = entries.filter((entry) => entry.maturity === 'newer');
  if (maturity === 'established' && underStudy.length + newer.length > 0)
    return `the option is called established, but ${String([...underStudy, ...newer][0]?.id)} says otherwise`;
  return maturity === 'newer' && entries.length > 0 && underStudy.length === entries.length
    ? 'the option is called newer, but everybody has it under study'
    : undefined;
}
