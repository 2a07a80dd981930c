import { describe, expect, it } from 'vitest';

import type { DocumentTree } from '../../src/model/document.ts';
import { expectedText } from '../../src/model/tree-text.ts';
import { reflowPacket } from '../../src/reflow/index.ts';
import { readPage } from '../../src/verify/web/read-page.ts';
import { allLanguages } from '../helpers/all-languages.ts';
import { clinicEnglish } from '../helpers/clinic-english.ts';
import { examplePage } from '../helpers/example-pages.ts';
import { attributeOf } from '../helpers/web-page.ts';
import type { Element } from '../helpers/web-page.ts';

// The finished PDF is read in tests/external/packets.verapdf-pdfjs-poppler.test.ts, with fewer cases.
const asked = allLanguages
  .filter((language) => language !== 'en')
  .flatMap((language) => ['QB-1128', 'QB-1141'].map((reference) => ({ reference, language })));

const sameSpaces = (text: string): string => text.replace(/\s+/gu, ' ');

/** What a document says in its own language, as far as it marks. */
function ownWords(tree: DocumentTree): string {
  const texts = expectedText(tree).map(({ text, foreign }) =>
    foreign.reduce((rest, other) => rest.replace(other, '\n'), text),
  );
  return sameSpaces(texts.join('\n'));
}

/** Texts of a page, and of its pictures, by the language that the nearest mark around them says. */
function wordsOfPage(html: string): { readonly own: string; readonly others: string } {
  const { elements, language: ownLanguage } = readPage(html);
  const [root] = elements;
  const own: string[] = [];
  const others: string[] = [];
  const visit = (node: Element['childNodes'][number], language: string | undefined): void => {
    if ('value' in node) (language === ownLanguage ? own : others).push(node.value);
    if (!('tagName' in node) || node.tagName === 'style') return;
    const here = attributeOf(node, 'lang') ?? language;
    for (const child of node.childNodes) visit(child, here);
  };
  if (root !== undefined) visit(root, undefined);
  return { own: sameSpaces(own.join('\n')), others: sameSpaces(others.join('\n')) };
}

describe('what a clinic says in English alone', () => {
  it.each(asked)('is marked as such in every document: $reference in $language', async (one) => {
    const { packet } = await examplePage(one.reference, one.language);
    const english = clinicEnglish(one);
    for (const edition of ['standard', 'large-print'] as const)
      for (const tree of reflowPacket(packet, edition).documents) {
        const own = ownWords(tree);
        const unmarked = english.filter((text) => own.includes(sameSpaces(text)));
        expect({ edition, kind: tree.kind, unmarked }).toEqual({ edition, kind: tree.kind, unmarked: [] });
      }
  });

  it.each(asked)('is marked as such on the page: $reference in $language', async (one) => {
    const { html } = await examplePage(one.reference, one.language);
    const { own, others } = wordsOfPage(html);
    const english = clinicEnglish(one).map(sameSpaces);
    expect(english.filter((text) => own.includes(text))).toEqual([]);
    // The clinic says in Spanish all that these pages do.
    const least = one.language === 'es' ? 0 : 20;
    expect(english.filter((text) => others.includes(text)).length).toBeGreaterThanOrEqual(least);
  });
});
