import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { continuedHeading, expectedText, furnitureTexts } from '../../../src/model/tree-text.ts';
import { readDocument } from '../../../src/verify/read-document.ts';
import type { DocumentReading } from '../../../src/verify/read-document.ts';
import { figure, paragraph, smallTree, words } from '../../helpers/small-tree.ts';

/** Texts that repeat, start alike and end alike, as tables of figures do. */
const tree = smallTree([
  { type: 'heading', level: 2, origin: 'a:1', text: 'Later years' },
  ...['Sleeve', 'Bypass', 'Sleeve after a band'].flatMap((name, index) => [
    paragraph(`a:${10 + index}`, [words(name)]),
    paragraph(`a:${20 + index}`, [figure('6', `c${index}`), words(' out of '), figure('100', `d${index}`)]),
    paragraph(`a:${30 + index}`, [figure('60', `e${index}`)]),
    paragraph(`a:${40 + index}`, [words('It is not known.')]),
  ]),
]);
const texts = expectedText(tree).map((piece) => piece.text);
const half = 7;
const pageTexts = [
  [...texts.slice(0, half), ...furnitureTexts(tree, 1, 2)].join('\n'),
  [...texts.slice(half), continuedHeading('Later years', 'continued'), ...furnitureTexts(tree, 2, 2)].join(
    '\n',
  ),
];

function read(pages: readonly string[]): DocumentReading {
  return readDocument(
    tree,
    pages.map((text, index) => ({ text, number: index + 1, page: index + 1, pages: 2 })),
  );
}

function isClean({ lost, leftovers, absentFurniture }: DocumentReading): boolean {
  return lost.length + leftovers.length + absentFurniture.length === 0;
}

describe('reading a document back', () => {
  it('finds every text of a faithful print in its place', () => {
    expect(read(pageTexts)).toMatchObject({ lost: [], leftovers: [], absentFurniture: [] });
  });

  it('notices any letter or digit that was put in, wherever it is', () => {
    const edit = fc.tuple(fc.nat(1), fc.nat(), fc.constantFrom('0', '6', 'S', 'e', 'x', '.', 'continued'));
    fc.assert(
      fc.property(edit, ([page, at, more]) => {
        const pages = pageTexts.map((text, index) =>
          index === page ? insert(text, at % (text.length + 1), more) : text,
        );
        return !isClean(read(pages));
      }),
      { numRuns: 400, seed: 1 },
    );
  });

  it('notices any letter or digit that was taken out, wherever it is', () => {
    const places = pageTexts.flatMap((text, page) =>
      Array.from(text, (sign, at) => ({ sign, page, at })).filter(({ sign }) => !/\s/.test(sign)),
    );
    const unnoticed = places.filter(({ page, at }) =>
      isClean(
        read(
          pageTexts.map((text, index) => (index === page ? text.slice(0, at) + text.slice(at + 1) : text)),
        ),
      ),
    );
    expect(places.length).toBeGreaterThan(400);
    expect(unnoticed).toEqual([]);
  });

  it('notices any two different texts that changed places', () => {
    const pairs = texts.flatMap((one, a) =>
      texts.flatMap((other, b) => (a < b && one !== other ? [[a, b] as const] : [])),
    );
    const unnoticed = pairs.filter(([a, b]) => {
      const swapped = texts.map((text, index) => texts[index === a ? b : index === b ? a : -1] ?? text);
      const first = [...swapped.slice(0, half), ...furnitureTexts(tree, 1, 2)].join('\n');
      const second = [...swapped.slice(half), ...furnitureTexts(tree, 2, 2)].join('\n');
      return isClean(read([first, second]));
    });
    expect(pairs.length).toBeGreaterThan(40);
    expect(unnoticed).toEqual([]);
  });

  it('says of a moved text that it stands elsewhere, and of a changed one which figures are gone', () => {
    const moved = pageTexts.map((text) => text.replace('Later years\n', ''));
    moved[1] = insert(moved[1] ?? '', 0, 'Later years\n');
    expect(read(moved).lost).toMatchObject([
      { text: { origin: 'a:1' }, elsewhere: true, missingFigures: [] },
    ]);
    const changed = pageTexts.map((text) => text.replace('6 out of 100', '6 out of 1,000'));
    expect(read(changed).lost).toMatchObject([
      { text: { origin: 'a:20' }, page: 1, elsewhere: false, missingFigures: ['d0'] },
      { text: { origin: 'a:22' }, page: 2, elsewhere: false, missingFigures: ['d2'] },
    ]);
  });

  it('misses the word for the clinic on the edges of a draft, and that for the reader', () => {
    const draft = {
      ...tree,
      furniture: { ...tree.furniture, draftEdges: ['Borrador', 'Draft'] as [string, string] },
    };
    const readDraft = (edges: readonly string[]): DocumentReading =>
      readDocument(
        draft,
        pageTexts.map((text, index) => ({
          text: [text, ...(index === 1 ? edges : ['Borrador', 'Draft'])].join('\n'),
          number: index + 1,
          page: index + 1,
          pages: 2,
        })),
      );
    expect(isClean(readDraft(['Borrador', 'Borrador', 'Draft', 'Draft']))).toBe(true);
    for (const edges of [['Borrador'], ['Draft', 'Draft'], []])
      expect(readDraft(edges).absentFurniture).toEqual([{ page: 2, part: 'edge' }]);
  });
});

function insert(text: string, at: number, more: string): string {
  return text.slice(0, at) + more + text.slice(at);
}
