import { beforeAll, describe, expect, it } from 'vitest';
import type { Block } from '../../../../src/model/document.ts';
import type { Locale } from '../../../../src/model/locale.ts';
import { shippedLocale } from '../../../helpers/locale-words.ts';
import { para, rangeRows, sampleAxis, topic } from '../../../helpers/sample-documents.ts';
import { figure, paragraph, smallTree, words } from '../../../helpers/small-tree.ts';
import { htmlOf, readBackHtml } from '../../../helpers/web-page.ts';

const origin = 'sample.hbs:1';
const table: Block = {
  type: 'table',
  layout: 'choices',
  columns: [{ label: '' }, { label: 'A leak' }],
  rows: [{ cells: [[para('Sleeve')], [para('not known')]], origin }],
  origin,
};
const blocks: readonly Block[] = [
  { type: 'heading', level: 1, text: 'My choices', origin },
  topic(
    'How likely is a serious problem?',
    [],
    [
      paragraph('a.hbs:1', [
        words('With a sleeve '),
        figure('24 out of 1,000', 'sleeve/leak'),
        words(' had one.'),
      ]),
      paragraph('a.hbs:2', [words('A sleeve can make reflux worse.')], 'caution'),
      paragraph('a.hbs:3', [words('Take the time you need.')]),
      { type: 'strip', layout: 'range', axis: sampleAxis, rows: rangeRows.slice(0, 2), origin },
    ],
  ),
  topic('What else?', [], [para('Nothing else.')]),
  topic('And then?', [], [para('Then you decide.'), table]),
];
const documents = [smallTree(blocks)];

let locale: Locale;
let html = '';
beforeAll(async () => {
  locale = await shippedLocale('en');
  html = htmlOf(documents, locale);
});

/** Codes of what the gate finds once something in the page is another. */
function codesAfter(from: string | RegExp, to: string): readonly string[] {
  const changed = html.replace(from, to);
  expect(changed).not.toBe(html);
  return [...new Set(readBackHtml(changed, documents, locale).findings.map(({ code }) => code))];
}

describe('the read-back gate of an HTML page', () => {
  it('passes the page as it was made, and counts what it found', () => {
    const report = readBackHtml(html, documents, locale);
    expect(report.findings).toEqual([]);
    expect(report).toMatchObject({ passed: true, pages: 1, figures: 1, cautions: 1, phones: 3 });
  });

  it.each([
    ['a figure that lost a digit', '24 out</span>', '4 out</span>', 'VERIFY_NUMBER_ABSENT'],
    ['a caution that is gone', 'A sleeve can make reflux worse.', '', 'VERIFY_CAUTION_ABSENT'],
    ['a sentence that is gone', 'Take the time you need.', '', 'VERIFY_STATEMENT_ABSENT'],
    ['words that the tree has not', 'Nothing else.', 'Nothing else. Best choice!', 'VERIFY_UNEXPECTED_TEXT'],
    ['a label of a picture that is gone', '>210<', '><', 'VERIFY_STATEMENT_ABSENT'],
    ['a number to call that is another', /555-0142/g, '555-0143', 'VERIFY_PHONE_ABSENT'],
    ['an example that does not say so', 'Example. Invented person.', '', 'VERIFY_STATEMENT_ABSENT'],
    [
      'a text alternative that says another number',
      'on average 206 lb',
      'on average 106 lb',
      'VERIFY_STATEMENT_ABSENT',
    ],
    ['a caption that is none of its words', '</caption>', ' of all</caption>', 'VERIFY_UNEXPECTED_TEXT'],
    [
      'an axis beside a bar that says another number',
      'data-repeated=""><svg',
      'data-repeated="">9<svg',
      'VERIFY_UNEXPECTED_TEXT',
    ],
    ['another language', '<html lang="en"', '<html lang="es"', 'VERIFY_LANGUAGE'],
    [
      'a document in another language',
      /<article([^>]*) lang="en"/,
      '<article$1 lang="es"',
      'VERIFY_LANGUAGE',
    ],
    ['a key in place of words', 'Nothing else.', 'common.under_study', 'VERIFY_UNRESOLVED_KEY'],
    ['a character that was lost', 'Nothing else.', 'Nothing el\ufffde.', 'VERIFY_GLYPH'],
    ['a heading of a level that is skipped', /<(\/?)h2/g, '<$1h3', 'VERIFY_ORDER'],
    ['a foot without its day', /Made on [^<]*/, '', 'VERIFY_STATEMENT_ABSENT'],
    ['a link with other words', '>What else?</a>', '>What?</a>', 'VERIFY_STATEMENT_ABSENT'],
    ['words outside every part', '</main>', 'Hello.</main>', 'VERIFY_UNEXPECTED_TEXT'],
    ['a document that is gone', /<article[^]*<\/article>/, '', 'VERIFY_PAGE_COUNT'],
    ['a script', '</main>', '<script>1</script></main>', 'VERIFY_ACTIVE_CONTENT'],
    ['a handler', '<main', '<main onclick="go()"', 'VERIFY_ACTIVE_CONTENT'],
    [
      'a picture from elsewhere',
      '</main>',
      '<img src="https://a.example/x.png" alt=""></main>',
      'VERIFY_ACTIVE_CONTENT',
    ],
    ['a link that leaves the page', 'href="tel:911"', 'href="https://a.example"', 'VERIFY_ACTIVE_CONTENT'],
    ['a style of its own', '<main', '<main style="color:red"', 'VERIFY_ACTIVE_CONTENT'],
    ['a second style sheet', '</head>', '<style>p{display:none}</style></head>', 'VERIFY_ACTIVE_CONTENT'],
    [
      'a policy that lets scripts run',
      'default-src &#x27;none&#x27;',
      'default-src *',
      'VERIFY_ACTIVE_CONTENT',
    ],
  ] as const)('refuses %s', (...[, from, to, code]) => {
    expect(codesAfter(from, to)).toContain(code);
  });

  it('refuses a page on which two sentences have changed places', () => {
    const swapped = html
      .replace('Nothing else.', '@')
      .replace('Then you decide.', 'Nothing else.')
      .replace('@', 'Then you decide.');
    expect(readBackHtml(swapped, documents, locale).findings.map(({ code }) => code)).toContain(
      'VERIFY_ORDER',
    );
  });

  it('never says in a finding what stands on the page', () => {
    const { findings } = readBackHtml(html.replace(/Take the time you need|reflux/g, ''), documents, locale);
    expect(findings.length).toBeGreaterThan(0);
    expect(JSON.stringify(findings)).not.toMatch(/Take the time|reflux|Ilsa/);
  });
});
