import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';

import { runBatch } from '../../../src/batch/index.ts';
import type { BatchEvent, BatchInput, Outcome } from '../../../src/batch/index.ts';
import { sha256 } from '../../../src/io/digest.ts';
import { createNodeWorkspace } from '../../../src/io/node-workspace.ts';
import { prepare } from '../../../src/prepare.ts';
import type { Prepared } from '../../../src/prepare.ts';
import { createMemoryWorkspace } from '../../helpers/memory-workspace.ts';

const clinic = readFileSync(new URL('../../../examples/clinic.yaml', import.meta.url), 'utf8');
/** An invented person who asks for one short document in one language. */
const shortCase = readFileSync(new URL('../../../examples/cases/QB-1041.yaml', import.meta.url), 'utf8')
  .replace(/^documents:.*$/m, 'documents: [questions]')
  .replace(/^languages:.*$/m, 'languages: [en]');
const name = /name: (.*)/.exec(shortCase)?.[1] ?? '';

let prepared: Prepared;
beforeAll(async () => {
  const opened = await prepare(createNodeWorkspace(), '.');
  if (!opened.ok) throw new Error(opened.diagnostics.map(({ message }) => message).join('\n'));
  prepared = opened.value;
});

async function run(files: Readonly<Record<string, string>>, changes: Partial<BatchInput> = {}) {
  const workspace = createMemoryWorkspace({ 'clinic.yaml': clinic, ...files });
  const input = {
    workspace,
    prepared,
    files: Object.keys(files),
    date: '2026-11-25',
    out: 'out',
    ...changes,
  };
  const events: BatchEvent[] = [];
  for await (const event of runBatch(input)) events.push(event);
  const outcomes: readonly Outcome[] = events.flatMap((event) =>
    event.type === 'outcome' ? [event.outcome] : [],
  );
  return {
    outcomes,
    files: workspace.files,
    written: [...workspace.files.keys()].filter((path) => path.startsWith('out/')),
  };
}

function codesOf(outcome: Outcome | undefined): readonly string[] {
  return outcome?.made === false ? outcome.diagnostics.map(({ code }) => code) : [];
}

describe('a batch', () => {
  it('goes on after cases that cannot be made, and says why each was not', async () => {
    const { outcomes, written } = await run(
      {
        'a.yaml': shortCase.replace('118.4 kg', '118,4 kg'),
        'b.yaml': shortCase,
        'c.yaml': shortCase,
        'd.yaml': shortCase.replace('QB-1041', 'QB-9').replace('surgeon: tamsin', 'surgeon: nobody'),
      },
      { files: ['a.yaml', 'b.yaml', 'c.yaml', 'd.yaml', 'not-there.yaml'] },
    );
    expect(outcomes.map(({ file, made }) => [file, made])).toEqual([
      ['a.yaml', false],
      ['b.yaml', true],
      ['c.yaml', false],
      ['d.yaml', false],
      ['not-there.yaml', false],
    ]);
    expect(outcomes.map(codesOf)).toEqual([
      ['CASE_DECIMAL_COMMA'],
      [],
      ['CASE_CONFLICT'],
      ['CASE_UNKNOWN_CODE'],
      ['FILE_NOT_FOUND'],
    ]);
    expect(written).toEqual(['out/QB-1041/en/packet.pdf', 'out/QB-1041/en/packet.json']);
  });

  it('writes each document as a file of its own when asked to, with the id that it has in the packet', async () => {
    const two = shortCase.replace('[questions]', '[questions, clinician-sheet]');
    const apart = await run({ 'a.yaml': two }, { separate: true });
    expect(apart.written).toEqual([
      'out/QB-1041/en/questions.pdf',
      'out/QB-1041/en/questions.json',
      'out/QB-1041/en/clinician-sheet.pdf',
      'out/QB-1041/en/clinician-sheet.json',
    ]);
    expect(apart.outcomes.map(({ made }) => made)).toEqual([true, true]);
    // What is said of the case is said once.
    expect(apart.outcomes.map((one) => (one.made ? one.warnings.length > 0 : null))[1]).toBe(false);
    const record = apart.files.get('out/QB-1041/en/clinician-sheet.json');
    expect(String(record)).toMatch(/document:QB-1041-en-2-/);
    expect(String(record)).not.toMatch(/document:QB-1041-en-1-/);
  });

  it('writes an HTML page beside the PDF when asked to, and names it with its digest in the provenance', async () => {
    const { written, files } = await run({ 'b.yaml': shortCase }, { html: true });
    expect(written).toEqual([
      'out/QB-1041/en/packet.pdf',
      'out/QB-1041/en/packet.html',
      'out/QB-1041/en/packet.json',
    ]);
    const page = files.get('out/QB-1041/en/packet.html');
    const digest = sha256(page instanceof Uint8Array ? page : '');
    const record = String(files.get('out/QB-1041/en/packet.json'));
    expect(JSON.parse(record)).toMatchObject({
      html: { name: 'packet.html', sha256: digest },
      htmlVerification: { passed: true },
      provenance: { entity: { 'plainleaf:html-edition': { 'plainleaf:sha256': digest } } },
    });
  });

  it('writes nothing when only asked whether it could', async () => {
    const { outcomes, written } = await run({ 'b.yaml': shortCase }, { out: undefined });
    expect(outcomes).toMatchObject([
      { caseReference: 'QB-1041', language: 'en', made: true, written: undefined },
    ]);
    expect(written).toEqual([]);
  });

  it('refuses a language that the case does not ask for', async () => {
    const { outcomes } = await run({ 'b.yaml': shortCase }, { language: 'es' });
    expect(outcomes.map(codesOf)).toEqual([['USAGE']]);
  });

  it('says so when no clinic profile is near', async () => {
    const { outcomes } = await run({ 'far/away/from/any/b.yaml': shortCase });
    expect(outcomes.map(codesOf)).toEqual([['FILE_NOT_FOUND']]);
  });

  it('withholds a packet that does not come back as it should, and writes nothing of it', async () => {
    const { locales } = prepared;
    const [english, spanish] = [locales.get('en'), locales.get('es')];
    if (english === undefined || spanish === undefined) throw new Error('a language is missing');
    const mistaken = { ...english, commonWords: spanish.commonWords };
    const { outcomes, written } = await run(
      { 'b.yaml': shortCase },
      { prepared: { ...prepared, locales: new Map([...locales, ['en', mistaken]]) } },
    );
    expect(outcomes.map(codesOf)).toEqual([['VERIFY_LANGUAGE']]);
    expect(written).toEqual([]);
  });

  it('reports a fault of its own without what it was about', async () => {
    const { templates } = prepared;
    const broken = {
      ...templates,
      documents: new Map([['questions', { ...templates.documents.get('questions'), run: fail }]]),
    };
    const { outcomes, written } = await run(
      { 'b.yaml': shortCase },
      { prepared: { ...prepared, templates: broken as unknown as Prepared['templates'] } },
    );
    expect(outcomes.map(codesOf)).toEqual([['INTERNAL']]);
    expect(JSON.stringify(outcomes)).toContain('RangeError at ');
    expect(JSON.stringify(outcomes)).not.toContain('Quenby');
    expect(written).toEqual([]);
  });

  it('says so when a packet cannot be written', async () => {
    const full = {
      ...createMemoryWorkspace({ 'clinic.yaml': clinic, 'b.yaml': shortCase }),
      write: async () => Promise.reject(new Error('no space')),
    };
    const { outcomes } = await run({ 'b.yaml': shortCase }, { workspace: full });
    expect(outcomes.map(codesOf)).toEqual([['FILE_NOT_WRITTEN']]);
  });
});

function fail(): never {
  throw new RangeError(`cannot set ${name}`);
}
