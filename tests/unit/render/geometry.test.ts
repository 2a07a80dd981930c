import { beforeAll, describe, expect, it } from 'vitest';
import { loadFonts } from '../../../src/render/fonts.ts';
import { pageGeometry } from '../../../src/render/geometry.ts';
import { clinicianTree, questionsTree } from '../../helpers/sample-documents.ts';

beforeAll(async () => {
  await loadFonts();
});

describe('pageGeometry', () => {
  it('keeps one set of columns for both papers: only height and side margins change', () => {
    const letter = pageGeometry({ ...questionsTree, paper: 'letter' });
    const a4 = pageGeometry({ ...questionsTree, paper: 'a4' });
    expect(letter).toEqual({
      width: 612,
      height: 792,
      margin: 60,
      contentWidth: 492,
      bodyTop: 60,
      bodyHeight: 650,
    });
    expect(a4).toMatchObject({ width: 595.28, height: 841.89, contentWidth: 492, bodyTop: 60 });
    expect(a4.margin).toBeCloseTo(51.64, 6);
    expect(a4.bodyHeight).toBeCloseTo(699.89, 6);
  });

  it('gives the clinician sheet narrower margins', () => {
    expect(pageGeometry({ ...clinicianTree, paper: 'letter' })).toMatchObject({
      margin: 40,
      contentWidth: 532,
    });
  });
});
