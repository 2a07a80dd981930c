import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';

import { buildBlocks } from '../../../src/compose/markup/build-blocks.ts';
import { parseTemplate } from '../../../src/compose/template/parse-template.ts';
import type { ParsedTemplate } from '../../../src/compose/template/parse-template.ts';
import { compileTemplate } from '../../../src/compose/template/run-template.ts';
import type { Translator } from '../../../src/model/locale.ts';
import { realLocale } from '../../helpers/compose-inputs.ts';

const folder = join(import.meta.dirname, '../../../templates/partials');
const names = ['line', 'warning-frame', 'sentence', 'calendar', 'checklist-body', 'signatures'] as const;

let translator: Translator;
beforeAll(async () => {
  ({ translator } = await realLocale('en'));
});

function parsed(source: string, file: string): ParsedTemplate {
  const template = parseTemplate(source, file);
  if (!template.ok) throw new Error(`${file} does not parse`);
  return template.value;
}

/** The blocks that a template with the partials makes of a view. */
function blocksOf(source: string, view: object): unknown {
  const partials = new Map(
    names.map((name) => {
      const file = `partials/${name}.hbs`;
      return [name, parsed(readFileSync(join(folder, `${name}.hbs`), 'utf8'), file)] as const;
    }),
  );
  const run = compileTemplate(parsed(source, 'sample/main.hbs'), partials);
  return buildBlocks(run(view, translator), 'sample/main.hbs');
}

const line = (markup: string): object => ({ role: 'body', duty: '', words: { markup } });

describe('partials of the documents for going home and for consent', () => {
  it('write frames of warning signs', () => {
    const frames = [
      {
        urgency: 'now',
        heading: 'Call "now"',
        note: '',
        first: { markup: '<stands on="aftercare:a">Call 911 first.</stands>' },
        phones: [
          { number: '911', label: { markup: '' }, hours: null },
          {
            number: '555-0129',
            label: { markup: 'Line' },
            hours: { markup: '<lang code="nl">Overdag</lang>' },
          },
        ],
        items: [line('<b>Pain</b> in your chest')],
      },
      { urgency: 'today', heading: 'Call us', note: 'Day or night.', first: null, phones: [], items: [] },
    ];
    expect(
      blocksOf('<warning-frames>{{#each frames}}{{> warning-frame}}{{/each}}</warning-frames>', { frames }),
    ).toMatchObject([
      {
        type: 'warning-frames',
        frames: [
          {
            urgency: 'now',
            heading: 'Call "now"',
            first: [{ value: 'Call 911 first.', statements: ['aftercare:a'] }],
            phones: [
              { number: '911' },
              { number: '555-0129', label: 'Line', hours: [{ value: 'Overdag', language: 'nl' }] },
            ],
            items: [{ inlines: [{ value: 'Pain', bold: true }, { value: ' in your chest' }] }],
            origin: 'partials/warning-frame.hbs:2',
          },
          { note: 'Day or night.' },
        ],
      },
    ]);
  });

  it('write sentences with blanks', () => {
    const blank = { words: null, share: 2, alt: 'what is wrong' };
    const words = (markup: string): object => ({ words: { markup }, share: 0, alt: '' });
    const sentences = [{ parts: [words('I have'), blank, words('.')] }];
    expect(
      blocksOf('<say heading="Say">{{#each sentences}}{{> sentence}}{{/each}}</say>', { sentences }),
    ).toMatchObject([
      {
        sentences: [
          {
            parts: [{ type: 'words' }, { type: 'blank', share: 2, alt: 'what is wrong' }, { type: 'words' }],
          },
        ],
      },
    ]);
  });

  it('write a calendar', () => {
    const days = ['2027-01-14', '2027-01-15'].map((date) => ({
      date,
      label: date.slice(8),
      dated: `on ${date}`,
      comesIn: date.endsWith('14'),
      notes: date.endsWith('14') ? ['Operation'] : [],
      events: date.endsWith('14') ? [{ words: 'Operation', comesIn: true }] : [],
    }));
    const view = {
      firstWeekday: 'monday',
      listed: 'These days have something new.',
      weekdays: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'],
      stages: [
        {
          pattern: 'dots',
          label: { markup: 'Clear' },
          from: '2027-01-14',
          to: '2027-01-20',
          dated: { markup: '<lang code="nl">Helder</lang>: a week' },
        },
      ],
      days,
    };
    expect(blocksOf('{{> calendar view}}', { view })).toMatchObject([
      {
        type: 'calendar',
        listed: 'These days have something new.',
        weekdays: view.weekdays,
        weeks: [
          [
            null,
            null,
            null,
            {
              label: '14',
              dated: 'on 2027-01-14',
              comesIn: true,
              notes: ['Operation'],
              events: [{ words: 'Operation', comesIn: true }],
              stage: 0,
            },
            { label: '15', comesIn: false, notes: [], stage: 0 },
            null,
            null,
          ],
        ],
        stages: [{ label: 'Clear', dated: [{ value: 'Helder', language: 'nl' }, { value: ': a week' }] }],
      },
    ]);
  });

  it('write a checklist and rows to sign in', () => {
    const checklist = {
      columns: ['April', 'July'],
      rows: [
        { name: 'B12', due: '2', lines: [line('1 mg')] },
        { name: 'Iron', due: '', lines: [] },
      ],
    };
    const fields = [{ kind: 'signature', label: 'Patient' }];
    const view = { checklist, signatures: { plate: 'Not here.', rows: [{ fields }] } };
    expect(
      blocksOf(
        '<checklist head="Test">{{> checklist-body checklist}}</checklist>{{> signatures signatures}}',
        view,
      ),
    ).toMatchObject([
      {
        columns: ['April', 'July'],
        rows: [
          { name: 'B12', due: [false, true] },
          { name: 'Iron', due: [true, true] },
        ],
      },
      { plate: 'Not here.', rows: [{ fields }] },
    ]);
  });
});
