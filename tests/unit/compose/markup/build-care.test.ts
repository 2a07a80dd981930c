import { describe, expect, it } from 'vitest';

import { buildBlocks } from '../../../../src/compose/markup/build-blocks.ts';
import { MarkupError } from '../../../../src/compose/markup/element.ts';

const file = 'sample/main.hbs';
const origin = 'sample/main.hbs:1';
const build = (markup: string): unknown => buildBlocks(markup, file)[0];

describe('building the blocks for going home', () => {
  it('makes frames of warning signs, the most urgent first, with what is left out left out', () => {
    expect(
      build(`<warning-frames>
        <frame urgency="now" heading="Call now" note=""><first><stands on="aftercare:a">Call 911 first.</stands></first><phone number="911" label=""/><p>Pain in your <b>chest</b></p></frame>
        <frame urgency="visit" heading="Tell us" note="At any visit."><p>Hair that thins</p></frame>
      </warning-frames>`),
    ).toEqual({
      type: 'warning-frames',
      frames: [
        {
          urgency: 'now',
          heading: 'Call now',
          phones: [{ number: '911' }],
          first: [{ type: 'text', value: 'Call 911 first.', statements: ['aftercare:a'] }],
          items: [
            {
              type: 'paragraph',
              role: 'body',
              inlines: [
                { type: 'text', value: 'Pain in your ' },
                { type: 'text', value: 'chest', bold: true },
              ],
              origin,
            },
          ],
          origin,
        },
        {
          urgency: 'visit',
          heading: 'Tell us',
          note: 'At any visit.',
          phones: [],
          items: [
            {
              type: 'paragraph',
              role: 'body',
              inlines: [{ type: 'text', value: 'Hair that thins' }],
              origin,
            },
          ],
          origin,
        },
      ],
      origin,
    });
  });

  it('keeps the language of whose a number is, and when somebody answers', () => {
    const phone = (inner: string): string =>
      `<warning-frames><frame urgency="now" heading="Llame"><phone number="911"${inner}</frame></warning-frames>`;
    const english = (value: string): unknown => [{ type: 'text', value, language: 'en' }];
    expect(
      build(
        phone(
          '><label><lang code="en">Nurse</lang></label><hours><lang code="en">8 to 5</lang></hours></phone>',
        ),
      ),
    ).toMatchObject({ frames: [{ phones: [{ label: english('Nurse'), hours: english('8 to 5') }] }] });
    expect(build(phone('><label>Enfermera</label><hours></hours></phone>'))).toMatchObject({
      frames: [{ phones: [{ number: '911', label: 'Enfermera' }] }],
    });
    expect(() => build(phone(' label="a"><label>b</label></phone>'))).toThrow('<phone> has label twice');
  });

  it('makes sentences of words and blanks', () => {
    const sentences = [
      {
        parts: [
          { type: 'words', inlines: [{ type: 'text', value: 'I have' }] },
          { type: 'blank', share: 2, alt: 'what is wrong' },
          { type: 'words', inlines: [{ type: 'text', value: '.', bold: true }] },
        ],
        origin,
      },
    ];
    const inside =
      '<sentence><part> I have </part><blank share="2" alt="what is wrong"/><part><b>.</b></part></sentence>';
    expect(build(`<say heading="What to say">${inside}</say>`)).toEqual({
      type: 'say',
      heading: 'What to say',
      sentences,
      origin,
    });
    expect(build(`<answers heading="Yes or no">${inside}</answers>`)).toEqual({
      type: 'answers',
      heading: 'Yes or no',
      sentences,
      origin,
    });
  });

  it('makes short lists side by side', () => {
    expect(
      build(
        '<asides><aside heading="Every day" boxes="true"><p>Walk</p></aside><aside heading="Not yet"/></asides>',
      ),
    ).toMatchObject({
      type: 'asides',
      columns: [
        { heading: 'Every day', boxes: true, items: [{ type: 'paragraph' }] },
        { heading: 'Not yet', boxes: false, items: [] },
      ],
    });
  });

  it('makes checklists: all columns are due unless some are named, and a box stands before an item unless refused', () => {
    expect(
      build(`<checklist head="Test" box="false"><column label="April"/><column label="July"/>
        <check name="B12"/><check name="Iron" due="2"><p>No food before.</p></check></checklist>`),
    ).toMatchObject({
      type: 'checklist',
      head: 'Test',
      box: false,
      columns: ['April', 'July'],
      rows: [
        { name: 'B12', detail: [], due: [true, true] },
        { name: 'Iron', detail: [{ type: 'paragraph' }], due: [false, true] },
      ],
    });
    expect(build('<checklist><check name="B12" due=""/></checklist>')).toMatchObject({
      head: '',
      box: true,
      columns: [],
      rows: [{ due: [] }],
    });
  });
});

describe('building the blocks for a consent', () => {
  it('makes a talk, questions to answer, signatures and what an interpreter fills in', () => {
    const field = (kind: string): string => `<field kind="${kind}" label="L"/>`;
    const blocks = buildBlocks(
      `<talk box="Explained" line="Initials"><step><p>One.</p><p>More.</p></step></talk>
       <teach-back lines="2"><item>Said back</item><item>Again</item><p role="strong">What?</p></teach-back>
       <interpreter heading="Interpreter" plate="Not here."><item>Video</item><p>I did.</p>${field('name')}${field('time')}</interpreter>
       <signatures plate=""><fields>${field('signature')}${field('date')}</fields></signatures>
       <signatures plate="Not here."><fields>${field('signature')}</fields></signatures>`,
      file,
    );
    expect(blocks).toMatchObject([
      {
        type: 'talk',
        columns: { box: 'Explained', line: 'Initials' },
        statements: [[{ role: 'body' }, { role: 'body' }]],
      },
      { type: 'teach-back', boxes: ['Said back', 'Again'], lines: 2, questions: [{ role: 'strong' }] },
      {
        type: 'interpreter',
        heading: 'Interpreter',
        ways: ['Video'],
        body: [{ type: 'paragraph' }],
        plate: 'Not here.',
        fields: [
          { kind: 'name', label: 'L' },
          { kind: 'time', label: 'L' },
        ],
      },
      { type: 'signatures', rows: [{ fields: [{ kind: 'signature' }, { kind: 'date' }], origin }] },
      { type: 'signatures', plate: 'Not here.' },
    ]);
    expect(blocks[3]).not.toHaveProperty('plate');
  });
});

describe('markup for going home and for consent that is refused', () => {
  const frameOf = (urgency: string): string => `<frame urgency="${urgency}" heading="h"/>`;
  const checklist = (due: string): string =>
    `<checklist><column label="a"/><check name="n" due="${due}"/></checklist>`;

  it.each([
    [`<warning-frames>${frameOf('soon')}</warning-frames>`, 'is not one of now, today, visit'],
    [
      `<warning-frames>${frameOf('today')}${frameOf('now')}</warning-frames>`,
      'one <frame> a degree of urgency',
    ],
    [
      `<warning-frames>${frameOf('now')}${frameOf('now')}</warning-frames>`,
      'one <frame> a degree of urgency',
    ],
    [
      '<warning-frames><frame urgency="now" heading="h"><phone number=""/></frame></warning-frames>',
      'number of <phone>',
    ],
    ['<say heading="h"><sentence>words</sentence></say>', 'text stands directly in <sentence>'],
    ['<say heading="h"><sentence><blank share="1" alt="a"/></sentence></say>', '<sentence> says nothing'],
    ['<say heading="h"><sentence><part> </part></sentence></say>', '<part> says nothing'],
    ['<say heading="h"><sentence><part>a</part><blank share="0" alt="a"/></sentence></say>', 'is not over 0'],
    [
      '<say heading="h"><sentence><part>a</part><blank share="1" alt=""/></sentence></say>',
      'alt of <blank> is empty',
    ],
    [`<asides>${'<aside heading="h"/>'.repeat(4)}</asides>`, 'more than 3 <aside>'],
    [`<checklist>${'<column label="a"/>'.repeat(5)}</checklist>`, 'more than 4 <column>'],
    [checklist('2'), 'names a column that is not there'],
    [checklist('0'), 'names a column that is not there'],
    [checklist('first'), 'names a column that is not there'],
    ['<checklist box="maybe"/>', 'is not one of true, false'],
    ['<teach-back lines="0"><p>q</p></teach-back>', 'is not a count'],
    ['<teach-back lines="1.5"><p>q</p></teach-back>', 'is not a count'],
    ['<signatures><fields></fields></signatures>', '<fields> has no <field>'],
    ['<signatures><fields><field kind="thumb" label="l"/></fields></signatures>', 'is not one of'],
    ['<interpreter heading="h"></interpreter>', '<interpreter> has no <field>'],
    ['<talk box="b"><p>s</p></talk>', '<talk> lacks line'],
  ])('%s', (markup, message) => {
    expect(() => build(markup)).toThrow(MarkupError);
    expect(() => build(markup)).toThrow(message);
  });
});
