import { cpSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

import {
  changedExample,
  hasPoppler,
  plainleaf,
  readPacket,
  removeFolder,
  temporaryFolder,
  today,
} from './packets.ts';

// Two published figures are deleted from a copy of the project, as if their studies had been withdrawn.
/** A cell that only one figure can fill, and one where others can stand in for the figure that leads. */
const onlyOne = 'one-anastomosis-bypass/leak/30d';
const oneOfSeveral = 'semaglutide/weight-loss/12m';

interface Cell {
  readonly id: string;
  readonly state: string;
  readonly lead?: { readonly record: string };
  readonly others?: { readonly records: readonly string[] };
}

let folder: string;
let before: ReadonlyMap<string, Cell>;
let after: ReadonlyMap<string, Cell>;
let withdrawn: readonly string[];
let code: number;

beforeAll(async () => {
  folder = temporaryFolder();
  const root = join(folder, 'copy');
  for (const part of ['src', 'locales', 'templates', 'package.json', 'package-lock.json', 'tsconfig.json'])
    cpSync(part, join(root, part), { recursive: true });
  symlinkSync(resolve('node_modules'), join(root, 'node_modules'));
  writeFileSync(join(folder, 'clinic.yaml'), readFileSync('examples/clinic.yaml'));
  writeFileSync(
    join(folder, 'case.yaml'),
    changedExample('QB-1067', { 'comparison, questions, sources, clinician-sheet': 'comparison' }),
  );
  const compare = ['compare', 'case.yaml', '--date', today, '--json'];
  before = cellsIn((await plainleaf(compare, { folder, root })).out);
  withdrawn = [onlyOne, oneOfSeveral].map((cell) => before.get(cell)?.lead?.record ?? `none leads ${cell}`);
  for (const record of withdrawn) {
    const path = join(root, `src/evidence/data/records/${record.split('.')[0] ?? ''}.yaml`);
    writeFileSync(path, withoutRecord(readFileSync(path, 'utf8'), record));
  }
  after = cellsIn((await plainleaf(compare, { folder, root })).out);
  const make = ['make', 'case.yaml', '--date', today, '--language', 'en', '--out', 'out'];
  code = (await plainleaf(make, { folder, root })).code;
});
afterAll(() => {
  removeFolder(folder);
});

/** The text of a data file without one of its entries; the entry must be there. */
function withoutRecord(text: string, id: string): string {
  const entries = text.split(/^(?=- id: )/m);
  const kept = entries.filter((entry) => !entry.startsWith(`- id: ${id}\n`));
  if (kept.length !== entries.length - 1) throw new Error(`not there once: ${id}`);
  return kept.join('');
}

/** Every cell of a comparison, wherever it stands, without the list of the records that were set aside. */
function cellsIn(json: string): ReadonlyMap<string, Cell> {
  const cells = new Map<string, Cell>();
  JSON.parse(json, (key, value: unknown) => {
    if (key === 'setAside') return undefined;
    if (value !== null && typeof value === 'object' && 'id' in value && 'state' in value) {
      const cell = value as Cell;
      cells.set(cell.id, cell);
    }
    return value;
  });
  return cells;
}

describe('when figures are deleted from the data', () => {
  it('the cell that no other figure can fill becomes not known', () => {
    expect(before.get(onlyOne)?.state).toBe('known');
    expect(before.get(onlyOne)?.others).toBeUndefined();
    expect(after.get(onlyOne)?.state).toBe('not-known');
  });

  it('another record leads where there is one', () => {
    const cell = after.get(oneOfSeveral);
    expect(cell?.state).toBe('known');
    expect(before.get(oneOfSeveral)?.others?.records).toContain(cell?.lead?.record);
  });

  it('every other cell stays as it was', () => {
    const changed = [...before.values()]
      .filter((cell) => !isDeepStrictEqual(after.get(cell.id), cell))
      .map(({ id }) => id);
    expect(before.size).toBeGreaterThan(100);
    expect(new Set(changed)).toEqual(new Set([onlyOne, oneOfSeveral]));
    expect(after.size).toBe(before.size);
  });

  it.skipIf(!hasPoppler)(
    'the packet is still made, says not known there, and stands on neither of them',
    () => {
      expect(code).toBe(0);
      const { derivations, pages } = readPacket(join(folder, 'out/QB-1067/en'));
      expect(derivations.length).toBeGreaterThan(50);
      expect(derivations.filter(({ record }) => withdrawn.includes(record))).toEqual([]);
      expect(derivations.filter(({ cells }) => cells.includes(onlyOne))).toEqual([]);
      const table = pages.find(({ text }) => /Death .*A leak /.test(text));
      const row = table?.lines.find((line) => /^One-join bypass {2,}/.test(line)) ?? '';
      expect(row.split(/ {2,}/)[2]).toMatch(/^not known/);
    },
  );
});
