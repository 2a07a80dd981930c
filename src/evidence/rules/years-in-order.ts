import type { Study } from '../../model/study.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

/** From these years a patient page calls a figure old. */
export const yearsInOrder: EvidenceRule = {
  name: 'years-in-order',
  description:
    'the years in which the people of a study were treated follow each other and come before its publication',
  check: (evidence) =>
    evidence.studies.flatMap((study) => {
      const message = faultOf(study);
      if (message === undefined) return [];
      const hint = 'Re-read the source and correct the years.';
      return [faultIn(evidence, study, { code: 'EVIDENCE_INVALID', message, hint, at: ['years'] })];
    }),
};

function faultOf({ years, citation }: Study): string | undefined {
  if (years === undefined) return undefined;
  if (years.from !== undefined && years.from > years.to) return 'the first of the years is after the last';
  return citation.year !== undefined && years.to > citation.year
    ? 'its people were treated after it was published'
    : undefined;
}
