import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Block, DocumentTree } from '../../src/model/document.ts';
import type { Locale } from '../../src/model/locale.ts';
import { expectedText } from '../../src/model/tree-text.ts';
import { shippedLocale } from '../helpers/locale-words.ts';
import { careTrees } from '../helpers/sample-care-documents.ts';
import { para, sampleTrees, topic } from '../helpers/sample-documents.ts';
import { smallTree } from '../helpers/small-tree.ts';
import { attributeOf, bodyOf, elementsOf, htmlOf, textOf, within } from '../helpers/web-page.ts';

let locale: Locale;
beforeAll(async () => {
  locale = await shippedLocale('en');
});

/** Every block of the samples, those of topics too, so that they can be put together anew. */
const samples: readonly Block[] = [...sampleTrees, ...careTrees].flatMap(({ blocks }) =>
  blocks.flatMap((block): readonly Block[] => (block.type === 'topic' ? [block, ...block.blocks] : [block])),
);

const block = fc.constantFrom(...samples);
const under = fc.tuple(fc.string({ minLength: 1, maxLength: 30 }), fc.array(block, { maxLength: 4 }));
const tree = fc
  .record({
    first: fc.array(block, { maxLength: 3 }),
    topics: fc.array(under, { maxLength: 4 }),
    direction: fc.constantFrom('ltr' as const, 'rtl' as const),
  })
  .map(({ first, topics, direction }): DocumentTree => {
    const asked = topics.map(([question, blocks]) =>
      topic(question, [para(question).inlines[0]?.value ?? ''], blocks),
    );
    return smallTree([...first, ...asked], { direction });
  });

const compact = (text: string): string => text.replace(/\s+/g, '');

/** Text of the body without what it says a second time. */
function printed(body: ReturnType<typeof bodyOf>): string {
  const again = within(body).filter((one) => attributeOf(one, 'data-repeated') !== undefined);
  const hidden = within(body).filter(({ tagName }) => tagName === 'title' || tagName === 'desc');
  // The longest first, so that a short one is not taken out of the middle of another.
  const twice = [...again, ...hidden].map((one) => compact(textOf(one))).sort((a, b) => b.length - a.length);
  return twice.reduce((text, one) => text.replace(one, ''), compact(textOf(body)));
}

describe('any document as an HTML page', () => {
  it('has every text of the tree, in the order of the tree', () => {
    fc.assert(
      fc.property(tree, (any) => {
        const seen = compact(textOf(bodyOf(any.blocks, locale, any)));
        let at = 0;
        for (const { text, kind } of expectedText(any)) {
          if (kind === 'counter') continue;
          const place = seen.indexOf(compact(text), at);
          expect({ text, found: place >= at }).toEqual({ text, found: true });
          at = place + compact(text).length;
        }
      }),
      { numRuns: 60 },
    );
  });

  it('has as many letters as the tree, and no more', () => {
    fc.assert(
      fc.property(tree, (any) => {
        const wanted = expectedText(any).filter(({ kind }) => kind !== 'counter');
        const letters = compact(wanted.map(({ text }) => text).join(''));
        expect(printed(bodyOf(any.blocks, locale, any)).length).toBe(letters.length);
      }),
      { numRuns: 60 },
    );
  });

  it('names every id once, and every image by an id that is there', () => {
    fc.assert(
      fc.property(fc.array(tree, { minLength: 1, maxLength: 3 }), (trees) => {
        const elements = elementsOf(htmlOf(trees, locale));
        const ids = elements.flatMap((one) => attributeOf(one, 'id') ?? []);
        expect(new Set(ids).size).toBe(ids.length);
        const named = elements.flatMap((one) => attributeOf(one, 'aria-labelledby')?.split(' ') ?? []);
        expect(named.filter((id) => !ids.includes(id))).toEqual([]);
        const uses = elements
          .filter(({ tagName }) => tagName === 'use')
          .map((one) => attributeOf(one, 'href') ?? '');
        expect(uses.filter((to) => !ids.includes(to.slice(1)))).toEqual([]);
      }),
      { numRuns: 30 },
    );
  });
});
