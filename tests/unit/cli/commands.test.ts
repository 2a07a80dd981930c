import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

import { main } from '../../../src/cli/main.ts';
import { createTerminal } from '../../../src/cli/terminal.ts';
import { createNodeWorkspace } from '../../../src/io/node-workspace.ts';
import { createMemoryWorkspace } from '../../helpers/memory-workspace.ts';

const clinic = readFileSync('examples/clinic.yaml', 'utf8');
const example = readFileSync('examples/cases/QB-0755.yaml', 'utf8');
const short = example
  .replace(/^documents:.*$/m, 'documents: [questions]')
  .replace(/^languages:.*$/m, 'languages: [en]');
const names = (/name: (.*)/.exec(example)?.[1] ?? '').split(/[ -]/);

/** Runs a command on files that exist only here, with this checkout's own evidence, templates and words. */
async function call(args: readonly string[], files: Readonly<Record<string, string>> = {}) {
  const disk = createNodeWorkspace();
  const memory = createMemoryWorkspace({ 'week/clinic.yaml': clinic, ...files });
  const isHere = async (path: string) => memory.exists(path);
  const workspace = {
    ...disk,
    list: async (path: string) => ((await isHere(path)) ? memory.list(path) : disk.list(path)),
    exists: async (path: string) => (await isHere(path)) || (!path.startsWith('week') && disk.exists(path)),
    readText: async (path: string) => ((await isHere(path)) ? memory.readText(path) : disk.readText(path)),
    write: async (path: string, content: string | Uint8Array) => memory.write(path, content),
    now: () => new Date('2026-11-25T12:00:00Z'),
  };
  const printed = { out: '', err: '' };
  const terminal = createTerminal({
    out: { write: (text) => (printed.out += String(text)) !== '' },
    err: { write: (text) => (printed.err += String(text)) !== '' },
  });
  const code = await main(args, { workspace, terminal, root: '.' });
  expect(names.filter((name) => (printed.out + printed.err).includes(name))).toEqual([]);
  return { code, ...printed, written: [...memory.files.keys()].filter((path) => path.startsWith('out/')) };
}

describe('plainleaf compare', () => {
  it('shows every option, figure and record of a case, without the name', async () => {
    const { code, out } = await call(['compare', 'week/a.yaml'], { 'week/a.yaml': example });
    expect(code).toBe(0);
    expect(out).toMatch(
      /^QB-0755 {2}\d+ years {2}[\d.]+ kg {2}BMI [\d.]+ {2}second-operation {2}evidence \d{4}\.\d{2}$/m,
    );
    expect(out).toMatch(/^FIRST MONTH$/m);
    expect(out).toMatch(/^ {2}major-complication, 30 days$/m);
    expect(out).toMatch(/^ {4}bypass +\d.*% .*bypass\.major-complication\.30d\./m);
    expect(out).toMatch(/^CAUTIONS$/m);
  });

  it('gives the whole table as JSON', async () => {
    const { code, out } = await call(['compare', 'week/a.yaml', '--json'], { 'week/a.yaml': example });
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({
      person: { sex: expect.any(String) as string },
      recordsUsed: expect.any(Array) as unknown,
    });
  });

  it('says what a what-if changes, cell by cell, without the name', async () => {
    const { code, out } = await call(
      ['compare', 'week/a.yaml', '--what-if', 'weight=140 kg', '--what-if', '-sleeve'],
      { 'week/a.yaml': example },
    );
    expect(code).toBe(0);
    expect(out).toMatch(/^QB-0755 {2}what if\n {2}weight +[\d.]+ kg → 140 kg\n {2}options +-sleeve$/m);
    expect(out).toMatch(/^ {2}BMI +[\d.]+ → [\d.]+$/m);
    expect(out).toMatch(/^ {2}vanishes {2}sleeve$/m);
    expect(out).toMatch(/^CELLS: \d+ of \d+ change$/m);
    expect(out).toMatch(/^ {2}weight-loss, 5 years\b/m);
    expect(out).toMatch(/^ {4}sleeve +.* → not in the table$/m);
    for (const part of ['CAUTIONS', 'THRESHOLDS', 'RECORDS ON PATIENT PAGES'])
      expect(out).toContain(`\n${part}\n`);
  });

  it('gives machines the changes and both cells of each', async () => {
    const { code, out } = await call(['compare', 'week/a.yaml', '--what-if', 'weight=140 kg', '--json'], {
      'week/a.yaml': example,
    });
    const { changes, difference } = JSON.parse(out) as {
      changes: unknown;
      difference: {
        isSame: boolean;
        cells: readonly { id: string; before: object; after: object; hidden?: string }[];
      };
    };
    expect(code).toBe(0);
    expect(changes).toMatchObject([{ field: 'weight', after: '140 kg' }]);
    expect(difference.isSame).toBe(false);
    expect(difference.cells.length).toBeGreaterThan(5);
    for (const { id, before, after, hidden } of difference.cells) {
      expect([before, after]).toMatchObject([{ id }, { id }]);
      expect({ ...before, hidden }).not.toEqual(after);
    }
  });

  it.each(['weight=73.5 kg', '-sleeve-x', 'conditions=+reflux'])(
    'says so when %s changes nothing, or what is wrong with it',
    async (whatIf) => {
      const { code, out, err } = await call(['compare', 'week/a.yaml', '--what-if', whatIf], {
        'week/a.yaml': example,
      });
      const isWrong = whatIf === '-sleeve-x';
      expect([code, out]).toEqual(
        isWrong ? [3, ''] : [0, 'QB-0755  Nothing changes: the case says this already.\n'],
      );
      expect(err).toContain(isWrong ? '--what-if 1:1:1  error CASE_UNKNOWN_CODE' : '');
    },
  );

  it('says so when the case changes and the comparison does not', async () => {
    const { out } = await call(['compare', 'week/a.yaml', '--what-if', 'medicines=+metformin'], {
      'week/a.yaml': example,
    });
    expect(out).toBe('QB-0755  what if\n  medicines  +metformin\n\nNothing changes in the comparison.\n');
  });

  it('says what is wrong with a case', async () => {
    const { code, err } = await call(['compare', 'week/a.yaml'], {
      'week/a.yaml': example.replace('surgeon: ', 'surgeon: no'),
    });
    expect(code).toBe(3);
    expect(err).toContain('CASE_UNKNOWN_CODE');
  });
});

describe('plainleaf check', () => {
  it('finds a case and a clinic profile in order, and writes nothing', async () => {
    const { code, out, written } = await call(['check', 'week/a.yaml', 'week/clinic.yaml'], {
      'week/a.yaml': short,
    });
    expect(code).toBe(0);
    expect(out).toMatch(/^week\/clinic\.yaml +in order$/m);
    expect(out).toMatch(/^evidence \d{4}\.\d{2} +in order$/m);
    expect(written).toEqual([]);
  });

  it('finds everything that is wrong in all files at once', async () => {
    const files = {
      'week/a.yaml': short.replace('kg', 'st'),
      'week/other.yaml': clinic.replace('paper: letter', 'paper: legal'),
    };
    const { code, out, err } = await call(
      ['check', 'week/a.yaml', 'week/other.yaml', 'week/none.yaml'],
      files,
    );
    expect(code).toBe(3);
    expect(out).toMatch(/^week\/a\.yaml +1 error/m);
    expect(out).toMatch(/^week\/other\.yaml +1 error/m);
    expect(out).toMatch(/^week\/none\.yaml +1 error/m);
    for (const said of ['CASE_BAD_UNIT', 'week/other.yaml:', 'FILE_NOT_FOUND']) expect(err).toContain(said);
  });

  it('tells machines the same', async () => {
    const { code, out } = await call(['check', 'week/none.yaml', '--json']);
    expect(code).toBe(2);
    expect(JSON.parse(out)).toMatchObject({
      checked: [{}, {}, { what: 'week/none.yaml', diagnostics: [{ code: 'FILE_NOT_FOUND' }] }],
    });
  });
});

describe('plainleaf make', () => {
  it('says where the packet is and what to know about it', async () => {
    const { code, out, written } = await call(['make', 'week/a.yaml'], { 'week/a.yaml': short });
    expect(code).toBe(0);
    expect(out).toMatch(
      /^QB-0755 +en +\d+ pages +example +out\/QB-0755\/en\/packet\.pdf\n\n1 packet made\.$/m,
    );
    expect(written).toEqual(['out/QB-0755/en/packet.pdf', 'out/QB-0755/en/packet.json']);
  });

  it('says so when the clinic profile is not found, and which option names it', async () => {
    const { code, err } = await call(['make', 'month/far/away/a.yaml'], { 'month/far/away/a.yaml': short });
    expect(code).toBe(2);
    expect(err).toContain('--clinic FILE');
  });
});

describe('plainleaf batch', () => {
  it('refuses a folder without cases', async () => {
    const { code, err } = await call(['batch', 'week']);
    expect(code).toBe(2);
    expect(err).toContain('the folder week holds no case');
  });

  it('counts warnings instead of printing those of forty cases', async () => {
    const { code, out, err } = await call(['batch', 'week'], { 'week/a.yaml': short });
    expect(code).toBe(0);
    expect(out).toContain('1 packet made.');
    expect(err.trim()).toMatch(/^\d+ warnings?; plainleaf check FILE shows those of a case\.$/);
  });
});
