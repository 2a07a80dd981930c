import { beforeAll, describe, expect, it } from 'vitest';
import { loadFonts } from '../../../src/render/fonts.ts';
import { pageFurniture } from '../../../src/render/furniture.tsx';
import { pageGeometry } from '../../../src/render/geometry.ts';
import { childNodes } from '../../../src/render/layout-node.ts';
import type { SetNode } from '../../../src/render/layout-node.ts';
import { setGalleys } from '../../../src/render/set-galley.ts';
import type { DocumentTree } from '../../../src/model/document.ts';
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

/** Top and foot of the words around the body; what is turned stands at the edges of the paper, beside the text. */
function bandsIn(node: SetNode, above: number): readonly { readonly top: number; readonly bottom: number }[] {
  const top = above + node.box.top;
  if (node.style['transform'] !== undefined) return [];
  if (node.type === 'TEXT') return [{ top, bottom: top + node.box.height }];
  return childNodes(node).flatMap((child) => bandsIn(child, top));
}

/** White above and below the body in points, measured on what was really set. */
async function whiteAround(tree: DocumentTree) {
  const { width, height, bodyTop, bodyHeight } = pageGeometry(tree);
  const [set = []] = await setGalleys([{ width, height, elements: [pageFurniture(tree, 88, 88)] }]);
  const bands = set[0] === undefined ? [] : bandsIn(set[0].node, 0);
  const above = bands.filter(({ bottom }) => bottom < height / 2).map(({ bottom }) => bodyTop - bottom);
  const below = bands.filter(({ top }) => top > height / 2).map(({ top }) => top - bodyTop - bodyHeight);
  return { above: Math.min(...above), below: Math.min(...below) };
}

describe('the body of a page, in either edition and on either paper', () => {
  const name = 'Featherstonehaugh-Cholmondeley-Marjoribanks of Upper Wexcombe and Saint Osyth';
  const call = 'Questions? Call +44 (0)20 7946 0991 / 12. At night call +44 (0)20 7946 0991 / 13. '.repeat(3);
  const { header, footer } = questionsTree.furniture;
  const long: Readonly<Record<string, Partial<DocumentTree['furniture']>>> = {
    'as they usually are': {},
    'with a long name': { header: { start: name, end: `${header.end}, ${header.end}` } },
    'with many numbers to call': { footer: { ...footer, call: call.trim() } },
    'of a draft': { draftEdges: ['Draft', 'Draft'] },
  };
  const trees = Object.entries(long).flatMap(([what, changes]) =>
    ([{}, { edition: 'large-print' }] as const).flatMap((edition) =>
      (['letter', 'a4'] as const).map((paper) => ({
        what,
        edition: 'edition' in edition ? 'large print' : 'as usual',
        tree: { ...questionsTree, ...edition, paper, furniture: { ...questionsTree.furniture, ...changes } },
      })),
    ),
  );

  it.each(trees)('keeps its distance from header and footer $what ($edition)', async ({ tree }) => {
    const { above, below } = await whiteAround(tree);
    expect(above).toBeGreaterThanOrEqual(8);
    expect(below).toBeGreaterThanOrEqual(8);
  });
});
