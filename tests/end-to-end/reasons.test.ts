import { execFile } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

import type { ReasonCheck } from '../../src/model/reason-check.ts';
import { readBack } from '../../src/verify/read-back.ts';

const program = resolve('src/cli/plainleaf.mjs');
const date = '2026-11-25';
/** A surgeon who leans to a bypass for diabetes, and for reflux that this person does not have. */
const source = readFileSync('examples/cases/QB-1041.yaml', 'utf8')
  .replace(/^documents:.*$/m, 'documents: [comparison, clinician-sheet]')
  .replace(/^languages:.*$/m, 'languages: [en]')
  .replace(
    '- code: diabetes-better\n      - text:',
    '- code: diabetes-better\n      - code: reflux-better\n      - text:',
  );

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'plainleaf-'));
  writeFileSync(join(folder, 'case.yaml'), source);
  writeFileSync(join(folder, 'clinic.yaml'), readFileSync('examples/clinic.yaml'));
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

async function plainleaf(...args: string[]): Promise<string> {
  return new Promise((ended, failed) => {
    execFile(
      process.execPath,
      [program, ...args, '--date', date],
      { cwd: folder, maxBuffer: 1e8 },
      (error, out, err) => {
        if (error === null) ended(out);
        else failed(new Error(err));
      },
    );
  });
}

describe("the surgeon's coded reasons", () => {
  it('are checked on the terminal and for machines alike', async () => {
    expect(source).toContain('- code: reflux-better');
    const said = await plainleaf('compare', 'case.yaml');
    const { reasons } = JSON.parse(await plainleaf('compare', 'case.yaml', '--json')) as {
      reasons: ReasonCheck[];
    };
    expect(reasons.map(({ code, verdict }) => [code, verdict])).toEqual([
      ['diabetes-better', 'supported'],
      ['reflux-better', 'contradicted'],
    ]);
    const [first] = reasons;
    expect(first?.records.length).toBeGreaterThan(0);
    expect(said).toMatch(
      /^ {2}for bypass {2}diabetes-better +supported +more than no-operation \(diabetes-remission, /m,
    );
    expect(said).toMatch(/^ {2}for bypass {2}reflux-better +contradicted +the case has no such condition$/m);
    for (const record of first?.records ?? []) expect(said).toContain(record);
  });

  it('change with the case that is asked about', async () => {
    const said = await plainleaf('compare', 'case.yaml', '--what-if', '+reflux');
    expect(said).toMatch(
      /^ {2}for bypass {2}reflux-better +contradicted → supported +held up as better by reflux-sleeve$/m,
    );
    expect(said).not.toMatch(/^ {2}for bypass {2}diabetes-better/m);
  });

  it('are flagged on the clinician sheet, and on no page for the patient', async () => {
    await plainleaf('make', 'case.yaml', '--out', 'out');
    const file = await readBack(new Uint8Array(readFileSync(join(folder, 'out/QB-1041/en/packet.pdf'))));
    const pages = file?.pages ?? [];
    const sheet = pages.filter((page) => page.includes('not for the patient'));
    const patient = pages.filter((page) => !sheet.includes(page));
    expect([sheet.length > 0, patient.length > 0]).toEqual([true, true]);
    const told = sheet.join(' ').replace(/\s+/g, ' ');
    expect(told).toContain('1 reason is not borne out, or cannot be told.');
    expect(told).toMatch(/Your reflux may get better\. contradicted The case has no such condition\./);
    expect(patient.join(' ').replace(/\s+/g, ' ')).toContain('Your reflux may get better.');
    expect(patient.filter((page) => /contradicted|borne out/.test(page))).toEqual([]);
  });
});
