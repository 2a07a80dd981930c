// Source: poppler (https://poppler.freedesktop.org), pdftoppm as installed on the machine that runs the test: the pages
// as a printer in black and white would lay them down, at a resolution below that of any printer.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { renderPdf } from '../../src/render/index.ts';
import { calendarOf } from '../helpers/sample-care-documents.ts';
import { popplerAvailable } from '../helpers/second-readers.ts';
import { smallTree } from '../helpers/small-tree.ts';

/** Dots per inch; the worst printers have 300. */
const resolution = 150;

interface Picture {
  readonly width: number;
  readonly pixels: Uint8Array;
}

async function pictureOf(): Promise<Picture> {
  // Five whole weeks with a stage each, from the top of the body: a head of 20, then rows of 77 with a ribbon of 18.
  const calendar = calendarOf({ before: 0, days: 35, begins: [0, 7, 14, 21, 28] });
  const packet = { caseReference: 'X-1', language: 'en', title: 'T', author: 'C' };
  const documents = [smallTree([calendar], { paper: 'letter' })];
  const options = { createdOn: '2026-11-25', producer: 'plainleaf test', attachments: [] };
  const made = await renderPdf({ ...packet, documents }, options);
  if (!made.ok) throw new Error(JSON.stringify(made.diagnostics));
  const folder = mkdtempSync(join(tmpdir(), 'plainleaf-grey-'));
  try {
    const file = join(folder, 'page.pdf');
    writeFileSync(file, made.value.pdf);
    const args = ['-gray', '-r', String(resolution), '-l', '1', file];
    const image = execFileSync('pdftoppm', args, { maxBuffer: 1 << 24 });
    const [, width = '', height = ''] = /^P5\s(\d+)\s(\d+)\s255\s/.exec(image.toString('latin1')) ?? [];
    return { width: Number(width), pixels: image.subarray(image.length - Number(width) * Number(height)) };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Greys inside the ribbon of a week, clear of its label and its edges. */
function greysOf({ width, pixels }: Picture, week: number): readonly number[] {
  const at = (points: number): number => Math.round((points * resolution) / 72);
  const foot = 60 + 20 + 77 * (week + 1);
  const [top, bottom] = [at(foot - 16), at(foot - 2)];
  const [left, right] = [at(60 + 250), at(60 + 480)];
  return Array.from({ length: bottom - top }, (_, row) => [
    ...pixels.subarray((top + row) * width + left, (top + row) * width + right),
  ]).flat();
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function spreadOf(values: readonly number[]): number {
  const middle = mean(values);
  return Math.sqrt(mean(values.map((value) => (value - middle) ** 2)));
}

describe.skipIf(!popplerAvailable())('the ribbon of diet stages on a page in grey', () => {
  it('keeps its lines and dots seen as such, ever darker; the last two are even, and as far apart', async () => {
    const page = await pictureOf();
    const ribbons = [0, 1, 2, 3, 4].map((week) => greysOf(page, week));
    const [dots = 0, lines = 0, slant = 0, light = 0, mid = 0] = ribbons.map(mean);
    for (const step of [dots - lines, lines - slant, light - mid]) expect(step).toBeGreaterThan(10);
    const unevenness = ribbons.map(spreadOf);
    expect(Math.min(...unevenness.slice(0, 3))).toBeGreaterThan(20);
    expect(Math.max(...unevenness.slice(3))).toBeLessThan(2);
  });
});
