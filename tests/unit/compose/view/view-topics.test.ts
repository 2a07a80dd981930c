import { describe, expect, it } from 'vitest';

import type { TableView } from '../../../../src/compose/view/shared-shapes.ts';
import { buildView } from '../../../../src/compose/view/build-view.ts';
import { viewChoices } from '../../../../src/compose/view/view-choices.ts';
import { viewLines } from '../../../../src/compose/view/view-lines.ts';
import { viewOwn } from '../../../../src/compose/view/view-own.ts';
import { viewPeople } from '../../../../src/compose/view/view-people.ts';
import { viewTables } from '../../../../src/compose/view/view-table.ts';
import { untoldEarly } from '../../../../src/compose/view/view-untold.ts';
import { viewWeight } from '../../../../src/compose/view/view-weight.ts';
import type {
  Cell,
  ComparisonTable,
  OutcomeRow,
  RecordUse,
  Topic,
} from '../../../../src/model/comparison.ts';
import {
  fiveOptions,
  fiveYears,
  impossibleCell,
  makeComparison,
  month,
  rowOf,
  shareCell,
  unknownCell,
  weightCell,
  withRecords,
} from '../../../helpers/compose-inputs.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';

const plain = (words: { readonly markup: string }): string =>
  words.markup
    .replace(/<[^>]*>/g, '')
    .replaceAll('\u00a0', ' ')
    .replaceAll('&quot;', '"');

type Lines = readonly { readonly words: { readonly markup: string } }[];
const said = (lines: Lines | undefined): readonly string[] => (lines ?? []).map(({ words }) => plain(words));

const cellsOf = (table: Pick<TableView, 'rows'> | undefined): readonly (readonly string[])[] =>
  (table?.rows ?? []).map(({ cells }) => cells.map(({ lines }) => said(lines).join(' | ')));

/** A topic that draws one row of cells. */
function topicWith(row: OutcomeRow, denominator: 100 | 1000 = 100): Topic {
  return { id: 'first-month', denominator, picture: { ...row, denominator }, rows: [] };
}

function withTopic(topic: Topic): ComparisonTable {
  const comparison = makeComparison(fiveOptions);
  return withRecords({ ...comparison, topics: [topic] });
}

function withMain(cells: Parameters<typeof rowOf>[2]): ComparisonTable {
  const comparison = makeComparison(fiveOptions);
  const main = rowOf(fiveOptions, ['weight-loss', fiveYears], cells);
  return withRecords({ ...comparison, weight: { mainMonths: 60, main, over: [main], courses: [] } });
}

describe('what everybody asks of the first month', () => {
  const shares = { sleeve: (place: Parameters<typeof shareCell>[0]) => shareCell(place, [2, 1000]) };
  const rowFor = (outcome: string): OutcomeRow => rowOf(fiveOptions, [outcome, month], shares);
  const told = async (topic: Topic, options = fiveOptions): Promise<readonly string[]> => {
    const comparison = { ...makeComparison(options), topics: [topic] };
    return untoldEarly(await sceneFor('en', { comparison: withRecords(comparison) }), topic).flatMap(
      ({ lead }) => said(lead),
    );
  };

  it('is said to be unknown where no option has a figure, with its meaning', async () => {
    const drawn = topicWith(rowFor('leak'), 1000);
    const [meaning, none] = await told(drawn);
    expect(meaning).toMatch(/^A serious problem: Trouble that is dangerous/);
    expect(none).toBe(
      'Not known for any of your choices: “A serious problem” and “Death”. We found no figure that holds for people like you.',
    );
    expect((await told({ ...drawn, rows: [rowFor('death')] })).at(-1)).toContain(': “A serious problem”.');
    expect((await told({ ...drawn, picture: null })).at(-1)).toContain('“A serious problem” and “Death”');
  });

  it('is not said where it is told, of a later time, nor where nobody has a procedure', async () => {
    const serious = topicWith(rowFor('any-complication'), 1000);
    expect(await told({ ...serious, rows: [rowFor('death')] })).toEqual([]);
    const leak = topicWith(rowFor('leak'), 1000);
    expect(await told({ ...leak, id: 'later-years' })).toEqual([]);
    expect(await told(leak, ['semaglutide', 'no-operation'])).toEqual([]);
  });
});

describe('a strip of people', () => {
  it('asks by the name of an outcome that has no question of its own, and says its time', async () => {
    const early = topicWith(rowOf(fiveOptions, ['ulcer', month], {}));
    const late = topicWith(rowOf(fiveOptions, ['ulcer', fiveYears], {}));
    const questions = [early, late].map(async (topic) => viewPeople(await sceneFor('en'), topic)?.question);
    expect(await Promise.all(questions)).toEqual([
      'An ulcer in the first month: who has it?',
      'An ulcer within 5 years: who has it?',
    ]);
  });

  it('says what cannot happen in words alone, of a treatment without an operation otherwise than of one', async () => {
    const topic = topicWith(
      rowOf(fiveOptions, ['reoperation', fiveYears], {
        sleeve: impossibleCell,
        semaglutide: impossibleCell,
      }),
    );
    const rows = viewPeople(await sceneFor('en'), topic)?.rows ?? [];
    expect([rows[0], rows[3]].map((row) => said(row?.lines))).toEqual([
      ['Not possible', 'This cannot happen with this choice.'],
      ['No operation', 'So this cannot happen. Other problems can.'],
    ]);
    expect([rows[0], rows[3]].map((row) => [row?.people, row?.unknown])).toEqual([
      [null, null],
      [null, null],
    ]);
  });

  it('says that a figure is not known where its row lacks an option', async () => {
    const row = rowOf(fiveOptions, ['ulcer', fiveYears], { sleeve: (place) => shareCell(place, [5, 100]) });
    const rows = viewPeople(await sceneFor('en'), topicWith({ ...row, cells: row.cells.slice(0, 1) }))?.rows;
    expect(said(rows?.[1]?.lines)).toEqual(['Not known']);
    expect(rows?.[1]?.unknown).toMatchObject({ of: '100' });
  });

  it('is not there where a topic draws nothing', async () => {
    const scene = await sceneFor('en');
    expect(viewPeople(scene, undefined)).toBeNull();
    expect(viewPeople(scene, { id: 'benefits', denominator: 100, picture: null, rows: [] })).toBeNull();
  });
});

describe('in short', () => {
  it('heads the column of problems with its time, and tells why a cell has no number', async () => {
    const topic = topicWith(
      rowOf(fiveOptions, ['major-complication', { days: 90 }], {
        sleeve: impossibleCell,
        semaglutide: impossibleCell,
        bypass: (place) => shareCell(place, [5, 100]),
        'no-operation': (place) => ({
          ...shareCell(place, [5, 100]),
          value: { kind: 'amount', value: 2, unit: 'days' },
        }),
      }),
    );
    const { short } = viewChoices(await sceneFor('en', { comparison: withTopic(topic) }));
    expect(short.columns[2]?.label).toBe('A serious problem, 90\u00a0days');
    expect(cellsOf(short).map(([, , trouble]) => trouble)).toEqual([
      'does not apply',
      '5 out of 100',
      'not known',
      'no operation',
      'not known',
    ]);
  });

  it('has no column of problems where no option has a figure', async () => {
    const comparison = { ...makeComparison(fiveOptions), topics: [] };
    const { short, peopleKey } = viewChoices(await sceneFor('en', { comparison }));
    expect(short.columns.map(({ label }) => label)).toEqual(['', 'Weight later', 'Can it be undone?']);
    expect(peopleKey).toBeNull();
  });

  it('explains only the signs that its pictures of people use', async () => {
    const signs = async (counts: readonly [number, number]): Promise<readonly string[]> => {
      const cells = { sleeve: (place: Parameters<typeof shareCell>[0]) => shareCell(place, counts) };
      const comparison = withTopic(
        topicWith(rowOf(fiveOptions, ['major-complication', { days: 30 }], cells)),
      );
      return viewChoices(await sceneFor('en', { comparison })).peopleMarks.map(({ kind }) => kind);
    };
    expect(await signs([9, 100])).toEqual(['had', 'not']);
    expect(await signs([0, 200])).toEqual(['not', 'may']);
  });

  it('asks how many die where its table of the first month tells of deaths alone', async () => {
    const question = async (...outcomes: readonly string[]): Promise<string> => {
      const rows = outcomes.map((outcome) =>
        rowOf(fiveOptions, [outcome, { days: 30 }], {
          sleeve: (place) => shareCell(place, [5, 1000]),
        }),
      );
      const [picture, ...rest] = rows;
      if (picture === undefined) throw new Error('no outcome');
      const topic = { ...topicWith(picture, 1000), rows: rest };
      return buildView(await sceneFor('en', { comparison: withTopic(topic) })).firstMonthQuestion;
    };
    const several = 'Which problems happen in the first month?';
    expect(await question('major-complication', 'death')).toBe('How many people die in the first month?');
    expect(await question('major-complication', 'death', 'leak')).toBe(several);
    expect(await question('major-complication', 'leak')).toBe(several);
    // That a serious problem is not known for anyone is said under it too.
    expect(await question('infection', 'death')).toBe(several);
  });

  it('heads the weights with their time only where it is that of every one', async () => {
    const comparison = makeComparison(fiveOptions);
    const shortOf = async (over: ComparisonTable['weight']['over']): Promise<TableView> =>
      viewChoices(
        await sceneFor('en', { comparison: { ...comparison, weight: { ...comparison.weight, over } } }),
      ).short;
    const weights = (short: TableView): readonly (string | undefined)[] => [
      short.columns[1]?.label.replaceAll('\u00a0', ' '),
      ...cellsOf(short).map(([, words]) => words),
    ];
    expect(weights(await shortOf([]))).toEqual([
      'Weight after 5 years',
      '206 lb (93 kg)',
      '190 lb (86 kg)',
      'not known',
      'not known',
      '256 lb (116 kg)',
    ]);
    // Semaglutide is known after one year.
    expect(weights(await shortOf(comparison.weight.over))).toEqual([
      'Weight later',
      '206 lb (93 kg) after 5 years',
      '190 lb (86 kg) after 5 years',
      'not known',
      '212 lb (96 kg) after 1 year',
      '256 lb (116 kg) after 5 years',
    ]);
  });

  it('says a weight at the longest time known with its time, where none is known at the main one', async () => {
    const comparison = makeComparison(fiveOptions);
    const over = [12, 24, 120].map((months) =>
      rowOf(fiveOptions, ['weight-loss', { months }], {
        plication: (place) => (months > 24 ? unknownCell(place) : weightCell(place, 100 - months / 12)),
        bypass: (place) => weightCell(place, 60),
      }),
    );
    const weight = { ...comparison.weight, over };
    const scene = await sceneFor('en', { comparison: withRecords({ ...comparison, weight }) });
    const cells = cellsOf(viewChoices(scene).short).map(([, words]) => words);
    // Of the bypass the figure at five years stands, though a longer time is known.
    expect(cells.slice(1, 4)).toEqual([
      '190 lb (86 kg) after 5 years',
      '216 lb (98 kg) after 2 years',
      'not known',
    ]);
  });

  it('leaves out a weight at another time that was worked out from another measure, as the strip does', async () => {
    const comparison = makeComparison(fiveOptions);
    const short = async (computed: boolean): Promise<readonly (string | undefined)[]> => {
      const over = [
        rowOf(fiveOptions, ['weight-loss', { months: 24 }], {
          plication: (place) => weightCell(place, 98, { computed, metric: 'EWL' }),
        }),
      ];
      const weight = { ...comparison.weight, over };
      const scene = await sceneFor('en', { comparison: withRecords({ ...comparison, weight }) });
      const strip = viewWeight(scene).rows[2];
      return [cellsOf(viewChoices(scene).short)[2]?.[1], said(strip?.lines).at(-1)];
    };
    expect(await short(false)).toEqual([
      '216 lb (98 kg) after 2 years',
      'Known for another time: 216 lb after 2 years.',
    ]);
    expect(await short(true)).toEqual([
      'not known',
      'for people like you. No such study lasted more than 3 years.',
    ]);
  });
});

describe('the strip of weights', () => {
  it('draws nothing where no weight is known, and gives each option its reason in words', async () => {
    const comparison = withMain({ sleeve: impossibleCell });
    const { rows, axis, marks, covered, intro } = viewWeight(await sceneFor('en', { comparison }));
    expect({ axis, marks, covered }).toEqual({ axis: null, marks: [], covered: null });
    expect(plain(intro)).toBe('No study tells this for people like you.');
    expect(rows.map(({ lines }) => said(lines)[0])).toEqual([
      'Not known.',
      ...Array.from({ length: 4 }, () => 'Not known. We found no study that counted this.'),
    ]);
    expect(rows.map(({ range, unknown }) => range ?? unknown)).toEqual([null, null, null, null, null]);
  });

  it('says who was measured before what other studies say, so that it is not taken as theirs', async () => {
    const use: Partial<RecordUse> = {
      match: 'near',
      reasons: [{ code: 'age-outside', low: 21, high: 40, yours: 45 }],
    };
    const make = (place: Parameters<typeof weightCell>[0]): Cell => {
      const cell = weightCell(place, 90);
      const others = { low: 86.2, high: 96.2, records: ['a', 'b'] };
      return { ...cell, lead: { ...cell.lead, ...use }, others };
    };
    const comparison = withMain({ sleeve: make });
    const [row] = viewWeight(await sceneFor('en', { comparison })).rows;
    expect(said(row?.lines).slice(-2)).toEqual([
      'These people were 21 to 40 years old. You are 45.',
      'Other studies: 190 to 212 lb.',
    ]);
  });

  it('explains only the marks that it draws', async () => {
    const marks = async (cells: Parameters<typeof rowOf>[2]): Promise<readonly string[]> =>
      viewWeight(await sceneFor('en', { comparison: withMain(cells) })).marks.map(({ kind }) => kind);
    expect(await marks({ sleeve: (place) => weightCell(place, 90) })).toEqual(['average', 'change', 'today']);
    const uncertainty = { low: 88, high: 92 };
    expect(await marks({ sleeve: (place) => weightCell(place, 90, { uncertainty }) })).toEqual([
      'average',
      'change',
      'uncertainty',
      'today',
    ]);
  });
});

describe('lines over time', () => {
  it('say where a course ends early, have no band without a spread, and name the options without a line', async () => {
    const comparison = makeComparison(fiveOptions);
    const points = [12, 24].map((months) => {
      const cell = weightCell(
        { option: 'sleeve', outcome: 'weight-loss', asked: { months } },
        90 - months / 12,
      );
      if (cell.value.kind !== 'weight') throw new Error('not a weight');
      return { months, value: cell.value, record: cell.lead.record, cell: cell.id };
    });
    const weight = { ...comparison.weight, courses: [{ option: 'sleeve', study: 'study-a', points }] };
    const board = viewLines(await sceneFor('en', { comparison: { ...comparison, weight } }));
    expect(board?.lines[0]).toMatchObject({
      unknownAfter: 'not followed after 2\u00a0years',
      points: [
        { months: 12, at: 89, label: '196', low: null, high: null },
        { months: 24, at: 88, label: '194', low: null, high: null },
      ],
    });
    expect(board?.lines[0]?.alt.replaceAll('\u00a0', ' ')).toBe(
      'Sleeve: 196 lb after 1 year and 194 lb after 2 years; not followed after 2 years; you weigh 252 lb (115 kg) today.',
    );
    expect(plain(board?.intro ?? { markup: '' })).toBe(
      'The line shows pounds by years from now. Each line follows the people of one study for as long as it lasted. There is no line for a gastric bypass, stomach folding, semaglutide, or no new treatment: we found no single study to draw it from.',
    );
    const spanish = viewLines(await sceneFor('es', { comparison: { ...comparison, weight } }));
    expect(plain(spanish?.intro ?? { markup: '' })).toContain(
      'la semaglutida ni seguir sin tratamiento nuevo:',
    );
  });

  it('say what their band is, and no more where every option has a line', async () => {
    const options = ['sleeve'];
    const comparison = makeComparison(options);
    const board = viewLines(await sceneFor('en', { comparison }));
    expect(plain(board?.intro ?? { markup: '' })).toMatch(
      /as long as it lasted\. The band shows where people end up\.$/,
    );
  });
});

describe('tables of outcomes', () => {
  it('explain no outcome whose name says it all, and print amounts with their unit', async () => {
    const row = (outcome: string, make: (cell: Cell) => Cell): OutcomeRow =>
      rowOf(fiveOptions, [outcome, fiveYears], { sleeve: (place) => make(shareCell(place, [5, 100])) });
    const amount = { kind: 'amount' as const, value: -1.3, unit: 'percentage points', metric: 'HbA1c' };
    const rows = [
      row('death', (cell) => cell),
      row('vomiting', (cell) => ({ ...cell, value: amount }) as Cell),
    ];
    const [table, ...others] = viewTables(await sceneFor('en'), rows, 100);
    expect(others).toEqual([]);
    expect(said(table?.lead)).toHaveLength(1);
    expect(cellsOf(table)[0]).toEqual(['Sleeve', '5', '1.3 percentage points lower']);
  });

  it('are none where no outcome was asked', async () => {
    expect(viewTables(await sceneFor('en'), [], 100)).toEqual([]);
  });

  const rowsOf = (...outcomes: readonly string[]): readonly OutcomeRow[] =>
    outcomes.map((outcome) =>
      rowOf(fiveOptions, [outcome, fiveYears], { sleeve: (place) => shareCell(place, [5, 100]) }),
    );

  it('say that one person can have several only where there are several', async () => {
    const lead = async (...outcomes: readonly string[]): Promise<string | undefined> =>
      said(viewTables(await sceneFor('en'), rowsOf(...outcomes), 100)[0]?.lead)[0];
    const several = 'One person can have several of these.';
    expect(await lead('death', 'vomiting')).toContain(several);
    expect(await lead('death')).not.toContain(several);
    expect(await lead('death')).toContain('It does not happen to the others.');
  });

  it('give with each number what it is out of, for a page without the sentence over the table', async () => {
    const [table] = viewTables(await sceneFor('en'), rowsOf('death', 'vomiting'), 100);
    expect(table?.rows[0]?.cells[1]?.lines[0]?.words.markup).toMatch(/ alone="5 out of 100">5<\/fig>$/);
  });

  it('cite their notes in the order of their numbers', async () => {
    const few: Partial<RecordUse> = {
      match: 'near',
      reasons: [{ code: 'bmi-mean-only', mean: 45.9, yours: 43.1 }],
    };
    const row = rowOf(fiveOptions, ['death', fiveYears], {
      sleeve: (place) => shareCell(place, [500, 1000], few),
      bypass: (place) => shareCell(place, [30, 60], few),
    });
    const [table] = viewTables(await sceneFor('en'), [row, ...rowsOf('bleeding')], 100);
    expect(
      cellsOf(table)
        .map(([, cell]) => cell)
        .slice(0, 2),
    ).toEqual(['50 | note 1', '50 | notes 1 and 2']);
    // Large print has each right under the row that cites it first.
    expect(table?.notes.map(({ row: at }) => at)).toEqual([0, 1]);
  });

  it('go on with the numbers of their notes in a further table: both may stand on one page', async () => {
    const few: Partial<RecordUse> = {
      match: 'near',
      reasons: [{ code: 'bmi-mean-only', mean: 45.9, yours: 43.1 }],
    };
    const rows = ['death', 'leak', 'bleeding', 'ulcer', 'reflux'].map((outcome) =>
      rowOf(fiveOptions, [outcome, fiveYears], {
        sleeve: (place) => shareCell(place, [500, 1000], few),
        bypass: (place) => shareCell(place, [30, 60]),
      }),
    );
    const tables = viewTables(await sceneFor('en'), rows, 100);
    const told = tables.map((table) => [
      table.firstNote,
      table.notes.length,
      ...cellsOf(table)
        .slice(0, 2)
        .map(([, cell]) => cell),
    ]);
    expect(told).toEqual([
      [1, 2, '50 | note 1', '50 | note 2'],
      [3, 2, '50 | note 3', '50 | note 4'],
    ]);
  });

  it('say over the first that choices stand one under another whose figures come from different studies', async () => {
    const leadOf = async (study: string): Promise<string> => {
      const row = rowOf(fiveOptions, ['death', fiveYears], {
        sleeve: (place) => shareCell(place, [500, 1000], { study: 'study-a' }),
        bypass: (place) => shareCell(place, [300, 1000], { study }),
      });
      const [table] = viewTables(await sceneFor('en'), [row], 100);
      return (table?.lead ?? []).map(({ words }) => plain(words)).join(' ');
    };
    const different = 'The numbers come from different studies. They may not have counted in the same way.';
    expect(await leadOf('study-b')).toContain(different);
    expect(await leadOf('study-a')).not.toContain(different);
  });

  it('name in a note the figures it is about, or their choices alone where these are many', async () => {
    const near: Partial<RecordUse> = { match: 'near', reasons: [{ code: 'bmi-unknown' }] };
    const notesOf = async (...outcomes: readonly string[]): Promise<readonly string[]> => {
      const rows = outcomes.map((outcome) =>
        rowOf(fiveOptions, [outcome, fiveYears], {
          sleeve: (place) => shareCell(place, [500, 1000], near),
          bypass: (place) => shareCell(place, [5, 100], outcome === 'death' ? near : {}),
        }),
      );
      return (viewTables(await sceneFor('en'), rows, 100)[0]?.notes ?? []).map(({ words }) => plain(words));
    };
    const unstated = 'The study does not state the BMI of the people.';
    expect(await notesOf('death', 'bleeding')).toEqual([
      `Sleeve (Death, Bleeding), Gastric bypass (Death): ${unstated}`,
    ]);
    expect(await notesOf('death', 'bleeding', 'vomiting', 'nausea')).toEqual([
      `Sleeve, Gastric bypass: ${unstated}`,
    ]);
  });

  it('say the denominator and the rest over the first of several only', async () => {
    const rows = rowsOf('death', 'bleeding', 'vomiting', 'nausea', 'fracture');
    const tables = viewTables(await sceneFor('en'), rows, 100);
    expect(tables.map(({ columns }) => columns.length)).toEqual([4, 3]);
    const leads = tables.map(({ lead }) => said(lead).join(' '));
    expect(leads[0]).toMatch(/^Out of 100 people, within 5 years\. .*“Not known” without a note/);
    expect(leads[1]).toBe('Out of 100 people, within 5 years.');
  });

  it('say over counts of the studies themselves that these are that, and no other number of people', async () => {
    const lead = async (...counts: readonly (readonly [number, number])[]): Promise<string> => {
      const rows = counts.map((count, index) =>
        rowOf(fiveOptions, [['death', 'bleeding'][index] ?? '', fiveYears], {
          sleeve: (place) => shareCell(place, count),
        }),
      );
      return said(viewTables(await sceneFor('en'), rows, 100)[0]?.lead)[0] ?? '';
    };
    const asCounted = 'If fewer than 3 people had it, you see the count of the study itself.';
    expect(await lead([1, 130])).toMatch(
      /^How many of the people in the study, within 5 years\. It does not happen to the others/,
    );
    const both = await lead([1, 130], [5, 100]);
    expect(both).toMatch(/^Out of 100 people, within 5 years\./);
    expect(both).toContain(asCounted);
    expect(await lead([3, 130], [5, 100])).not.toContain(asCounted);
  });
});

describe('own results', () => {
  it('say their time, and that the studies do not tell where they do not', async () => {
    const own = {
      events: 3,
      n: 60,
      days: 90,
      from: '2021',
      to: '2025',
      surgeon: 'surgeon-1',
      tooFew: false,
      score: { low: 0.017, high: 0.137 },
    };
    const row = rowOf(fiveOptions, ['leak', { days: 90 }], {
      sleeve: (place) => ({ ...unknownCell(place), own }),
      bypass: (place) => shareCell(place, [5, 100]),
    });
    const topic: Topic = { id: 'first-month', denominator: 100, picture: null, rows: [row] };
    const rows = viewOwn(await sceneFor('en', { comparison: withTopic(topic) }));
    expect(rows.map(({ name, lines }) => [name.markup, ...said(lines)])).toEqual([
      [
        'Sleeve',
        'A leak, within 90 days: 3 of 60 people, from 2021 to 2025. The true figure could be 1 to 14 out of 100. The studies do not tell for people like you.',
      ],
    ]);
    // A figure of the studies that is of another time than the row says so.
    const around: Partial<RecordUse> = { timeBasis: 'peri-operative', horizon: {} };
    const told = rowOf(fiveOptions, ['leak', { days: 30 }], {
      sleeve: (place) => ({ ...shareCell(place, [5, 100], around), own }),
    });
    const other: Topic = { id: 'first-month', denominator: 100, picture: null, rows: [told] };
    const [row30] = viewOwn(await sceneFor('en', { comparison: withTopic(other) }));
    expect(said(row30?.lines ?? []).join(' ')).toContain(
      'In the studies, around the operation: 5 out of 100.',
    );
  });
});
