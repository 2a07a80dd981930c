import type { CellValue, KnownCell, SetAside, SetAsideReason } from '../model/comparison.ts';
import { samePeople } from '../model/evidence.ts';
import { sameDose } from '../model/medicine-dose.ts';
import type { Candidate } from './assess-record.ts';
import { enoughPeople } from './enough-people.ts';
import { peopleOf } from './size-of-study.ts';

export interface Beside {
  readonly others?: NonNullable<KnownCell['others']>;
  readonly setAside: readonly SetAside[];
}

/**
 * People that a study needs to be part of the range beside a larger one. A share of fewer than 100 people moves by
 * more than 1 in 100 with one person: that is chance, not disagreement.
 */
const enoughBeside: Readonly<Record<CellValue['kind'], number>> = {
  proportion: 100,
  weight: enoughPeople,
  amount: enoughPeople,
};

/**
 * Other studies beside the lead: of its dose, as good a match, and of other people than the lead and than each other.
 * Their lowest and highest figure, in the unit of the lead.
 *
 * @param rest the other candidates, in the order in which they would lead
 */
export function collectOthers(lead: Candidate, rest: readonly Candidate[]): Beside {
  const taken: Candidate[] = [lead];
  const setAside: SetAside[] = [];
  for (const candidate of rest) {
    const reason = otherDose(candidate, lead) ?? countedBefore(candidate, taken) ?? unfit(candidate, lead);
    if (reason === undefined) taken.push(candidate);
    else setAside.push({ record: candidate.record.id, reason });
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

/** What one dose does says nothing of another, even in one trial. */
function otherDose({ record: { dose } }: Candidate, { record: lead }: Candidate): SetAsideReason | undefined {
  if (sameDose(dose, lead.dose)) return undefined;
  return dose === undefined || dose === 'unstated'
    ? { code: 'dose-unstated' }
    : { code: 'other-dose', ...dose };
}

function countedBefore(candidate: Candidate, taken: readonly Candidate[]): SetAsideReason | undefined {
  const known = taken.find((other) => countsSamePeople(candidate, other));
  return known === undefined ? undefined : { code: 'same-people', as: known.record.id };
}

/** Why a record of other people does not stand beside the lead. */
function unfit(candidate: Candidate, lead: Candidate): SetAsideReason | undefined {
  // Beside a figure of people over 65 those of all ages would not be other findings, but other people.
  if (candidate.match.level !== lead.match.level || candidate.match.apart !== lead.match.apart)
    return { code: 'weaker-match' };
  if (!inSameUnit(candidate.value, lead.value)) return { code: 'other-measure', kind: candidate.record.kind };
  const enough = enoughBeside[lead.value.kind];
  const [n, ofLead] = [peopleOf(candidate) ?? enough, peopleOf(lead) ?? enough];
  return n < enough && ofLead >= enough ? { code: 'too-few-people', n } : undefined;
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
