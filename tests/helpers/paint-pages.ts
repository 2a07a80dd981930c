import { createRequire } from 'node:module';
import PDFDocument from 'pdfkit';

import type { PdfAttachment } from '../../src/model/packet.ts';

const font = createRequire(import.meta.url).resolve(
  '@expo-google-fonts/fira-sans/400Regular/FiraSans_400Regular.ttf',
);
const madeOn = new Date('2026-11-25T00:00:00Z');

interface Painting {
  readonly language?: string;
  readonly attachments?: readonly PdfAttachment[];
}

/** A plain PDF with one text a line, without plainleaf's own renderer, so that the reader is judged by itself. */
export async function paintPages(
  pages: readonly (readonly string[])[],
  { language = 'en', attachments = [] }: Painting = {},
): Promise<Uint8Array> {
  const pdf = new PDFDocument({ lang: language, autoFirstPage: false, info: { CreationDate: madeOn } });
  const chunks: Uint8Array[] = [];
  pdf.on('data', (chunk: Uint8Array) => chunks.push(chunk));
  const finished = new Promise((resolve) => pdf.on('end', resolve));
  for (const texts of pages) {
    pdf.addPage({ size: 'A4', margin: 40 }).font(font).fontSize(9);
    for (const text of texts) pdf.text(text, { width: 300 });
  }
  for (const { name, content, mediaType, description } of attachments) {
    pdf.file(Buffer.from(content), {
      name,
      type: mediaType,
      description,
      creationDate: madeOn,
      modifiedDate: madeOn,
    });
  }
  pdf.end();
  await finished;
  return new Uint8Array(Buffer.concat(chunks));
}
