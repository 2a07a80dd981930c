// Source: veraPDF 1.28.2 (https://verapdf.org, GPL-3.0 or MPL-2.0), org.verapdf.apps:greenfield-apps from Maven Central,
// profiles PDF/UA-1 (ISO 14289-1:2014) and PDF/A-3a (ISO 19005-3:2012). It shares no code with the program under test.
import PDFDocument from 'pdfkit';
import { describe, expect, it } from 'vitest';
import { renderPdf } from '../../src/render/index.ts';
import { renderPacket } from '../../src/render/render-packet.ts';
import { careTrees, turnedCareTrees } from '../helpers/sample-care-documents.ts';
import { sampleTrees } from '../helpers/sample-documents.ts';
import { sampleAppearance, samplePacket, sampleTree } from '../helpers/sample-units.tsx';
import { validateBytes, validatorAvailable } from '../helpers/validate-pdf.ts';

const available = validatorAvailable();

async function sample(): Promise<Uint8Array> {
  const attachments = [
    {
      name: 'provenance.json',
      mediaType: 'application/json',
      description: 'Origin',
      content: new TextEncoder().encode('{}'),
    },
  ];
  const documents = [sampleTree(), sampleTree({ paper: 'a4', title: 'Preguntas', language: 'es' })];
  const result = await renderPacket(
    samplePacket(documents),
    { createdOn: '2026-11-25', producer: 'plainleaf test', attachments },
    sampleAppearance([5, 9]),
  );
  if (!result.ok) throw new Error(JSON.stringify(result.diagnostics));
  return result.value.pdf;
}

/** Documents with every type of block, on both papers, from left to right and from right to left. */
async function everyBlock(): Promise<Uint8Array> {
  const documents = [...sampleTrees, ...careTrees, ...turnedCareTrees];
  const packet = { caseReference: 'LW-2207', language: 'en', title: 'Sample', author: 'Larkmoor', documents };
  const options = { createdOn: '2026-11-25', producer: 'plainleaf test', attachments: [] };
  const result = await renderPdf(packet, options);
  if (!result.ok) throw new Error(JSON.stringify(result.diagnostics));
  return result.value.pdf;
}

/** A file that claims nothing and has no structure. */
async function untagged(): Promise<Uint8Array> {
  const pdf = new PDFDocument();
  const chunks: Uint8Array[] = [];
  pdf.on('data', (chunk: Uint8Array) => chunks.push(chunk));
  const ended = new Promise((resolve) => pdf.on('end', resolve));
  pdf.text('text').end();
  await ended;
  return Buffer.concat(chunks);
}

describe.skipIf(!available)('veraPDF', () => {
  it.each(['ua1', '3a'] as const)(
    'passes a packet with several documents and an attachment under %s',
    async (flavour) => {
      expect(await validateBytes([{ name: 'packet', bytes: await sample() }], flavour)).toEqual([
        { file: 'packet', passed: true, failedRules: [] },
      ]);
    },
  );

  it.each(['ua1', '3a'] as const)(
    'passes every type of block in both directions under %s',
    async (flavour) => {
      const bytes = await everyBlock();
      expect(await validateBytes([{ name: 'blocks', bytes }], flavour)).toEqual([
        { file: 'blocks', passed: true, failedRules: [] },
      ]);
    },
    120_000,
  );

  it('fails a file that is not tagged, so that its word counts', async () => {
    const [verdict] = await validateBytes([{ name: 'untagged', bytes: await untagged() }], 'ua1');
    expect(verdict?.passed).toBe(false);
    expect(verdict?.failedRules).toContain('7.1-11');
  });
});
