import { describe, expect, it } from 'vitest';
import type { DocumentTree } from '../../../../src/model/document.ts';
import { expectedText, furnitureTexts, repeatedTexts } from '../../../../src/model/tree-text.ts';
import { renderPdf } from '../../../../src/render/index.ts';
import { lettersOf } from '../../../../src/verify/normalize-text.ts';
import { readBack } from '../../../../src/verify/read-back.ts';
import { careTrees, turnedCareTrees } from '../../../helpers/sample-care-documents.ts';
import { sampleTrees } from '../../../helpers/sample-documents.ts';

// Read with pdf.js (through pdf-parse), which shares no code with the renderer.

type Compact = (text: string) => string;

const compact: Compact = (text) => text.normalize('NFKC').replace(/\s/g, '');

/** From right to left letters and digits only: see lettersOf. */
function compactFor(tree: DocumentTree): Compact {
  return tree.direction === 'rtl' ? (text) => lettersOf(compact(text)) : compact;
}

/** Heads that a page repeats of the one before stand at its end in the file, for they are not part of the text. */
function withoutRepeated(text: string, tree: DocumentTree): string {
  const heads = repeatedTexts(tree).map((head) => compactFor(tree)(head.text));
  const last = heads.sort((a, b) => b.length - a.length).find((head) => text.endsWith(head));
  return last === undefined ? text : withoutRepeated(text.slice(0, text.length - last.length), tree);
}

async function render(documents: readonly DocumentTree[]) {
  const packet = { caseReference: 'LW-2207', language: 'en', title: 'Sample', author: 'Larkmoor', documents };
  const result = await renderPdf(packet, { createdOn: '2026-11-25', producer: 'plainleaf', attachments: [] });
  if (!result.ok) throw new Error(JSON.stringify(result.diagnostics));
  const file = await readBack(result.value.pdf);
  if (file === null) throw new Error('the file cannot be opened');
  return { pages: result.value.pages, texts: file.pages };
}

describe('the printed text of every type of block', () => {
  it.each([
    ['of a talk about choices', sampleTrees],
    ['for going home and for consent', careTrees],
    ['on the other paper, from right to left', turnedCareTrees],
  ])('%s is what the tree says, in its order, with nothing added but the furniture', async (_, trees) => {
    const { pages, texts } = await render(trees);
    trees.forEach((tree, index) => {
      const own = compactFor(tree);
      const bodies = pages.flatMap((place, at) => {
        if (place.document !== index) return [];
        const edge = (tree.furniture.draftEdges ?? []).map((word) => own(word).repeat(3)).join('');
        const tail = own(furnitureTexts(tree, place.page, place.pages).join('')) + edge;
        const text = own(texts[at] ?? '');
        expect(text.endsWith(tail)).toBe(true);
        const body = text.slice(0, text.length - tail.length);
        return [place.page === 1 ? body : withoutRepeated(body, tree)];
      });
      const expected = expectedText(tree).map(({ text }) => own(text));
      expect(bodies.join('')).toBe(expected.join(''));
    });
  });
});
