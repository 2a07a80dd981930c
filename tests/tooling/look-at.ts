/**
 * Paints hand-made documents with every type of block, for looking: `npx tsx tests/tooling/look-at.ts [folder]`.
 * Writes look.pdf and, where pdftoppm is installed, pages in colour and in grey at 76 dpi.
 */
import { execFileSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { renderPdf } from '../../src/render/index.ts';
import { careTrees, turnedCareTrees } from '../helpers/sample-care-documents.ts';
import { sampleTrees } from '../helpers/sample-documents.ts';

const folder = process.argv[2] ?? 'out/look';
mkdirSync(folder, { recursive: true });
const documents = [...sampleTrees, ...careTrees, ...turnedCareTrees];
const rendered = await renderPdf(
  { caseReference: 'LW-2207', language: 'en', title: 'Sample', author: 'Larkmoor', documents },
  { createdOn: '2026-11-25', producer: 'plainleaf', attachments: [] },
);
if (!rendered.ok)
  throw new Error(rendered.diagnostics.map(({ code, message }) => `${code}: ${message}`).join('\n'));
const file = join(folder, 'look.pdf');
writeFileSync(file, rendered.value.pdf);
execFileSync('pdftoppm', ['-r', '76', '-png', file, join(folder, 'page')]);
execFileSync('pdftoppm', ['-r', '76', '-gray', '-png', file, join(folder, 'grey')]);
console.log(`${rendered.value.pages.length} pages in ${folder}`);
