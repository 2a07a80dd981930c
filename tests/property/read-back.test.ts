import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';

import type { DocumentTree } from '../../src/model/document.ts';
import { expectedText } from '../../src/model/tree-text.ts';
import { readBack } from '../../src/verify/read-back.ts';
import { readDocument } from '../../src/verify/read-document.ts';
import type { DocumentPage, DocumentReading } from '../../src/verify/read-document.ts';
import { printExample } from '../helpers/printed-example.ts';

/** The comparison of an example case as it is really printed, read back once. */
let tree: DocumentTree;
let pages: readonly DocumentPage[];

beforeAll(async () => {
  const { tree: composed, rendered } = await printExample('QB-1041', 'comparison', 'en');
  const file = await readBack(rendered.pdf);
  tree = composed;
  pages = rendered.pages.map((place, index) => ({
    ...place,
    number: index + 1,
    text: file?.pages[index] ?? '',
  }));
});

function isClean({ lost, leftovers, absentFurniture }: DocumentReading): boolean {
  return lost.length + leftovers.length + absentFurniture.length === 0;
}

/** A copy of the tree in which one thing is changed: the n-th object that fits. */
function changed(
  fits: (node: Record<string, unknown>) => boolean,
  nth: number,
  change: (node: Record<string, unknown>) => void,
): DocumentTree {
  const copy = structuredClone(tree);
  const found: Record<string, unknown>[] = [];
  const walk = (node: unknown): void => {
    if (typeof node !== 'object' || node === null) return;
    if (fits(node as Record<string, unknown>)) found.push(node as Record<string, unknown>);
    Object.values(node).forEach(walk);
  };
  walk(copy.blocks);
  const chosen = found[nth % found.length];
  expect(chosen).toBeDefined();
  if (chosen !== undefined) change(chosen);
  return copy;
}

describe('a real packet that is read back', () => {
  it('is found whole', () => {
    expect(expectedText(tree).length).toBeGreaterThan(150);
    expect(readDocument(tree, pages)).toMatchObject({ lost: [], leftovers: [], absentFurniture: [] });
  });

  it('is not accepted when any digit of any figure differs', () => {
    fc.assert(
      fc.property(fc.nat(), fc.nat(), fc.integer({ min: 1, max: 9 }), (nth, at, step) => {
        const other = changed(
          (node) => node['type'] === 'figure' && /\d/.test(String(node['value'])),
          nth,
          (node) => {
            const places = [...String(node['value']).matchAll(/\d/g)].map(({ index }) => index);
            const place = places[at % places.length] ?? 0;
            const value = String(node['value']);
            node['value'] =
              value.slice(0, place) + String((Number(value[place]) + step) % 10) + value.slice(place + 1);
          },
        );
        const { lost } = readDocument(other, pages);
        return lost.some(({ missingFigures, elsewhere }) => missingFigures.length > 0 || elsewhere);
      }),
      { numRuns: 60, seed: 1 },
    );
  });

  it('is not accepted when any sentence was dropped from the print, or put into it', () => {
    fc.assert(
      fc.property(fc.nat(), fc.boolean(), (nth, dropped) => {
        const isWords = (node: Record<string, unknown>): boolean =>
          node['type'] === 'text' && /\p{L}{3}/u.test(String(node['value']));
        const other = changed(isWords, nth, (node) => {
          node['value'] = dropped ? `${String(node['value'])} Ask about the rest.` : ' ';
        });
        return !isClean(readDocument(other, pages));
      }),
      { numRuns: 60, seed: 2 },
    );
  });

  it('is not accepted when two pages of it changed places', () => {
    const [first, second, ...rest] = pages;
    if (first === undefined || second === undefined) throw new Error('too few pages');
    const swapped = [{ ...first, text: second.text }, { ...second, text: first.text }, ...rest];
    expect(isClean(readDocument(tree, swapped))).toBe(false);
  });
});
