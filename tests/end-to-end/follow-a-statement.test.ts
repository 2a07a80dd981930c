import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { parse } from 'yaml';

import type { Caution, Reversibility } from '../../src/model/evidence-rules.ts';
import type { Study } from '../../src/model/study.ts';
import { readBack } from '../../src/verify/read-back.ts';

// A figure that stands inside a sentence is followed from the paper to its row and citation, and from there back to
// the paper. Everything is read from the finished files and from the data files, as somebody would in two years.

interface Given {
  /** `1` the comparison, `2` the questions, `3` the sources. */
  readonly document: string;
  readonly statement: string;
  readonly printed: string | undefined;
}

const data = 'src/evidence/data';
const rowsOf = (file: string): unknown => parse(readFileSync(join(data, file), 'utf8'));
const undoing = rowsOf('reversibility.yaml') as readonly Reversibility[];
const cautions = rowsOf('cautions.yaml') as readonly Caution[];
const studies = readdirSync(join(data, 'studies')).flatMap(
  (file) => rowsOf(join('studies', file)) as readonly Study[],
);

let folder: string;
let entities: Readonly<Record<string, { readonly 'prov:type': { readonly $: string } }>>;
let given: readonly Given[];
/** Text of each document, white space made one, by its number. */
let paper: ReadonlyMap<string, string>;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'plainleaf-'));
  writeFileSync(
    join(folder, 'case.yaml'),
    readFileSync('examples/cases/QB-1067.yaml', 'utf8').replace(
      'comparison, questions, sources, clinician-sheet',
      'comparison, questions, sources',
    ),
  );
  writeFileSync(join(folder, 'clinic.yaml'), readFileSync('examples/clinic.yaml'));
  const program = resolve('src/cli/plainleaf.mjs');
  execFileSync(process.execPath, [program, 'make', 'case.yaml', '--date', '2026-11-25', '--language', 'en'], {
    cwd: folder,
  });
  const packet = join(folder, 'out/QB-1067/en');
  const { provenance } = JSON.parse(readFileSync(join(packet, 'packet.json'), 'utf8')) as {
    provenance: { entity: typeof entities; wasDerivedFrom: Record<string, Record<string, string>> };
  };
  entities = provenance.entity;
  given = Object.values(provenance.wasDerivedFrom).map((relation) => ({
    document: numberOf(relation['prov:generatedEntity'] ?? ''),
    statement: relation['prov:usedEntity'] ?? '',
    printed: relation['plainleaf:printed'],
  }));
  paper = await read(join(packet, 'packet.pdf'));
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

function numberOf(text: string): string {
  return /QB-1067-en-(\d)-[0-9a-f]{6}/.exec(text)?.[1] ?? '';
}

async function read(file: string): Promise<ReadonlyMap<string, string>> {
  const found = await readBack(new Uint8Array(readFileSync(file)));
  const texts = new Map<string, string>();
  for (const page of found?.pages ?? []) {
    const text = page.replace(/\s+/g, ' ');
    texts.set(numberOf(text), `${texts.get(numberOf(text)) ?? ''} ${text}`);
  }
  return texts;
}

/** Numbers of the studies that the sources give for a point, with the citation under each number. */
function citedFor(point: string): readonly string[] {
  const sources = paper.get('3') ?? '';
  const list = sources.slice(sources.indexOf('Which studies are these? 1 '));
  const numbers = new RegExp(`${point} (?:Study|Studies) ([\\d, and]+)\\.`).exec(sources)?.[1] ?? '';
  return [...numbers.matchAll(/\d+/g)].map(
    ([number]) => new RegExp(` ${number} (.*?) ${Number(number) + 1} `).exec(list)?.[1] ?? '',
  );
}

function citation(id: string): Study['citation'] {
  return studies.find((study) => study.id === id)?.citation ?? {};
}

/** Documents that hold a figure of a statement. */
function documentsWith(statement: string): readonly string[] {
  return given
    .filter((one) => one.statement === statement && one.printed === 'figures')
    .map(({ document }) => document);
}

describe('a figure on undoing an option', () => {
  it('is on paper, and the provenance beside the paper names the row it stands on', () => {
    expect(paper.get('1')).toContain('Of 48 people in a study, 24 had a problem within a year');
    expect(documentsWith('undo:bypass')).toEqual(['1']);
    expect(entities['undo:bypass']?.['prov:type'].$).toBe('plainleaf:UndoStatement');
  });

  it('leads to its row, to the study, and to the citation that the person was given', () => {
    const row = undoing.find(({ option }) => option === 'undo:bypass'.slice('undo:'.length));
    const counted = row?.undo.data.find(({ events, n }) => events === 24 && n === 48);
    expect(counted).toMatchObject({ seen: 'page', time: { months: 12 } });
    const { title, pmid } = citation(counted?.study ?? '');
    expect([title, pmid].every((part) => (part ?? '') !== '')).toBe(true);
    const cited = citedFor('On whether a gastric bypass can be undone:').filter((text) =>
      text.includes(title ?? '-'),
    );
    expect(cited).toEqual([expect.stringContaining(`PubMed ${pmid ?? '-'}`)]);
  });

  it('is found again from the study: what stands on it, and which papers hold it', () => {
    const after = undoing
      .filter(({ undo }) => undo.weight_after.study === 'reversal-2025')
      .map(({ option }) => `undo:${option}#weight_after`);
    const taking = undoing
      .filter(({ undo }) => undo.data.some(({ study }) => study === 'reversal-2025'))
      .map(({ option }) => `undo:${option}`);
    expect([...taking, ...after]).toEqual(['undo:bypass', 'undo:bypass#weight_after']);
    expect([...taking, ...after].flatMap(documentsWith)).toEqual(['1', '1']);
    // What is said in words alone is told apart from what holds a figure.
    const words = given.filter(({ statement }) => statement === 'undo:sleeve');
    expect(words).toEqual([{ document: '1', statement: 'undo:sleeve', printed: 'words' }]);
  });
});

describe('a figure in a caution', () => {
  it('leads from the paper to its row, to the study, and to the citation that the person was given', () => {
    expect(paper.get('1')).toContain('of 22 people whose ulcer had burst, 9 smoked');
    const id = 'caution:smoking-one-anastomosis';
    expect(documentsWith(id)).toEqual(['1']);
    expect(entities[id]?.['prov:type'].$).toBe('plainleaf:CautionStatement');
    const row = cautions.find((caution) => `caution:${caution.id}` === id);
    expect(row).toMatchObject({ basis: 'page', seen: 'page' });
    expect(row?.statement).toMatch(/\b22 people\b.*\b9 of them smoked\b/);
    const { authors, title } = citation(row?.sources[0]?.study ?? '');
    const named = title ?? authors ?? '-';
    const cited = citedFor('You smoke\\. For a one-join bypass:');
    expect(cited).toEqual([expect.stringContaining(named)]);
  });

  it('is never one of what is only asked: that stands in the provenance as words', () => {
    const asked = cautions.filter(({ basis }) => basis === 'practice').map(({ id }) => `caution:${id}`);
    const found = given.filter(({ statement }) => asked.includes(statement));
    expect(new Set(found.map(({ document }) => document))).toEqual(new Set(['1', '2']));
    expect(new Set(found.map(({ printed }) => printed))).toEqual(new Set(['words']));
  });
});

it('every statement of the provenance is a row of the data files', () => {
  const rows = new Set([
    ...undoing.flatMap(({ option }) => [`undo:${option}`, `undo:${option}#weight_after`]),
    ...cautions.map(({ id }) => `caution:${id}`),
  ]);
  const named = given.map(({ statement }) => statement).filter((id) => !id.startsWith('record:'));
  expect(named.length).toBeGreaterThan(15);
  expect(named.filter((id) => !rows.has(id))).toEqual([]);
});
