import type { People, PeopleGroup } from '../model/evidence-record.ts';
import { distanceFrom } from './cover-range.ts';
import type { Range } from './cover-range.ts';
import type { Difference, Subject } from './subject.ts';

type Membership = 'by-bmi-or-age' | 'condition' | 'named' | 'never';

/** How a person comes to belong to a group of people who are unlike most candidates. */
const membership: Readonly<Record<PeopleGroup, Membership>> = {
  adolescents: 'by-bmi-or-age',
  'young-adults': 'by-bmi-or-age',
  'over-60': 'by-bmi-or-age',
  'over-65': 'by-bmi-or-age',
  'over-70': 'by-bmi-or-age',
  'bmi-under-35': 'by-bmi-or-age',
  'bmi-50-plus': 'by-bmi-or-age',
  'bmi-60-plus': 'by-bmi-or-age',
  'heart-disease': 'condition',
  'high-blood-pressure': 'condition',
  prediabetes: 'condition',
  'sleep-apnoea': 'condition',
  'knee-arthritis': 'condition',
  // Who insures or discharges people says little about them: one named difference.
  veterans: 'named',
  medicare: 'named',
  'same-day-discharge': 'named',
  // A case file does not say these, so nobody is taken to belong.
  'high-risk': 'never',
  infertility: 'never',
  pregnancy: 'never',
};

/** Groups by BMI or age, each more narrow than the next: one is closer to its members than people in general. */
const closeness: readonly (readonly PeopleGroup[])[] = [
  ['bmi-60-plus', 'over-70', 'bmi-under-35', 'adolescents', 'young-adults'],
  ['bmi-50-plus', 'over-65'],
  ['over-60'],
];

/** How far apart a record stands from the person's own special group: 0 of that very group, most for people in general. */
export function standApart(people: People, subject: Subject, covered: { bmi: Range; age: Range }): number {
  const { group } = people;
  const place = group === undefined ? -1 : closeness.findIndex((groups) => groups.includes(group));
  const belongs =
    distanceFrom(covered.bmi, subject.bmi) === 0 && distanceFrom(covered.age, subject.person.age) === 0;
  return place < 0 || !belongs ? closeness.length : place;
}

export function differInGroup(people: People, subject: Subject): Difference | undefined {
  const { group } = people;
  if (group === undefined) return undefined;
  const how = membership[group];
  if (how === 'by-bmi-or-age' || (how === 'condition' && subject.conditions.has(group))) return undefined;
  return { reason: { code: 'group', group }, excludes: how !== 'named' };
}

/** Figures of women only or men only, which a source gives apart because they differ. */
export function differInSex(people: People, subject: Subject): Difference | undefined {
  if (people.female_percent !== 100 && people.female_percent !== 0) return undefined;
  const theirs = people.female_percent === 100 ? 'female' : 'male';
  if (subject.person.sex === theirs) return undefined;
  const group = theirs === 'female' ? 'women' : 'men';
  return { reason: { code: 'group', group }, excludes: subject.person.sex !== 'not-stated' };
}

export function differInDiabetes(people: People, subject: Subject): Difference | undefined {
  const has = subject.conditions.has('type-2-diabetes');
  if (people.diabetes === 'all' && !has) return { reason: { code: 'diabetes-only' }, excludes: true };
  if (people.diabetes === 'none' && has) return { reason: { code: 'no-diabetes-only' }, excludes: true };
  return undefined;
}
