import type { Study } from '../../model/study.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

/**
 * Equal cohorts are the same people: who overlaps with one of their studies overlaps with all. A study whose records
 * name cohorts of their own gathers several groups, so an overlap with it says nothing about its other cohort.
 */
export const overlapGroupClosed: EvidenceRule = {
  name: 'overlap-group-closed',
  description: 'a study that overlaps with one study of a cohort names every other study of that cohort',
  check: (evidence) => {
    const studies = new Map(evidence.studies.map((study) => [study.id, study]));
    const gathers = new Set(
      evidence.records.filter(({ cohort }) => cohort !== undefined).map(({ study }) => study),
    );
    const cohortOf = (id: string): readonly Study[] => {
      const cohort = gathers.has(id) ? undefined : studies.get(id)?.cohort;
      return evidence.studies.filter((study) => study.cohort === cohort);
    };
    return evidence.studies.flatMap((study) => {
      const named = study.overlaps ?? [];
      return named.flatMap((id, index) =>
        cohortOf(id)
          .filter((other) => other.cohort !== study.cohort && !named.includes(other.id))
          .map((other) =>
            faultIn(evidence, study, {
              code: 'EVIDENCE_OVERLAP',
              message: `it overlaps with ${id}, but not with ${other.id}, which counts the same people`,
              hint: `Add ${other.id} to the overlaps, and ${study.id} to those of ${other.id}.`,
              at: ['overlaps', index],
              related: { message: 'the study of the same people', entry: other },
            }),
          ),
      );
    });
  },
};
