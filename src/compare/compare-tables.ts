import { isDeepStrictEqual } from 'node:util';

import type {
  CautionConflict,
  CautionHit,
  Cell,
  ComparisonTable,
  OptionColumn,
  Person,
  Topic,
} from '../model/comparison.ts';
import type { CellChange, Change, TableDifference, TopicFrame } from '../model/difference.ts';
import type { MortalityScore } from '../model/mortality-score.ts';
import { listCells } from './list-records-used.ts';

/** Parts of a table that are compared item by item; any other is compared as a whole. */
const itemised: readonly string[] = [
  'person',
  'options',
  'weight',
  'topics',
  'furtherHarms',
  'cautions',
  'conflicts',
  'mortalityScore',
  'reasons',
  'notes',
  'recordsUsed',
];
const itemisedOfWeight: readonly string[] = ['mainMonths', 'main', 'over', 'courses'];

/**
 * Everything in which two comparisons differ, and nothing else. The order in which a case lists its options or
 * conditions is no difference.
 */
export function compareTables(before: ComparisonTable, after: ComparisonTable): TableDifference {
  const [cells, nextCells] = [byId(listCells(before)), byId(listCells(after))];
  const parts = {
    person: findChanges(propertiesOf(before.person), propertiesOf(after.person)),
    options: findChanges(columnsOf(before), columnsOf(after)),
    cells: findChanges(cells, nextCells).map(describeCell),
    horizon: findChanges(mainHorizon(before), mainHorizon(after)),
    courses: findChanges(coursesOf(before), coursesOf(after)),
    topics: findChanges(framesOf(before), framesOf(after)),
    cautions: findChanges(byId(before.cautions.map(inAnyOrder)), byId(after.cautions.map(inAnyOrder))),
    conflicts: findChanges(conflictsOf(before), conflictsOf(after)),
    score: findChanges(scoreOf(before), scoreOf(after)),
    reasons: findChanges(byId(before.reasons), byId(after.reasons)),
    notes: findChanges(asKeys(before.notes), asKeys(after.notes)),
    records: findChanges(asKeys(before.recordsUsed), asKeys(after.recordsUsed)),
    elsewhere: findElsewhere(before, after),
  };
  const isSame = Object.values(parts).every(({ length }) => length === 0);
  return { isSame, ...parts, cellCount: new Set([...cells.keys(), ...nextCells.keys()]).size };
}

/** Items by id that are not in both, or not alike: those of the first in its order, then what only the second has. */
function findChanges<K extends string, T>(
  before: ReadonlyMap<K, T>,
  after: ReadonlyMap<K, T>,
): readonly (Change<T> & { readonly id: K })[] {
  return [...new Set([...before.keys(), ...after.keys()])]
    .map((id) => ({ id, before: before.get(id) ?? null, after: after.get(id) ?? null }))
    .filter((change) => !isDeepStrictEqual(change.before, change.after));
}

function byId<T extends { readonly id: string }>(items: readonly T[]): ReadonlyMap<string, T> {
  return new Map(items.map((item) => [item.id, item]));
}

function asKeys<K extends string>(items: readonly K[]): ReadonlyMap<K, K> {
  return new Map(items.map((item) => [item, item]));
}

function describeCell(change: Change<Cell>): CellChange {
  const { before, after } = change;
  if (before === null || after === null) return { ...change, what: [] };
  const what = differingKeys(before, after).flatMap((key) =>
    key === 'lead' && before.state === 'known' && after.state === 'known'
      ? differingKeys(before.lead, after.lead).map((inner) => `lead.${inner}`)
      : [key],
  );
  return { ...change, what };
}

/** Nothing may differ unnoticed, so what no list above speaks of is at least named. */
function findElsewhere(before: ComparisonTable, after: ComparisonTable): readonly string[] {
  const ofWeight = differingKeys(before.weight, after.weight);
  return [
    ...differingKeys(before, after).filter((key) => !itemised.includes(key)),
    ...ofWeight.filter((key) => !itemisedOfWeight.includes(key)).map((key) => `weight.${key}`),
  ];
}

/** Names of the properties that differ, of either. */
function differingKeys(before: object, after: object): readonly string[] {
  const [first, second] = [new Map(Object.entries(before)), new Map(Object.entries(after))];
  return findChanges<string, unknown>(first, second).map(({ id }) => id);
}

function propertiesOf(person: Person): ReadonlyMap<string, unknown> {
  const conditions = [...person.conditions].sort(byText);
  return new Map<string, unknown>(Object.entries({ ...person, conditions }));
}

function columnsOf({ options }: ComparisonTable): ReadonlyMap<string, Omit<OptionColumn, 'stay'>> {
  return new Map(options.map((option) => [option.code, withoutStay(option)]));
}

function withoutStay(option: OptionColumn): Omit<OptionColumn, 'stay'> {
  const column: Omit<OptionColumn, 'stay'> & { stay?: OptionColumn['stay'] } = { ...option };
  delete column.stay;
  return column;
}

function mainHorizon({ weight }: ComparisonTable): ReadonlyMap<string, number> {
  return new Map([['main', weight.mainMonths]]);
}

function coursesOf({ weight }: ComparisonTable): ReadonlyMap<string, (typeof weight.courses)[number]> {
  return new Map(weight.courses.map((course) => [`${course.option} ${course.study}`, course]));
}

function framesOf({ topics }: ComparisonTable): ReadonlyMap<Topic['id'], TopicFrame> {
  return new Map(
    topics.map(({ id, denominator, picture }) => [id, { denominator, picture: picture?.outcome ?? null }]),
  );
}

function conflictsOf({ conflicts }: ComparisonTable): ReadonlyMap<string, CautionConflict> {
  return new Map(conflicts.map((conflict) => [`${conflict.caution} ${conflict.to}`, conflict]));
}

function scoreOf({ mortalityScore: score }: ComparisonTable): ReadonlyMap<string, MortalityScore> {
  if (score === null) return new Map();
  return new Map([['mortality', { ...score, options: [...score.options].sort(byText) }]]);
}

/** A caution names its options in the order of the case. */
function inAnyOrder(hit: CautionHit): CautionHit {
  return { ...hit, options: [...hit.options].sort(byText) };
}

/** Of codes, of which a table names none twice. */
function byText(a: string, b: string): number {
  return a < b ? -1 : 1;
}
