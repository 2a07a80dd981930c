// Sources: pdf.js (through pdf-parse) and poppler (https://poppler.freedesktop.org), two readers of PDF that share no code
// with plainleaf's own shaping nor with each other.
import { beforeAll, describe, expect, it } from 'vitest';

import { comparisonFor } from '../../src/verify/normalize-text.ts';
import { readBack } from '../../src/verify/read-back.ts';
import { loadSampleFonts, paintSamples, scriptSamples } from '../helpers/script-samples.tsx';
import {
  checkWithQpdf,
  popplerAvailable,
  qpdfAvailable,
  readWithPoppler,
} from '../helpers/second-readers.ts';

let pdf = new Uint8Array();
let byPdfJs = '';
let byPoppler = '';

/** Poppler takes a vowel sign that is set over an Arabic letter for the beginning of a word, so it is shown none. */
const unsigned = (text: string): string => text.replace(/(?<=\p{Script=Arabic})\p{M}/gu, '');

beforeAll(async () => {
  await loadSampleFonts();
  pdf = new Uint8Array(await paintSamples());
  const plain = scriptSamples.map((sample) => ({ ...sample, text: unsigned(sample.text) }));
  if (popplerAvailable()) byPoppler = readWithPoppler(await paintSamples(plain)).join(' ');
  byPdfJs = (await readBack(pdf))?.pages.join(' ') ?? '';
});

describe('text in the scripts of packets, read back', () => {
  it.each(scriptSamples)('comes out of pdf.js whole and in order: $language', (sample) => {
    const compact = comparisonFor(sample);
    expect(compact(byPdfJs)).toContain(compact(sample.text));
  });

  it.skipIf(!popplerAvailable()).each(scriptSamples)(
    'comes out of poppler whole and in order: $language',
    (sample) => {
      const compact = comparisonFor(sample);
      expect(compact(byPoppler)).toContain(compact(unsigned(sample.text)));
    },
  );

  it.skipIf(!qpdfAvailable())('stands in a sound file', () => {
    expect(checkWithQpdf(pdf)).toBe('');
  });
});
