import { describe, expect, it } from 'vitest';
import type { Block } from '../../../src/model/document.ts';
import {
  continuedHeading,
  expectedText,
  furnitureTexts,
  pageNumberText,
  pointOf,
  repeatedTexts,
} from '../../../src/model/tree-text.ts';
import {
  furniture,
  inlines,
  para,
  rangeRows,
  sampleAxis,
  topic,
  weightLine,
} from '../../helpers/sample-documents.ts';
import { figure, smallTree, words } from '../../helpers/small-tree.ts';

const origin = 'sample.hbs:1';

function textsOf(...blocks: Block[]): string[] {
  return expectedText(smallTree(blocks)).map(({ text }) => text);
}

describe('the order in which texts are printed', () => {
  it('of a cover: clinic, date, question, lead, addressee', () => {
    const cover: Block = {
      type: 'cover',
      clinic: 'Clinic',
      date: 'Date',
      question: 'Question?',
      lead: inlines('Lead.'),
      addressee: 'For I',
      origin,
    };
    expect(textsOf(cover)).toEqual(['Clinic', 'Date', 'Question?', 'Lead.', 'For I']);
  });

  it('of a topic: question, sentences, blocks', () => {
    expect(textsOf(topic('Q?', ['One.', 'Two.'], [para('Three.')]))).toEqual([
      'Q?',
      'One.',
      'Two.',
      'Three.',
    ]);
  });

  it('of a strip: upper axis, rows, lower axis', () => {
    const [row] = rangeRows;
    if (row === undefined) throw new Error('a row is needed');
    const strip: Block = {
      type: 'strip',
      layout: 'range',
      axis: sampleAxis,
      rows: [{ ...row, tag: 'Under study' }],
      origin,
    };
    expect(textsOf(strip)).toEqual([
      'You today',
      '150',
      '180',
      '210',
      '240',
      '270',
      'pounds',
      'Sleeve',
      'Under study',
      '206 lb (93 kg)',
      '62 lb less than today.',
      'Two in three: 180 to 232 lb.',
      'After 1 year: 195 lb.',
      '70',
      '80',
      '90',
      '100',
      '110',
      '120',
      '130',
      'kilograms',
    ]);
    expect(textsOf({ ...strip, rows: [] })).toEqual([]);
  });

  it('of a weight line: name, values, today, times, measured values, what is not known', () => {
    expect(textsOf({ type: 'line-board', lines: [weightLine('Bypass')], origin })).toEqual([
      'Bypass',
      '240',
      '200',
      '160',
      'You today',
      'today',
      '1',
      '2',
      '5',
      '10',
      '181',
      '178',
      '190',
      'not known after 5 years',
    ]);
  });

  it('of a table: heads, then each row with its group, its cells, and the tag at the end of the first', () => {
    const table: Block = {
      type: 'table',
      layout: 'choices',
      columns: [{ label: '' }, { label: 'A leak' }],
      rows: [
        {
          group: 'Operations',
          tag: 'Under study',
          cells: [[para('Sleeve')], [para('6'), para('of 1,000')]],
          origin,
        },
      ],
      origin,
    };
    expect(textsOf(table)).toEqual(['A leak', 'Operations', 'Sleeve', 'Under study', '6', 'of 1,000']);
    expect(textsOf({ ...table, rows: [] })).toEqual([]);
  });

  it('of a panel: lead, body, each column, closing', () => {
    const panel: Block = {
      type: 'panel',
      lead: inlines('Dr. F leans to B.'),
      body: [para('One opinion.')],
      columns: [
        { heading: 'For', items: [para('a')] },
        { heading: 'Against', items: [para('b')] },
      ],
      closing: [para('Call.')],
      origin,
    };
    expect(textsOf(panel)).toEqual([
      'Dr. F leans to B.',
      'One opinion.',
      'For',
      'a',
      'Against',
      'b',
      'Call.',
    ]);
  });

  it('of lists: a counter before each step, none before a bullet', () => {
    const items = [[para('One.')], [para('Two.'), para('More.')]];
    expect(textsOf({ type: 'list', ordered: true, items, origin })).toEqual([
      '1',
      'One.',
      '2',
      'Two.',
      'More.',
    ]);
    expect(textsOf({ type: 'list', ordered: false, items, origin })).toEqual(['One.', 'Two.', 'More.']);
  });

  it('of the other blocks: the order of their fields', () => {
    expect(textsOf({ type: 'callout', kind: 'health', heading: 'H', body: [para('b')], origin })).toEqual([
      'H',
      'b',
    ]);
    expect(textsOf({ type: 'key', heading: 'K', items: [{ mark: 'had', words: 'w' }], origin })).toEqual([
      'K',
      'w',
    ]);
    expect(
      textsOf({ type: 'matters', columns: ['A lot'], statements: [para('s')], blanks: 2, origin }),
    ).toEqual(['A lot', 's']);
    expect(textsOf({ type: 'ticks', heading: 'T', items: ['a', 'b'], origin })).toEqual(['T', 'a', 'b']);
    expect(textsOf({ type: 'write-in', prompt: para('Why?'), box: true, lines: 2, origin })).toEqual([
      'Why?',
    ]);
    expect(textsOf({ type: 'write-in', box: true, lines: 2, origin })).toEqual([]);
    expect(textsOf({ type: 'facts', items: [{ label: 'Born', value: '1979' }], origin })).toEqual([
      'Born',
      '1979',
    ]);
    expect(textsOf({ type: 'heading', level: 1, text: 'Title', origin })).toEqual(['Title']);
  });

  it('joins the inlines of a paragraph, keeps its figures and its duty, and leaves empty texts out', () => {
    const [piece, ...others] = expectedText(
      smallTree([
        {
          ...para(''),
          inlines: [words('In '), figure('24 out of 1,000', 'sleeve/major/30d', ['r1']), words(' people.')],
          duty: 'caution',
        },
        para(' '),
      ]),
    );
    expect(others).toEqual([]);
    expect(piece).toMatchObject({ text: 'In 24 out of 1,000 people.', duty: 'caution', kind: 'paragraph' });
    expect(piece?.figures.map(({ cell }) => cell)).toEqual(['sleeve/major/30d']);
  });
});

describe('texts that may be printed again', () => {
  it('are headings with the word for continued, also of call-outs, axes and heads of tables', () => {
    const tree = smallTree([
      { type: 'callout', kind: 'health', heading: 'Your health', body: [para('**You smoke.** b')], origin },
      topic('Q?', [], [{ type: 'strip', layout: 'range', axis: sampleAxis, rows: rangeRows, origin }]),
      {
        type: 'table',
        layout: 'dense',
        columns: [{ label: 'Record' }],
        rows: [{ group: 'Sleeve', cells: [], origin }],
        origin,
      },
    ]);
    const texts = repeatedTexts(tree).map(({ text }) => text);
    expect(texts).toContain(continuedHeading('Q?', 'continued'));
    expect(texts).toEqual(
      expect.arrayContaining([continuedHeading('Your health', 'continued'), 'You smoke.']),
    );
    expect(texts).toEqual(expect.arrayContaining(['You today', '150', 'pounds', 'Record', 'Sleeve']));
    expect(texts).not.toContain('kilograms');
  });

  it('are the lead of an opinion and its headings, under which a further reason may begin a page', () => {
    const columns = ['The reasons', 'What speaks against it'].map((heading) => ({
      heading,
      items: [para('a')],
    }));
    const panel: Block = { type: 'panel', lead: inlines('Lead.'), body: [], columns, closing: [], origin };
    expect(repeatedTexts(smallTree([panel])).map(({ text }) => text)).toEqual([
      'Lead.',
      'The reasons',
      'What speaks against it',
    ]);
  });

  it('are the word for “continued” after each heading, and a small heading without it, under its question', () => {
    const heading = (level: 2 | 3, text: string): Block => ({ type: 'heading', level, text, origin });
    const tree = smallTree([heading(2, 'Why?'), topic('Q?', [], [heading(3, 'For life')])]);
    expect(repeatedTexts(tree).map(({ text }) => text)).toEqual([
      continuedHeading('Why?', 'continued'),
      continuedHeading('Q?', 'continued'),
      continuedHeading('For life', 'continued'),
      'For life',
    ]);
  });
});

describe('texts around a page', () => {
  const tree = smallTree([], { furniture: furniture({ headerOnFirstPage: false }) });

  it('are tab, header, call, page, deferral, id; no header on a first page with a cover', () => {
    const foot = [
      'Questions? Call 555-0142. At night call 555-0177.',
      'Page 2 of 7',
      'This does not replace your surgeon.',
      'LW-2207-C1 · next check November 2027',
    ];
    const tab = 'Example. Invented person, invented numbers.';
    expect(furnitureTexts(tree, 2, 7)).toEqual([
      tab,
      'Teodora Lindqvist-Abara',
      'My choices · 25 November 2026',
      ...foot,
    ]);
    expect(furnitureTexts(tree, 1, 7)).toEqual([
      tab,
      ...foot.map((text) => text.replace('Page 2', 'Page 1')),
    ]);
  });

  it('put both numbers into the page number, as often as they are asked for', () => {
    const words = furniture({ footer: { ...furniture().footer, page: '{page}/{pages} ({pages})' } });
    expect(pageNumberText(words, 3, 9)).toBe('3/9 (9)');
  });
});

describe('the point of a paragraph in a call-out', () => {
  const said = {
    type: 'paragraph',
    role: 'body',
    inlines: [{ type: 'text', value: 'Call now:', bold: true }],
    origin,
  } as const;

  it('is its bold words, but none where it says whom to call: what follows goes on with the point before', () => {
    expect(pointOf(said)).toBe('Call now:');
    expect(pointOf({ ...said, duty: 'phone' })).toBe('');
  });
});
