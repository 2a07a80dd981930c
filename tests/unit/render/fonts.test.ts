import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, it } from 'vitest';
import { digestFonts, faceOf, loadFonts, loadTypefaces } from '../../../src/render/fonts.ts';
import { typefacesFor } from '../../../src/render/shaping/typefaces.ts';
import { textWidth } from '../../../src/render/measure-text.ts';

const folder = fileURLToPath(
  new URL('../', import.meta.resolve('@expo-google-fonts/fira-sans/400Regular/FiraSans_400Regular.ttf')),
);

describe('fonts', () => {
  beforeAll(() => loadFonts());

  it('are the three static faces that pages are set in', () => {
    expect(([400, 600, 700] as const).map((weight) => faceOf(weight).postscriptName)).toEqual([
      'FiraSans-Regular',
      'FiraSans-SemiBold',
      'FiraSans-Bold',
    ]);
  });

  it('have a digest over the bytes of their files', () => {
    const files = [
      '400Regular/FiraSans_400Regular.ttf',
      '600SemiBold/FiraSans_600SemiBold.ttf',
      '700Bold/FiraSans_700Bold.ttf',
    ];
    const hash = createHash('sha256');
    for (const file of files) hash.update(readFileSync(`${folder}/${file}`));
    expect(digestFonts()).toBe(hash.digest('hex'));
  });

  it('are there for each of several packets that ask for them at once', async () => {
    const hindi = typefacesFor('वज़न');
    const asked = [1, 2, 3].map(async () => {
      await loadTypefaces(hindi);
      return hindi.map((typeface) => faceOf(400, typeface).postscriptName);
    });
    const [first, ...others] = await Promise.all(asked);
    expect(first).toContain('NotoSansDevanagari-Regular');
    expect(others).toEqual([first, first]);
  });

  it('load from another folder, and say when a file is not there', async () => {
    await expect(loadFonts(tmpdir())).rejects.toMatchObject({ code: 'ENOENT' });
    await loadFonts(folder);
    expect(faceOf(400).postscriptName).toBe('FiraSans-Regular');
  });

  it('give widths from the advance widths of the face, with kerning and ligatures', () => {
    // Advance widths and kerning as in the tables of the face, thousandths of the size (hmtx, GPOS, read with fontkit).
    expect(textWidth(' ', { weight: 400, size: 1000 })).toBe(265);
    expect(textWidth('AV', { weight: 400, size: 1000 })).toBeLessThan(
      textWidth('A', { weight: 400, size: 1000 }) + textWidth('V', { weight: 400, size: 1000 }),
    );
    expect(textWidth('23 lb', { weight: 700, size: 26 })).toBeCloseTo(
      2 * textWidth('23 lb', { weight: 700, size: 13 }),
      9,
    );
  });
});
