import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { compareTables } from '../../src/compare/compare-tables.ts';
import { compareCases, compareOptions } from '../../src/compare/index.ts';
import { listCells } from '../../src/compare/list-records-used.ts';
import { changeCase } from '../../src/input/index.ts';
import type { ChangedCase } from '../../src/input/index.ts';
import type { Case } from '../../src/model/case.ts';
import type { Cell, ComparisonTable } from '../../src/model/comparison.ts';
import { makeClinic, readShippedEvidence, today } from '../helpers/compare-inputs.ts';
import { readKnownCodes } from '../helpers/known-codes.ts';

const evidence = readShippedEvidence();
const clinic = makeClinic();
const context = { ...readKnownCodes(), today };

const conditions = ['type-2-diabetes', 'reflux', 'severe-reflux', 'sleep-apnoea', 'heart-disease'] as const;
const medicines = ['metformin', 'steroid', 'anti-inflammatory'] as const;
const options = [
  'sleeve',
  'bypass',
  'plication',
  'band',
  'tirzepatide',
  'lifestyle',
  'no-operation',
] as const;

interface Asked {
  readonly weight: string;
  readonly height: string;
  readonly age: number;
  readonly sex: string;
  readonly smoking: string;
  readonly ancestry_threshold: string;
  readonly conditions: readonly string[];
  readonly medicines: readonly string[];
  readonly options: readonly string[];
  readonly pregnancy: string;
  readonly earlier_operations: readonly string[];
  readonly asked: string;
}

/** What was done before, as a what-if writes it, and what can then be asked. */
const pasts: readonly (readonly [string, readonly string[]])[] = [
  ['first-operation', []],
  ['second-operation', ['band']],
  ['after-removal', ['band:removed']],
  ['second-operation', ['sleeve']],
  ['second-operation', ['band:converted', 'sleeve']],
];

/** Invented people, as a case file would write them. */
const anyone: fc.Arbitrary<Asked> = fc
  .record({
    weight: fc.oneof(
      fc.integer({ min: 60, max: 200 }).map((kg) => `${String(kg)} kg`),
      fc.integer({ min: 150, max: 440 }).map((lb) => `${String(lb)}.5 lb`),
    ),
    height: fc.oneof(
      fc.integer({ min: 145, max: 195 }).map((cm) => `${String(cm)} cm`),
      fc.integer({ min: 0, max: 11 }).map((inches) => `5 ft ${String(inches)} in`),
    ),
    age: fc.integer({ min: 15, max: 80 }),
    sex: fc.constantFrom('female', 'male', 'not-stated'),
    smoking: fc.constantFrom('never', 'former', 'current', 'not-asked'),
    ancestry_threshold: fc.constantFrom('standard', 'asian'),
    conditions: fc.subarray([...conditions]),
    medicines: fc.subarray([...medicines]),
    options: fc.subarray([...options], { minLength: 1 }),
    pregnancy: fc.constantFrom('none', '12 months', 'now'),
    past: fc.constantFrom(...pasts),
  })
  .map(({ past: [asked, earlier], ...rest }) => ({
    ...rest,
    // A man with a pregnancy is refused.
    pregnancy: rest.sex === 'male' ? 'none' : rest.pregnancy,
    earlier_operations: earlier,
    asked,
  }));

/** JSON is YAML too. */
function write(asked: Asked): string {
  const { weight, height, age, sex, ancestry_threshold } = asked;
  const born = `${String(Number(today.slice(0, 4)) - age)}-02-01`;
  return JSON.stringify({
    plainleaf: 1,
    case: 'T-1',
    languages: ['en'],
    documents: ['comparison'],
    patient: { name: 'Ilsa Marchetti-Boone', born, sex, height, weight, ancestry_threshold },
    health: {
      conditions: asked.conditions,
      medicines: asked.medicines,
      smoking: asked.smoking,
      pregnancy: {
        now: asked.pregnancy === 'now',
        planned_within_months: asked.pregnancy === '12 months' ? 12 : null,
      },
      earlier_operations: asked.earlier_operations.map((written) => {
        const [operation, status = 'in-place'] = written.split(':');
        return { operation, status };
      }),
    },
    decision: { asked: asked.asked, options: asked.options },
    plan: { surgeon: 'surgeon-1' },
  });
}

/** The what-ifs that turn a person into another. */
function turnInto(other: Asked): readonly string[] {
  return Object.entries(other).map(([field, value]: [string, unknown]) =>
    Array.isArray(value) ? `${field}=[${value.join(', ')}]` : `${field}=${String(value)}`,
  );
}

function change(text: string, whatIfs: readonly string[]): ChangedCase {
  const result = changeCase({ file: 'case.yaml', text }, whatIfs, context);
  if (!result.ok) throw new Error(result.diagnostics.map(({ message }) => message).join('; '));
  return result.value;
}

function compare(given: Case): ComparisonTable {
  const result = compareOptions({ case: given, clinic, evidence, date: today });
  if (!result.ok) throw new Error(result.diagnostics.map(({ message }) => message).join('; '));
  return result.value;
}

describe('a what-if of what the case says already', () => {
  it('changes nothing, whether one thing is asked or all', () => {
    fc.assert(
      fc.property(anyone, fc.nat(), (asked, pick) => {
        const text = write(asked);
        const all = turnInto(asked);
        const same = [
          ...all,
          ...asked.conditions.map((code) => `+${code}`),
          ...medicines.filter((code) => !asked.medicines.includes(code)).map((code) => `medicines=-${code}`),
        ];
        for (const whatIfs of [[same[pick % same.length] ?? ''], same]) {
          const { case: given, changes } = change(text, whatIfs);
          expect(changes).toEqual([]);
          expect(given).toEqual(change(text, []).case);
        }
        expect(compareTables(compare(change(text, []).case), compare(change(text, same).case)).isSame).toBe(
          true,
        );
      }),
      { numRuns: 12 },
    );
  });
});

describe('a what-if there and back', () => {
  it('changes nothing, and there gives the other person whole', () => {
    fc.assert(
      fc.property(anyone, anyone, (asked, other) => {
        const text = write(asked);
        const there = turnInto(other);
        expect(change(text, there).case).toEqual(change(write(other), [`born=${bornOf(text, there)}`]).case);
        const back = change(text, [...there, ...turnInto(asked)]);
        expect(back.changes).toEqual([]);
        expect(compareTables(compare(change(text, []).case), compare(back.case)).isSame).toBe(true);
      }),
      { numRuns: 12 },
    );
  });

  it('one code at a time changes nothing either, wherever in its list it stood', () => {
    fc.assert(
      fc.property(anyone, fc.nat(), (asked, pick) => {
        const codes = [
          ...asked.conditions,
          ...asked.medicines,
          ...(asked.options.length > 1 ? asked.options : []),
        ];
        const code = codes[pick % Math.max(1, codes.length)] ?? 'no-operation';
        const text = write({ ...asked, options: [...new Set([...asked.options, 'no-operation'])] });
        const back = change(text, [`-${code}`, `+${code}`]);
        expect(back.changes).toEqual([]);
        expect(compareTables(compare(change(text, []).case), compare(back.case)).isSame).toBe(true);
      }),
      { numRuns: 12 },
    );
  });
});

/** An age is turned into a birth date of the what-if's own choice. */
function bornOf(text: string, whatIfs: readonly string[]): string {
  return change(text, whatIfs).case.patient.born;
}

/** Cells by id, in the only other way there is: as the text that a machine would get. */
function textsOf(table: ComparisonTable): Map<string, string> {
  const texts = new Map<string, string>();
  for (const cell of listCells(table)) {
    const text = JSON.stringify(cell);
    // One cell may stand in two rows of a table; then it is the same.
    expect(texts.get(cell.id) ?? text).toBe(text);
    texts.set(cell.id, text);
  }
  return texts;
}

/** Properties of two cells that a machine would read differently; where both have a lead, those of the lead by name. */
function propertiesThatDiffer(before: Cell | null, after: Cell | null): string[] {
  if (before === null || after === null) return [];
  const isBoth = before.state === 'known' && after.state === 'known';
  const flat = (cell: Cell): Map<string, string> => {
    const entries = Object.entries(cell).flatMap(([key, value]: [string, unknown]) =>
      key === 'lead' && isBoth
        ? Object.entries(value as object).map(
            ([name, part]: [string, unknown]) => [`lead.${name}`, part] as const,
          )
        : [[key, value] as const],
    );
    return new Map(entries.map(([key, value]) => [key, JSON.stringify(value)]));
  };
  const [was, is] = [flat(before), flat(after)];
  return [...new Set([...was.keys(), ...is.keys()])].filter((key) => was.get(key) !== is.get(key));
}

describe('the differences of two comparisons', () => {
  it('are exactly the cells that differ, each with the properties that do', () => {
    fc.assert(
      fc.property(anyone, anyone, fc.boolean(), (asked, other, near) => {
        const first = compare(change(write(asked), []).case);
        // Near: only one thing differs, as a surgeon would ask.
        const second = compare(change(write(near ? { ...asked, weight: other.weight } : other), []).case);
        const [was, is] = [textsOf(first), textsOf(second)];
        const difference = compareTables(first, second);
        const ids = [...new Set([...was.keys(), ...is.keys()])];
        expect(difference.cellCount).toBe(ids.length);
        expect(difference.cells.map(({ id }) => id)).toEqual(ids.filter((id) => was.get(id) !== is.get(id)));
        for (const { id, before, after, what } of difference.cells) {
          expect([before, after].map((cell) => (cell === null ? undefined : JSON.stringify(cell)))).toEqual([
            was.get(id),
            is.get(id),
          ]);
          expect([...what].sort()).toEqual(propertiesThatDiffer(before, after).sort());
        }
        expect(difference.isSame).toBe(JSON.stringify(first) === JSON.stringify(second));
      }),
      { numRuns: 12 },
    );
  });

  it('turned round are the same differences', () => {
    fc.assert(
      fc.property(anyone, anyone, (asked, other) => {
        const [first, second] = [asked, other].map((one) => compare(change(write(one), []).case));
        if (first === undefined || second === undefined) throw new Error('two tables were asked for');
        const [there, back] = [compareTables(first, second), compareTables(second, first)];
        for (const part of [
          'cells',
          'cautions',
          'notes',
          'records',
          'options',
          'person',
          'courses',
        ] as const) {
          const turned = back[part].map(({ id, before, after }) => ({ id, before: after, after: before }));
          const plain = there[part].map(({ id, before, after }) => ({ id, before, after }));
          expect(byId(turned)).toEqual(byId(plain));
        }
      }),
      { numRuns: 8 },
    );
  });

  it('tell of a row that only one case shows what the other would say, and change nothing else', () => {
    fc.assert(
      fc.property(anyone, anyone, (asked, other) => {
        const cases = [write(asked), write(other)].map((text) => change(text, []).case);
        const [before, after] = cases.map((given) => ({
          input: { case: given, clinic, evidence, date: today },
          table: compare(given),
        }));
        if (before === undefined || after === undefined) throw new Error('two comparisons were asked for');
        const plain = compareTables(before.table, after.table);
        const told = compareCases(before, after);
        expect({ ...told, cells: [] }).toEqual({ ...plain, cells: [] });
        told.cells.forEach((cell, index) => {
          const { hidden, ...rest } = cell;
          const [option = ''] = cell.id.split('/');
          const isInBoth = asked.options.includes(option) && other.options.includes(option);
          expect(hidden === undefined).toBe(
            !isInBoth || plain.cells[index]?.[oneSide(plain.cells[index])] !== null,
          );
          expect(hidden === undefined ? rest : { ...rest, [hidden]: null }).toEqual(plain.cells[index]);
          expect([cell.before, cell.after].map((one) => one?.id ?? cell.id)).toEqual([cell.id, cell.id]);
        });
      }),
      { numRuns: 8 },
    );
  });
});

function oneSide(change: { readonly before: unknown } | undefined): 'before' | 'after' {
  return change?.before === null ? 'before' : 'after';
}

function byId<T extends { readonly id: string }>(list: readonly T[]): T[] {
  return [...list].sort((a, b) => (a.id < b.id ? -1 : 1));
}
