import { beforeAll, describe, expect, it } from 'vitest';
import type { DocumentTree } from '../../../src/model/document.ts';
import { furnitureTexts } from '../../../src/model/tree-text.ts';
import { expandElement } from '../../../src/render/expand-elements.ts';
import { loadFonts } from '../../../src/render/fonts.ts';
import { edgeRuns } from '../../../src/render/draft-edge.tsx';
import { pageFurniture } from '../../../src/render/furniture.tsx';
import { pageGeometry } from '../../../src/render/geometry.ts';
import { RULE, RULE_GAP } from '../../../src/render/measure-furniture.ts';
import type { SetNode } from '../../../src/render/layout-node.ts';
import { childNodes, textOf } from '../../../src/render/layout-node.ts';
import { setGalleys } from '../../../src/render/set-galley.ts';
import { clinicianTree, furniture, questionsTree, sampleTrees } from '../../helpers/sample-documents.ts';
import { boundsOf, subpaths } from '../../helpers/path-points.ts';

beforeAll(async () => {
  await loadFonts();
});

function printed(tree: DocumentTree, page: number, pages: number): string {
  return expandElement(pageFurniture(tree, page, pages))
    .map(textOf)
    .join('')
    .replace(/\s/g, '');
}

interface Spot {
  readonly text: string;
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
}

/** Where each line of text stands on the page. */
async function spotsOf(tree: DocumentTree, page: number): Promise<readonly Spot[]> {
  const { width, height } = pageGeometry(tree);
  const [[block] = []] = await setGalleys([{ width, height, elements: [pageFurniture(tree, page, 9)] }]);
  const visit = (node: SetNode, x: number, y: number): Spot[] => {
    const left = x + node.box.left;
    const top = y + node.box.top;
    if (node.type === 'TEXT')
      return [
        { text: textOf(node).trim(), top, bottom: top + node.box.height, left, right: left + node.box.width },
      ];
    return childNodes(node).flatMap((child) => visit(child, left, top));
  };
  return block === undefined ? [] : visit(block.node, -block.node.box.left, -block.node.box.top);
}

function spotOf(spots: readonly Spot[], text: string): Spot {
  const spot = spots.find((other) => other.text.startsWith(text));
  if (spot === undefined) throw new Error(`${text} is not on the page`);
  return spot;
}

describe('what stands around the body of a page', () => {
  it('is painted in the order that the read-back gate expects, the words of a draft last', () => {
    for (const tree of sampleTrees) {
      const texts = furnitureTexts(tree, 2, 9).join('').replace(/\s/g, '');
      const edges = (tree.furniture.draftEdges ?? []).map((word) => word.repeat(3)).join('');
      expect(printed(tree, 2, 9)).toBe(texts + edges);
    }
  });

  it('has no header on a first page with a cover', () => {
    expect(printed({ ...questionsTree, furniture: furniture() }, 1, 2)).not.toContain('Teodora');
    expect(printed(questionsTree, 1, 2)).toContain('Teodora');
  });

  it('has its lines at the measured places', async () => {
    const spots = await spotsOf(questionsTree, 2);
    expect(spotOf(spots, 'Teodora').top).toBeCloseTo(32);
    expect(spotOf(spots, 'Teodora').left).toBeCloseTo(60);
    expect(spotOf(spots, 'This does not').bottom).toBeCloseTo(792 - 28);
    expect(spotOf(spots, 'Page 2').bottom).toBeCloseTo(792 - 43);
    expect(spotOf(spots, 'LW-2207').right).toBeCloseTo(552, 0);
    expect(spotOf(spots, 'Draft. Not').left).toBeCloseTo(72);
  });

  it('in large print keeps a long title on the line of the name where both have room', async () => {
    const header = { start: 'Tobiah Wrenfield', end: 'Mis opciones · 29 de noviembre de 2026' };
    const spots = await spotsOf(
      { ...questionsTree, edition: 'large-print', furniture: { ...questionsTree.furniture, header } },
      2,
    );
    expect(spotOf(spots, header.end).top).toBeCloseTo(spotOf(spots, header.start).top);
  });

  it('in large print has the number of the page on the line where the footer is lower for it', async () => {
    const inLarge = (call: string): DocumentTree => ({
      ...questionsTree,
      edition: 'large-print',
      furniture: { ...questionsTree.furniture, footer: { ...questionsTree.furniture.footer, call } },
    });
    const one = inLarge('Questions? Call 555-0128. At night call 555-0134. Emergency 911.');
    const spots = await spotsOf(one, 2);
    expect(spotOf(spots, 'Page 2').top).toBeCloseTo(spotOf(spots, 'This does not').top);
    expect(spotOf(spots, 'Page 2').top).toBeCloseTo(spotOf(spots, 'Questions?').bottom);
    expect(printed(one, 2, 9)).toContain(furnitureTexts(one, 2, 9).join('').replace(/\s/g, ''));
    const short = await spotsOf(inLarge('Questions? Call 555-0128.'), 2);
    expect(spotOf(short, 'Page 2').top).toBeCloseTo(spotOf(short, 'Questions?').top);
  });

  it('lets a long line to call take a second line, above, and never into the body', async () => {
    const call =
      'Questions? Call 555-0142 by day, from 8 in the morning to 5 in the evening. At night call 555-0177. In an emergency call 911.';
    const tree = { ...questionsTree, furniture: furniture({ footer: { ...furniture().footer, call } }) };
    const spots = await spotsOf(tree, 2);
    const { bodyTop, bodyHeight } = pageGeometry(tree);
    const first = spotOf(spots, 'Questions?');
    expect(spots.filter(({ top }) => top > 700)).toHaveLength(5);
    expect(first.top).toBeGreaterThanOrEqual(bodyTop + bodyHeight);
  });

  it.each(['en', 'ar', 'hi', 'ko', 'vi', 'zh-Hans'])(
    'keeps the body clear of a footer of three lines, also where lines stand further apart: %s',
    async (language) => {
      const call = `Questions? Call 555-0142 by day, from 8 in the morning to 5. ${'At night call 555-0177. '.repeat(2)}`;
      const footer = { ...furniture().footer, call };
      const tree = { ...questionsTree, language, furniture: furniture({ footer }) };
      const { bodyTop, bodyHeight } = pageGeometry(tree);
      const { top } = spotOf(await spotsOf(tree, 2), 'Questions?');
      expect(top - RULE_GAP - RULE - (bodyTop + bodyHeight)).toBeGreaterThanOrEqual(8 - 0.001);
    },
  );

  it.each(['ar', 'hi', 'ko', 'zh-Hans'])(
    'leaves as much white over a usual footer as in English, so that no line to write on runs into its rule: %s',
    async (language) => {
      const whiteOf = async (tree: DocumentTree): Promise<number> => {
        const { bodyTop, bodyHeight } = pageGeometry(tree);
        return spotOf(await spotsOf(tree, 2), 'Questions?').top - bodyTop - bodyHeight;
      };
      expect(await whiteOf({ ...questionsTree, language })).toBeCloseTo(await whiteOf(questionsTree), 3);
    },
  );

  it('keeps the edges of a draft clear of the text, on both papers and for both readers', () => {
    for (const tree of [questionsTree, { ...questionsTree, paper: 'a4' as const }, clinicianTree]) {
      expect(20 + 14).toBeLessThanOrEqual(pageGeometry(tree).margin);
    }
  });

  it('runs slanting lines down the edge in pieces of 150 with the word in gaps of 100', () => {
    for (const height of [792, 841.89]) {
      const { lines, gaps } = edgeRuns(height);
      const bounds = boundsOf(subpaths(lines).flat());
      expect(bounds).toMatchObject({ left: 0, top: 25, right: 14 });
      expect(bounds.bottom).toBeLessThanOrEqual(height - 25);
      expect(gaps).toEqual([225, 475, 725]);
      for (const [from, to] of subpaths(lines)) {
        const middle = ((from?.[1] ?? 0) + (to?.[1] ?? 0)) / 2;
        expect(gaps.every((gap) => Math.abs(gap - middle) > 40)).toBe(true);
      }
    }
  });
});
