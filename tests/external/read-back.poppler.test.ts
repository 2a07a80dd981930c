// Source: poppler (https://poppler.freedesktop.org), pdftotext as installed on the machine that runs the test. The
// release gate reads with pdf-parse; here a second reader, which shares no code with it, has to find the same.
import { describe, expect, it } from 'vitest';

import { readDocument } from '../../src/verify/read-document.ts';
import { printExample } from '../helpers/printed-example.ts';
import { popplerAvailable, readWithPoppler } from '../helpers/second-readers.ts';

describe.skipIf(!popplerAvailable())('poppler', () => {
  it.each([
    ['comparison', 'en'],
    ['comparison', 'es'],
    ['clinician-sheet', 'es'],
  ] as const)('finds every text of the %s in %s in its place, and nothing else', async (kind, language) => {
    const { tree, rendered } = await printExample('QB-1102', kind, language);
    const texts = readWithPoppler(rendered.pdf);
    const pages = rendered.pages.map((place, index) => ({
      ...place,
      number: index + 1,
      text: texts[index] ?? '',
    }));
    const { lost, leftovers, absentFurniture } = readDocument(tree, pages);
    expect({ lost: lost.map(({ text }) => text.text), leftovers, absentFurniture }).toEqual({
      lost: [],
      leftovers: [],
      absentFurniture: [],
    });
  });
});
