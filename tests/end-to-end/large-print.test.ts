import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { execFile } from 'node:child_process';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

import { readBack } from '../../src/verify/read-back.ts';
import { makeExample } from '../helpers/example-packets.ts';
import { validateBytes, validatorAvailable } from '../helpers/validate-pdf.ts';

const program = resolve('src/cli/plainleaf.mjs');
const date = '2026-11-25';
const asksForIt = (text: string): string => text.replace(/^patient:$/m, 'patient:\n  large_print: true');

let folder: string;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'plainleaf-large-'));
  writeFileSync(join(folder, 'clinic.yaml'), readFileSync('examples/clinic.yaml', 'utf8'));
  const text = readFileSync('examples/cases/QB-1141.yaml', 'utf8');
  writeFileSync(join(folder, 'case.yaml'), text);
  const make = async (...more: string[]): Promise<unknown> =>
    promisify(execFile)(
      process.execPath,
      [program, 'make', 'case.yaml', '--language', 'en', '--date', date, ...more],
      { cwd: folder },
    );
  await make();
  await make('--large-print');
}, 120_000);
afterAll(() => {
  rmSync(folder, { recursive: true });
});

interface Written {
  readonly file: { readonly name: string };
  readonly provenance: { readonly entity: Readonly<Record<string, Readonly<Record<string, unknown>>>> };
  readonly verification: { readonly passed: boolean; readonly pages: number };
}
const recordOf = (name: string): Written =>
  JSON.parse(readFileSync(join(folder, 'out/QB-1141/en', name), 'utf8')) as Written;
const pdfOf = (name: string): Uint8Array =>
  new Uint8Array(readFileSync(join(folder, 'out/QB-1141/en', name)));
const packetIn = ({ provenance }: Written): unknown =>
  provenance.entity['plainleaf:packet']?.['plainleaf:edition'];

describe('a packet in large print', () => {
  it('stands beside the other edition under a name of its own, read back and found whole', () => {
    expect(readdirSync(join(folder, 'out/QB-1141/en')).sort()).toEqual([
      'packet-large-print.json',
      'packet-large-print.pdf',
      'packet.json',
      'packet.pdf',
    ]);
    const [standard, large] = [recordOf('packet.json'), recordOf('packet-large-print.json')];
    expect(large.verification).toMatchObject({ passed: true });
    expect(large.verification.pages).toBeGreaterThan(standard.verification.pages);
  });

  it('is told from the other edition by its record and on every page', async () => {
    const [standard, large] = [recordOf('packet.json'), recordOf('packet-large-print.json')];
    expect([packetIn(standard), packetIn(large)]).toEqual(['standard', 'large-print']);
    const ids = ({ provenance }: Written): readonly string[] =>
      Object.keys(provenance.entity).filter((id) => id.startsWith('document:'));
    expect(ids(large)).toHaveLength(5);
    for (const id of ids(large)) expect(id).toMatch(/^document:QB-1141-en-[1-5]-large-[0-9a-f]{6}$/);
    expect(ids(standard).filter((id) => id.includes('large'))).toEqual([]);
    const pages = (await readBack(pdfOf('packet-large-print.pdf')))?.pages ?? [];
    expect(pages).toHaveLength(large.verification.pages);
    for (const page of pages) expect(page).toMatch(/QB-1141-en-[1-5]-large-[0-9a-f]{6}/);
  });

  it('is made the same, byte for byte, where the case asks for it', async () => {
    const asked = await makeExample('QB-1141', 'es', asksForIt);
    expect(asked.edition).toBe('large-print');
    const again = await makeExample('QB-1141', 'es', asksForIt);
    expect(Buffer.from(asked.pdf).equals(Buffer.from(again.pdf))).toBe(true);
  });

  it.skipIf(!validatorAvailable())(
    'passes PDF/UA-1 and PDF/A-3a, with pictures and with fields to sign',
    async () => {
      const pdfs = [
        { name: 'home', bytes: pdfOf('packet-large-print.pdf') },
        { name: 'choices', bytes: (await makeExample('QB-1041', 'es', asksForIt)).pdf },
        { name: 'consent', bytes: (await makeExample('QB-1128', 'en', asksForIt)).pdf },
      ];
      for (const flavour of ['ua1', '3a'] as const) {
        const verdicts = await validateBytes(pdfs, flavour);
        expect(verdicts.map(({ passed, failedRules }) => ({ passed, failedRules }))).toEqual(
          pdfs.map(() => ({ passed: true, failedRules: [] })),
        );
      }
    },
    300_000,
  );
});
