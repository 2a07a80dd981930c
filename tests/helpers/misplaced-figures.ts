import { readFileSync, readdirSync } from 'node:fs';
import { parse } from 'yaml';

import type { Cell, ComparisonTable, OptionColumn, OutcomeRow } from '../../src/model/comparison.ts';
import type { EvidenceRecord, Spread } from '../../src/model/evidence-record.ts';
import type { Study } from '../../src/model/study.ts';

// Written from the contract alone, on the data files as they are: no stage of the program helps to check its own work.

function readAll<T extends { readonly id: string }>(folder: string): ReadonlyMap<string, T> {
  const files = readdirSync(`src/evidence/data/${folder}`);
  const lists = files.map(
    (name) => parse(readFileSync(`src/evidence/data/${folder}/${name}`, 'utf8')) as T[],
  );
  return new Map(lists.flat().map((one) => [one.id, one]));
}

const records = readAll<EvidenceRecord>('records');
const studies = readAll<Study>('studies');

interface Shown {
  readonly option: OptionColumn;
  /** Lead first, then other studies. */
  readonly ids: readonly string[];
  readonly cell: string;
}

/** Every figure of a comparison that the contract keeps from this person, as words; none if all is well. */
export function findMisplaced(table: ComparisonTable): readonly string[] {
  return listShown(table).flatMap(({ option, ids, cell }) => {
    const found = ids.map((id) => records.get(id));
    const faults = found.flatMap((record) =>
      record === undefined
        ? ['no record']
        : faultsOf(record, table.person, option).map((fault) => `${record.id} ${fault}`),
    );
    return [...faults, ...twiceCounted(found), ...severalDoses(found)].map((fault) => `${cell}: ${fault}`);
  });
}

function listShown({ options, weight, topics }: ComparisonTable): readonly Shown[] {
  const rows: readonly OutcomeRow[] = [
    weight.main,
    ...weight.over,
    ...topics.flatMap(({ picture, rows: own }) => (picture === null ? own : [picture, ...own])),
  ];
  const optionOf = (code: string): OptionColumn[] => options.filter((option) => option.code === code);
  const cells: readonly Cell[] = [...options.map(({ stay }) => stay), ...rows.flatMap((row) => row.cells)];
  return [
    ...cells.flatMap((cell) =>
      cell.state !== 'known'
        ? []
        : optionOf(cell.option).map((option) => ({
            option,
            ids: [cell.lead.record, ...(cell.others?.records ?? [])],
            cell: cell.id,
          })),
    ),
    ...weight.courses.flatMap((course) =>
      optionOf(course.option).flatMap((option) =>
        course.points.map(({ record, cell }) => ({ option, ids: [record], cell })),
      ),
    ),
  ];
}

/** A range beside a figure is of the same dose. */
function severalDoses(found: readonly (EvidenceRecord | undefined)[]): readonly string[] {
  const doses = new Set(found.map((record) => JSON.stringify(record?.dose)));
  return doses.size > 1 ? ['several doses of a medicine'] : [];
}

type Person = ComparisonTable['person'];

/** Where women and men had other limits, those of this person; else what holds for both. */
function bmiOf({ bmi, bmi_by_sex: bySex }: EvidenceRecord['people'], sex: Person['sex']): Spread | undefined {
  return bmi === undefined || sex === 'not-stated' ? bmi : { ...bmi, ...bySex?.[sex] };
}

function faultsOf(record: EvidenceRecord, person: Person, option: OptionColumn): readonly string[] {
  const { people } = record;
  const diabetic = person.conditions.some((code) => code.endsWith('-diabetes'));
  const other = person.sex === 'male' ? 100 : person.sex === 'female' ? 0 : -1;
  const faults: readonly (readonly [boolean, string])[] = [
    [record.seen !== 'page', 'was not read at its source'],
    [record.scope !== undefined || record.variant !== undefined, 'counts or did something else'],
    [person.pregnantNow, 'in pregnancy'],
    [person.age < 18 !== (people.group === 'adolescents'), 'of another generation'],
    [people.diabetes === 'all' && !diabetic, 'only of people with diabetes'],
    [people.diabetes === 'none' && diabetic, 'only of people without diabetes'],
    [people.female_percent === other, 'of the other sex'],
    [!isSameHistory(people.indication, person, option), `of people ${people.indication}`],
    [isOutside(bmiOf(people, person.sex), Math.round(person.bmi * 10) / 10, 5), 'of another BMI'],
    [isOutside(stretch(people.age), person.age, Infinity), 'of another age'],
    [
      'reference' in record.value &&
        record.kind === 'weight' &&
        record.value.reference !== 'before-this-operation',
      'of another weight',
    ],
  ];
  return faults.flatMap(([isFault, fault]) => (isFault ? [fault] : []));
}

/** Five years beyond the ages of a study are near. */
function stretch(age: Spread | undefined): Spread | undefined {
  if (age === undefined) return undefined;
  const { low, high } = age;
  return {
    ...(low === undefined ? {} : { low: low - 5 }),
    ...(high === undefined ? {} : { high: high + 5 }),
  };
}

/** Outside what is stated; of a mean alone, farther than `reach`. */
function isOutside(spread: Spread | undefined, value: number, reach: number): boolean {
  const { low, high, mean, median, sd } = spread ?? {};
  if (low !== undefined || high !== undefined) return value < (low ?? value) || value > (high ?? value);
  const middle = mean ?? median ?? value;
  return Math.abs(value - middle) > (sd === undefined ? reach : 2 * sd + 1e-9);
}

/** Second operations have figures of second operations; what is no operation has those of people never operated on. */
function isSameHistory(theirs: string, person: Person, option: OptionColumn): boolean {
  const isTreatment = option.kind === 'operation' || option.kind === 'endoscopic';
  if (person.asked === 'first-operation')
    return [isTreatment ? 'first-operation' : 'none', 'mixed', 'unknown'].includes(theirs);
  return isTreatment && [option.indication, 'mixed'].includes(theirs);
}

/** Two figures of one cell that count partly the same people. */
function twiceCounted(found: readonly (EvidenceRecord | undefined)[]): readonly string[] {
  const known = found.filter((record) => record !== undefined);
  const pairs = known.flatMap((a, index) => known.slice(index + 1).map((b) => [a, b] as const));
  return pairs
    .filter(([a, b]) => countsSame(a, b))
    .map(([a, b]) => `${a.id} and ${b.id} count the same people`);
}

function countsSame(a: EvidenceRecord, b: EvidenceRecord): boolean {
  const cohortOf = (record: EvidenceRecord): string =>
    record.cohort ?? studies.get(record.study)?.cohort ?? '';
  const names = (one: EvidenceRecord, other: EvidenceRecord): boolean =>
    (studies.get(one.study)?.overlaps ?? []).includes(other.study);
  return cohortOf(a) === cohortOf(b) || names(a, b) || names(b, a);
}
