import { describe, expect, it } from 'vitest';

import type { Block, DocumentTree } from '../../../src/model/document.ts';
import type { Locale } from '../../../src/model/locale.ts';
import type { PacketTree, PdfAttachment } from '../../../src/model/packet.ts';
import { continuedHeading, expectedText, furnitureTexts } from '../../../src/model/tree-text.ts';
import { verifyPacket } from '../../../src/verify/index.ts';
import { paintPages } from '../../helpers/paint-pages.ts';
import { figure, paragraph, smallTree, words } from '../../helpers/small-tree.ts';

/** Two pages: a topic of two choices with their figures, then cautions and a table with its head. */
const firstPage: Block[] = [
  {
    type: 'topic',
    origin: 'comparison.hbs:10',
    question: 'How likely is a serious problem in the first month?',
    intro: [
      paragraph('comparison.hbs:11', [
        words('These are the people who had it, and the people who did not have it, after 30 days.'),
      ]),
    ],
    blocks: [
      paragraph('comparison.hbs:20', [
        words('With a sleeve, '),
        figure('24 out of 1,000', 'sleeve/major-complication/30d'),
        words(' had one.'),
      ]),
      paragraph('comparison.hbs:21', [
        words('With a bypass, '),
        figure('41 out of 1,000', 'bypass/major-complication/30d'),
        words(' had one.'),
      ]),
      paragraph(
        'comparison.hbs:22',
        [words('The choice is yours, and the surgeon will help you with it.')],
        'standard',
      ),
    ],
  },
];
const secondPage: Block[] = [
  paragraph(
    'comparison.hbs:30',
    [words('A sleeve can make reflux worse for 3 in 10 people who have it now.')],
    'caution',
  ),
  paragraph(
    'comparison.hbs:31',
    [words('Do not take anti-inflammatory medicines after a bypass.')],
    'caution',
  ),
  paragraph('comparison.hbs:32', [words('The nurse will call you back on 555-0177.')], 'phone'),
  {
    type: 'table',
    layout: 'choices',
    origin: 'comparison.hbs:40',
    columns: [{ label: 'Choice' }, { label: 'Sleeve' }],
    rows: [
      {
        origin: 'comparison.hbs:41',
        cells: [
          [paragraph('comparison.hbs:42', [words('Efficient first fluids')])],
          [paragraph('comparison.hbs:43', [figure('fewer than 1', 'sleeve/death/30d')])],
        ],
      },
    ],
  },
];
const tree = smallTree([...firstPage, ...secondPage]);
const repeated = [
  continuedHeading('How likely is a serious problem in the first month?', 'continued'),
  'Choice',
  'Sleeve',
];
const provenance: PdfAttachment = {
  name: 'provenance.json',
  mediaType: 'application/json',
  description: 'Where this comes from',
  content: new TextEncoder().encode('{"a":1}'),
};

function locale(
  tag: string,
  commonWords: readonly string[],
  texts: Readonly<Record<string, string>> = {},
): Locale {
  const unused = (): never => {
    throw new Error('not used by the read-back gate');
  };
  return {
    tag,
    direction: 'ltr',
    name: tag,
    firstWeekday: 'monday',
    passive: null,
    readerWords: [],
    glossary: [],
    translator: { text: (key) => texts[key] ?? unused(), has: (key) => key in texts },
    formatter: {
      number: unused,
      range: unused,
      date: unused,
      weekdayDate: unused,
      monthDay: unused,
      shortDay: unused,
      shortDate: unused,
      weekday: unused,
      monthYear: unused,
      list: unused,
      languageName: unused,
      weight: unused,
      weightRange: unused,
    },
    commonWords,
    digest: '',
    wordsDigest: () => '',
  };
}

const english = locale('en', ['the', 'and', 'who', 'with', 'had'], {
  'greeting.hello': 'Hello',
  'comparison.yours': 'The choice is <b>yours</b>, and the surgeon will help you with it.',
  'comparison.absent': 'You &amp; yours may say no.',
});
const spanish = locale('es', ['los', 'las', 'que', 'para', 'con']);

function textsOf(blocks: readonly Block[]): string[] {
  return expectedText(smallTree(blocks)).map((piece) => piece.text);
}

/** The pages as a faithful renderer would print them. */
function faithfulPages(): string[][] {
  return [
    [...textsOf(firstPage), ...furnitureTexts(tree, 1, 2)],
    [...textsOf(secondPage), ...repeated, ...furnitureTexts(tree, 2, 2)],
  ];
}

interface Change {
  readonly pages?: readonly (readonly string[])[];
  readonly printedLanguage?: string;
  readonly askedLanguage?: string;
  readonly tree?: DocumentTree;
  readonly locale?: Locale;
  readonly attached?: readonly PdfAttachment[];
  readonly cut?: number;
  readonly required?: readonly string[];
}

async function verify(change: Change = {}) {
  const pdf = await paintPages(change.pages ?? faithfulPages(), {
    language: change.printedLanguage ?? 'en',
    attachments: change.attached ?? [provenance],
  });
  const packet: PacketTree = {
    caseReference: 'PE-0417',
    language: change.askedLanguage ?? 'en',
    title: 'My choices',
    author: 'Clinic',
    documents: [change.tree ?? tree],
  };
  return verifyPacket({
    pdf: change.cut === undefined ? pdf : pdf.slice(0, change.cut),
    packet,
    pages: [
      { document: 0, page: 1, pages: 2 },
      { document: 0, page: 2, pages: 2 },
    ],
    locale: change.locale ?? english,
    otherLocales: [english, spanish].filter((other) => other !== (change.locale ?? english)),
    attachments: [provenance],
    ...(change.required === undefined ? {} : { required: [change.required] }),
  });
}

async function codesOf(change: Change): Promise<string[]> {
  const report = await verify(change);
  return [...new Set(report.findings.map((finding) => finding.code))];
}

/** The faithful pages with one printed text changed, or taken out. */
function withText(from: string, to: string | null): string[][] {
  const pages = faithfulPages();
  expect(pages.flat()).toContain(from);
  return pages.map((texts) => texts.flatMap((text) => (text === from ? (to === null ? [] : [to]) : [text])));
}

const sleeveSentence = 'With a sleeve, 24 out of 1,000 had one.';
const bypassSentence = 'With a bypass, 41 out of 1,000 had one.';
const standardSentence = 'The choice is yours, and the surgeon will help you with it.';
const medicineCaution = 'Do not take anti-inflammatory medicines after a bypass.';

describe('a faithful packet', () => {
  it('passes, with a count of what was looked for and found', async () => {
    expect(await verify()).toEqual({
      passed: true,
      findings: [],
      pages: 2,
      figures: 3,
      statements: 12,
      cautions: 2,
      phones: 6,
    });
  });

  it('passes although ligatures, spaces and line ends come back otherwise', async () => {
    const pages = withText(
      standardSentence,
      'The choice\u00a0is yours,   and the sur\u00adgeon\nwill help you with it.',
    );
    expect(await verify({ pages })).toMatchObject({ passed: true });
  });
});

describe('a packet in which something is wrong', () => {
  it('is caught when a figure differs by a digit', async () => {
    const report = await verify({
      pages: withText(sleeveSentence, 'With a sleeve, 42 out of 1,000 had one.'),
    });
    expect(report.passed).toBe(false);
    expect(report.figures).toBe(2);
    expect(report.findings.map((finding) => finding.code)).toEqual([
      'VERIFY_NUMBER_ABSENT',
      'VERIFY_UNEXPECTED_TEXT',
    ]);
    expect(report.findings[0]).toMatchObject({
      path: 'comparison.hbs:20',
      message:
        'a figure of the document is not in the finished file (comparison, page 1, comparison.hbs:20, cell sleeve/major-complication/30d)',
    });
  });

  it.each([
    ['a longer number', 'With a sleeve, 124 out of 1,000 had one.'],
    ['a decimal', 'With a sleeve, 24 out of 1,000.5 had one.'],
    ['nothing', 'With a sleeve, had one.'],
  ])('is caught when a figure became %s', async (_, printed) => {
    expect(await codesOf({ pages: withText(sleeveSentence, printed) })).toContain('VERIFY_NUMBER_ABSENT');
  });

  it('is caught when the tree holds another figure than the page', async () => {
    const changed = JSON.parse(
      JSON.stringify(tree).replace('24 out of 1,000', '2 out of 1,000'),
    ) as DocumentTree;
    expect(await codesOf({ tree: changed })).toContain('VERIFY_NUMBER_ABSENT');
  });

  it('is caught when a sentence is missing', async () => {
    const report = await verify({ pages: withText(standardSentence, null) });
    expect(report.findings).toHaveLength(1);
    expect(report.findings[0]).toMatchObject({ code: 'VERIFY_STATEMENT_ABSENT', path: 'comparison.hbs:22' });
  });

  it('is caught when words that every such document must hold are in neither tree nor file', async () => {
    const report = await verify({ required: ['comparison.yours', 'comparison.absent'] });
    expect(report.findings.map(({ code, path }) => [code, path])).toEqual([
      ['VERIFY_STATEMENT_ABSENT', 'comparison.absent'],
    ]);
  });

  it('is caught when a sentence lost its negation', async () => {
    const pages = withText(medicineCaution, 'Do take anti-inflammatory medicines after a bypass.');
    expect(await codesOf({ pages })).toContain('VERIFY_CAUTION_ABSENT');
  });

  it('is caught when a caution is dropped', async () => {
    const report = await verify({ pages: withText(medicineCaution, null) });
    expect(report.findings.map(({ code, path }) => [code, path])).toEqual([
      ['VERIFY_CAUTION_ABSENT', 'comparison.hbs:31'],
    ]);
    expect(report.cautions).toBe(1);
  });

  it('is caught when two sentences change places', async () => {
    const pages = faithfulPages();
    const first = (pages[0] ?? []).map((text) =>
      text === sleeveSentence ? bypassSentence : text === bypassSentence ? sleeveSentence : text,
    );
    expect(await codesOf({ pages: [first, pages[1] ?? []] })).toEqual(['VERIFY_ORDER']);
  });

  it('is caught when a sentence stands on another page', async () => {
    const [first = [], second = []] = faithfulPages();
    const pages = [
      first.filter((text) => text !== standardSentence),
      [...second.slice(0, 2), standardSentence, ...second.slice(2)],
    ];
    expect(await codesOf({ pages })).toEqual(['VERIFY_ORDER']);
  });

  it('is caught when something more is printed', async () => {
    const [first = [], second = []] = faithfulPages();
    const report = await verify({
      pages: [[...first.slice(0, 3), 'Choose the bypass.', ...first.slice(3)], second],
    });
    expect(report.findings.map((finding) => finding.code)).toEqual(['VERIFY_UNEXPECTED_TEXT']);
    expect(report.findings[0]?.message).toContain('comparison, page 1, 16 letters');
  });

  it('is caught when something more is printed after the furniture', async () => {
    const [first = [], second = []] = faithfulPages();
    expect(await codesOf({ pages: [[...first, 'Choose the bypass.'], second] })).toEqual([
      'VERIFY_UNEXPECTED_TEXT',
    ]);
  });

  it('is caught when a page lacks a phone number', async () => {
    const call = tree.furniture.footer.call;
    const [first = [], second = []] = faithfulPages();
    const report = await verify({
      pages: [first, second.map((text) => (text === call ? call.replace('555-0199', '555-01990') : text))],
    });
    expect(
      report.findings.filter(({ code }) => code === 'VERIFY_PHONE_ABSENT').map(({ message }) => message),
    ).toEqual(['a phone number is not on a page that must show it (comparison, page 2, number 2 of 3)']);
    expect(report.phones).toBe(5);
  });

  it('is caught when a phone number within the text is missing', async () => {
    expect(await codesOf({ pages: withText('The nurse will call you back on 555-0177.', null) })).toEqual([
      'VERIFY_PHONE_ABSENT',
    ]);
  });

  it('is caught when the header is missing from a page', async () => {
    const report = await verify({ pages: withText('My choices · 25 November 2026', null) });
    expect(report.findings.map(({ code, path }) => [code, path])).toEqual([
      ['VERIFY_STATEMENT_ABSENT', 'header'],
    ]);
  });

  it('is caught when a page number is wrong', async () => {
    expect(await codesOf({ pages: withText('Page 2 of 2', 'Page 2 of 3') })).toEqual([
      'VERIFY_PAGE_COUNT',
      'VERIFY_UNEXPECTED_TEXT',
    ]);
  });

  it('is caught when a page is missing', async () => {
    const codes = await codesOf({ pages: faithfulPages().slice(0, 1) });
    expect(codes).toEqual(
      expect.arrayContaining(['VERIFY_PAGE_COUNT', 'VERIFY_CAUTION_ABSENT', 'VERIFY_NUMBER_ABSENT']),
    );
  });

  it('is caught when a page too many is there', async () => {
    expect(await codesOf({ pages: [...faithfulPages(), ['Anything']] })).toContain('VERIFY_PAGE_COUNT');
  });

  it.each([
    ['template brackets', 'Dear {{name}},'],
    ['an unfilled page number', 'See page {page}.'],
    ['an object', 'About [object Object].'],
    ['an empty value', 'It takes undefined days.'],
    ['a number that is none', 'It takes NaN days.'],
    ['a key of a known file', 'See comparison.weight.title for more.'],
    ['a key of the locale', 'See greeting.hello for more.'],
  ])('is caught when the words are %s, even where the tree says the same', async (_, printed) => {
    const changed = smallTree([paragraph('comparison.hbs:1', [words(printed)]), ...firstPage, ...secondPage]);
    const [first = [], second = []] = faithfulPages();
    expect(await codesOf({ tree: changed, pages: [[printed, ...first], second] })).toEqual([
      'VERIFY_UNRESOLVED_KEY',
    ]);
  });

  it('lets record ids, addresses and abbreviations with dots be', async () => {
    const printed = 'Record sleeve.leak.30d.registry-2015, https://www.comparison.example/a.b, i.e. common.';
    const changed = smallTree([paragraph('comparison.hbs:1', [words(printed)]), ...firstPage, ...secondPage]);
    const [first = [], second = []] = faithfulPages();
    expect(await verify({ tree: changed, pages: [[printed, ...first], second] })).toMatchObject({
      findings: [],
    });
  });

  it('is caught when the font has no glyph for a character', async () => {
    const printed = 'Ask for 中 here.';
    const changed = smallTree([paragraph('comparison.hbs:1', [words(printed)]), ...firstPage, ...secondPage]);
    const [first = [], second = []] = faithfulPages();
    expect(await codesOf({ tree: changed, pages: [[printed, ...first], second] })).toContain('VERIFY_GLYPH');
  });

  it('is caught when the file is marked as another language', async () => {
    expect(await codesOf({ printedLanguage: 'es' })).toEqual(['VERIFY_LANGUAGE']);
  });

  it('is caught when the words are of another language than asked', async () => {
    const report = await verify({
      askedLanguage: 'es',
      printedLanguage: 'es',
      tree: { ...tree, language: 'es' },
      locale: spanish,
    });
    expect(report.findings.map(({ code, message }) => [code, message])).toEqual([
      [
        'VERIFY_LANGUAGE',
        'the file is in another language than asked (comparison, 0 words only in es, 18 words only in en)',
      ],
    ]);
  });

  it('lets a passage that is marked as foreign have no vote', async () => {
    const title = 'Los resultados que las personas con los balones contaron para los autores y las autoras';
    const foreign = paragraph('comparison.hbs:1', [{ type: 'text', value: title, language: 'es' }]);
    const changed = smallTree([foreign, foreign, foreign, ...firstPage, ...secondPage]);
    const [first = [], second = []] = faithfulPages();
    const pages = [[title, title, title, ...first], second];
    expect(await verify({ tree: changed, pages })).toMatchObject({ findings: [] });
    const unmarked = JSON.parse(JSON.stringify(changed).replaceAll(',"language":"es"', '')) as DocumentTree;
    expect(await codesOf({ tree: unmarked, pages })).toEqual(['VERIFY_LANGUAGE']);
  });

  it('is caught when the attachment is missing or differs', async () => {
    expect(await codesOf({ attached: [] })).toEqual(['VERIFY_ATTACHMENT']);
    expect(
      await codesOf({ attached: [{ ...provenance, content: new TextEncoder().encode('{"a":2}') }] }),
    ).toEqual(['VERIFY_ATTACHMENT']);
  });

  it('is caught when the bytes end early', async () => {
    expect(await verify({ cut: 900 })).toMatchObject({
      passed: false,
      pages: 0,
      findings: [{ code: 'VERIFY_UNREADABLE' }],
    });
  });
});

describe('findings', () => {
  it('never quote the page, which may be about the patient', async () => {
    const reports = await Promise.all([
      verify({ pages: withText(standardSentence, 'Ilsa Marchetti-Boone told us this.') }),
      verify({ pages: withText('Ilsa Marchetti-Boone', null) }),
      verify({ pages: withText('The nurse will call you back on 555-0177.', 'Ilsa, call 555-0177.') }),
    ]);
    expect(reports.map((report) => report.findings.length)).not.toContain(0);
    expect(JSON.stringify(reports)).not.toMatch(/Ilsa|Marchetti|555-0177/);
  });
});
