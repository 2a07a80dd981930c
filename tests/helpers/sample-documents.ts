import type {
  Axis,
  Block,
  DocumentTree,
  Furniture,
  Inline,
  Paragraph,
  StripRow,
  TableRow,
  WeightLine,
} from '../../src/model/document.ts';

/** Documents written by hand, with every type of block. Every person, clinic and figure in them is invented. */
const origin = 'sample.hbs:1';

/** Paragraph of a text in which **words between asterisks** are bold. */
export function para(text: string, role: Paragraph['role'] = 'body'): Paragraph {
  return { type: 'paragraph', role, inlines: inlines(text), origin };
}

export function inlines(text: string): readonly Inline[] {
  return text
    .split('**')
    .map((value, index): Inline =>
      index % 2 === 1 ? { type: 'text', value, bold: true } : { type: 'text', value },
    )
    .filter((inline) => inline.value !== '');
}

const names = [
  'Sleeve',
  'Gastric bypass',
  'Semaglutide',
  'Food and activity program',
  'No treatment for now',
] as const;

export function furniture(changes: Partial<Furniture> = {}): Furniture {
  return {
    header: { start: 'Teodora Lindqvist-Abara', end: 'My choices · 25 November 2026' },
    headerOnFirstPage: false,
    footer: {
      call: 'Questions? Call 555-0142. At night call 555-0177.',
      deferral: 'This does not replace your surgeon.',
      id: 'LW-2207-C1 · next check November 2027',
      page: 'Page {page} of {pages}',
    },
    phones: ['555-0142', '555-0177'],
    tab: 'Example. Invented person, invented numbers.',
    continued: 'continued',
    ...changes,
  };
}

const pound = 0.45359237;
const lb = (pounds: number): number => pounds * pound;

export const sampleAxis: Axis = {
  min: lb(128),
  max: lb(315),
  today: { at: lb(268), label: 'You today' },
  top: {
    unit: 'pounds',
    ticks: [150, 180, 210, 240, 270].map((value) => ({ at: lb(value), label: String(value) })),
  },
  bottom: {
    unit: 'kilograms',
    ticks: [70, 80, 90, 100, 110, 120, 130].map((value) => ({ at: value, label: String(value) })),
  },
};

function rangeRow(name: string, [low, average, high]: [number, number, number], words: string[]): StripRow {
  const [first = '', ...others] = words;
  return {
    name,
    picture: {
      type: 'range',
      average: lb(average),
      low: lb(low),
      high: lb(high),
      meaning: 'spread',
      alt: `${name}: on average ${average} lb after 5 years; two in three people between ${low} and ${high} lb.`,
    },
    words: [para(first, 'number'), ...others.map((text) => para(text))],
    origin,
  };
}

function unknownRow(name: string, of: 100 | 1000 | 'range', words: string[]): StripRow {
  return {
    name,
    picture: { type: 'unknown', of, alt: `${name}: not known for people like you.` },
    words: [para('Not known', 'number'), ...words.map((text) => para(text))],
    origin,
  };
}

export const rangeRows: readonly StripRow[] = [
  rangeRow(
    names[0],
    [180, 206, 232],
    ['206 lb (93 kg)', '62 lb less than today.', 'Two in three: 180 to 232 lb.', 'After 1 year: 195 lb.'],
  ),
  rangeRow(
    names[1],
    [163, 190, 217],
    ['190 lb (86 kg)', '78 lb less than today.', 'Two in three: 163 to 217 lb.', 'After 1 year: 181 lb.'],
  ),
  unknownRow(names[2], 'range', [
    'No study has followed people like you for 5 years.',
    'After 1 year: 231 lb.',
  ]),
  rangeRow(
    names[3],
    [240, 258, 276],
    ['258 lb (117 kg)', '10 lb less than today.', 'Two in three: 240 to 276 lb.', 'After 1 year: 254 lb.'],
  ),
  rangeRow(
    names[4],
    [250, 272, 294],
    ['272 lb (123 kg)', '4 lb more than today.', 'Two in three: 250 to 294 lb.', 'After 1 year: 269 lb.'],
  ),
];

/** Only how sure the average is: a whisker. */
export const whiskerRow: StripRow = {
  name: 'Stomach folding',
  tag: 'Under study',
  picture: {
    type: 'range',
    average: 112,
    low: 107,
    high: 117,
    meaning: 'uncertainty',
    alt: 'Stomach folding: on average 112 kg.',
  },
  words: [
    para('112 kg', 'number'),
    para('26 kg less than today, after 1 year, in 31 people.'),
    para('The average could be 107 to 117 kg.'),
  ],
  origin,
};

interface PeopleData {
  readonly of: 100 | 1000;
  readonly filled: number;
  readonly may?: number;
  readonly half?: boolean;
}

export function peopleRow(name: string, data: PeopleData, words: string[]): StripRow {
  const [first = '', ...others] = words;
  return {
    name,
    picture: { type: 'people', may: 0, half: false, ...data, alt: `${name}: ${words.join(' ')}` },
    words: [para(first, 'number'), ...others.map((text) => para(text))],
    origin,
  };
}

const harmRows: readonly StripRow[] = [
  peopleRow(names[0], { of: 1000, filled: 24 }, [
    '24 out of 1,000',
    '976 do not.',
    'Other studies: 18 to 31.',
  ]),
  peopleRow(names[1], { of: 1000, filled: 37 }, [
    '37 out of 1,000',
    '963 do not.',
    'Other studies: 29 to 46.',
  ]),
  unknownRow(names[2], 1000, ['for people like you. The studies we found were in people with diabetes.']),
  peopleRow(names[3], { of: 1000, filled: 0, may: 18 }, [
    'None of 212',
    'The true figure could be up to 18 in 1,000.',
  ]),
  peopleRow(names[4], { of: 1000, filled: 0, half: true }, ['Fewer than 1', 'out of 1,000.']),
];

const laterRows: readonly StripRow[] = [
  peopleRow(names[0], { of: 100, filled: 23 }, ['23 out of 100', '77 do not.']),
  peopleRow(names[1], { of: 100, filled: 14 }, ['14 out of 100', '86 do not.', 'Other studies: 9 to 20.']),
  unknownRow(names[2], 100, ['No study has lasted 10 years.']),
  peopleRow(names[3], { of: 100, filled: 0, may: 9 }, [
    'None of 40',
    'The true figure could be up to 9 in 100.',
  ]),
  peopleRow(names[4], { of: 100, filled: 0, half: true }, ['Fewer than 1', 'out of 100.']),
];

function wayBackRow(name: string, possible: 'yes' | 'partly' | 'no' | 'not-known', text: string): StripRow {
  return {
    name,
    picture: { type: 'way-back', possible, alt: `Can it be undone? ${possible}.` },
    words: [para(text)],
    origin,
  };
}

function textRow(name: string, text: string, tag?: string): StripRow {
  return { name, words: [para(text)], origin, ...(tag === undefined ? {} : { tag }) };
}

function tableRow(name: string, cells: readonly string[], tag?: string): TableRow {
  const number = /^[\d,.]+$/;
  return {
    cells: [[para(name)], ...cells.map((cell) => [para(cell, number.test(cell) ? 'number' : 'body')])],
    origin,
    ...(tag === undefined ? {} : { tag }),
  };
}

/** Where the number of a point comes from. */
export const pointSource = { cell: 'sleeve/weight-loss/12m', records: ['sleeve.weight-loss.12m.study-a'] };

export function weightLine(name: string, changes: Partial<WeightLine> = {}): WeightLine {
  const at = (months: number, pounds: number, spread?: number) => ({
    months,
    at: lb(pounds),
    label: String(pounds),
    ...pointSource,
    ...(spread === undefined ? {} : { low: lb(pounds - spread), high: lb(pounds + spread) }),
  });
  return {
    type: 'weight-line',
    name,
    today: { at: lb(268), label: 'You today' },
    points: [at(12, 181, 21), at(24, 178, 23), at(60, 190, 27)],
    min: lb(150),
    max: lb(280),
    timeTicks: [
      { at: 0, label: 'today' },
      { at: 12, label: '1' },
      { at: 24, label: '2' },
      { at: 60, label: '5' },
      { at: 120, label: '10' },
    ],
    valueTicks: [240, 200, 160].map((value) => ({ at: lb(value), label: String(value) })),
    unknownAfter: 'not known after 5 years',
    alt: `${name}: 181 lb after 1 year, 178 lb after 2 years, 190 lb after 5 years; not known after that.`,
    origin,
    ...changes,
  };
}

export function topic(question: string, intro: readonly string[], blocks: readonly Block[]): Block {
  return { type: 'topic', question, intro: intro.map((text) => para(text)), blocks, origin };
}

const rangeKey: Block = {
  type: 'key',
  heading: 'How to read the bars',
  items: [
    { mark: 'spread', words: 'Two in three people end up here' },
    { mark: 'average', words: 'The average' },
    { mark: 'today', words: 'Your weight today' },
  ],
  origin,
};

const peopleKey: Block = {
  type: 'key',
  heading: 'How to read the pictures',
  items: [
    { mark: 'had', words: 'It happens to this person' },
    { mark: 'not', words: 'It does not happen' },
    { mark: 'may', words: 'It may happen; nobody is sure' },
  ],
  origin,
};

const choices = topic(
  'What are my choices?',
  [],
  [
    {
      type: 'strip',
      layout: 'text',
      rows: [
        textRow(
          names[0],
          'A surgeon takes out most of your stomach. What is left is a narrow tube. You feel full sooner.',
        ),
        textRow(
          names[1],
          'A surgeon makes a small new stomach and joins it to your gut lower down. You eat less and take in less.',
        ),
        textRow(
          names[2],
          'A shot you give yourself once a week. It makes you less hungry for as long as you take it.',
        ),
        textRow(names[3], 'A team helps you change how you eat and move, for a year or longer.'),
        textRow(names[4], 'You go on as you are. You can come back to any of these choices later.'),
      ],
      origin,
    },
    peopleKey,
  ],
);

const inShort = topic(
  'In short',
  [],
  [
    {
      type: 'table',
      layout: 'choices',
      columns: ['', 'Weight after 5 years', 'Serious problems', 'Undone?'].map((label) => ({ label })),
      rows: [
        tableRow(names[0], ['206 lb (93 kg)', '24 out of 1,000', 'No']),
        tableRow(names[1], ['190 lb (86 kg)', '37 out of 1,000', 'Partly']),
        tableRow(names[2], ['not known', 'not known', 'Yes']),
        tableRow(names[3], ['258 lb (117 kg)', 'none of 212', 'Yes']),
        tableRow('Stomach folding', ['not known', 'none of 31', 'Partly'], 'Under study'),
      ],
      origin,
    },
  ],
);

const firstMonthTable = topic(
  'Which problems happen in the first month?',
  ['Out of 1,000 people, in the first month. One person can have more than one.'],
  [
    {
      type: 'table',
      layout: 'choices',
      columns: ['', 'A leak', 'Bleeding', 'A blood clot', 'Death'].map((label) => ({ label })),
      rows: [
        tableRow(names[0], ['6', '9', '2', 'fewer than 1']),
        tableRow(names[1], ['8', '15', '3', '1']),
        tableRow(names[2], ['not known', 'not known', 'not known', 'not known']),
        tableRow(names[3], ['not possible', 'none of 212', 'none of 212', 'none of 212']),
        tableRow(names[4], ['not possible', 'fewer than 1', 'fewer than 1', 'fewer than 1']),
      ],
      origin,
    },
    para('“None of 212”: 212 people were followed. The true figure could be up to 18 in 1,000.'),
  ],
);

const undone = topic(
  'Can it be undone?',
  [],
  [
    {
      type: 'strip',
      layout: 'way-back',
      rows: [
        wayBackRow(
          names[0],
          'no',
          '**No.** The part that is taken out is gone. A sleeve can later be changed into a bypass.',
        ),
        wayBackRow(
          names[1],
          'partly',
          '**Partly.** A surgeon can join the parts again. It is a large operation, and some changes stay.',
        ),
        wayBackRow(names[2], 'yes', '**Yes.** You can stop. Most people then gain weight again.'),
        wayBackRow(names[3], 'yes', '**Yes.** You can stop at any time.'),
        wayBackRow(names[4], 'not-known', '**Not known.** Nobody has studied this yet.'),
      ],
      origin,
    },
  ],
);

const health: Extract<Block, { readonly type: 'callout' }> = {
  type: 'callout',
  kind: 'health',
  heading: 'Two points about your own health',
  body: [
    {
      ...para('**You have reflux.** It often gets worse after a sleeve, and better after a bypass.'),
      duty: 'caution',
    },
    {
      ...para(
        '**You take ibuprofen for your back.** After a bypass it can cause an ulcer. You would need another pain medicine for good.',
      ),
      duty: 'caution',
    },
  ],
  origin,
};

const opinion = topic(
  'What does my surgeon think?',
  [],
  [
    {
      type: 'panel',
      lead: inlines('Dr. Ines Falkenbrook leans to gastric bypass.'),
      body: [para('This is one opinion. The choice is yours.')],
      columns: [
        {
          heading: 'Her reasons',
          items: [
            para('Your reflux is likely to get better.'),
            para('You told her that sugar control comes first for you.'),
          ],
        },
        {
          heading: 'What speaks against it',
          items: [
            para('You would have to stop ibuprofen.'),
            para('A bypass is hard to undo. You want to be able to go back.'),
          ],
        },
      ],
      closing: [
        { ...para('For a second opinion call Port Sennet General Hospital, 555-0119.'), duty: 'phone' },
      ],
      origin,
    },
  ],
);

const asks = topic(
  'What does it ask of me?',
  [],
  [
    {
      type: 'table',
      layout: 'choices',
      columns: ['', 'In hospital', 'Off work', 'Visits', 'For life'].map((label) => ({ label })),
      rows: [
        tableRow(names[0], [
          '1 night',
          '2 to 3 weeks',
          '5 in the first year, then 1 a year',
          'Vitamins and blood tests',
        ]),
        tableRow(names[1], [
          '1 to 2 nights',
          '2 to 4 weeks',
          '5 in the first year, then 1 a year',
          'Vitamins, blood tests, no ibuprofen',
        ]),
        tableRow(names[2], [
          'None',
          'None',
          '1 a month at first, then 4 a year',
          'A shot each week to keep the effect',
        ]),
        tableRow(names[3], ['None', 'None', '14 in the first year', 'New habits']),
        tableRow(names[4], ['None', 'None', '1 a year', 'Nothing new']),
      ],
      origin,
    },
  ],
);

const matters = topic(
  'What matters to me?',
  ['Mark how much each point counts for you. The first two are your own words.'],
  [
    {
      type: 'matters',
      columns: ['A lot', 'Some', 'Not much'],
      statements: [
        '“I want to keep taking my back pills.”',
        '“I want to be able to go back.”',
        'Losing as much weight as I can',
        'The lowest chance of a serious problem',
        'Not taking vitamins for life',
      ].map((text) => para(text)),
      blanks: 2,
      origin,
    },
    { type: 'ticks', heading: 'Today I lean to', items: [...names, 'I am not sure yet'], origin },
  ],
);

const next = topic(
  'What happens next?',
  [],
  [
    {
      type: 'list',
      ordered: true,
      items: [
        '**Read these pages** with someone you trust.',
        '**Write down** what you want to ask.',
        '**Come to your visit** on Thursday, 10 December 2026 at 2:30 pm. Bring these pages.',
        '**Take the time you need.** You can say yes, no, or not now. You can change your mind up to the last moment.',
      ].map((text) => [para(text)]),
      origin,
    },
  ],
);

const overTime = topic(
  'How might my weight go over time?',
  ['Pounds, by years after the start. The wide band holds two in three people.'],
  [
    {
      type: 'line-board',
      lines: [
        weightLine(names[0]),
        weightLine(names[1], {
          points: [
            { months: 12, at: lb(195), label: '195', ...pointSource },
            { months: 24, at: lb(199), label: '199', ...pointSource },
            { months: 60, at: lb(206), label: '206', ...pointSource },
            { months: 120, at: lb(214), label: '214', ...pointSource },
          ],
          unknownAfter: 'not known after 10 years',
        }),
        weightLine(names[3], {
          points: [
            { months: 12, at: lb(254), label: '254', ...pointSource, low: lb(240), high: lb(268) },
            { months: 24, at: lb(260), label: '260', ...pointSource, low: lb(242), high: lb(275) },
          ],
          unknownAfter: 'not known after 2 years',
        }),
      ],
      origin,
    },
  ],
);

const unknowns = topic(
  'What does nobody know yet?',
  [],
  [
    {
      type: 'strip',
      layout: 'text',
      rows: [
        textRow(names[0], 'How many people have reflux after 15 years.'),
        textRow(names[1], 'Who will get low blood sugar after meals, and who will not.'),
        textRow('Stomach folding', 'How long it lasts.', 'Under study'),
      ],
      origin,
    },
  ],
);

export const comparisonTree: DocumentTree = {
  kind: 'comparison',
  audience: 'patient',
  language: 'en',
  direction: 'ltr',
  paper: 'letter',
  title: 'My choices',
  colon: ': ',
  furniture: furniture(),
  blocks: [
    {
      type: 'cover',
      clinic: 'Larkmoor Weight Surgery Clinic, Port Sennet',
      date: '25 November 2026',
      question: 'Which treatment for my weight fits me best?',
      lead: inlines(
        'You have a choice to make. There is time to make it. These pages show five choices side by side, with numbers worked out for you.',
      ),
      addressee: 'For Teodora Lindqvist-Abara',
      origin,
    },
    choices,
    inShort,
    health,
    topic(
      'How much might I weigh after 5 years?',
      ['Worked out for you, from your weight today: 268 lb (122 kg).'],
      [
        { type: 'strip', layout: 'range', axis: sampleAxis, rows: rangeRows, origin },
        rangeKey,
        para('Measured in people with a BMI of 38 to 52, aged 24 to 60. Your BMI is 44.6.'),
      ],
    ),
    overTime,
    topic(
      'Who has a serious problem in the first month?',
      [
        'A serious problem means another operation, a longer stay or a return to hospital.',
        'Each small leaf is one person. There are 1,000 in each picture.',
      ],
      [{ type: 'strip', layout: 'people', rows: harmRows, origin }],
    ),
    firstMonthTable,
    undone,
    topic(
      'Who needs another operation within 10 years?',
      ['Any later operation on the stomach or gut. There are 100 people in each picture.'],
      [{ type: 'strip', layout: 'people', rows: laterRows, origin }],
    ),
    unknowns,
    asks,
    opinion,
    matters,
    next,
  ],
};

const writeIn = (prompt: string, box: boolean, lines: number): Block => ({
  type: 'write-in',
  prompt: para(prompt, 'strong'),
  box,
  lines,
  origin,
});

/** The kinds of block that the comparison has not: titles, facts, bullets, room to write; in the look of a draft. */
export const questionsTree: DocumentTree = {
  ...comparisonTree,
  kind: 'questions',
  title: 'My questions',
  furniture: furniture({
    headerOnFirstPage: true,
    header: { start: 'Teodora Lindqvist-Abara', end: 'My questions · 10 December 2026' },
    tab: 'Draft. Not for signature. 2 points are open, see the list at the end.',
    draftEdges: ['Entwurf', 'Draft'],
  }),
  blocks: [
    { type: 'heading', level: 1, text: 'Questions to take to my visit', origin },
    para('Tick what you want to ask. Write down what you are told.'),
    {
      type: 'facts',
      items: [
        { label: 'Patient', value: 'Teodora Lindqvist-Abara' },
        { label: 'Born', value: '3 August 1979' },
        { label: 'Reference', value: 'LW-2207' },
        { label: 'Visit', value: '10 December 2026' },
        { label: 'Language', value: 'Spanish, with an interpreter' },
      ],
      origin,
    },
    topic(
      'What do I want to ask?',
      ['These points come from your own case.'],
      [
        writeIn('Will my reflux get better or worse?', true, 2),
        writeIn('What can I take for my back instead of ibuprofen?', true, 2),
        writeIn('', true, 1),
      ],
    ),
    { type: 'heading', level: 3, text: 'Bring with you', origin },
    {
      type: 'list',
      ordered: false,
      items: ['All medicines that you take, in their boxes.', 'These pages.', 'Someone you trust.'].map(
        (text) => [para(text)],
      ),
      origin,
    },
    topic(
      'How might my weight go after a bypass?',
      ['Pounds, by years after the operation. The wide band holds two in three people.'],
      [{ type: 'line-board', lines: [weightLine('Gastric bypass')], origin }],
    ),
    {
      type: 'callout',
      kind: 'interpreter',
      heading: 'You can have an interpreter',
      body: [para('It costs you nothing. Ask at any time.')],
      origin,
    },
    { type: 'heading', level: 2, text: 'Another heading', origin },
    para('This is a lead.', 'lead'),
    para('This is small print at the floor of twelve points.', 'small'),
  ],
};

function evidenceRow(cells: readonly string[]): TableRow {
  return { cells: cells.map((cell, index) => [para(cell, index === 3 ? 'strong' : 'body')]), origin };
}

const band = (group: string): TableRow => ({ group, cells: [], origin });

const figures = [
  'SL-W-014|weight, kg|5 y|93.4|SD 11.8 (people)|1,204|RCT, 2014–21|like you: in range',
  'SL-M-031|serious, per 1,000|30 d|24|18 to 31 (range, 4)|61,530|registry, 2018–23|like you; newest',
  'SL-D-004|death, per 1,000|30 d|0.6|0.4 to 0.9 (CI)|61,530|registry, 2018–23|shown as “fewer than 1”',
].map((line) => evidenceRow(line.split('|')));

export const clinicianTree: DocumentTree = {
  ...comparisonTree,
  kind: 'clinician-sheet',
  audience: 'clinician',
  title: 'Clinician sheet',
  furniture: furniture({
    headerOnFirstPage: true,
    header: {
      start: 'LW-2207 · Clinician sheet · not for the patient',
      end: 'evidence 2026.11 · 25 Nov 2026',
    },
    footer: {
      call: 'CI = uncertainty of the average; SD = spread of people',
      deferral: 'RCT = randomised trial',
      id: 'LW-2207-K1',
      page: 'Page {page} of {pages}',
    },
  }),
  blocks: [
    {
      type: 'heading',
      level: 1,
      text: 'First operation, five options: what the patient pages stand on',
      origin,
    },
    {
      type: 'facts',
      items: [
        { label: 'Woman, born 3 Aug 1979', value: '47 years' },
        { label: '165 cm, 121.6 kg', value: 'BMI 44.7, usual cut-offs' },
        { label: 'Type 2 diabetes, reflux', value: 'metformin, ibuprofen' },
        { label: 'Never smoked', value: 'no pregnancy planned' },
        { label: 'No earlier operation', value: 'asks: first operation' },
      ],
      origin,
    },
    { type: 'heading', level: 2, text: 'Figures shown', origin },
    {
      type: 'table',
      layout: 'dense',
      columns: [
        { label: 'Record', width: 9 },
        { label: 'Outcome', width: 17 },
        { label: 'Time', width: 6 },
        { label: 'Figure', width: 8, align: 'end' },
        { label: '95% CI or spread', width: 18 },
        { label: 'n', width: 8, align: 'end' },
        { label: 'Design, years', width: 15 },
        { label: 'Match, reason', width: 19 },
      ],
      rows: [
        band('Sleeve'),
        ...figures,
        band('Gastric bypass'),
        ...figures,
        band('Semaglutide'),
        ...figures.slice(0, 1),
        band('Food and activity program'),
        ...figures,
        ...figures,
        ...figures,
      ],
      origin,
    },
    { type: 'heading', level: 2, text: 'Set aside', origin },
    {
      type: 'table',
      layout: 'dense',
      columns: [
        { label: 'Record', width: 14 },
        { label: 'Outcome', width: 16 },
        { label: 'Match', width: 14 },
        { label: 'Reason', width: 56 },
      ],
      rows: [
        'SE-M-006|serious, 30 d|other people|All had diabetes for 10 years or more, mean BMI 35.8; patient pages say “not known for people like you”.',
        'SL-W-021|weight, 5 y|other people|Earlier band in all; reference weight is the one before the band.',
      ].map((line) => evidenceRow(line.split('|'))),
      origin,
    },
    topic(
      'Cautions this case triggers',
      ['Shown on the patient pages unless marked.'],
      [
        {
          type: 'list',
          ordered: false,
          items: [
            '**Reflux × sleeve.** RX-03. Shown at “Two points about your own health”.',
            '**Metformin, any operation.** RX-12. Review dose on the day of discharge.',
          ].map((text) => [para(text)]),
          origin,
        },
      ],
    ),
    { ...health, heading: 'A call-out' },
  ],
};

/** Dense table on patient sizes. */
export const sourcesTree: DocumentTree = {
  ...comparisonTree,
  kind: 'sources',
  title: 'Where the numbers come from',
  furniture: furniture({ headerOnFirstPage: true }),
  blocks: [
    { type: 'heading', level: 1, text: 'Where the numbers come from', origin },
    para('Every figure in these pages comes from a published study. This page says which.'),
    topic(
      'How much might I weigh?',
      [],
      [
        {
          type: 'table',
          layout: 'dense',
          columns: [
            { label: 'Figure', width: 22 },
            { label: 'Study', width: 48 },
            { label: 'People', width: 15, align: 'end' },
            { label: 'How sure', width: 15 },
          ],
          rows: [
            band('Sleeve'),
            evidenceRow([
              '206 lb after 5 years',
              'Marrowby and others. An invented trial of two operations. Journal of Invented Trials 2021. doi 10.0000/invented.2021.0417',
              '1,204',
              'High',
            ]),
            evidenceRow(['195 lb after 1 year', 'Marrowby and others, as above', '1,198', 'High']),
            band('Gastric bypass'),
            evidenceRow(['190 lb after 5 years', 'Marrowby and others, as above', '1,180', 'High']),
          ],
          origin,
        },
      ],
    ),
  ],
};

export const sampleTrees: readonly DocumentTree[] = [
  comparisonTree,
  questionsTree,
  clinicianTree,
  sourcesTree,
];
