import { beforeAll, describe, expect, it } from 'vitest';
import { clearBody } from '../../../src/render/clear-body.ts';
import { loadFonts } from '../../../src/render/fonts.ts';
import { pageFurniture } from '../../../src/render/furniture.tsx';
import { pageGeometry } from '../../../src/render/geometry.ts';
import { setGalleys } from '../../../src/render/set-galley.ts';
import type { DocumentTree } from '../../../src/model/document.ts';
import { paragraph, smallTree, words } from '../../helpers/small-tree.ts';

const tree = smallTree([paragraph('a:1', [words('Words.')])]);

async function bodyOf(furniture: Partial<DocumentTree['furniture']>) {
  const changed = { ...tree, furniture: { ...tree.furniture, ...furniture } };
  const geometry = pageGeometry(changed);
  const { width, height } = geometry;
  const [set = []] = await setGalleys([{ width, height, elements: [pageFurniture(changed, 88, 88)] }]);
  const node = set[0]?.node;
  if (node === undefined) throw new Error('no furniture was set');
  return { before: geometry, after: clearBody(geometry, node) };
}

describe('the body of a page', () => {
  beforeAll(() => loadFonts());

  it('is as large as it may be under a header of one line and over a footer of two', async () => {
    const { before, after } = await bodyOf({});
    expect(after).toEqual(before);
  });

  it('begins lower under a header of two lines', async () => {
    const start = Array.from({ length: 9 }, () => 'Featherstonehaugh')
      .join(' ')
      .slice(0, 60);
    const { before, after } = await bodyOf({
      header: { start, end: `My time at home, ${start.slice(0, 30)}` },
    });
    expect(after.bodyTop).toBeGreaterThan(before.bodyTop);
    expect(after.bodyTop + after.bodyHeight).toBe(before.bodyTop + before.bodyHeight);
  });

  it('ends higher over a footer of four lines or more, and not for the edges of a draft', async () => {
    const call = 'Questions? Call +44 (0)20 7946 0991 / 12. At night call +44 (0)20 7946 0991 / 13. '
      .repeat(3)
      .trim();
    const { before, after } = await bodyOf({ footer: { ...tree.furniture.footer, call } });
    expect(after.bodyHeight).toBeLessThan(before.bodyHeight);
    expect(after.bodyTop).toBe(before.bodyTop);
    const draft = await bodyOf({ draftEdge: 'Draft' });
    expect(draft.after).toEqual(draft.before);
  });
});
