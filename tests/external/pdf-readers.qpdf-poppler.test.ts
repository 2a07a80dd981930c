// Sources: qpdf (https://qpdf.sourceforge.io) and poppler (https://poppler.freedesktop.org), the programs installed on
// the machine that runs the test. Neither shares code with the program under test.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { loadFonts } from '../../src/render/fonts.ts';
import { textWidth } from '../../src/render/measure-text.ts';
import { renderPacket } from '../../src/render/render-packet.ts';
import { sampleAppearance, samplePacket } from '../helpers/sample-units.tsx';
import {
  checkWithQpdf,
  objectsByQpdf,
  popplerAvailable,
  qpdfAvailable,
  readWithPoppler,
  structureByPoppler,
} from '../helpers/second-readers.ts';

const provenance = '{"entity":{"case":"X-1"}}';
let pdf = new Uint8Array();

function onDisk<T>(use: (file: string, folder: string) => T): T {
  const folder = mkdtempSync(join(tmpdir(), 'plainleaf-external-'));
  try {
    writeFileSync(join(folder, 'packet.pdf'), pdf);
    return use(join(folder, 'packet.pdf'), folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

beforeAll(async () => {
  await loadFonts();
  const attachments = [
    {
      name: 'provenance.json',
      mediaType: 'application/json',
      description: 'Herkunft für später',
      content: new TextEncoder().encode(provenance),
    },
  ];
  const options = { createdOn: '2026-11-25', producer: 'plainleaf test', attachments };
  const result = await renderPacket(samplePacket(), options, sampleAppearance([5, 9]));
  if (!result.ok) throw new Error(JSON.stringify(result.diagnostics));
  pdf = new Uint8Array(result.value.pdf);
});

describe.skipIf(!qpdfAvailable())('qpdf', () => {
  it('finds the file sound', () => {
    expect(checkWithQpdf(pdf)).toBe('');
  });

  it('finds every page in structure order, everything of one day, and the attached file', () => {
    const objects = objectsByQpdf(pdf);
    expect(objects.match(/"\/Tabs": "\/S"/g)).toHaveLength(3);
    expect(new Set(objects.match(/D:\d{14}Z/g))).toEqual(new Set(['D:20261125000000Z']));
    expect(objects).toContain('"/AFRelationship": "/Data"');
    expect(objects).toMatch(/"\/MarkInfo"/);
  });

  it('finds a bookmark for the document and for each topic, pointing at its place', () => {
    const objects = objectsByQpdf(pdf);
    const titles = [...objects.matchAll(/"\/Title": "u:((?:My|Question).*)"/g)].map(([, title]) => title);
    expect(titles).toEqual(['My choices', 'Question 1 & what it asks?', 'Question 2 & what it asks?']);
    const targets = [...objects.matchAll(/"\/XYZ",\s+(-?[\d.]+),\s+([\d.]+),/g)];
    expect(targets.map(([, left]) => left)).toEqual(['0', '0', '0']);
    expect(targets.map(([, , bottom]) => Number(bottom)).every((bottom) => bottom > 0 && bottom <= 792)).toBe(
      true,
    );
  });

  it('gives the attached file back as it went in', () => {
    const content = onDisk((file) =>
      execFileSync('qpdf', ['--show-attachment=provenance.json', file], { encoding: 'utf8' }),
    );
    expect(content).toBe(provenance);
  });
});

describe.skipIf(!popplerAvailable())('poppler', () => {
  it('reads the body in tree order, then the repeated head, then the footer', () => {
    const pages = readWithPoppler(pdf).map((page) => page.split('\n').filter((line) => line !== ''));
    expect(pages[0]?.[0]).toBe('My choices');
    expect(pages.map((page) => page.at(-1))).toEqual(
      [1, 2, 3].map((page) => `Page ${page} of 3, Call 555-0100`),
    );
    expect(pages[2]?.at(-2)).toBe('Question 2, continued');
    expect(pages[1]?.[0]).toBe('Question 2 & what it asks?');
  });

  it('finds the title as it was given, though the XML has it escaped', () => {
    const printed = onDisk((file) => execFileSync('pdfinfo', [file], { encoding: 'utf8' }));
    expect(printed).toMatch(/Title: +Choices <for> "you" & yours/);
    expect(printed).toMatch(/Author: +Río & Sons Clinic/);
    expect(printed).toMatch(/Tagged: +yes/);
    const xml = onDisk((file) => execFileSync('pdfinfo', ['-meta', file], { encoding: 'utf8' }));
    expect(xml).toContain('Choices &lt;for&gt; "you" &amp; yours');
  });

  it('finds every face embedded, and no other', () => {
    const fonts = onDisk((file) => execFileSync('pdffonts', [file], { encoding: 'utf8' }))
      .split('\n')
      .slice(2, -1);
    expect(
      fonts.map((line) => line.split(/\s+/)[0]?.slice(7)).sort((a, b) => (a ?? '').localeCompare(b ?? '')),
    ).toEqual(['FiraSans-Bold', 'FiraSans-Regular', 'FiraSans-SemiBold']);
    expect(fonts.every((line) => / yes yes yes /.test(line))).toBe(true);
  });

  it('finds in the structure what is content, and nothing of what is repeated', () => {
    const structure = structureByPoppler(pdf);
    expect(structure.match(/^ +H2/gm)).toHaveLength(2);
    expect(structure.match(/^ +Table/gm)).toHaveLength(2);
    expect(structure.match(/^ +TR/gm)).toHaveLength(14);
    expect(structure.match(/^ +Figure/gm)).toHaveLength(14);
    expect(structure).not.toMatch(/continued|Page \d/);
  });

  it('shows the pale column behind the pictures, and white beside it', () => {
    const image = onDisk((file) => execFileSync('pdftoppm', ['-gray', '-r', '72', '-l', '1', file]));
    const [, width = '', height = ''] = /^P5\s(\d+)\s(\d+)\s255\s/.exec(image.toString('latin1')) ?? [];
    const pixels = image.subarray(image.length - Number(width) * Number(height));
    const row = 200 * Number(width);
    // #F4F5EE is grey 244 or 245 by the luma of Rec. 601; the column reaches from 176 to 382.
    expect(
      [pixels[row + 379], pixels[row + 385]].map((grey) => (grey === undefined ? 0 : Math.round(grey / 5))),
    ).toEqual([49, 51]);
  });

  it('measures words as wide as they were measured here', () => {
    const page = onDisk((file, folder) => {
      execFileSync('pdftotext', ['-bbox', '-l', '1', file, join(folder, 'words.html')]);
      return readFileSync(join(folder, 'words.html'), 'utf8');
    });
    const words = [...page.matchAll(/xMin="([\d.]+)".*?xMax="([\d.]+)".*?>([^<]+)<\/word>/g)];
    const regular = words.filter(([, , , text]) => ['people', 'topic', 'más', 'menos'].includes(text ?? ''));
    expect(regular.length).toBeGreaterThan(10);
    for (const [, left, right, text] of regular) {
      expect(Number(right) - Number(left)).toBeCloseTo(textWidth(text ?? '', { weight: 400, size: 13 }), 1);
    }
  });
});
