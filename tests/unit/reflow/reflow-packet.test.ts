import { describe, expect, it } from 'vitest';

import type { Block, Paragraph, StripRow, Table, WeightLine } from '../../../src/model/document.ts';
import { labelText } from '../../../src/model/text-piece.ts';
import { expectedText, listCounter } from '../../../src/model/tree-text.ts';
import { reflowPacket } from '../../../src/reflow/index.ts';
import { recordsOf, statementsOf } from '../../../src/provenance/records-of-document.ts';
import { calendarInEnglish, sixWeeks } from '../../helpers/sample-care-documents.ts';
import { clinicianTree, para, rangeRows, sampleAxis, sampleTrees } from '../../helpers/sample-documents.ts';
import { figure, paragraph, smallTree } from '../../helpers/small-tree.ts';

const origin = 'a:1';
const packetOf = (documents: Parameters<typeof reflowPacket>[0]['documents']) => ({
  caseReference: 'PE-0417',
  language: 'en',
  title: 't',
  author: 'a',
  documents,
});

function largeOf(...blocks: readonly Block[]): readonly Block[] {
  const [tree] = reflowPacket(packetOf([smallTree(blocks)]), 'large-print').documents;
  return tree?.blocks ?? [];
}

const wordsOf = (paragraphs: readonly Paragraph[]): readonly string[] =>
  paragraphs.map(({ inlines }) =>
    inlines.map(({ value, bold }) => (bold === true ? `*${value}*` : value)).join(''),
  );

function rowsOf(block: Block | undefined): readonly (readonly string[])[] {
  if (block?.type !== 'strip') throw new Error('not a strip');
  return block.rows.map(({ name, tag, words }) => [
    labelText(name),
    ...(tag === undefined ? [] : [tag]),
    ...wordsOf(words),
  ]);
}

const table: Table = {
  type: 'table',
  layout: 'choices',
  origin,
  columns: [{ label: '' }, { label: 'A leak' }, { label: 'Can it be undone?' }],
  rows: [
    {
      origin,
      tag: 'Under study',
      cells: [
        [para('Sleeve', 'strong')],
        [
          paragraph(origin, [figure('2', 'sleeve/leak/30d', ['sleeve.leak.30d.a'])]),
          para('at 60 days, note 1', 'small'),
        ].map((one, index) => (index === 0 ? { ...one, role: 'number' as const } : one)),
        [para('No')],
      ],
    },
    {
      origin,
      cells: [
        [para('Bypass')],
        [para('not known'), para('The study does not say.', 'small')],
        [para('Partly')],
      ],
    },
  ],
};

describe('a packet in large print', () => {
  it('leaves every packet of the standard edition, and the sheet for clinicians, as it is', () => {
    const packet = packetOf([...sampleTrees, clinicianTree]);
    expect(reflowPacket(packet, 'standard')).toBe(packet);
    expect(reflowPacket(packet, 'large-print').documents.at(-1)).toBe(clinicianTree);
  });

  it('says of each document for a patient that it is large print', () => {
    const { documents } = reflowPacket(packetOf(sampleTrees), 'large-print');
    for (const tree of documents)
      expect([tree.kind, tree.edition]).toEqual([
        tree.kind,
        tree.audience === 'patient' ? 'large-print' : undefined,
      ]);
  });

  it('sets each column of a table under the name of its row, the head before the value', () => {
    expect(rowsOf(largeOf(table)[0])).toEqual([
      ['Sleeve', 'Under study', 'A leak: *2*, at 60 days, note 1', 'Can it be undone? No'],
      ['Bypass', 'A leak: not known', 'The study does not say.', 'Can it be undone? Partly'],
    ]);
  });

  it('says of each figure what it is out of, since its row may stand pages after the sentence over the table', () => {
    const counted = figure('3', 'sleeve/leak/30d', ['sleeve.leak.30d.a']);
    const numbered = {
      ...paragraph(origin, [{ ...counted, alone: '3 out of 1,000' }]),
      role: 'number' as const,
    };
    const row = { origin, cells: [[para('Sleeve', 'strong')], [numbered], [para('No')]] };
    const [strip] = largeOf({ ...table, rows: [row] });
    expect(rowsOf(strip)).toEqual([['Sleeve', 'A leak: *3 out of 1,000*', 'Can it be undone? No']]);
    expect(JSON.stringify(strip)).not.toContain('"alone"');
  });

  it('puts each note of a table under the row that is the first to cite it, with its number', () => {
    const note = (words: string): readonly Paragraph[] => [para(words, 'small')];
    const row = (name: string): Table['rows'][number] => ({
      origin,
      cells: [[para(name, 'strong')], [para('5')], [para('No')]],
    });
    const four = { ...table, rows: ['A', 'B', 'C', 'D'].map(row) };
    const notes = {
      type: 'list',
      ordered: true,
      origin,
      items: [note('one'), note('two'), note('three')],
    } as const;
    const large = largeOf(four, { ...notes, citedIn: [0, 2, 2] }, para('after'));
    const told = large.map((block) =>
      block.type === 'list'
        ? block.items.map((item, index) => `${listCounter(block, index)} ${wordsOf(item).join()}`)
        : block.type === 'strip'
          ? block.rows.map(({ name }) => labelText(name))
          : block.type,
    );
    expect(told).toEqual([['A'], ['1 one'], ['B', 'C'], ['2 two', '3 three'], ['D'], 'paragraph']);
    const further = largeOf(four, { ...notes, first: 4, citedIn: [0, 2, 2] });
    expect(further.flatMap((block) => (block.type === 'list' ? [block.first] : []))).toEqual([4, 5]);
    // A list that says nothing of rows stays where it is.
    expect(largeOf(four, notes).map(({ type }) => type)).toEqual(['strip', 'list']);
  });

  it('sets the colon of the language between the two', () => {
    const tree = smallTree([table], { language: 'fr', colon: '\u00a0: ' });
    const [after] = reflowPacket(packetOf([tree]), 'large-print').documents;
    expect(rowsOf(after?.blocks[0])[1]).toContain('A leak\u00a0: not known');
  });

  it('keeps every figure of a table tied to its record, also one in the first cell', () => {
    const named: Table = {
      ...table,
      rows: [
        {
          origin,
          cells: [
            [paragraph(origin, [figure('7', 'x/leak/30d', ['x.leak.30d.a'])])],
            [para('a')],
            [para('b')],
          ],
        },
      ],
    };
    const before = smallTree([table, named]);
    const [after = before] = reflowPacket(packetOf([before]), 'large-print').documents;
    expect(recordsOf(after)).toEqual(recordsOf(before));
    expect(recordsOf(after)).toHaveLength(2);
    expect(statementsOf(after)).toEqual(statementsOf(before));
    expect(rowsOf(largeOf(named)[0])).toEqual([['', '7', 'A leak: a', 'Can it be undone? b']]);
  });

  it('makes a heading of a band, over the rows that it names', () => {
    const [first, ...others] = table.rows;
    const band = { origin, group: 'In the first month', cells: [] };
    const blocks = largeOf({ ...table, rows: [...(first === undefined ? [] : [first]), band, ...others] });
    expect(blocks.map(({ type }) => type)).toEqual(['strip', 'heading', 'strip']);
    expect(blocks[1]).toMatchObject({ level: 3, text: 'In the first month' });
    expect(rowsOf(blocks[2]).map(([name]) => name)).toEqual(['Bypass']);
  });

  it('lists the days of a calendar on which something is new, under words about a list', () => {
    const intro = [para('A black date is a day to come in.')];
    const [topic] = largeOf({ type: 'topic', question: 'When?', intro, blocks: [sixWeeks], origin });
    if (topic?.type !== 'topic') throw new Error('not a topic');
    expect(wordsOf(topic.intro)).toEqual([sixWeeks.listed]);
    const days = sixWeeks.weeks.flat().flatMap((day) => (day === null ? [] : [day]));
    const rows = rowsOf(topic.blocks[0]);
    const isNew = days.filter(
      ({ events, stage }, index) =>
        events.length > 0 || (stage !== undefined && stage !== days[index - 1]?.stage),
    );
    expect(isNew.length).toBeGreaterThan(5);
    expect(rows.map(([date]) => date)).toEqual(isNew.map(({ dated }) => dated));
    // Every stage once, with its dates; every event.
    const printed = rows.flat().join('\n').replaceAll('*', '');
    for (const { dated } of sixWeeks.stages) expect(printed.split(labelText(dated))).toHaveLength(2);
    for (const { events } of days) for (const { words } of events) expect(printed).toContain(words);
    const visits = days.flatMap(({ events }) =>
      events.filter(({ comesIn }) => comesIn).map(({ words }) => words),
    );
    expect(visits.length).toBeGreaterThan(0);
    for (const words of visits) expect(rows.flat().join('\n')).toContain(`*${words}*`);
  });

  it.each([
    [['قيادة', 'فيتامينات'], 'قيادة، فيتامينات'],
    [['开车', '维生素'], '开车、维生素'],
    [['गाड़ी', 'विटामिन'], 'गाड़ी, विटामिन'],
  ])('lists %j of a day with the comma of their letters', (words, listed) => {
    const events = words.map((value) => ({ words: value, comesIn: false }));
    const weeks = sixWeeks.weeks.map((week) =>
      week.map((day) => (day === null || day.events.length === 0 ? day : { ...day, events })),
    );
    const [list] = largeOf({ ...sixWeeks, weeks });
    expect(rowsOf(list).flat()).toContain(listed);
  });

  it('lists a stage with an English name as such, its dates in the language of the document', () => {
    const [list] = largeOf(calendarInEnglish);
    const runs =
      list?.type === 'strip' ? list.rows.flatMap(({ words }) => words.map(({ inlines }) => inlines)) : [];
    expect(runs).toEqual(calendarInEnglish.stages.map(({ dated }) => dated));
  });

  it('stacks what is to be ticked: a box for each date that is due, and none for another', () => {
    const [list] = largeOf({
      type: 'checklist',
      head: '',
      box: false,
      columns: ['3 months', '6 months'],
      rows: [{ name: 'Iron', detail: [para('45 mg')], due: [false, true], origin }],
      origin,
    });
    if (list?.type !== 'tick-items') throw new Error('not a list to tick');
    expect(list.items.map(({ words, boxes, box }) => [...wordsOf(words), ...boxes, box])).toEqual([
      ['Iron', '45 mg', '6 months', false],
    ]);
  });

  it('asks every point that matters, and leaves as many lines for one’s own', () => {
    const [list] = largeOf({
      type: 'matters',
      columns: ['A lot', 'Not much'],
      statements: [para('I want to see my children grow up.')],
      blanks: 2,
      origin,
    });
    if (list?.type !== 'tick-items') throw new Error('not a list to tick');
    expect(list.items.map(({ words }) => words.length)).toEqual([1, 0, 0]);
    expect(list.items.every(({ boxes }) => boxes.join() === 'A lot,Not much')).toBe(true);
  });

  it('keeps the box and the line for initials under each point of the talk', () => {
    const [list] = largeOf({
      type: 'talk',
      columns: { box: 'Explained', line: 'My initials' },
      statements: [[para('What is done.')], [para('Who treats me.')]],
      origin,
    });
    const texts = expectedText(smallTree(list === undefined ? [] : [list])).map(({ text }) => text);
    expect(texts).toEqual([
      'What is done.',
      'Explained',
      'My initials',
      'Who treats me.',
      'Explained',
      'My initials',
    ]);
  });

  it('has one axis over the bars, and takes names that a dot divides apart', () => {
    const strip = { type: 'strip', layout: 'range', axis: sampleAxis, rows: [], origin } as const;
    expect(sampleAxis.bottom).toBeDefined();
    expect(largeOf(strip)[0]).toMatchObject({ axis: { min: sampleAxis.min, top: sampleAxis.top } });
    expect(largeOf(strip)[0]).not.toHaveProperty('axis.bottom');
    const lines = largeOf(para('Clinic of the North · For Teodora', 'small'));
    expect(wordsOf(lines.filter((block) => block.type === 'paragraph'))).toEqual([
      'Clinic of the North',
      'For Teodora',
    ]);
  });

  it('says in words where nothing is known: no frame takes the room of a picture, in the same sentence as why', () => {
    const unknown = { type: 'unknown', of: 1000, alt: 'Plan: not known.' } as const;
    const words = [para('Not known', 'number'), para('for people like you. We found no study.')];
    const [strip] = largeOf({
      type: 'strip',
      layout: 'people',
      rows: [{ name: 'Plan', picture: unknown, words, origin }],
      origin,
    });
    expect(rowsOf(strip)).toEqual([['Plan', '*Not known* for people like you. We found no study.']]);
    expect(strip).not.toHaveProperty('rows.0.picture');
  });

  it('runs on what is said under a figure, keeps the picture, the figure and what the gate looks for by itself', () => {
    const picture = {
      type: 'people',
      of: 1000,
      filled: 24,
      may: 0,
      half: false,
      alt: '24 of 1,000',
    } as const;
    const number = {
      ...paragraph(origin, [figure('24 out of 1,000', 'a/b/30d', ['a.b.30d.c'])]),
      role: 'number' as const,
    };
    const warning = { ...para('Call 555-0134.'), duty: 'phone' as const };
    const words = [
      number,
      para('976 do not.'),
      para('Other studies: 18 to 31.', 'small'),
      warning,
      para('其他人。'),
      para('没有。'),
    ];
    const block: Block = {
      type: 'strip',
      layout: 'people',
      rows: [{ name: 'Sleeve', picture, words, origin }],
      origin,
    };
    expect(rowsOf(largeOf(block)[0])).toEqual([
      [
        'Sleeve',
        '24 out of 1,000',
        '976 do not. Other studies: 18 to 31.',
        'Call 555-0134.',
        '其他人。没有。',
      ],
    ]);
    expect(largeOf(block)[0]).toHaveProperty('rows.0.picture', picture);
    const [after] = reflowPacket(packetOf([smallTree([block])]), 'large-print').documents;
    expect(after === undefined ? [] : recordsOf(after)).toEqual(recordsOf(smallTree([block])));
  });

  it('has an axis only right above the bars that are read from it: not over rows without a picture', () => {
    const [bar] = rangeRows;
    if (bar?.picture === undefined) throw new Error('no bar');
    const unknown: StripRow = {
      name: 'Plan',
      picture: { type: 'unknown', of: 1000, alt: 'Plan: not known.' },
      words: [para('Not known', 'number')],
      origin,
    };
    const rows = [unknown, bar, bar, unknown, unknown, bar];
    const strips = largeOf({ type: 'strip', layout: 'range', axis: sampleAxis, rows, origin });
    const shapes = strips.map((strip) =>
      strip.type === 'strip' ? [strip.rows.length, strip.axis !== undefined, strip.layout] : [],
    );
    expect(shapes).toEqual([
      [1, false, 'range'],
      [2, true, 'range'],
      [2, false, 'range'],
      [1, true, 'range'],
    ]);
    expect(strips.flatMap((strip) => rowsOf(strip).map(([name]) => name))).toEqual(
      rows.map(({ name }) => labelText(name)),
    );
    const none = largeOf({ type: 'strip', layout: 'range', axis: sampleAxis, rows: [unknown], origin });
    expect(none).toHaveLength(1);
    expect(none[0]).not.toHaveProperty('axis');
  });

  it('has the key over its pictures, however many parts these have, and leaves any other key where it is', () => {
    const key: Block = { type: 'key', heading: 'How to read the bars', items: [], origin };
    const [bar] = rangeRows;
    if (bar === undefined) throw new Error('no bar');
    const { name, words } = bar;
    const rows = [{ name, words, origin }, bar];
    const bars: Block = { type: 'strip', layout: 'range', axis: sampleAxis, rows, origin };
    const choices: Block = { type: 'strip', layout: 'text', rows: [], origin };
    const inTopic = (...blocks: readonly Block[]): readonly string[] => {
      const [topic] = largeOf({ type: 'topic', question: 'How much?', intro: [], blocks, origin });
      return topic?.type === 'topic' ? topic.blocks.map(({ type }) => type) : [];
    };
    expect(inTopic(bars, key, para('One study.'))).toEqual(['key', 'strip', 'strip', 'paragraph']);
    expect(inTopic(choices, key)).toEqual(['strip', 'key']);
    expect(inTopic(para('a'), key)).toEqual(['paragraph', 'key']);
  });

  it('has what to say after all frames of signs, and leaves it where there are none', () => {
    const say: Block = { type: 'say', heading: 'What to say', sentences: [], origin };
    const frames: Block = { type: 'warning-frames', frames: [], origin };
    const types = (blocks: readonly Block[]): readonly string[] => blocks.map(({ type }) => type);
    expect(types(largeOf(frames, say, frames, para('The end.')))).toEqual([
      'warning-frames',
      'warning-frames',
      'say',
      'paragraph',
    ]);
    expect(types(largeOf(para('a'), say, para('b')))).toEqual(['paragraph', 'say', 'paragraph']);
  });

  it('leaves a way back and rows of words as they are', () => {
    const picture = { type: 'way-back', possible: 'not-known', alt: 'not known' } as const;
    const words = [para('Not known', 'number'), para('for people like you.')];
    for (const layout of ['way-back', 'text'] as const) {
      const strip: Block = {
        type: 'strip',
        layout,
        rows: [{ name: 'Plan', picture, words, origin }],
        origin,
      };
      expect(largeOf(strip)).toEqual([strip]);
    }
  });

  it.each([
    [
      [180, 200, 220],
      [180, 200, 220],
    ],
    [
      [180, 200, 220, 240, 260],
      [180, 220, 260],
    ],
    [
      [1, 2, 3, 4, 5, 6, 7, 8],
      [1, 5],
    ],
  ])('of the values %j beside a weight line says those that have room: %j', (values, shown) => {
    const line: WeightLine = {
      type: 'weight-line',
      name: 'Sleeve',
      min: 1,
      max: 300,
      today: { at: 118, label: 'You today' },
      points: [],
      timeTicks: [
        { at: 0, label: '0' },
        { at: 12, label: '1' },
      ],
      valueTicks: values.map((at) => ({ at, label: String(at) })),
      alt: 'a line',
      origin,
    };
    const [board] = largeOf({ type: 'line-board', lines: [line], origin });
    if (board?.type !== 'line-board') throw new Error('not a board of lines');
    expect(board.lines[0]?.valueTicks.map(({ at }) => at)).toEqual(shown);
    expect(board.lines[0]?.timeTicks).toHaveLength(2);
  });
});
