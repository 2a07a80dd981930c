// Numbers of the golden comparisons, worked out on paper from the record files. golden-people.by-hand.json holds for
// each what the record says, the sum as it was written down, and what came out. Nothing of src is used here.
// - percent of total weight: weight * (1 - percent / 100); percent of excess weight or BMI: the excess over BMI 25
//   (van de Laar A, Obes Surg 2012;22:1266-1273);
// - score limits: Wilson EB, J Am Stat Assoc 1927;22:209-212; the exact limit of one event, 1 - 0.975 ^ (1 / n), and
//   of none, 1 - 0.025 ^ (1 / n): Clopper CJ and Pearson ES, Biometrika 1934;26:404-413;
// - 1 lb = 0.45359237 kg and 1 in = 0.0254 m by definition (international yard and pound agreement, 1959).
import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { z } from 'zod';

import { numbersIn, workOut } from '../helpers/work-out.ts';

const RowSchema = z.strictObject({
  person: z.string(),
  line: z.string(),
  record: z.string().optional(),
  what: z.string(),
  published: z.record(z.string(), z.number()).optional(),
  sum: z.string(),
  expected: z.string(),
});
type Row = z.infer<typeof RowSchema>;

const folder = 'tests/golden/comparison';
const rows = RowSchema.array().parse(
  JSON.parse(readFileSync('tests/external/golden-people.by-hand.json', 'utf8')),
);
const people = readdirSync(folder)
  .filter((name) => name.endsWith('.txt'))
  .map((name) => name.replace('.txt', ''));
const goldens = new Map(people.map((slug) => [slug, readFileSync(`${folder}/${slug}.txt`, 'utf8')]));

interface Told {
  readonly id: string;
  readonly value: Readonly<Record<string, unknown>>;
}
const data = 'src/evidence/data/records';
const records = new Map(
  readdirSync(data)
    .flatMap((name) => parse(readFileSync(`${data}/${name}`, 'utf8')) as Told[])
    .map((record) => [record.id, record.value]),
);

/** The line of a golden: the head, a course, a stay, or an option under its outcome. */
function lineOf({ person, line }: Row): string {
  const text = (goldens.get(person) ?? '').split('\n');
  if (line === 'head') return text[0] ?? '';
  if (line.startsWith('course of')) return text.find((one) => one.startsWith(`  ${line} in `)) ?? '';
  const [row = '', option = ''] = line.split(': ');
  const start =
    row === 'stay'
      ? text.findIndex((one) => one.startsWith(`  ${option}: `))
      : text.findIndex((one) => one === `  ${row}` || one.startsWith(`  ${row}, picture`));
  return text.slice(start + 1).find((one) => one.startsWith(`    ${row === 'stay' ? row : option} `)) ?? '';
}

const number = '(-?[\\d.]+)';
const places: ReadonlyMap<string, string> = new Map([
  ['kg', `, ${number} kg, `],
  ['m', `, ${number} m, `],
  ['BMI', `, BMI ${number}, `],
  ['average', `» ${number} kg, `],
  ['change', ` kg, ${number} kg, `],
  ['share', `» ${number}`],
  ['length', `» ${number} `],
  ['upper limit', `, up to ${number}\\)`],
  ['printed', '«([^·»(]+)'],
]);

/** What stands in the golden in the place of a row. */
function saidIn(row: Row, line: string): string {
  const place = places.get(row.what) ?? placeInCourse(row) ?? placeOfLimit(row.what);
  return new RegExp(place).exec(line)?.[1]?.trim() ?? `nothing like ${place}`;
}

function placeInCourse({ what, record = '' }: Row): string | undefined {
  const months = /^at ([\d.]+) months$/.exec(what)?.[1];
  return months === undefined ? undefined : ` ${months} mo ${number} kg ${record}`;
}

/** The lower or the upper one of a pair. */
function placeOfLimit(what: string): string {
  const name = what.replace(/ (low|high)$/, '');
  const limits = what.endsWith(' low') ? `${number} to -?[\\d.]+` : `-?[\\d.]+ to ${number}`;
  return name === 'others' ? `\\| others ${limits}:` : `\\(${name} ${limits}\\)`;
}

describe('a number of a golden comparison', () => {
  it.each(rows)('$person, $line: $what is $expected', (row) => {
    const line = lineOf(row);
    expect(saidIn(row, line)).toBe(row.expected);
    const { record, published } = row;
    const id = row.what.startsWith('others') ? record?.split('.').slice(2).join('.') : record;
    expect(line).toContain(id ?? '');
    expect(record === undefined ? {} : records.get(record)).toMatchObject(published ?? {});
  });

  it.each(rows)('$person, $line: $what comes out of its sum', ({ what, sum, expected }) => {
    const value = Number(/^-?[\d.]+/.exec(expected)?.[0]);
    // Goldens keep six places, pages whole pounds, kilograms and people.
    const away = Math.abs(workOut(sum) - value);
    expect(away).toBeLessThanOrEqual(what === 'printed' ? 0.5 + 1e-9 : 6e-6 * Math.abs(value));
  });

  it.each(rows)('$person, $line: the sum for $what holds nothing but what is known', (row) => {
    const { person, sum, published = {} } = row;
    const own = parse(readFileSync(`${folder}/${person}.yaml`, 'utf8')) as {
      readonly patient: { readonly weight: string; readonly height: string };
    };
    const { percent = 0, n = 0 } = published;
    // BMI 25, pounds, feet and inches, a percent, the denominators, and the limits of 95 in 100.
    const constants = [25, 0.45359237, 12, 0.0254, 100, 1000, 1, 2, 4, 0.5, 0.025, 0.975, 1.959964];
    const known = [
      ...numbersIn(`${own.patient.weight} ${own.patient.height}`),
      ...Object.values(published).map(Math.abs),
      ...constants,
      Math.round((percent * n) / 100),
    ];
    expect(numbersIn(sum).filter((number) => !known.includes(number))).toEqual([]);
  });

  it('was worked out for everybody, three numbers or more, and for 80 records or more', () => {
    const counts = people.map((slug) => rows.filter(({ person }) => person === slug).length);
    expect(Math.min(...counts)).toBeGreaterThanOrEqual(3);
    expect(rows.length).toBeGreaterThanOrEqual(150);
    expect(new Set(rows.flatMap(({ record = [] }) => record)).size).toBeGreaterThanOrEqual(80);
  });
});

describe('a sum on paper', () => {
  it.each([
    ['2 + 3 * 4 ^ 2', 50],
    ['(2 + 3) * 4', 20],
    ['10 - 4 - 3', 3],
    ['12 / 4 / 3', 1],
    ['2 * (1 - -0.2 / 2)', 2.2],
    ['16 ^ 0.5', 4],
  ])('%s is %d', (sum, value) => {
    expect(workOut(sum)).toBeCloseTo(value, 12);
  });

  it.each(['2 +', '(1', '1 2', 'x * 2', ''])('"%s" has no value', (sum) => {
    expect(() => workOut(sum)).toThrow();
  });
});
