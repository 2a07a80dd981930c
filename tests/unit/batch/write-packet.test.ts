import { describe, expect, it } from 'vitest';

import { writePacket } from '../../../src/batch/write-packet.ts';
import { canonicalJson, sha256 } from '../../../src/io/digest.ts';
import { recordProvenance } from '../../../src/provenance/index.ts';
import { createMemoryWorkspace } from '../../helpers/memory-workspace.ts';

const pdf = new TextEncoder().encode('%PDF-1.7 invented');
const provenance = recordProvenance({
  packet: { caseReference: 'PE-0417', language: 'es', title: 't', author: 'a', documents: [] },
  documentIds: [],
  state: 'draft',
  edition: 'standard',
  date: '2026-11-25',
  digests: { case: '1', clinic: '2', templates: '3', words: '4', fonts: '5' },
  review: { digest: '8', state: 'unreviewed', reviews: [] },
  evidence: { version: '2026.11', date: '2026-11-25', nextReview: '2027-11-25', digest: '6' },
  program: { version: '0.1.0', lock: '7' },
});
const verification = {
  passed: true,
  findings: [],
  pages: 7,
  figures: 3,
  statements: 12,
  cautions: 2,
  phones: 21,
};
const packet = {
  name: 'packet',
  caseReference: 'PE-0417',
  language: 'es',
  state: 'draft',
  openPoints: [],
  edition: 'standard',
  pdf,
  provenance,
  verification,
} as const;

describe('a finished packet on the disk', () => {
  it('is named after its document where it holds but one', async () => {
    const workspace = createMemoryWorkspace();
    const written = await writePacket(workspace, 'out', { ...packet, name: 'warning-signs' });
    expect([written.pdf, written.record]).toEqual([
      'out/PE-0417/es/warning-signs.pdf',
      'out/PE-0417/es/warning-signs.json',
    ]);
  });

  it('stands under its case and language, with its record beside it', async () => {
    const workspace = createMemoryWorkspace();
    expect(await writePacket(workspace, 'out', packet)).toEqual({
      pdf: 'out/PE-0417/es/packet.pdf',
      record: 'out/PE-0417/es/packet.json',
      sha256: sha256(pdf),
    });
    expect([...workspace.files.keys()]).toEqual(['out/PE-0417/es/packet.pdf', 'out/PE-0417/es/packet.json']);
    expect(workspace.files.get('out/PE-0417/es/packet.pdf')).toEqual(pdf);
  });

  it('has its HTML edition beside it, named in the record with its digest', async () => {
    const workspace = createMemoryWorkspace();
    const bytes = new TextEncoder().encode('<!doctype html>');
    const html = { bytes, sha256: sha256(bytes), verification };
    const written = await writePacket(workspace, 'out', { ...packet, html });
    expect(written.html).toBe('out/PE-0417/es/packet.html');
    expect(workspace.files.get('out/PE-0417/es/packet.html')).toEqual(bytes);
    const record: unknown = JSON.parse(await workspace.readText('out/PE-0417/es/packet.json'));
    expect(record).toMatchObject({
      html: { name: 'packet.html', bytes: bytes.length, sha256: sha256(bytes) },
      htmlVerification: verification,
    });
  });

  it('has a name of its own in large print, and so never overwrites the other edition', async () => {
    const workspace = createMemoryWorkspace();
    await writePacket(workspace, 'out', packet);
    await writePacket(workspace, 'out', { ...packet, edition: 'large-print' });
    await writePacket(workspace, 'out', { ...packet, edition: 'large-print', name: 'warning-signs' });
    expect([...workspace.files.keys()].filter((name) => name.endsWith('.pdf'))).toEqual([
      'out/PE-0417/es/packet.pdf',
      'out/PE-0417/es/packet-large-print.pdf',
      'out/PE-0417/es/warning-signs-large-print.pdf',
    ]);
    const record: unknown = JSON.parse(await workspace.readText('out/PE-0417/es/packet-large-print.json'));
    expect(record).toMatchObject({ file: { name: 'packet-large-print.pdf' } });
  });

  it('is described by digest, pages, provenance and the report of its check', async () => {
    const workspace = createMemoryWorkspace();
    await writePacket(workspace, 'out', packet);
    const record: unknown = JSON.parse(await workspace.readText('out/PE-0417/es/packet.json'));
    expect(record).toMatchObject({
      file: { name: 'packet.pdf', bytes: pdf.length, pages: 7, sha256: sha256(pdf) },
      verification,
    });
    expect(canonicalJson((record as { provenance: unknown }).provenance)).toBe(canonicalJson(provenance));
  });
});
