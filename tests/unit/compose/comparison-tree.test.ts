import { beforeAll, describe, expect, it } from 'vitest';

import { composeDocument } from '../../../src/compose/index.ts';
import type { ComposeInput, Templates } from '../../../src/compose/index.ts';
import type { ComparisonTable, KnownCell, OutcomeRow } from '../../../src/model/comparison.ts';
import type { DocumentTree, StripRow, Table } from '../../../src/model/document.ts';
import type { Locale } from '../../../src/model/locale.ts';
import { makeCase, makeClinic } from '../../helpers/compare-inputs.ts';
import {
  blocksOfType,
  evidenceFor,
  fiveOptions,
  fiveYears,
  impossibleCell,
  makeComparison,
  practiceHit,
  realLocale,
  realTemplates,
  refluxHit,
  rowOf,
  shareCell,
  textOf,
  topicNamed,
  unknownCell,
  weightCell,
  withRecords,
  wordsOf,
} from '../../helpers/compose-inputs.ts';

let templates: Templates;
let english: Locale;

beforeAll(async () => {
  templates = await realTemplates();
  english = await realLocale('en');
});

function compose(comparison: ComparisonTable, changes: Partial<ComposeInput> = {}): DocumentTree {
  const input: ComposeInput = {
    kind: 'comparison',
    case: makeCase({ decision: { options: fiveOptions } }),
    clinic: makeClinic(),
    evidence: evidenceFor(comparison),
    comparison,
    aftercare: null,
    locale: english,
    state: 'example',
    date: '2026-11-25',
    documentId: 'T-1-C',
    templates,
    ...changes,
  };
  const result = composeDocument(input);
  if (!result.ok) throw new Error(result.diagnostics.map(({ message }) => message).join('; '));
  return result.value;
}

type CellMaker = Parameters<typeof rowOf>[2][string];

const tied = (text: string): string => text.replaceAll('~', '\u00a0');

function rowsOf(tree: DocumentTree, question: string): readonly StripRow[] {
  return topicNamed(tree, question).strips[0]?.rows ?? [];
}

/** Cells of a table as text; paragraphs of a cell joined by a stroke. */
function cellsOf(table: Table | undefined): readonly (readonly string[])[] {
  return (table?.rows ?? []).map(({ cells }) =>
    cells.map((cell) => cell.map(({ inlines }) => inlines.map(({ value }) => value).join('')).join(' | ')),
  );
}

/** A share whose true value lies between these. */
function withInterval(cell: KnownCell, [low, high]: readonly [low: number, high: number]): KnownCell {
  if (cell.value.kind !== 'proportion') throw new Error('not a share');
  return { ...cell, value: { ...cell.value, interval: { low, high, basis: 'score' } } };
}

describe('the order of the comparison', () => {
  it('is that of the pages, with every option in every strip', () => {
    const tree = compose(makeComparison(fiveOptions, { cautions: [refluxHit] }));
    const heads = tree.blocks.map((block) => (block.type === 'topic' ? block.question : block.type));
    expect(heads).toEqual([
      'cover',
      'What are my choices?',
      'key',
      'In short',
      'callout',
      'callout',
      tied('How much might I weigh after 5~years?'),
      'How might my weight change over time?',
      'Who has a serious problem in the first month?',
      'Which problems happen in the first month?',
      'Can it be undone?',
      tied('Who needs another operation within 5~years?'),
      'Which problems can come in later years?',
      'What might I have to live with?',
      'What are the results here?',
      'What does nobody know yet?',
      'What does it ask of me?',
      'What does my surgeon think?',
      'What matters to me?',
      'What happens next?',
    ]);
    const names = ['Sleeve', 'Gastric bypass', 'Stomach folding', 'Semaglutide', 'No new treatment'];
    for (const question of heads.slice(6).filter((head) => head.endsWith('?'))) {
      const { strips } = topicNamed(tree, question);
      const whole = strips.filter(({ rows }) => rows.length > 2);
      for (const { rows } of whole) expect(rows.map(({ name }) => name)).toEqual(names);
    }
    expect(rowsOf(tree, 'What are my choices?').map(({ tag }) => tag)).toEqual([
      undefined,
      undefined,
      'Under study',
      undefined,
      undefined,
    ]);
  });

  it('asks the question of the decision', () => {
    const [first] = blocksOfType(compose(makeComparison(fiveOptions)), 'cover');
    expect(first).toMatchObject({
      question: 'Which treatment for my weight fits me best?',
      addressee: 'For Ilsa Marchetti-Boone',
      clinic: 'Harbour Lane Clinic',
    });
    const { person } = makeComparison(fiveOptions);
    const [second] = blocksOfType(
      compose(makeComparison(fiveOptions, { person: { ...person, asked: 'second-operation' } })),
      'cover',
    );
    expect(second?.question).toBe('Which second operation, if any, is right for me?');
  });

  it('sums up one line an option', () => {
    const tree = compose(makeComparison(fiveOptions));
    expect(cellsOf(topicNamed(tree, 'In short').tables[0])).toEqual([
      ['Sleeve', tied('206~lb (93~kg) after 5~years'), '24 out of 1,000', 'Partly'],
      ['Gastric bypass', tied('190~lb (86~kg) after 5~years'), '37 out of 1,000', 'Partly'],
      ['Stomach folding', 'not known', 'None of 212', 'Partly'],
      // No figure at five years: the longest time known stands in, so each says its own.
      ['Semaglutide', tied('212~lb (96~kg) after 1~year'), 'no operation', 'Yes'],
      ['No new treatment', tied('256~lb (116~kg) after 5~years'), 'Fewer than 1 out of 1,000', 'Yes'],
    ]);
  });
});

describe('weight', () => {
  const question = tied('How much might I weigh after 5~years?');

  it('says the average, the change, where people end up, and other times', () => {
    const [sleeve, bypass, plication, semaglutide, none] = rowsOf(
      compose(makeComparison(fiveOptions)),
      question,
    );
    expect(wordsOf(sleeve)).toEqual([
      tied('206~lb (93~kg)'),
      tied('46~lb less than today.'),
      tied('Two in three: 181 to~231~lb.'),
    ]);
    expect(wordsOf(bypass)).toEqual([
      tied('190~lb (86~kg)'),
      tied('62~lb less than today.'),
      tied('The average could be 185 to~194~lb.'),
      'Worked out for you from another measure: percent of extra weight lost.',
    ]);
    expect(wordsOf(plication)).toEqual([
      'Not known',
      `for people like you. ${english.translator.text('missing.other-time-longest', { longest: tied('3~years') })}`,
    ]);
    expect(wordsOf(semaglutide)).toEqual([
      'Not known',
      'for people like you. The studies we found were in people with a BMI of 50 or more. Yours is 43.',
      tied('Known for another time: 212~lb after 1~year.'),
    ]);
    expect(wordsOf(none)).toEqual([tied('256~lb (116~kg)'), tied('4~lb more than today.')]);
  });

  it('says weights at other times only where no line shows them, and none worked out from another measure', () => {
    const comparison = makeComparison(fiveOptions);
    const twoYears = rowOf(fiveOptions, ['weight-loss', { months: 24 }], {
      bypass: (place) => weightCell(place, 90, { computed: true, metric: 'EWL' }),
      semaglutide: (place) => weightCell(place, 98),
    });
    const { over } = comparison.weight;
    const weight = { ...comparison.weight, over: [...over.slice(0, 1), twoYears, ...over.slice(1)] };
    const timesIn = (changes: Partial<ComparisonTable['weight']>): readonly (readonly string[])[] => {
      const table = withRecords({ ...comparison, weight: { ...weight, ...changes } });
      const rows = rowsOf(compose(table), question);
      return rows.map((row) =>
        wordsOf(row).filter((words) => /^(\d+\syears?|Known for another time): /.test(words)),
      );
    };
    const semaglutide = [tied('Known for another time: 212~lb after 1~year; 216~lb after 2~years.')];
    expect(timesIn({})).toEqual([[], [], [], semaglutide, []]);
    // Without its line the sleeve says its other time; the main one stands above already.
    expect(timesIn({ courses: [] })).toEqual([[tied('1~year: 176~lb.')], [], [], semaglutide, []]);
  });

  it('draws a band only from a spread of people and a whisker only from an uncertainty', () => {
    const [sleeve, bypass, plication, , none] = rowsOf(compose(makeComparison(fiveOptions)), question);
    expect(sleeve?.picture).toEqual({
      type: 'range',
      average: 93.4,
      low: 82,
      high: 105,
      meaning: 'spread',
      alt: tied(
        'Sleeve: on average 206~lb (93~kg) after 5~years; two in three people weigh 181 to~231~lb; you weigh 252~lb (115~kg) today.',
      ),
    });
    expect(bypass?.picture).toMatchObject({ average: 86.2, low: 84, high: 88, meaning: 'uncertainty' });
    expect(plication?.picture).toEqual({
      type: 'unknown',
      of: 'range',
      alt: 'Stomach folding: not known for people like you.',
    });
    expect(none?.picture).toMatchObject({ average: 116.1, meaning: 'none' });
    expect(none?.picture).not.toHaveProperty('low');
  });

  it('puts all bars and today on one axis in both units, with a key for what is drawn', () => {
    const tree = compose(makeComparison(fiveOptions));
    const axis = topicNamed(tree, question).strips[0]?.axis;
    expect(axis?.today).toEqual({ at: 114.5, label: 'You today' });
    expect(axis?.top.unit).toBe('pounds');
    expect(axis?.bottom?.unit).toBe('kilograms');
    expect(axis?.min).toBeLessThanOrEqual(82);
    expect(axis?.max).toBeGreaterThanOrEqual(116.1);
    const keys = blocksOfType(tree, 'key').map(({ items }) => items.map(({ mark }) => mark));
    expect(keys).toEqual([
      ['had', 'not', 'may'],
      ['spread', 'average', 'change', 'uncertainty', 'today'],
    ]);
  });

  it('keeps to kilograms where the clinic does', () => {
    const clinic = makeClinic();
    const tree = compose(makeComparison(fiveOptions), {
      clinic: { ...clinic, clinic: { ...clinic.clinic, units: 'metric' } },
    });
    const [sleeve] = rowsOf(tree, question);
    expect(wordsOf(sleeve)).toEqual([
      tied('93~kg'),
      tied('22~kg less than today.'),
      tied('Two in three: 82 to~105~kg.'),
    ]);
    expect(topicNamed(tree, question).strips[0]?.axis).not.toHaveProperty('bottom');
  });

  it('names another spread as what it is, warns of too low a weight, and says the real time', () => {
    const comparison = makeComparison(fiveOptions);
    const half = { low: 40, high: 60, basis: 'iqr', share: 'half' } as const;
    const main = rowOf(fiveOptions, ['weight-loss', fiveYears], {
      sleeve: (place) => {
        const cell = weightCell(place, 48, { spread: half, warning: 'under-18-5' });
        return { ...cell, lead: { ...cell.lead, horizon: { months: 72 } } };
      },
    });
    const tree = compose({ ...comparison, weight: { ...comparison.weight, main } });
    const words = wordsOf(rowsOf(tree, question)[0]);
    expect(words).toContain(tied('Half of people: 88 to~132~lb.'));
    expect(words).toContain('Measured after 6 years.');
    expect(words.at(-1)).toContain('too thin');
    expect(blocksOfType(tree, 'key')[1]?.items[0]?.words).toBe(
      'Where people end up; the words say how many of them',
    );
  });

  it('draws a line over time from the people of one study', () => {
    const [board] = blocksOfType(compose(makeComparison(fiveOptions)), 'line-board');
    expect(board?.lines).toHaveLength(1);
    expect(board?.lines[0]).toMatchObject({
      name: 'Sleeve',
      points: [
        { months: 12, at: 80, label: '176', low: 82, high: 105 },
        { months: 60, at: 93.4, label: '206' },
      ],
      timeTicks: [
        { at: 0, label: '0' },
        { at: 12, label: '1' },
        { at: 60, label: '5' },
      ],
      alt: tied('Sleeve: 176~lb after 1~year and 206~lb after 5~years; you weigh 252~lb (115~kg) today.'),
    });
    const comparison = makeComparison(fiveOptions);
    expect(
      blocksOfType(compose({ ...comparison, weight: { ...comparison.weight, courses: [] } }), 'line-board'),
    ).toEqual([]);
  });
});

describe('pictures of people', () => {
  it('says the number, the other side, other studies and the one difference', () => {
    const [sleeve, bypass, plication, semaglutide, none] = rowsOf(
      compose(makeComparison(fiveOptions)),
      'Who has a serious problem in the first month?',
    );
    expect(wordsOf(sleeve)).toEqual([
      '24 out of 1,000',
      '976 do not.',
      tied('Other studies: 18 to~31.').replace('Other studies', 'Another study'),
    ]);
    expect(wordsOf(bypass)).toEqual([
      '37 out of 1,000',
      '963 do not.',
      'These people had a BMI of 46 on average. Yours is 43.',
    ]);
    expect(wordsOf(plication)).toEqual(['None of 212', 'The true figure could be up to 18 out of 1,000.']);
    expect(wordsOf(semaglutide)).toEqual(['No operation', 'So this cannot happen. Other problems can.']);
    expect(wordsOf(none)).toEqual(['Fewer than 1 out of 1,000', 'More than 999 do not.']);
    expect([sleeve, bypass, plication, semaglutide, none].map((row) => row?.picture)).toMatchObject([
      { type: 'people', of: 1000, filled: 24, may: 0, half: false },
      { filled: 37, may: 0, half: false },
      { filled: 0, may: 18, half: false },
      // A picture of a thousand well people would say that nothing else can happen.
      undefined,
      { filled: 0, may: 0, half: true },
    ]);
    expect(sleeve?.picture?.alt).toBe('Sleeve. A serious problem: 24 out of 1,000 people. 976 do not.');
  });

  it('says the real time where it is not the one asked, and what nearly everybody means', () => {
    const [sleeve, bypass, plication] = rowsOf(
      compose(makeComparison(fiveOptions)),
      tied('Who needs another operation within 5~years?'),
    );
    expect(wordsOf(sleeve)).toEqual(['23 out of 100', '77 do not.', 'Counted within 6 years.']);
    expect(wordsOf(bypass)).toEqual(['More than 99 out of 100', 'Fewer than 1 does not.']);
    expect(plication?.picture).toMatchObject({ type: 'unknown', of: 100 });
  });

  it('says whose figures they are', () => {
    const tree = compose(makeComparison(fiveOptions));
    const { text } = topicNamed(tree, 'Who has a serious problem in the first month?');
    const covered = ' This study took people with a BMI of 35 or more. Your BMI is 43.';
    expect(text.endsWith(covered)).toBe(true);
    expect(text).toMatch(/\nSleeve, Gastric bypass, .*: The main numbers come from one study\. This study/);
    expect(text).toContain('There are 1,000 in each picture.');
    const weight = topicNamed(tree, tied('How much might I weigh after 5~years?'));
    expect(weight.text.endsWith(covered)).toBe(true);
  });
});

describe('tables', () => {
  const question = 'Which problems happen in the first month?';

  it('has options as rows, at most four outcomes a table, one denominator, and notes said once', () => {
    const tree = compose(makeComparison(fiveOptions));
    const { tables, text } = topicNamed(tree, question);
    expect(tables.map(({ columns }) => columns.map(({ label }) => label))).toEqual([
      ['', 'Death', 'A leak', 'Bleeding', 'Another operation'],
    ]);
    expect(cellsOf(tables[0])).toEqual([
      // Two events of 50: the count, never a rate.
      ['Sleeve', 'fewer than 1', '6', '9', '2 of 50 | note 1'],
      ['Gastric bypass', '3 | note 2', 'not known', '15', 'not known'],
      ['Stomach folding', 'not known', 'none of 31 | note 3', 'not known', 'not known'],
      ['Semaglutide', 'not known', 'does not apply', 'not known', 'not known'],
      ['No new treatment', 'not known', 'not known', 'not known', 'not known'],
    ]);
    expect(text).toContain('Out of 1,000 people, in the first month.');
    expect(text).toContain(
      '2\nGastric bypass (Death): 3 of 1,000 people had this.\n3\n“None of 31”: The true figure could be up to 113 out of 1,000.',
    );
  });

  /** These tables are made by hand, without a row of death: what is said of that has its own test. */
  const noDeath =
    '\nNot known for any of your choices: “Death”. We found no figure that holds for people like you.';

  it('names in a sentence what is known for no choice, with the reason that all share, and gives it no column', () => {
    const comparison = makeComparison(fiveOptions);
    const untold = (...rows: readonly OutcomeRow[]): ReturnType<typeof topicNamed> => {
      const topics = comparison.topics.map((topic) =>
        topic.id === 'first-month' ? { ...topic, rows } : topic,
      );
      const { text, ...found } = topicNamed(compose({ ...comparison, topics }), question);
      expect(text).toContain(noDeath);
      return { ...found, text: text.replace(noDeath, '') };
    };
    const row = (outcome: string, cells: Parameters<typeof rowOf>[2] = {}): OutcomeRow =>
      rowOf(fiveOptions, [outcome, { days: 30 }], cells);
    expect(topicNamed(compose(comparison), question).text.split('\n').at(-1)).toBe(
      'Not known for any of your choices: “A blood clot”. We found no study that counted this.',
    );
    const both = untold(row('leak'), row('clot'));
    const explained =
      'A leak: What is in the stomach or bowel gets out through a join, a line of staples or a hole. ' +
      'A blood clot: Blood clumps together in a leg, a lung or the veins of the belly.';
    expect(both.tables).toEqual([]);
    expect(both.text).toBe(
      `${question}\n${explained}\nNot known for any of your choices: “A leak” and “A blood clot”. We found no study that counted this.`,
    );
    // What cannot happen with a choice is no reason; a reason of some is not said of all.
    const tooHigh: CellMaker = (place) => unknownCell(place, { code: 'bmi-outside', low: 50, yours: 43.1 });
    const all = Object.fromEntries(fiveOptions.map((code) => [code, tooHigh]));
    expect(untold(row('leak', { ...all, semaglutide: impossibleCell })).text).toMatch(
      /“A leak”\. The studies we found were in people with a BMI of 50 or more\. Yours is 43\.$/,
    );
    expect(untold(row('leak', { sleeve: tooHigh })).text).toMatch(
      /“A leak”\. We found no figure that holds for people like you\.$/,
    );
  });

  // A second outcome: a table of one says in its cells what others say in notes.
  const beside = rowOf(
    fiveOptions,
    ['bleeding', { days: 30 }],
    Object.fromEntries(fiveOptions.map((code) => [code, (place) => shareCell(place, [1000, 100_000])])),
  );

  it('says in the cells of a table with one outcome all that others say in notes', () => {
    const comparison = makeComparison(fiveOptions);
    const row = rowOf(fiveOptions, ['leak', { days: 30 }], {
      sleeve: (place) => withInterval(shareCell(place, [1, 400]), [0.0001, 0.0138]),
      bypass: (place) => shareCell(place, [3, 400]),
      plication: (place) => unknownCell(place, { code: 'diabetes-only' }),
      semaglutide: (place) => unknownCell(place, { code: 'no-record' }),
      'no-operation': impossibleCell,
    });
    const topics = comparison.topics.map((topic) =>
      topic.id === 'first-month' ? { ...topic, rows: [row] } : topic,
    );
    const { tables, text } = topicNamed(compose(withRecords({ ...comparison, topics })), question);
    const cells = cellsOf(tables[0]).map((row) => row.map((cell) => cell.replaceAll('\u00a0', ' ')));
    expect(cells).toEqual([
      ['Sleeve', '1 of 400 | Could be fewer than 1 to 14 out of 1,000.'],
      ['Gastric bypass', '8 | 3 of 400 people had this.'],
      [
        'Stomach folding',
        'Not known for people like you. The studies we found were only in people with diabetes.',
      ],
      ['Semaglutide', 'Not known for people like you. We found no study that counted this.'],
      ['No new treatment', 'does not apply'],
    ]);
    expect(text).not.toMatch(/\bnotes?\b/);
  });

  it('says of one or two events how far they could go, of more a number', () => {
    const comparison = makeComparison(fiveOptions);
    const row = rowOf(fiveOptions, ['leak', { days: 30 }], {
      sleeve: (place) => withInterval(shareCell(place, [1, 400]), [0.0001, 0.0138]),
      bypass: (place) => withInterval(shareCell(place, [2, 400]), [0.0006, 0.0179]),
      plication: (place) => withInterval(shareCell(place, [3, 400]), [0.0015, 0.0218]),
    });
    const topics = comparison.topics.map((topic) =>
      topic.id === 'first-month' ? { ...topic, rows: [row, beside] } : topic,
    );
    const { tables, text } = topicNamed(compose(withRecords({ ...comparison, topics })), question);
    expect(cellsOf(tables[0]).slice(0, 3)).toEqual([
      ['Sleeve', '1 of 400 | note 1', '10'],
      ['Gastric bypass', '2 of 400 | note 2', '10'],
      ['Stomach folding', '8 | note 3', '10'],
    ]);
    expect(text.replace(noDeath, '').replaceAll('\u00a0', ' ').split('\n').slice(-6)).toEqual([
      '1',
      '“1 of 400”: Could be fewer than 1 to 14 out of 1,000.',
      '2',
      '“2 of 400”: Could be fewer than 1 to 18 out of 1,000.',
      '3',
      'Stomach folding (A leak): 3 of 400 people had this.',
    ]);
  });

  it('says why a figure is not known in a numbered note, once for all cells with the same reason', () => {
    const comparison = makeComparison(fiveOptions);
    const tooHigh = { code: 'bmi-outside', low: 50, yours: 43.1 } as const;
    const row = rowOf(fiveOptions, ['leak', { days: 30 }], {
      sleeve: (place) => unknownCell(place, tooHigh),
      bypass: (place) => unknownCell(place, { code: 'diabetes-only' }),
      plication: (place) => unknownCell(place, tooHigh),
      semaglutide: (place) => unknownCell(place, { code: 'no-record' }),
      'no-operation': (place) => shareCell(place, [9, 1000]),
    });
    const topics = comparison.topics.map((topic) =>
      topic.id === 'first-month' ? { ...topic, rows: [row, beside] } : topic,
    );
    const { tables, text } = topicNamed(compose(withRecords({ ...comparison, topics })), question);
    expect(cellsOf(tables[0]).map(([, cell]) => cell)).toEqual([
      'not known (1)',
      'not known (2)',
      'not known (1)',
      'not known',
      '9',
    ]);
    expect(text).toContain('“Not known” without a note: we found no study.');
    expect(text.replace(noDeath, '').split('\n').slice(-4)).toEqual([
      '1',
      'Sleeve (A leak), Stomach folding (A leak): Not known for people like you. The studies we found were in people with a BMI of 50 or more. Yours is 43.',
      '2',
      'Gastric bypass (A leak): Not known for people like you. The studies we found were only in people with diabetes.',
    ]);
  });

  it('divides five outcomes into three and two, and names none that its picture shows', () => {
    const comparison = makeComparison(fiveOptions);
    const outcomes = ['leak', 'bleeding', 'clot', 'death', 'major-complication', 'ulcer'];
    const headsOf = (count: number): readonly number[] => {
      const rows = outcomes
        .slice(0, count)
        .map((outcome) =>
          rowOf(fiveOptions, [outcome, { days: 30 }], { bypass: (place) => shareCell(place, [9, 1000]) }),
        );
      const topics = comparison.topics.map((topic) =>
        topic.id === 'first-month' ? { ...topic, rows } : topic,
      );
      const { tables } = topicNamed(compose(withRecords({ ...comparison, topics })), question);
      return tables.map(({ columns }) => columns.length - 1);
    };
    // The fifth outcome is that of the picture.
    expect([4, 5, 6].map(headsOf)).toEqual([[4], [4], [3, 2]]);
  });

  it('gives each column its time where outcomes were asked at different times', () => {
    const comparison = makeComparison(fiveOptions);
    const rows = [
      rowOf(fiveOptions, ['ulcer', fiveYears], { sleeve: (place) => shareCell(place, [5, 100]) }),
      rowOf(fiveOptions, ['anaemia', { months: 24 }], {
        sleeve: (place) => shareCell(place, [90, 100], { horizon: { months: 18 } }),
      }),
    ];
    const topics = comparison.topics.map((topic) =>
      topic.id === 'later-years' ? { ...topic, rows } : topic,
    );
    const tree = compose(withRecords({ ...comparison, topics }));
    const { tables, text } = topicNamed(tree, 'Which problems can come in later years?');
    expect(tables[0]?.columns.map(({ label }) => label)).toEqual([
      '',
      tied('An ulcer, 5~years'),
      tied('Anemia, 2~years'),
    ]);
    expect(cellsOf(tables[0])[0]).toEqual(['Sleeve', '5', '90 | after 18 months']);
    expect(text).toContain('Each name says after how long.');
  });
});

describe('what the surgeon and the clinic say', () => {
  it('prints one opinion with its reasons and what speaks against it', () => {
    const decision = {
      options: fiveOptions,
      leaning: {
        option: 'sleeve',
        reasons: [{ code: 'fewer-early-problems' }, { text: { en: 'It is the shorter operation.' } }],
      },
      advised_against: [{ option: 'bypass', reasons: [{ code: 'no-pain-medicine' }] }],
    };
    const clinic = {
      ...makeClinic(),
      second_opinion: [{ name: 'Port Sennet General Hospital', phone: '555 0119' }],
    };
    const tree = compose(makeComparison(fiveOptions, { cautions: [refluxHit] }), {
      case: makeCase({ decision }),
      clinic,
    });
    const [panel] = blocksOfType(tree, 'panel');
    const items = panel?.columns.map((column) => wordsOf({ name: '', origin: '', words: column.items }));
    expect(panel?.lead.map(({ value }) => value).join('')).toBe('Dr. A. Example leans to a sleeve.');
    expect(items).toEqual([
      ['There may be fewer problems in the first month.', 'It is the shorter operation.'],
      [
        'You have acid that rises into your food pipe (reflux). With this option, it can mean more problems.',
        'Read what “About your own health” says about this choice.',
        'It can only be undone in part.',
        'Reflux, after 5 years: 31 out of 100. Of the problems with a number here, this happens to the most people.',
      ],
    ]);
    expect(wordsOf({ name: '', origin: '', words: panel?.closing ?? [] })).toEqual([
      'Dr. A. Example advises against a gastric bypass. You could not go on with your pain medicine.',
      'For a second opinion you can call Port Sennet General Hospital: 555 0119.',
    ]);
    expect(panel?.closing[1]?.duty).toBe('phone');
    expect(textOf(tree)).toContain('This is one opinion. The choice is yours.');
  });

  it('says so where no opinion is written', () => {
    const { text } = topicNamed(compose(makeComparison(fiveOptions)), 'What does my surgeon think?');
    expect(text).toContain('Your surgeon has not written down which choice is best for you.');
    expect(text).toContain('second opinion');
  });

  it('shows own results with their limits, or that they are too few', () => {
    const rows = rowsOf(compose(makeComparison(fiveOptions)), 'What are the results here?');
    expect(rows.map(({ name }) => name)).toEqual(['Sleeve', 'Stomach folding']);
    const said = rows.map((row) => wordsOf(row).join(' ').replaceAll('\u00a0', ' '));
    expect(said[0]).toBe(
      'A leak, in the first month: 1 of 212 people, from January 2021 to December 2025. The true figure could be fewer than 1 to 27 out of 1,000. In the studies: 6 out of 1,000.',
    );
    expect(said[1]).toContain('0 of 12 people, from 2021 to 2025. That is too few people to tell.');
  });

  it("prints the clinic's protocol, else evidence, else whom to ask", () => {
    const clinic = makeClinic();
    const own = {
      ...clinic,
      protocol: {
        ...clinic.protocol,
        stay: { sleeve: { en: '1 night' } },
        for_life: { sleeve: { en: 'Vitamins' } },
      },
    };
    const { tables, strips, text } = topicNamed(
      compose(makeComparison(fiveOptions), { clinic: own }),
      'What does it ask of me?',
    );
    expect(cellsOf(tables[0]).slice(0, 4)).toEqual([
      ['Sleeve', '1 night', 'Ask your surgeon.', 'Ask your surgeon.'],
      ['Gastric bypass', 'Ask your surgeon.', 'Ask your surgeon.', 'Ask your surgeon.'],
      ['Stomach folding', 'Ask your surgeon.', 'Ask your surgeon.', 'Ask your surgeon.'],
      ['Semaglutide', 'none', 'none', 'Ask your surgeon.'],
    ]);
    expect(wordsOf(strips[0]?.rows[0])).toEqual(['Vitamins']);
    expect(text).toContain('This is how this clinic does it');
  });

  it('shows an option under study as such, and what the clinic has not given', () => {
    const clinic = makeClinic({
      results: [
        { option: 'plication', outcome: 'leak', days: 30, events: 0, n: 22, from: '2024', to: '2025' },
      ],
    });
    const given = {
      ...clinic,
      under_study: {
        plication: {
          oversight: { en: 'The Sennet Research Board' },
          approval: 'S-1',
          contact: '555 0163',
          form: null,
        },
      },
    };
    const [bare] = blocksOfType(compose(makeComparison(fiveOptions)), 'callout');
    const [full] = blocksOfType(compose(makeComparison(fiveOptions), { clinic: given }), 'callout');
    expect(bare).toMatchObject({ kind: 'study', heading: 'Stomach folding is under study' });
    expect(wordsOf({ name: '', origin: '', words: bare?.body ?? [] }).join(' ')).toContain(
      'It must tell you before you decide.',
    );
    const words = wordsOf({ name: '', origin: '', words: full?.body ?? [] }).join(' ');
    expect(words).toContain('The Sennet Research Board');
    expect(words).toContain('555 0163');
    expect(words).toContain('Your surgeon has counted 22 people who had this treatment.');
    expect(words).toContain('You can say no and still have a usual operation.');
  });
});

describe('the person’s own health', () => {
  it('prints a read statement beside the options it touches, what to ask where none was read, and nothing struck', () => {
    const hits = [refluxHit, { ...refluxHit, id: 'severe-reflux-sleeve' }, practiceHit];
    const clinic = { ...makeClinic(), cautions: { 'severe-reflux-sleeve': 'struck' as const } };
    const tree = compose(makeComparison(fiveOptions, { cautions: hits, notes: ['under-35'] }), { clinic });
    const callouts = blocksOfType(tree, 'callout').filter(({ kind }) => kind === 'health');
    const words = callouts.flatMap(({ body }) => wordsOf({ name: '', origin: '', words: body }));
    expect(words[0]).toContain('Your BMI is 43.');
    expect(words[1]).toMatch(
      /^You have acid that rises into your food pipe \(reflux\)\. For a sleeve: After 10 years/,
    );
    expect(words[2]).toBe(
      'Your BMI matters here. For stomach folding: Ask your surgeon how your BMI changes the risk of this operation.',
    );
    expect(words).toHaveLength(3);
    expect(callouts.flatMap(({ body }) => body).every(({ duty }) => duty === 'caution')).toBe(true);
  });

  it('stands in one call-out, which says a cause once and in bold, however much there is to say', () => {
    const hits = Array.from({ length: 8 }, () => refluxHit);
    const tree = compose(makeComparison(fiveOptions, { cautions: [...hits, practiceHit] }));
    const [callout, ...others] = blocksOfType(tree, 'callout').filter(({ kind }) => kind === 'health');
    expect(others).toEqual([]);
    expect(callout?.heading).toBe('About your own health');
    const words = wordsOf({ name: '', origin: '', words: callout?.body ?? [] });
    expect(words).toHaveLength(9);
    const causes = words.flatMap((text, index) => (/^You(r BMI| have)/.test(text) ? [index] : []));
    expect(causes).toEqual([0, 8]);
    const bold = callout?.body.flatMap(({ inlines }, index) => (inlines[0]?.bold === true ? [index] : []));
    expect(bold).toEqual([0, 8]);
  });
});

describe('what the person fills in', () => {
  it('puts their own words first, in quotation marks, then other points', () => {
    const decision = {
      options: fiveOptions,
      matters_most: [{ code: 'keep-options-open' }, { text: { en: 'I want to climb stairs.' } }],
    };
    const [grid] = blocksOfType(
      compose(makeComparison(fiveOptions), { case: makeCase({ decision }) }),
      'matters',
    );
    const words = wordsOf({ name: '', origin: '', words: grid?.statements ?? [] });
    expect(words).toEqual([
      '“I want to be able to change my mind later.”',
      '“I want to climb stairs.”',
      'I want to lose as much weight as I can.',
      'I want the lowest chance of a serious problem.',
      'I do not want to take vitamins for life.',
    ]);
    expect(grid).toMatchObject({ columns: ['A lot', 'Some', 'Not much'], blanks: 2 });
  });

  it('leads nobody to want to lose as much as they can where the BMI is under every limit for an operation', () => {
    const comparison = makeComparison(fiveOptions);
    const statements = (bmi: number, code = 'eat-with-family'): readonly string[] => {
      const file = makeCase({ decision: { options: fiveOptions, matters_most: [{ code }] } });
      const tree = compose({ ...comparison, person: { ...comparison.person, bmi } }, { case: file });
      const [grid] = blocksOfType(tree, 'matters');
      return wordsOf({ name: '', origin: '', words: grid?.statements ?? [] });
    };
    expect(statements(27.5)).toContain('I want to lose as much weight as I can.');
    expect(statements(27.4)).not.toContain('I want to lose as much weight as I can.');
    // What the person has said stays.
    expect(statements(27.4, 'most-weight-loss')[0]).toBe('“I want to lose as much weight as I can.”');
  });

  it('holds five points, or all that the person has said, and those about an illness only for who has it', () => {
    const statements = (decision: object, health: object = {}): readonly string[] => {
      const file = makeCase({ decision: { options: fiveOptions, ...decision }, health: { ...health } });
      const [grid] = blocksOfType(compose(makeComparison(fiveOptions), { case: file }), 'matters');
      return wordsOf({ name: '', origin: '', words: grid?.statements ?? [] });
    };
    expect(statements({})).toHaveLength(5);
    const wishes = ['One', 'Two', 'Three', 'Four', 'Five'];
    const said = { matters_most: wishes.map((en) => ({ text: { en } })) };
    expect(statements(said)).toEqual(wishes.map((wish) => `“${wish}”`));
    const first = [
      'most-weight-loss',
      'fewest-serious-problems',
      'keep-options-open',
      'no-lifelong-vitamins',
    ];
    const taken = { matters_most: first.slice(0, 3).map((code) => ({ code })) };
    expect(statements(taken).slice(3)).toEqual([
      'I do not want to take vitamins for life.',
      'I want to be back at work soon.',
    ]);
    const ill = { medicines: ['anti-inflammatory'], conditions: ['type-2-diabetes', 'reflux'] };
    const all = { matters_most: [...first, 'soon-back-to-work'].slice(0, 2).map((code) => ({ code })) };
    expect(statements(all, ill).slice(2)).toEqual([
      'I want to be able to change my mind later.',
      'I do not want to take vitamins for life.',
      'I want to keep taking my pain medicine.',
    ]);
    const four = { matters_most: [...first, 'keep-pain-medicine'].slice(1).map((code) => ({ code })) };
    expect(statements(four, ill).slice(4)).toEqual(['I want to lose as much weight as I can.']);
    const most = { matters_most: [...first.slice(0, 2), 'no-lifelong-vitamins'].map((code) => ({ code })) };
    expect(statements(most, { conditions: ['severe-reflux', 'uncontrolled-diabetes'] }).slice(4)).toEqual([
      'I want my diabetes to get better.',
    ]);
  });

  it('ends with the visit, and that the mind may change', () => {
    const file = makeCase({ decision: { options: fiveOptions } });
    const tree = compose(makeComparison(fiveOptions), {
      case: { ...file, plan: { ...file.plan, next_visit: '2026-12-10' } },
    });
    const [steps] = tree.blocks.slice(-1).flatMap((block) => (block.type === 'topic' ? block.blocks : []));
    const items = steps?.type === 'list' ? steps.items.flat() : [];
    expect(
      wordsOf({ name: '', origin: '', words: items }).map((words) => words.replaceAll('\u00a0', '~')),
    ).toEqual([
      'Read these pages with someone you trust. Write down your questions.',
      'Come to your visit on December~10,~2026. Bring these pages.',
      'Until you decide, go on with your medicines as now. Ask before you stop or start one.',
      'Take the time you need. You can say yes, no or not now. You can change your mind up to the last moment.',
    ]);
    expect(items.at(-1)?.duty).toBe('standard');
  });

  it('leaves whom to call to the foot of every page', () => {
    const tree = compose(makeComparison(fiveOptions));
    expect(textOf(tree)).not.toMatch(/555 0100|555 0101|911/);
    expect(tree.furniture.footer).toMatchObject({
      call: 'Questions? Call 555 0100. Other hours 555 0101. Emergency 911.',
      deferral: 'This does not replace your surgeon.',
    });
  });

  it('asks for a visit where none is set, and for an interpreter where one is needed', () => {
    const file = makeCase({ decision: { options: fiveOptions } });
    const asked = { ...file, interpreter: { ...file.interpreter, needed: true } };
    const nextOf = (scene: Partial<ComposeInput>): string =>
      topicNamed(compose(makeComparison(fiveOptions), { case: asked, ...scene }), 'What happens next?').text;
    const without = nextOf({ clinic: { ...makeClinic(), language_notice: null } });
    expect(without).toContain('Come to your next visit. Bring these pages.');
    expect(without).toMatch(/Ask for an interpreter\. It costs you nothing\.(?! Call)/);
    const notice = { languages: ['en', 'es'], phone: '555-0128' };
    expect(nextOf({ clinic: { ...makeClinic(), language_notice: notice } })).toContain(
      'Ask for an interpreter. It costs you nothing. Call 555-0128.',
    );
    expect(nextOf({ case: file })).not.toContain('interpreter');
  });

  it('lets a person tick each choice, or none yet', () => {
    expect(blocksOfType(compose(makeComparison(fiveOptions)), 'ticks')[0]?.items).toEqual([
      'Sleeve',
      'Gastric bypass',
      'Stomach folding',
      'Semaglutide',
      'No new treatment',
      'I am not sure yet',
    ]);
  });
});
