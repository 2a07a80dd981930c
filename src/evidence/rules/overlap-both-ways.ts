import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

/** Overlap is looked up from either study, so both must say it. */
export const overlapBothWays: EvidenceRule = {
  name: 'overlap-both-ways',
  description: 'two studies with partly the same people name each other',
  check: (evidence) => {
    const studies = new Map(evidence.studies.map((study) => [study.id, study]));
    return evidence.studies.flatMap((study) =>
      (study.overlaps ?? []).flatMap((other, index) => {
        const at = ['overlaps', index];
        const partner = studies.get(other);
        if (other === study.id) {
          const message = 'a study cannot overlap with itself';
          return [faultIn(evidence, study, { code: 'EVIDENCE_OVERLAP', message, hint: 'Remove it.', at })];
        }
        if (partner === undefined) {
          const message = `it overlaps with ${other}, which is no study`;
          return [
            faultIn(evidence, study, { code: 'EVIDENCE_UNKNOWN_CODE', message, hint: 'Correct the id.', at }),
          ];
        }
        if (partner.overlaps?.includes(study.id) === true) return [];
        return [
          faultIn(evidence, study, {
            code: 'EVIDENCE_OVERLAP',
            message: `it overlaps with ${other}, which does not say so`,
            hint: `Add ${study.id} to the overlaps of ${other}.`,
            at,
            related: { message: 'the other study', entry: partner },
          }),
        ];
      }),
    );
  },
};
