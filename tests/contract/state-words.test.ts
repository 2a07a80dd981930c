import { beforeAll, describe, expect, it } from 'vitest';
import { composePacket } from '../../src/compose-packet.ts';
import { identifyPacket } from '../../src/identify-packet.ts';
import { makeHtml } from '../../src/make-html.ts';
import type { DocumentTree } from '../../src/model/document.ts';
import type { PacketState } from '../../src/model/packet.ts';
import { expandElement } from '../../src/render/expand-elements.ts';
import { loadFonts } from '../../src/render/fonts.ts';
import { pageFurniture } from '../../src/render/furniture.tsx';
import { textOf } from '../../src/render/layout-node.ts';
import { demand, openExample } from '../helpers/example-packets.ts';
import { inEveryLanguage } from '../helpers/language-packets.ts';
import { setAsProduct } from '../helpers/page-faults.ts';
import { elementsOf, textOf as textOfElement } from '../helpers/web-page.ts';

beforeAll(async () => {
  await loadFonts();
});

const states: readonly PacketState[] = ['example', 'draft', 'final'];
const compact = (text: string): string => text.replace(/\s/g, '');

/** All that one document prints: its blocks and what stands around them. */
async function printedOf(tree: DocumentTree): Promise<string> {
  const [set] = await setAsProduct([tree]);
  const body = set?.blocks.map(({ node }) => textOf(node)).join('') ?? '';
  return compact(
    body +
      expandElement(pageFurniture(tree, 1, 1))
        .map(textOf)
        .join(''),
  );
}

/** The same case in one of the three states, printed and as a page, document by document. */
async function editionsOf(language: string, state: PacketState) {
  const { prepared, open } = await openExample('QB-1128', inEveryLanguage);
  const identity = { ...identifyPacket(prepared, open, language), state };
  const packet = demand(composePacket(prepared, open, identity));
  const { bytes } = demand(makeHtml(packet, identity));
  const articles = elementsOf(new TextDecoder().decode(bytes)).filter(({ tagName }) => tagName === 'article');
  const html = articles.map((article) => compact(textOfElement(article)));
  const consent = packet.documents[0];
  if (consent === undefined) throw new Error('the case has no document');
  const { translator } = identity.locale;
  const count = identity.openPoints.length;
  const said = (key: string): string => compact(translator.text(key, { count }));
  return {
    html,
    printed: { all: packet.documents, consent: await printedOf(consent) },
    words: {
      example: said('common.furniture.tab_example'),
      draft: said('common.furniture.tab_draft'),
      plate: said('consent.sign.draft'),
    },
  };
}

describe('the words for the state of a packet', () => {
  it.each(['en', 'fr'].flatMap((language) => states.map((state) => ({ language, state }))))(
    'are the same sentences on paper and on the web page: $state in $language',
    async ({ language, state }) => {
      const { html, printed, words } = await editionsOf(language, state);
      const wanted = {
        example: state === 'example',
        draft: state === 'draft',
        // Nothing may be signed but what is final.
        plate: state !== 'final',
      };
      const foundIn = (text: string): typeof wanted => ({
        example: text.includes(words.example),
        draft: text.includes(words.draft),
        plate: text.includes(words.plate),
      });
      expect(foundIn(printed.consent)).toEqual(wanted);
      expect(foundIn(html[0] ?? '')).toEqual(wanted);
      const around = printed.all.map((tree) =>
        compact(
          expandElement(pageFurniture(tree, 1, 1))
            .map(textOf)
            .join(''),
        ),
      );
      expect(around.map((text) => text.includes(words[state === 'draft' ? 'draft' : 'example']))).toEqual(
        html.map(() => state !== 'final'),
      );
      expect(html.map((text) => text.includes(words[state === 'draft' ? 'draft' : 'example']))).toEqual(
        html.map(() => state !== 'final'),
      );
    },
  );

  it('say in English too, on paper and on the page, that a draft in another language is one', async () => {
    const { html, printed } = await editionsOf('fr', 'draft');
    for (const [index, tree] of printed.all.entries()) {
      const around = expandElement(pageFurniture(tree, 1, 1))
        .map(textOf)
        .join(' ');
      expect(around).toMatch(/Draft/);
      expect(html[index]).toMatch(/Draft/);
    }
  });
});
