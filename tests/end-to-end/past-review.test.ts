import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';

import { main } from '../../src/cli/main.ts';
import { createTerminal } from '../../src/cli/terminal.ts';
import { readBack } from '../../src/verify/read-back.ts';
import { createOverlay } from '../helpers/overlay-workspace.ts';

// Figures of plication are read again every six months: made later, a packet says that this has not been done.

/** A case that is not an example, so that its packet is a draft. */
const asked = readFileSync('examples/cases/QB-1041.yaml', 'utf8')
  .replace('example: true\n', '')
  .replace('languages: [en, es]', 'languages: [en]')
  .replace(/^documents: .*$/m, 'documents: [questions]')
  .replace(/^ {2}options: .*$/m, '  options: [plication, bypass, no-operation]');

interface Made {
  readonly code: number;
  readonly err: string;
  readonly text: string;
}

async function makeOn(date: string): Promise<Made> {
  const clinic = readFileSync('examples/clinic.yaml', 'utf8');
  const { workspace, memory } = createOverlay({ 'week/case.yaml': asked, 'week/clinic.yaml': clinic });
  const printed = { out: '', err: '' };
  const terminal = createTerminal({
    out: { write: (text) => (printed.out += String(text)) !== '' },
    err: { write: (text) => (printed.err += String(text)) !== '' },
  });
  const args = ['make', 'week/case.yaml', '--out', 'out', '--date', date];
  const code = await main(args, { workspace, terminal, root: '.' });
  const pdf = memory.files.get('out/QB-1041/en/packet.pdf');
  const read = pdf instanceof Uint8Array ? await readBack(pdf) : null;
  return { code, err: printed.err, text: (read?.pages ?? []).join(' ').replace(/\s+/g, ' ') };
}

describe('a packet made after the day by which some of its sources were to be read again', () => {
  let inTime: Made;
  let late: Made;

  beforeAll(async () => {
    inTime = await makeOn('2027-05-25');
    late = await makeOn('2027-05-26');
  });

  it('is made, and the one in time too', () => {
    expect([inTime.code, late.code]).toEqual([0, 0]);
  });

  it('warns of each source, with the day, its figures and how to find where it was read', () => {
    expect(inTime.err).not.toContain('EVIDENCE_PAST_REVIEW');
    expect(late.err).toMatch(
      /^warning EVIDENCE_PAST_REVIEW {2}(\S+)\n {2}\1 was to be read again by 2027-05-25; on it stands plication\.\S+/m,
    );
    expect(late.err).toContain('plainleaf evidence due --by 2027-05-25 says where');
  });

  it('warns of no source that was read in time', () => {
    const warned = [...late.err.matchAll(/on it stands (.*)$/gm)].flatMap(([, ids = '']) => ids.split(', '));
    expect(warned.length).toBeGreaterThan(0);
    expect(warned.filter((id) => !id.startsWith('plication.'))).toEqual([]);
  });

  it('says on the page that this is open, with the number of studies', () => {
    const studies = late.err.match(/EVIDENCE_PAST_REVIEW/g)?.length;
    expect(inTime.text).not.toMatch(/The day to read .* again has passed/);
    expect(late.text).toMatch(
      new RegExp(`The day to read ${String(studies)} (study|studies) again has passed\\.`),
    );
  });
});
