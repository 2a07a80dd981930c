import { spawnSync } from 'node:child_process';
import { rmSync, writeFileSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

import { changedExample, hasPoppler, plainleaf, poppler, temporaryFolder, today } from './packets.ts';

// Every record that the comparison names, looked up in the printed clinician sheet as poppler reads it.

interface Cell {
  readonly id: string;
  readonly state: string;
  readonly lead?: { readonly record: string };
  readonly others?: { readonly records: readonly string[] };
  readonly setAside: readonly { readonly record: string; readonly reason: { readonly code: string } }[];
}
interface Comparison {
  readonly weight: { readonly main: Row; readonly over: readonly Row[] };
  readonly topics: readonly { readonly picture: Row | null; readonly rows: readonly Row[] }[];
  readonly options: readonly { readonly stay: Cell }[];
  readonly cautions: readonly { readonly id: string; readonly basis: string }[];
}
interface Row {
  readonly cells: readonly Cell[];
}

let folder: string;
beforeAll(() => {
  folder = temporaryFolder();
  writeFileSync(join(folder, 'clinic.yaml'), readFileSync('examples/clinic.yaml'));
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

function cellsOf({ weight, topics, options }: Comparison): readonly Cell[] {
  const rows = [
    weight.main,
    ...weight.over,
    ...topics.flatMap(({ picture, rows: all }) => [...(picture === null ? [] : [picture]), ...all]),
  ];
  return [...rows.flatMap(({ cells }) => cells), ...options.map(({ stay }) => stay)];
}

/** How the sheet may print a record: its end in one piece, or its study with outcomes and times in brackets. */
function isNamed(text: string, record: string): boolean {
  const [, , time = '', ...rest] = record.split('.');
  const study = rest.join('.').replaceAll('.', '\\.');
  const times = `(?:[0-9a-z]+/)*${time}(?:/[0-9a-z]+)*`;
  const whole = '(?![\\w-]|\\.\\w)';
  return new RegExp(`${times}\\.${study}${whole}|${study} \\([^)]*\\b${time}\\b`).test(text);
}

/** Ends of ids in a narrow column go on in the next line of the cell. */
function isInColumn(text: string, record: string): boolean {
  return text.replaceAll(' ', '').includes(record.split('.').slice(2).join('.'));
}

describe.skipIf(!hasPoppler).each(['QB-1041', 'QB-0983'])('the clinician sheet of %s', (reference) => {
  let comparison: Comparison;
  const pages: Record<string, string> = {};
  beforeAll(async () => {
    const documents = { 'comparison, questions, sources, clinician-sheet': 'clinician-sheet' };
    writeFileSync(join(folder, `${reference}.yaml`), changedExample(reference, documents));
    const compared = await plainleaf(['compare', `${reference}.yaml`, '--date', today, '--json'], { folder });
    comparison = JSON.parse(compared.out) as Comparison;
    const made = await plainleaf(['make', `${reference}.yaml`, '--date', today, '--out', 'out'], { folder });
    if (made.code !== 0) throw new Error(made.err);
    for (const language of ['en', 'es']) {
      const file = join(folder, 'out', reference, language, 'packet.pdf');
      const read = spawnSync(poppler.read, ['-raw', file, '-'], { encoding: 'utf8' });
      pages[language] = read.stdout.replace(/\s+/g, ' ');
    }
  }, 120_000);

  it.each(['en', 'es'])(
    'names every record that leads, stands beside one, or was set aside: %s',
    (language) => {
      const text = pages[language] ?? '';
      const cells = cellsOf(comparison);
      const leads = cells.flatMap(({ lead }) => (lead === undefined ? [] : [lead.record]));
      const others = cells.flatMap(({ others: beside, setAside }) => [
        ...(beside?.records ?? []),
        ...setAside.map(({ record }) => record),
      ]);
      const rest = new Set(others.filter((record) => !leads.includes(record)));
      expect(rest.size).toBeGreaterThan(150);
      expect(leads.filter((record) => !isInColumn(text, record))).toEqual([]);
      expect([...rest].filter((record) => !isNamed(text, record))).toEqual([]);
    },
  );

  it.each(['en', 'es'])(
    'names every caution, and marks those that stand on usual practice: %s',
    (language) => {
      const text = pages[language] ?? '';
      expect(comparison.cautions.filter(({ id }) => !text.includes(`${id}:`))).toEqual([]);
      const practice = comparison.cautions.filter(({ basis }) => basis === 'practice');
      const mark = { en: 'Needs confirming.', es: 'Falta confirmar.' }[language] ?? '';
      expect(text.split(mark)).toHaveLength(practice.length + 1);
    },
  );
});
