import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { DocumentTree } from '../../src/model/document.ts';
import type { Locale } from '../../src/model/locale.ts';
import { expectedText } from '../../src/model/tree-text.ts';
import { shippedLocale } from '../helpers/locale-words.ts';
import { careTrees } from '../helpers/sample-care-documents.ts';
import { sampleTrees } from '../helpers/sample-documents.ts';
import { attributeOf, elementsOf, htmlOf, readBackHtml, textOf } from '../helpers/web-page.ts';

let locale: Locale;
beforeAll(async () => {
  locale = await shippedLocale('en');
});

/** What free words of a case could hold if somebody meant harm, or had bad luck. */
const hostile = [
  '<script>alert(1)</script>',
  '</p></div></article></main><script src=//a.example></script>',
  '"><img src=x onerror=alert(1)>',
  "' onmouseover='alert(1)' x='",
  '</title><script>alert(1)</script>',
  '</style><style>*{display:none}</style>',
  '<svg/onload=alert(1)>',
  '<!-- ',
  ' -->',
  ']]>',
  '<![CDATA[',
  '&lt;b&gt; &amp; &#x3c;script&#x3e; &notit; &copy',
  'javascript:alert(1)',
  '{{constructor}} ${1} %s',
  '<a href="https://a.example">here</a>',
  '<textarea><plaintext>',
  '\u202eevil\u202c \u2066x\u2069',
  '\u0000\u0001\u001f',
  '\ud800 alone',
  '<math><mtext></mtext><mglyph></mglyph></math>',
  '😀 漢字 عربى ẞ',
];

const piece = fc.oneof(
  fc.constantFrom(...hostile),
  fc.string({ maxLength: 12 }),
  fc.string({ unit: 'binary', maxLength: 12 }),
);
const text = fc.array(piece, { minLength: 1, maxLength: 3 }).map((parts) => parts.join(' '));

/** Keys whose strings choose what is made, and are never words of a person. */
const notWords = new Set([
  'type',
  'origin',
  'kind',
  'audience',
  'language',
  'direction',
  'paper',
  'layout',
  'role',
  'duty',
  'meaning',
  'possible',
  'mark',
  'urgency',
  'pattern',
  'look',
  'path',
  'food',
  'side',
  'align',
  'cell',
  'records',
  'statements',
  'page',
]);

/** The same tree with hostile words in the place of some of its own. */
function poison<T>(node: T, words: () => string | undefined, key = ''): T {
  if (typeof node === 'string') return (notWords.has(key) ? node : (words() ?? node)) as T;
  if (Array.isArray(node)) return node.map((part: unknown) => poison(part, words, key)) as T;
  if (typeof node !== 'object' || node === null) return node;
  return Object.fromEntries(
    Object.entries(node).map(([name, value]) => [name, poison(value, words, name)]),
  ) as T;
}

const known = new Set(
  [
    'html head meta title style body header nav main article section footer div p span a strong h1 h2 h3 ul ol li dl dt',
    'dd table caption colgroup col thead tbody tr th td figure figcaption details summary svg desc defs g path use text tspan',
  ]
    .join(' ')
    .split(' '),
);

const trees = [...sampleTrees, ...careTrees];
const chosen = fc.record({
  tree: fc.constantFrom(...trees),
  words: fc.array(fc.option(text, { nil: undefined, freq: 2 }), { minLength: 5, maxLength: 40 }),
});

function poisoned({
  tree,
  words,
}: {
  tree: DocumentTree;
  words: readonly (string | undefined)[];
}): DocumentTree {
  let next = 0;
  return poison(tree, () => {
    next += 1;
    return words[next % words.length];
  });
}

describe('hostile words in an HTML page', () => {
  it('never become an element, an attribute that acts, or an address', () => {
    fc.assert(
      fc.property(chosen, (choice) => {
        const elements = elementsOf(htmlOf([poisoned(choice)], locale));
        expect(elements.filter(({ tagName }) => !known.has(tagName)).map(({ tagName }) => tagName)).toEqual(
          [],
        );
        const attributes = elements.flatMap(({ attrs }) => attrs);
        expect(attributes.filter(({ name }) => /^on|^src|^action|^formaction/.test(name))).toEqual([]);
        const links = elements.flatMap((one) => attributeOf(one, 'href') ?? []);
        expect(links.filter((to) => !/^(#[\w-]+|tel:\+?\d*)$/.test(to))).toEqual([]);
        expect(elements.filter(({ tagName }) => tagName === 'style')).toHaveLength(1);
      }),
      { numRuns: 150 },
    );
  });

  it('stand on the page letter by letter, or the page is refused', () => {
    fc.assert(
      fc.property(chosen, (choice) => {
        const tree = poisoned(choice);
        const html = htmlOf([tree], locale);
        const { passed, findings } = readBackHtml(html, [tree], locale);
        const body = elementsOf(html).find((one) => attributeOf(one, 'data-page') === 'body');
        const seen = body === undefined ? '' : textOf(body);
        const lost = expectedText(tree).filter((one) => one.kind !== 'counter' && !isIn(one.text, seen));
        expect(passed).toBe(findings.length === 0);
        // What a parser keeps, it keeps in full; a text that is not there as it was is never let through.
        expect(lost.filter(({ text: words }) => !mayBeDropped.test(words))).toEqual([]);
        expect(passed && lost.length > 0).toBe(false);
      }),
      { numRuns: 100 },
    );
  });
});

/** Characters that the HTML standard lets no parser keep. */
const mayBeDropped = /[\p{Cc}\p{Cs}\ufffd]/u;

function isIn(words: string, seen: string): boolean {
  const compact = (value: string): string => value.replace(/\s+/g, '');
  return compact(seen).includes(compact(words));
}
