import type { AftercareFact } from '../../model/aftercare.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule, Fault } from './rule.ts';

export const aftercareOptionKnown: EvidenceRule = {
  name: 'aftercare-option-known',
  description: 'a fact on aftercare names options that are defined, each once, or is context for clinicians',
  check: (evidence) => {
    const known = new Set(evidence.options.map(({ code }) => code));
    return evidence.aftercare.flatMap((fact) =>
      [...unknownOptions(fact, known), ...repeatedOptions(fact), ...withoutOption(fact)].map((fault) =>
        faultIn(evidence, fact, fault),
      ),
    );
  },
};

const lists = ['options', 'extrapolated_to'] as const;

function unknownOptions(fact: AftercareFact, known: ReadonlySet<string>): readonly Fault[] {
  return lists.flatMap((list) =>
    (fact[list] ?? []).flatMap((option, index): readonly Fault[] => {
      if (known.has(option)) return [];
      const message = `the option "${option}" is not defined`;
      const hint = 'Define it, or correct the spelling.';
      return [{ code: 'EVIDENCE_UNKNOWN_CODE', message, hint, at: [list, index] }];
    }),
  );
}

function repeatedOptions({ options, extrapolated_to: more = [] }: AftercareFact): readonly Fault[] {
  const all = [...options, ...more];
  return all
    .filter((option, index) => all.indexOf(option) < index)
    .map((option) => ({
      code: 'EVIDENCE_INVALID',
      message: `the option ${option} stands twice`,
      hint: 'An option was either studied or is treated alike: keep it in one list.',
      at: ['options'],
    }));
}

function withoutOption({ options, use }: AftercareFact): readonly Fault[] {
  if (options.length > 0 || use === 'context') return [];
  const message = 'it speaks of no option, so it can only be context for clinicians';
  return [
    { code: 'EVIDENCE_INVALID', message, hint: 'Write use: context, or name the options.', at: ['use'] },
  ];
}
