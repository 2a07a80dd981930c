import type { MatchReason, RecordUse } from '../model/comparison.ts';
import { bmiFor } from '../model/bmi-by-sex.ts';
import type { EvidenceRecord } from '../model/evidence-record.ts';
import type { Range } from './cover-range.ts';
import { coverAge, differInAge, differInGeneration } from './match-age.ts';
import { coverBmi, differInBmi } from './match-bmi.ts';
import { differInDiabetes, differInGroup, differInSex, standApart } from './match-group.ts';
import { differInHistory, differInOutcome } from './match-history.ts';
import type { Difference, MatchedOption, Subject } from './subject.ts';

/** `near` names its one difference, `other-people` the most important one. */
export type PeopleMatch = MatchedPeople &
  (
    | { readonly level: 'like-you'; readonly reasons: readonly [] }
    | { readonly level: 'near' | 'other-people'; readonly reasons: readonly [MatchReason] }
  );

interface MatchedPeople {
  readonly bmiBasis: RecordUse['bmiBasis'];
  readonly covered: RecordUse['covered'];
  /** See `standApart`. */
  readonly apart: number;
}

/**
 * How well the people of a record stand for this person. Differences are listed in order of importance; one that
 * does not exclude makes them `near`, two make them other people.
 */
export function matchPeople(record: EvidenceRecord, subject: Subject, option: MatchedOption): PeopleMatch {
  const people = peopleAs(record, subject);
  const bmi = coverBmi(people, option);
  const found = listDifferences(record, subject, option);
  const age = coverAge(people);
  const matched = {
    bmiBasis: bmi.basis,
    covered: nameCovered(bmi.range, age),
    apart: standApart(people, subject, { bmi: bmi.range, age }),
  };
  const decisive = found.find(({ excludes }) => excludes) ?? found[0];
  if (decisive === undefined) return { ...matched, level: 'like-you', reasons: [] };
  const level = decisive.excludes || found.length > 1 ? 'other-people' : 'near';
  return { ...matched, level, reasons: [decisive.reason] };
}

/** All ways in which the people of a record differ from this person, or are not stated, the most important first. */
export function listDifferences(
  record: EvidenceRecord,
  subject: Subject,
  option: MatchedOption,
): readonly Difference[] {
  const people = peopleAs(record, subject);
  return [
    subject.person.pregnantNow ? pregnancy : undefined,
    differInGeneration(people, subject.person.age),
    ...differInHistory(people, subject, option.indication),
    differInOperation(record),
    differInOutcome(record.outcome, subject),
    differInBmi(coverBmi(people, option), subject.bmi),
    differInAge(people, subject.person.age),
    differInDiabetes(people, subject),
    differInGroup(people, subject),
    differInSex(people, subject),
  ].filter((difference) => difference !== undefined);
}

/** The people of a record, with the BMI of those of this person's sex where it is stated apart. */
function peopleAs({ people }: EvidenceRecord, { person }: Subject): EvidenceRecord['people'] {
  return { ...people, bmi: bmiFor(people, person.sex) };
}

/** No figure of any treatment was measured in pregnant people. */
const pregnancy: Difference = { reason: { code: 'pregnancy' }, excludes: true };

/** Of a group of operations that were counted as one nobody can say how many belong to this option. */
function differInOperation({ together }: EvidenceRecord): Difference | undefined {
  return together && { reason: { code: 'operations-mixed', theirs: together }, excludes: false };
}

function nameCovered(bmi: Range, age: Range): RecordUse['covered'] {
  return {
    ...(bmi.low === undefined ? {} : { bmiLow: bmi.low }),
    ...(bmi.high === undefined ? {} : { bmiHigh: bmi.high }),
    ...(age.low === undefined ? {} : { ageLow: age.low }),
    ...(age.high === undefined ? {} : { ageHigh: age.high }),
  };
}
