import type { CellValue, KnownCell, SetAside } from '../model/comparison.ts';
import { samePeople } from '../model/evidence.ts';
import type { Candidate } from './assess-record.ts';

export interface Beside {
  readonly others?: NonNullable<KnownCell['others']>;
  readonly setAside: readonly SetAside[];
}

/**
 * Other studies beside the lead (first of the ranking): as good a match, and of other people than the lead and
 * than each other. Their lowest and highest figure, in the unit of the lead.
 */
export function collectOthers(ranking: readonly Candidate[]): Beside {
  const [lead, ...rest] = ranking;
  if (lead === undefined) return { setAside: [] };
  const taken: Candidate[] = [lead];
  const setAside: SetAside[] = [];
  for (const candidate of rest) {
    const known = taken.find((other) => countsSamePeople(candidate, other));
    if (known !== undefined) {
      setAside.push({ record: candidate.record.id, reason: { code: 'same-people', as: known.record.id } });
    } else if (candidate.match.level !== lead.match.level) {
      setAside.push({ record: candidate.record.id, reason: { code: 'weaker-match' } });
    } else if (!inSameUnit(candidate.value, lead.value)) {
      setAside.push({
        record: candidate.record.id,
        reason: { code: 'other-measure', kind: candidate.record.kind },
      });
    } else {
      taken.push(candidate);
    }
  }
  const others = taken.slice(1);
  if (others.length === 0) return { setAside };
  const figures = others.map(({ value }) => figureOf(value));
  return {
    others: {
      low: Math.min(...figures),
      high: Math.max(...figures),
      records: others.map(({ record }) => record.id),
    },
    setAside,
  };
}

function countsSamePeople(a: Candidate, b: Candidate): boolean {
  return samePeople(a.study, b.study, { a: a.record.cohort, b: b.record.cohort });
}

function inSameUnit(a: CellValue, b: CellValue): boolean {
  return a.kind === b.kind && (a.kind !== 'amount' || b.kind !== 'amount' || a.unit === b.unit);
}

/** The one number by which figures of a kind are compared. */
export function figureOf(value: CellValue): number {
  return value.kind === 'weight' ? value.averageKg : value.value;
}
