import { beforeAll, describe, expect, it } from 'vitest';
import type { Block } from '../../../src/model/document.ts';
import type { Locale } from '../../../src/model/locale.ts';
import { drawStripPicture } from '../../../src/pictures/strip-picture.ts';
import { placeWeight, smallLine, strokesOfLine } from '../../../src/pictures/weight-line.ts';
import { shippedLocale } from '../../helpers/locale-words.ts';
import {
  asides,
  calendarInEnglish,
  finalConsentTree,
  frame,
  inEnglish,
  say,
  sixWeeks,
  warningFrames,
} from '../../helpers/sample-care-documents.ts';
import { para, peopleRow, rangeRows, sampleAxis, topic, weightLine } from '../../helpers/sample-documents.ts';
import { sampleDrawing } from '../../helpers/sample-drawing.ts';
import { attributeOf, bodyOf, tagsOf, textOf, within } from '../../helpers/web-page.ts';
import type { Element } from '../../helpers/web-page.ts';

const origin = 'sample.hbs:1';

let locale: Locale;
beforeAll(async () => {
  locale = await shippedLocale('en');
});

function made(...blocks: Block[]): Element {
  return bodyOf(blocks, locale);
}

function all(body: Element, tag: string): readonly Element[] {
  return within(body).filter(({ tagName }) => tagName === tag);
}

/** Text alternative of each image. */
function alternatives(body: Element): readonly string[] {
  return within(body)
    .filter((element) => attributeOf(element, 'role') === 'img')
    .map((element) => {
      const names = within(element).filter(({ tagName }) => tagName === 'title' || tagName === 'desc');
      return names.length === 0 ? (attributeOf(element, 'aria-label') ?? '') : names.map(textOf).join(' | ');
    });
}

/** What is marked as being in another language, with that language. */
function marked(body: Element): readonly unknown[] {
  return within(body)
    .filter(({ tagName }) => tagName === 'span')
    .flatMap((element) => {
      const language = attributeOf(element, 'lang');
      return language === undefined ? [] : [[language, textOf(element)]];
    });
}

function paths(body: Element): readonly string[] {
  return all(body, 'path').map((path) => attributeOf(path, 'd') ?? '');
}

describe('blocks as HTML', () => {
  it('set bold words, figures and words in another language in a paragraph', () => {
    const block: Block = {
      ...para('x'),
      type: 'paragraph',
      inlines: [
        { type: 'text', value: 'Out of 1,000: ' },
        { type: 'figure', value: '24', cell: 'a/b', records: ['r'], bold: true },
        { type: 'text', value: 'Vertaling', language: 'nl' },
      ],
    };
    const [paragraph] = all(made(block), 'p');
    expect(paragraph && textOf(paragraph)).toBe('Out of 1,000: 24Vertaling');
    expect(all(made(block), 'strong').map(textOf)).toEqual(['24']);
    const spans = all(made(block), 'span').map((one) => [textOf(one), attributeOf(one, 'lang')]);
    expect(spans).toEqual([
      ['of 1,000:', undefined],
      ['Vertaling', 'nl'],
    ]);
  });

  it('let a number to call be dialled where a paragraph gives one', () => {
    const block: Block = { ...para('For a second opinion call 555-0199.'), type: 'paragraph', duty: 'phone' };
    expect(all(made(block), 'a').map((one) => [attributeOf(one, 'href'), textOf(one)])).toEqual([
      ['tel:5550199', '555-0199'],
    ]);
  });

  it('let a number of the clinic be dialled wherever it stands whole, and no part of another', () => {
    const dialled = (words: string): readonly string[] =>
      all(made({ ...para(words), type: 'paragraph' }), 'a').map(textOf);
    expect(dialled('Call 555-0142, or 555-0199: at once.')).toEqual(['555-0142', '555-0199']);
    expect(dialled('Number 1555-0142, id QB-555-0142, sum 555-01423.')).toEqual([]);
    expect(dialled('请打555-0142。夜里请打555-0199')).toEqual(['555-0142', '555-0199']);
    expect(dialled('555-0142번으로 전화하거나 물어보세요.')).toEqual(['555-0142']);
    // Too short to be known for a phone outside a paragraph that is there to be called.
    expect(dialled('Of 911 people, 3 had a leak.')).toEqual([]);
    const called: Block = { ...para('Emergency: 911.'), type: 'paragraph', duty: 'phone' };
    expect(all(made(called), 'a').map(textOf)).toEqual(['911']);
  });

  it('set a band over rows as one row, and a table of many columns so that its rows may become boards', () => {
    const columns = ['Record', 'Outcome', 'Time', 'Figure', 'CI', 'n', 'Why'].map((label) => ({ label }));
    const row = { origin, cells: columns.map(({ label }) => [para(`a ${label}`)]) };
    const table = (few: number): Element =>
      made({
        type: 'table',
        layout: 'dense',
        columns: columns.slice(0, few),
        rows: [
          { group: 'Sleeve', cells: [], origin },
          { origin, cells: row.cells.slice(0, few) },
          { group: 'Bypass', cells: row.cells.slice(0, few), origin },
        ],
        origin,
      });
    const rows = all(table(7), 'tr').map(textOf);
    expect(rows.slice(1)).toEqual(['Sleeve', rows[2], 'Bypass', rows[2]]);
    expect(rows[2]).toContain('a Record');
    expect([7, 2].map((few) => attributeOf(all(table(few), 'table')[0] as Element, 'class'))).toEqual([
      'wide dense',
      'stacked dense',
    ]);
  });

  it('set a strip as a list: each picture the same as on paper, with its words as its caption', () => {
    const rows = [
      ...rangeRows.slice(0, 2),
      { ...rangeRows[2], words: [para('Not known')] } as (typeof rangeRows)[0],
    ];
    const body = made({ type: 'strip', layout: 'range', axis: sampleAxis, rows, origin });
    expect(all(body, 'li')).toHaveLength(3);
    expect(all(body, 'figcaption').map(textOf)[0]).toContain('206 lb (93 kg)');
    expect(alternatives(body)).toEqual(rows.map(({ picture }) => picture?.alt));
    const drawn = paths(body);
    const strokes = rows.flatMap(({ picture }) =>
      picture === undefined ? [] : drawStripPicture(picture, sampleAxis, 'ltr').strokes,
    );
    expect(strokes.length).toBeGreaterThan(6);
    expect(strokes.filter(({ path }) => path !== '' && !drawn.includes(path))).toEqual([]);
  });

  it('draw a thousand people from groups that stand once in the page', () => {
    const row = peopleRow('Sleeve', { of: 1000, filled: 24 }, ['24 out of 1,000', '976 do not.']);
    const body = made({ type: 'strip', layout: 'people', rows: [row, row], origin });
    const uses = all(body, 'use').map((one) => attributeOf(one, 'href'));
    expect(uses).toEqual(Array.from({ length: 18 }, () => '#people-1000-not'));
    expect(all(body, 'g')).toHaveLength(2);
  });

  it('leave the room of a picture free where a row has none', () => {
    const row = { name: 'No operation', words: [para('None')], origin };
    const body = made({ type: 'strip', layout: 'people', rows: [row], origin });
    expect(tagsOf(body)).not.toContain('figure');
    expect(textOf(body)).toBe('No operationNone');
  });

  it('set a weight line as a figure with its name, its labels as text, and a description', () => {
    const line = weightLine('Sleeve');
    const body = made({ type: 'line-board', lines: [line], origin });
    expect(all(body, 'figcaption').map(textOf)).toEqual(['Sleeve']);
    expect(alternatives(body)).toEqual([`Sleeve | ${line.alt}`]);
    expect(all(body, 'text').map(textOf)).toContain('You today');
    const drawn = paths(body);
    const strokes = strokesOfLine(line, smallLine, 'ltr');
    expect(strokes.filter(({ path }) => path !== '' && !drawn.includes(path))).toEqual([]);
  });

  it('set the values of a weight line level with its lines of the grid, also where these are close', () => {
    const values = [160, 182, 204, 226, 248, 270];
    const valueTicks = values.map((value) => ({ at: value / 2.20462, label: String(value) }));
    const line = weightLine('Sleeve', { valueTicks });
    const body = made({ type: 'line-board', lines: [line], origin });
    const lines = all(body, 'tspan').filter((one) => values.includes(Number(textOf(one))));
    const middleOfDigits = 4.4;
    const level = lines.map((one, index) => {
      const wanted = placeWeight(line, smallLine, valueTicks[index]?.at ?? 0);
      return Math.abs(Number(attributeOf(one, 'y')) - middleOfDigits - wanted) < 1;
    });
    expect(level).toEqual(values.map(() => true));
  });

  it('set a drawing of the body with its labels as one figure for each view', () => {
    const body = made(sampleDrawing);
    const views = sampleDrawing.views;
    expect(all(body, 'figcaption').map(textOf)).toEqual(views.map(({ heading }) => heading));
    expect(alternatives(body)).toEqual(views.map(({ heading, alt }) => `${heading} | ${alt}`));
    const words = all(body, 'text').map((one) => textOf(one));
    expect(words).toEqual(views.flatMap(({ labels }) => labels.map(({ text }) => text)));
  });

  it('set a table with a caption, heads of columns and rows, and none without words', () => {
    const table: Block = {
      type: 'table',
      layout: 'choices',
      columns: ['', 'A leak', 'Bleeding'].map((label) => ({ label })),
      rows: [
        { cells: [[para('Sleeve')], [para('6')], [para('9')]], origin, group: 'Operations' },
        { cells: [[], [para('7')], [para('8')]], origin },
      ],
      origin,
    };
    const body = made(topic('Which problems happen?', [], [table]));
    expect(all(body, 'caption').map(textOf)).toEqual(['Which problems happen?']);
    const heads = all(body, 'th').map((one) => [attributeOf(one, 'scope'), textOf(one)]);
    expect(heads).toEqual([
      ['col', 'A leak'],
      ['col', 'Bleeding'],
      ['rowgroup', 'Operations'],
      ['row', 'Sleeve'],
    ]);
    expect(all(body, 'td').map((one) => [attributeOf(one, 'data-label'), textOf(one)])).toEqual([
      [undefined, ''],
      ['A leak', '6'],
      ['Bleeding', '9'],
      [undefined, ''],
      ['A leak', '7'],
      ['Bleeding', '8'],
    ]);
  });

  it('let a list count its items, and a plain one mark them', () => {
    const items = [[para('Read.')], [para('Ask.')]];
    expect(tagsOf(made({ type: 'list', ordered: true, items, origin }))).toEqual([
      'ol',
      'li',
      'p',
      'li',
      'p',
    ]);
    expect(tagsOf(made({ type: 'list', ordered: false, items, origin }))).toContain('ul');
    const [further] = all(made({ type: 'list', ordered: true, items, first: 4, origin }), 'ol');
    expect(further === undefined ? undefined : attributeOf(further, 'start')).toBe('4');
  });

  it('name facts as terms with what they are', () => {
    const body = made({ type: 'facts', items: [{ label: 'Born', value: '3 August 1979' }], origin });
    expect(tagsOf(body)).toEqual(['dl', 'div', 'dt', 'dd', 'span']);
  });

  it('say of a fact in another language which it is', () => {
    const items = [{ label: 'Estancia', value: inEnglish('1 night') }];
    expect(marked(made({ type: 'facts', items, origin }))).toEqual([['en', '1 night']]);
  });

  it('say of a name, and of whose a number is and when, in another language which it is', () => {
    const row = { name: inEnglish('Full liquids'), words: [para('Leche.')], origin };
    expect(marked(made({ type: 'strip', layout: 'text', rows: [row], origin }))).toEqual([
      ['en', 'Full liquids'],
    ]);
    const phones = [{ label: inEnglish('Nurse line'), hours: inEnglish('8 to 5'), number: '555-0129' }];
    const frames = [frame('today', ['Fiebre'], { phones })];
    expect(marked(made({ type: 'warning-frames', frames, origin }))).toEqual([
      ['en', 'Nurse line'],
      ['en', '8 to 5'],
    ]);
  });

  it('say of a stage in another language its name and its dates apart, each in its own', () => {
    const body = made(calendarInEnglish);
    expect(alternatives(body)).toEqual(['Clear liquids', 'hasta el 20 de enero', 'Soft food']);
    const images = within(body).filter((element) => attributeOf(element, 'role') === 'img');
    expect(images.map((image) => attributeOf(image, 'lang'))).toEqual(['en', undefined, 'en']);
    const [first] = marked(body);
    expect(first).toEqual(['en', 'Clear liquids']);
  });

  it('let each warning number be dialled, the frames under headings of one level', () => {
    const body = made({ type: 'heading', level: 1, text: 'When to call', origin }, warningFrames);
    const levels = within(body).flatMap(({ tagName }) => (/^h\d$/.test(tagName) ? [tagName] : []));
    expect(levels).toEqual(['h1', 'h2', 'h2', 'h2']);
    const numbers = all(body, 'a').map((one) => attributeOf(one, 'href') ?? '');
    expect(numbers.length).toBeGreaterThan(2);
    expect(numbers.every((to) => /^tel:\+?\d+$/.test(to))).toBe(true);
  });

  it('say under the numbers, and before the signs, which of them comes first', () => {
    const first = 'Call 911 first if you pass out.';
    const words = [{ type: 'text' as const, value: first }];
    const frames = [
      frame('now', ['Pain'], { first: words, phones: [{ number: '911' }, { number: '555-0134' }] }),
    ];
    const said = within(made({ type: 'warning-frames', frames, origin }))
      .filter(({ tagName }) => ['a', 'p', 'li'].includes(tagName))
      .map((element) => textOf(element));
    const place = said.indexOf(first);
    expect(place).toBeGreaterThan(said.indexOf('555-0134'));
    expect(place).toBeLessThan(said.indexOf('Pain'));
  });

  it('set short lists side by side under headings of one level', () => {
    const body = made({ type: 'heading', level: 1, text: 'At home', origin }, asides);
    const levels = within(body).flatMap(({ tagName }) => (/^h\d$/.test(tagName) ? [tagName] : []));
    expect(levels).toEqual(['h1', 'h2', 'h2', 'h2']);
  });

  it('say what belongs into a blank to those who hear the page', () => {
    expect(alternatives(made(say)).length).toBeGreaterThan(0);
    expect(alternatives(made(say)).every((text) => text !== '')).toBe(true);
  });

  it('keep a blank on one line with the word before it', () => {
    const wholes = (...words: readonly string[]): readonly string[] => {
      const parts = words.flatMap((value) => [
        { type: 'words', inlines: [{ type: 'text', value }] } as const,
        { type: 'blank', share: 1, alt: 'time' } as const,
      ]);
      const body = made({ type: 'say', heading: 'Say', sentences: [{ parts, origin }], origin });
      expect(textOf(body)).toContain(words.join(''));
      const held = within(body).filter((element) =>
        within(element).some((inner) => attributeOf(inner, 'class') === 'blank'),
      );
      return held.filter((element) => attributeOf(element, 'class') === 'whole').map(textOf);
    };
    expect(wholes('I have ', 'then since ')).toEqual(['have ', 'since ']);
    expect(wholes('开始于', '。我的脉搏一直都是', '，体温：')).toEqual(['开始于', '直都是', '体温：']);
    expect(wholes('ونبضي ')).toEqual(['ونبضي ']);
    expect(wholes('supercalifragilistic ')).toEqual(['']);
  });

  it('set a calendar as a table of weeks whose ribbon says each stage once, where it begins', () => {
    const body = made(sixWeeks);
    expect(all(body, 'th').map(textOf)).toEqual([...sixWeeks.weekdays]);
    expect(alternatives(body)).toEqual(sixWeeks.stages.map(({ dated }) => dated));
    for (const row of all(body, 'tr')) {
      const days = within(row)
        .filter(({ tagName }) => tagName === 'td' || tagName === 'th')
        .reduce((sum, cell) => sum + Number(attributeOf(cell, 'colspan') ?? 1), 0);
      expect(days).toBe(7);
    }
  });

  it('show in a narrow page at least one day of every week', () => {
    const body = made(sixWeeks);
    const weeks = all(body, 'tr').filter((row) => attributeOf(row, 'class') === 'week');
    expect(weeks).toHaveLength(sixWeeks.weeks.length);
    for (const week of weeks) {
      const shown = within(week).filter(
        (cell) => cell.tagName === 'td' && !/quiet/.test(attributeOf(cell, 'class') ?? ''),
      );
      expect(shown.length).toBeGreaterThan(0);
    }
  });

  it('have in a record of a talk no field that says it may not be signed, once it may', () => {
    const body = bodyOf(finalConsentTree.blocks, locale);
    expect(textOf(body)).not.toContain('Do not sign');
    expect(within(body).some((one) => /hatched/.test(attributeOf(one, 'class') ?? ''))).toBe(false);
  });
});
