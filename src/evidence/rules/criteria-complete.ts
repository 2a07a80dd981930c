import { criterionCounts, criterionSets } from '../../model/criterion.ts';
import type { Criterion } from '../../model/criterion.ts';
import type { EvidenceSet } from '../evidence-set.ts';
import type { DataPath } from '../parse-data-file.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

interface Found {
  readonly message: string;
  readonly at: DataPath;
}

/** A score says something only if nothing of the standard was left out, and nothing was met without a look. */
export const criteriaComplete: EvidenceRule = {
  name: 'criteria-complete',
  description:
    'each standard has all of its criteria, and each that these pages can meet says what looks for it',
  check: (evidence) => {
    const { criteria } = evidence;
    const last: object = criteria.at(-1) ?? evidence.release;
    return [
      ...criteria.flatMap((criterion, index) =>
        [
          ...(criteria.findIndex(({ id }) => id === criterion.id) < index
            ? [{ message: `${criterion.id} stands twice`, at: ['id'] }]
            : []),
          ...wrongLook(criterion),
          ...wrongOrder(criterion, criteria),
          ...wrongPlace(criterion),
        ].map((found) => faultOf(evidence, criterion, found)),
      ),
      ...wrongCounts(criteria).map((found) => faultOf(evidence, last, found)),
    ];
  },
};

function faultOf(evidence: EvidenceSet, entry: object, { message, at }: Found) {
  const hint = 'Correct the row in criteria.yaml, or add one.';
  return faultIn(evidence, entry, { code: 'EVIDENCE_INVALID', message, hint, at });
}

function wrongLook({ id, by, check }: Criterion): readonly Found[] {
  if (by === 'generator' && check === undefined)
    return [{ message: `nothing looks for ${id}, which these pages could meet`, at: ['by'] }];
  if ((by === 'study' || by === 'none') && check !== undefined)
    return [{ message: `${id} has a check, and no page can meet it`, at: ['check'] }];
  return [];
}

function wrongOrder({ id, set, after }: Criterion, criteria: readonly Criterion[]): readonly Found[] {
  if (after === undefined) return [];
  const needed = criteria.find((other) => other.id === after);
  return needed?.set === set && needed.id !== id && needed.after === undefined
    ? []
    : [
        {
          message: `${after}, without which ${id} does not count, is no other criterion of its set`,
          at: ['after'],
        },
      ];
}

function wrongPlace({ id, seen, seen_at: places }: Criterion): readonly Found[] {
  if ((seen === 'page') === (places !== undefined)) return [];
  const message =
    seen === 'page'
      ? `${id} was read on a page, and nothing says on which`
      : `${id} names a page on which it was not read`;
  return [{ message, at: ['seen'] }];
}

function wrongCounts(criteria: readonly Criterion[]): readonly Found[] {
  return criterionSets.flatMap((set) => {
    const count = criteria.filter((criterion) => criterion.set === set).length;
    const wanted = criterionCounts[set];
    if (count === wanted) return [];
    return [
      { message: `the set ${set} has ${String(wanted)} criteria, and ${String(count)} stand here`, at: [] },
    ];
  });
}
