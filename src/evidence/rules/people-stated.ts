import type { EvidenceRecord, PeopleGroup, Spread } from '../../model/evidence-record.ts';
import type { EvidenceSet } from '../evidence-set.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

/** What a group promises about the people: limits that the stated ages and BMI must not contradict. */
const groupLimits: Partial<Record<PeopleGroup, { measure: 'age' | 'bmi'; low?: number; high?: number }>> = {
  adolescents: { measure: 'age', high: 21 },
  'over-60': { measure: 'age', low: 60 },
  'over-65': { measure: 'age', low: 65 },
  'over-70': { measure: 'age', low: 70 },
  'bmi-under-35': { measure: 'bmi', high: 35 },
  'bmi-50-plus': { measure: 'bmi', low: 50 },
  'bmi-60-plus': { measure: 'bmi', low: 60 },
};

export const peopleStated: EvidenceRule = {
  name: 'people-stated',
  description: 'a figure says who was measured, without contradicting itself',
  check: (evidence) =>
    evidence.records.flatMap((record) =>
      [
        ...spreadFaults(record, 'bmi'),
        ...spreadFaults(record, 'age'),
        ...groupFaults(record),
        ...sexFaults(record),
        ...treatmentFaults(evidence, record),
      ].map((message) =>
        faultIn(evidence, record, {
          code: 'EVIDENCE_NO_PEOPLE',
          message,
          hint: 'Re-read the source and correct the people.',
          at: ['people'],
        }),
      ),
    ),
};

function spreadFaults({ people }: EvidenceRecord, measure: 'bmi' | 'age'): readonly string[] {
  const spread = people[measure];
  if (spread === undefined) return [];
  const centre = spread.mean ?? spread.median;
  if (Object.keys(spread).length === 0) return [`${measure} says nothing`];
  if (spread.sd !== undefined && centre === undefined) return [`${measure} has a spread (sd) but no mean`];
  return isOrdered([spread.low, centre, spread.high]) ? [] : [`${measure} is not in order: low, mean, high`];
}

function groupFaults({ people }: EvidenceRecord): readonly string[] {
  const limits = people.group && groupLimits[people.group];
  if (limits === undefined) return [];
  const spread: Spread = people[limits.measure] ?? {};
  const centre = spread.mean ?? spread.median;
  const fits =
    isOrdered([limits.low, centre, limits.high]) &&
    isOrdered([limits.low, spread.high]) &&
    isOrdered([spread.low, limits.high]);
  return fits ? [] : [`the stated ${limits.measure} contradicts the group ${String(people.group)}`];
}

/** Who reads `bmi` alone must not take it for wider than it is for either sex. */
function sexFaults({ people: { bmi = {}, bmi_by_sex: bySex } }: EvidenceRecord): readonly string[] {
  if (bySex === undefined) return [];
  const { female, male } = bySex;
  const differ = female.low !== male.low || female.high !== male.high;
  const holds =
    bmi.low === narrower(Math.max, female.low, male.low) &&
    bmi.high === narrower(Math.min, female.high, male.high);
  return [
    ...(differ ? [] : ['bmi_by_sex says the same of both']),
    ...(holds ? [] : ['bmi does not state the limits that hold for both sexes']),
  ];
}

/** The limit that holds for both; of a limit that one sex lacks the other's. */
function narrower(
  pick: (...values: readonly number[]) => number,
  ...limits: readonly (number | undefined)[]
): number | undefined {
  const known = limits.filter((limit) => limit !== undefined);
  return known.length === 0 ? undefined : pick(...known);
}

/** `none` is for people nobody operated on, so it cannot stand with an operation or a procedure. */
function treatmentFaults(evidence: EvidenceSet, record: EvidenceRecord): readonly string[] {
  const kind = evidence.options.find((option) => option.code === record.option)?.kind;
  const treated = kind === 'operation' || kind === 'endoscopic';
  return treated && record.people.indication === 'none'
    ? ['indication "none" does not go with an operation or procedure']
    : [];
}

function isOrdered(values: readonly (number | undefined)[]): boolean {
  const known = values.filter((value) => value !== undefined);
  return known.every((value, index) => index === 0 || (known[index - 1] ?? value) <= value);
}
