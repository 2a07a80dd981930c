import { addDays } from '../../src/model/calendar-day.ts';
import type { Calendar, CalendarDay, CalendarStage } from '../../src/model/calendar.ts';
import type { Sentence, WarningFrame } from '../../src/model/care-blocks.ts';
import type { Block, DocumentTree, Inline } from '../../src/model/document.ts';
import { sampleDrawing } from './sample-drawing.ts';
import { furniture, inlines, para, questionsTree, topic } from './sample-documents.ts';

/** Documents for going home and for consent, written by hand. Every person, clinic and figure in them is invented. */
const origin = 'sample.hbs:1';

type Part = Sentence['parts'][number];

/** A sentence in which __ is a blank, as wide as the others of its line. */
export function sentence(text: string): Sentence {
  const parts = text
    .split('__')
    .flatMap((words, index): readonly Part[] => [
      ...(index > 0 ? [{ type: 'blank', share: index === 1 ? 2 : 1, alt: 'Room to write' } as const] : []),
      ...(words === '' ? [] : [{ type: 'words', inlines: inlines(words) } as const]),
    ]);
  return { parts, origin };
}

export function frame(
  urgency: WarningFrame['urgency'],
  items: readonly string[],
  changes: Partial<WarningFrame> = {},
): WarningFrame {
  const base = { heading: 'Call now', phones: [{ number: '911' }], origin };
  return { urgency, ...base, items: items.map((text) => para(text)), ...changes };
}

export const warningFrames: Block = {
  type: 'warning-frames',
  frames: [
    frame('now', ['You cannot breathe well', 'Pain in your chest', 'You pass out', 'You throw up blood'], {
      note: 'Do not wait. Do not drive yourself.',
    }),
    frame(
      'today',
      [
        'Fever over 101 °F (38.3 °C)',
        'Belly pain that gets worse',
        'Heart above 110 beats a minute while you rest',
        'Nothing stays down for 12 hours',
        'One leg is swollen, hot or sore',
        'The wound is red, hot or leaks',
      ],
      {
        heading: 'Call us today',
        note: 'Day or night. You do not bother us.',
        phones: [
          { label: 'Day', number: '555-0142' },
          { label: 'Night', number: '555-0177' },
        ],
      },
    ),
    frame('visit', ['Hair that thins', 'Hard stools', 'Dizzy when you stand up', 'Feeling low'], {
      heading: 'Tell us at your visit',
      phones: [],
    }),
  ],
  origin,
};

export const say: Block = {
  type: 'say',
  heading: 'What to say',
  sentences: [
    sentence('“I am Teodora Lindqvist-Abara. I had a gastric bypass on 14 January 2027.'),
    sentence('I have __ since __ .”'),
  ],
  origin,
};

export const stages: readonly CalendarStage[] = [
  { pattern: 'dots', label: 'Clear liquids', dated: 'Clear liquids: 14 and 15 January', origin },
  { pattern: 'lines', label: 'Thick liquids', dated: 'Thick liquids: 16 to 27 January', origin },
  { pattern: 'slant', label: 'Mashed food', dated: 'Mashed food: 28 January to 3 February', origin },
  { pattern: 'light', label: 'Soft food', dated: 'Soft food: 4 to 17 February', origin },
  { pattern: 'mid', label: 'All foods, small bites', dated: 'All foods: from 18 February', origin },
];

/** A name that a clinic gave in English, in a document of another language. */
export function inEnglish(value: string): readonly Inline[] {
  return [{ type: 'text', value, language: 'en' }];
}

interface Span {
  /** Days before the first one in its week. */
  readonly before: number;
  readonly days: number;
  /** Days after the first on which each stage begins. */
  readonly begins: readonly number[];
  readonly notes?: Readonly<Record<number, readonly string[]>>;
  readonly visits?: readonly number[];
}

const months = ['Jan', 'Feb', 'Mar', 'Apr'];

/** Of a day to come in, the first note is what for. */
function eventsOf(notes: readonly string[] = [], visit: boolean): CalendarDay['events'] {
  return notes.map((words, at) => ({ words, comesIn: visit && at === 0 }));
}

function dayOf({ begins, notes = {}, visits = [] }: Span, index: number): CalendarDay {
  const [, month = '', date = ''] = addDays('2027-01-14', index).split('-');
  const number = String(Number(date));
  const stage = begins.findLastIndex((first) => first <= index);
  return {
    label: index === 0 || number === '1' ? `${number} ${months[Number(month) - 1] ?? ''}` : number,
    dated: addDays('2027-01-14', index),
    comesIn: visits.includes(index),
    notes: notes[index] ?? [],
    events: eventsOf(notes[index], visits.includes(index)),
    ...(stage === -1 ? {} : { stage }),
    origin,
  };
}

export function calendarOf(span: Span, changes: Partial<Calendar> = {}): Calendar {
  const weeks = Math.ceil((span.before + span.days) / 7);
  return {
    type: 'calendar',
    weekdays: ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'],
    weeks: Array.from({ length: weeks }, (_, week) =>
      Array.from({ length: 7 }, (_unused, column) => {
        const index = week * 7 + column - span.before;
        return index < 0 || index >= span.days ? null : dayOf(span, index);
      }),
    ),
    stages: stages.slice(0, span.begins.length),
    listed: 'These are the days when something is new.',
    origin,
    ...changes,
  };
}

/** Stages with English names, in a Spanish document; the second goes on for good. */
export const calendarInEnglish: Calendar = calendarOf(
  { before: 0, days: 14, begins: [0, 7] },
  {
    stages: [
      {
        pattern: 'dots',
        label: inEnglish('Clear liquids'),
        dated: [...inEnglish('Clear liquids'), { type: 'text', value: ': hasta el 20 de enero' }],
        origin,
      },
      { pattern: 'lines', label: inEnglish('Soft food'), dated: inEnglish('Soft food'), origin },
    ],
  },
);

export const sixWeeks: Calendar = calendarOf({
  before: 4,
  days: 38,
  begins: [0, 2, 14, 21, 35],
  visits: [0, 8, 15, 35],
  notes: {
    0: ['Operation'],
    1: ['Home'],
    8: ['Visit', '9:30 am'],
    14: ['You may drive'],
    15: ['Visit', '2:00 pm'],
    21: ['Back to desk work'],
    28: ['You may lift again'],
    35: ['Visit', '10:15 am'],
  },
});

const tree = (title: string, blocks: readonly Block[], draft = false): DocumentTree => ({
  ...questionsTree,
  title,
  furniture: furniture({
    headerOnFirstPage: true,
    header: { start: 'Teodora Lindqvist-Abara', end: `${title} · 14 January 2027` },
    ...(draft
      ? {
          tab: 'Draft. Not for signature. 2 points are open, see the list at the end.',
          draftEdges: ['Draft', 'Draft'],
        }
      : {}),
  }),
  blocks,
});

export const warningTree = tree('When to call', [
  { type: 'heading', level: 1, text: 'When should I call?', origin },
  para('Teodora had a gastric bypass on 14 January 2027 with Dr. Ines Falkenbrook.'),
  warningFrames,
  say,
]);

export const asides: Block = {
  type: 'asides',
  columns: [
    {
      heading: 'Every day',
      boxes: true,
      items: ['Walk 5 times', 'Sip all day long', 'Take your vitamins'].map((text) => para(text)),
    },
    {
      heading: 'Not yet',
      boxes: false,
      items: ['No lifting over 10 lb until 11 February', 'No bath or pool until 4 February'].map((text) =>
        para(text),
      ),
    },
    {
      heading: 'Call us if',
      boxes: false,
      items: [para('you have a fever, more pain, or nothing stays down. See “When should I call?”')],
    },
  ],
  origin,
};

export const homeTree = tree('At home', [
  { type: 'heading', level: 1, text: 'My first six weeks', origin },
  para('The band shows what you eat. A black date is a day to come in to us.'),
  sixWeeks,
  asides,
]);

export const vitaminTree = tree('My vitamins', [
  { type: 'heading', level: 1, text: 'Vitamins and blood tests, for life', origin },
  topic(
    'What do I take?',
    ['Tick what you have at home.'],
    [
      {
        type: 'checklist',
        head: '',
        columns: [],
        box: true,
        rows: [
          {
            name: 'Multivitamin with minerals',
            detail: [para('1 tablet in the morning, with food.')],
            due: [],
            origin,
          },
          {
            name: 'Calcium citrate',
            detail: [para('500 mg three times a day, two hours apart from iron.')],
            due: [],
            origin,
          },
          { name: 'Vitamin B12', detail: [para('1 mg by injection every 3 months.')], due: [], origin },
        ],
        origin,
      },
    ],
  ),
  topic(
    'When are my blood tests?',
    [],
    [
      {
        type: 'checklist',
        head: 'Test',
        columns: ['14 April 2027', '14 July 2027', '14 January 2028', 'Then every year'],
        box: false,
        rows: [
          { name: 'Blood count, iron', detail: [], due: [true, true, true, true], origin },
          { name: 'Vitamin B12, folate', detail: [], due: [false, true, true, true], origin },
          {
            name: 'Vitamin D, calcium, parathyroid hormone',
            detail: [para('Do not eat before the test.')],
            due: [false, false, true, true],
            origin,
          },
        ],
        origin,
      },
    ],
  ),
]);

const plate = 'Draft. Do not sign here.';
const signed = (who: string): Extract<Block, { readonly type: 'signatures' }>['rows'][number] => ({
  fields: [
    { kind: 'signature', label: who },
    { kind: 'date', label: 'Date' },
    { kind: 'time', label: 'Time' },
  ],
  origin,
});

const consentBlocks = (void_: boolean): readonly Block[] => [
  { type: 'heading', level: 1, text: 'Record of our talk before the operation', origin },
  para('This page says what we talked about. The hospital’s own consent form still applies.'),
  {
    type: 'facts',
    items: [
      { label: 'Patient', value: 'Teodora Lindqvist-Abara' },
      { label: 'Born', value: '3 August 1979' },
      { label: 'Reference', value: 'LW-2207' },
      { label: 'Operation', value: 'Gastric bypass' },
      { label: 'Planned for', value: '14 January 2027' },
      { label: 'Surgeon', value: 'Dr. Ines Falkenbrook' },
    ],
    origin,
  },
  topic(
    'What did we talk about?',
    [],
    [
      {
        type: 'talk',
        columns: { box: 'Explained', line: 'My initials' },
        statements: [
          '**My choices.** Sleeve, bypass, semaglutide, a program, no treatment for now.',
          '**What the operation does** and how it is done.',
          '**What it can do for me** and how sure that is.',
          '**A leak, bleeding, a blood clot, death.** The numbers are in “My choices”, page 4.',
          '**Problems in later years.** Another operation, ulcer, low blood sugar, low vitamins.',
          '**What it asks of me for life.** Vitamins, blood tests, no ibuprofen.',
          '**What nobody knows yet.**',
          '**What happens if I do nothing.**',
        ].map((text) => [para(text)]),
        origin,
      },
    ],
  ),
  topic(
    'How do I say it in my own words?',
    ['The surgeon asks. You answer. What is not clear is explained again.'],
    [
      {
        type: 'teach-back',
        boxes: ['Said back', 'Explained again'],
        lines: 2,
        questions: [
          'What will be done in my operation?',
          'What is the worst thing that could go wrong?',
          'When will I call, and whom?',
        ].map((text) => para(text, 'strong')),
        origin,
      },
      {
        type: 'interpreter',
        heading: 'Interpreter',
        ways: ['In the room', 'Video', 'Phone'],
        body: [para('I interpreted between English and Spanish, completely and truly.')],
        fields: [
          { kind: 'name', label: 'Name and number' },
          { kind: 'signature', label: 'Signature' },
          { kind: 'date', label: 'Date' },
          { kind: 'time', label: 'From, to' },
        ],
        ...(void_ ? { plate } : {}),
        origin,
      },
      {
        type: 'answers',
        heading: 'What do I say yes and no to?',
        sentences: ['I say yes to the operation.', 'I say yes to blood if I need it.', 'I say no to: __'].map(
          sentence,
        ),
        origin,
      },
      { type: 'signatures', rows: ['Patient', 'Surgeon'].map(signed), ...(void_ ? { plate } : {}), origin },
    ],
  ),
];

export const consentTree = tree('Record of our talk', consentBlocks(true), true);
export const finalConsentTree = tree('Record of our talk', consentBlocks(false));

export const operationTree = tree('My operation', [
  { type: 'heading', level: 1, text: 'My operation: gastric bypass', origin },
  topic('What is done?', ['This is how it is usually done.'], [sampleDrawing]),
]);

export const careTrees: readonly DocumentTree[] = [
  warningTree,
  homeTree,
  vitaminTree,
  consentTree,
  finalConsentTree,
  operationTree,
];

/** The same on the other paper, read from right to left. The words stay as they are: only what has a direction turns. */
export const turnedCareTrees: readonly DocumentTree[] = careTrees.map((one) => ({
  ...one,
  paper: 'a4',
  direction: 'rtl',
}));
