import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';

import { conditionCodes, historyCodes, medicineCodes } from '../../../src/model/codes.ts';
import { describeComparison } from '../../helpers/describe-comparison.ts';
import { openPerson, peopleFolder, slugs } from '../../helpers/golden-people.ts';
import type { GoldenPerson } from '../../helpers/golden-people.ts';
import { readKnownCodes } from '../../helpers/known-codes.ts';
import { findMisplaced } from '../../helpers/misplaced-figures.ts';

const update = process.env['UPDATE'] === '1';
if (update && (process.env['CI'] ?? '') !== '')
  throw new Error('UPDATE=1 is refused when CI is set: goldens are read by a person first');

let people: readonly GoldenPerson[];

beforeAll(async () => {
  people = await Promise.all(slugs.map(openPerson));
});

function personOf(slug: string): GoldenPerson {
  const person = people.find((one) => one.slug === slug);
  if (person === undefined) throw new Error(`nobody opened ${slug}`);
  return person;
}

describe('the comparison of an invented person', () => {
  it.each(slugs)('%s reads as it did when it was last reviewed line by line', (slug) => {
    const text = describeComparison(personOf(slug));
    const golden = join(peopleFolder, `${slug}.txt`);
    if (update) writeFileSync(golden, text);
    expect(existsSync(golden) ? readFileSync(golden, 'utf8') : '').toBe(text);
  });

  it.each(slugs)('%s holds no figure of people unlike this person, and counts nobody twice', (slug) => {
    expect(findMisplaced(personOf(slug).open.comparison)).toEqual([]);
  });

  it('would be found to hold such figures if the person were another', () => {
    const { comparison } = personOf('diabetes-bmi-43').open;
    const other = (changes: object): readonly string[] =>
      findMisplaced({ ...comparison, person: { ...comparison.person, ...changes } });
    const told = {
      pregnantNow: other({ pregnantNow: true }),
      conditions: other({ conditions: [] }),
      age: other({ age: 17 }),
      asked: other({ asked: 'second-operation' }),
      bmi: other({ bmi: 27 }),
      sex: other({ sex: 'male' }),
    };
    expect(Object.entries(told).filter(([, faults]) => faults.length === 0)).toEqual([]);
  });

  it('is short enough to be read', () => {
    const long = slugs.filter((slug) => statSync(join(peopleFolder, `${slug}.txt`)).size > 20 * 1024);
    expect(long).toEqual([]);
  });

  it('is there for every golden', () => {
    const goldens = readdirSync(peopleFolder).filter((name) => name.endsWith('.txt'));
    expect(goldens.filter((name) => !slugs.includes(name.replace('.txt', '')))).toEqual([]);
  });
});

describe('the invented people', () => {
  const cases = (): readonly GoldenPerson['open']['case'][] => people.map(({ open }) => open.case);

  it('have references of their own, and names that no example has', () => {
    const references = cases().map((one) => one.case);
    expect(new Set(references).size).toBe(slugs.length);
    const examples = readdirSync('examples/cases').map((name) =>
      readFileSync(`examples/cases/${name}`, 'utf8'),
    );
    const names = cases().flatMap(({ patient }) => patient.name.split(/[ -]/));
    expect(names.filter((name) => examples.some((text) => text.includes(name)))).toEqual([]);
  });

  it('have every condition, medicine and past event that a case may name', () => {
    const said = cases().flatMap(({ health }) => [
      ...health.conditions,
      ...health.medicines,
      ...health.history,
    ]);
    const all: readonly string[] = [...conditionCodes, ...medicineCodes, ...historyCodes];
    expect(all.filter((code) => !(said as readonly string[]).includes(code))).toEqual([]);
  });

  it('choose every option of the evidence, each at least twice', () => {
    const chosen = cases().flatMap(({ decision }) => decision.options);
    const often = (code: string): number => chosen.filter((option) => option === code).length;
    const options = readKnownCodes().options.filter(({ choosable }) => choosable);
    expect(options.map(({ code }) => code).filter((code) => often(code) < 2)).toEqual([]);
  });

  it('are from 15 to 74 years old, with both sides of 18 and of 65, and with a BMI from 24 to 68', () => {
    const tables = people.map(({ open }) => open.comparison.person);
    const ages = tables.map(({ age }) => age);
    for (const age of [15, 17, 18, 19, 64, 65, 66, 74]) expect(ages).toContain(age);
    const bmis = tables.map(({ bmi }) => Math.round(bmi * 10) / 10);
    expect([Math.min(...bmis), Math.max(...bmis)]).toEqual([24, 68]);
    for (const bmi of [34.9, 35, 50]) expect(bmis).toContain(bmi);
  });

  it('had each earlier operation that was studied, kept or undone, or none', () => {
    const asked = cases().map(({ decision, health }) => {
      const last = health.earlier_operations.at(-1);
      return [decision.asked, last?.operation, last?.status].filter((part) => part !== undefined).join(' ');
    });
    expect([...new Set(asked)].sort((a, b) => (a < b ? -1 : 1))).toEqual([
      'after-removal band removed',
      'after-removal plication reversed',
      'first-operation',
      'second-operation band in-place',
      'second-operation bypass in-place',
      'second-operation duodenal-switch in-place',
      'second-operation plication in-place',
      'second-operation sleeve in-place',
    ]);
  });

  it('are women, men and people who do not say, pregnant now or soon, in kilograms and pounds, by both cut-offs', () => {
    const told = cases().flatMap(({ patient, health }) => [
      patient.sex,
      patient.weight.written,
      patient.ancestry_threshold,
      health.smoking,
      health.pregnancy.now ? 'pregnant' : '',
      health.pregnancy.planned_within_months === null ? '' : 'planned',
    ]);
    const all = ['female', 'male', 'not-stated', 'kg', 'lb', 'asian', 'standard', 'pregnant', 'planned'];
    const smoking = ['never', 'former', 'current', 'not-asked'];
    expect([...all, ...smoking].filter((word) => !told.includes(word))).toEqual([]);
  });
});
