import { describe, expect, it } from 'vitest';

import { clinicianFigures } from '../../../../src/compose/view/clinician-figures.ts';
import type { Scene } from '../../../../src/compose/view/scene.ts';
import type {
  Cell,
  ComparisonTable,
  KnownCell,
  RecordUse,
  WeightAt,
} from '../../../../src/model/comparison.ts';
import type { Study } from '../../../../src/model/study.ts';
import { makeRecord, makeStudy } from '../../../helpers/compare-inputs.ts';
import { evidenceFor, fiveOptions, makeComparison, shareCell } from '../../../helpers/compose-inputs.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';
import { plain, rowsOf, withMainCells, without, withStay } from '../../../helpers/read-tables.ts';

const stayPlace = { option: 'sleeve', outcome: 'hospital-stay', asked: {} };
type Column = 'record' | 'outcome' | 'time' | 'figure' | 'interval' | 'n' | 'design' | 'why';
type Row = Partial<Record<Column, string>>;

/** Rows by the names of their columns; a band holds its name as record. */
async function figures(comparison: ComparisonTable, tag = 'en'): Promise<readonly Row[]> {
  return allRows(await sceneFor(tag, { comparison }));
}

function allRows(scene: Scene): readonly Row[] {
  return clinicianFigures(scene).flatMap(({ table }) => named(rowsOf(table)));
}

/** What stands over the tables. */
function introOf(scene: Scene): string {
  const [, ...told] = clinicianFigures(scene).flatMap(({ intro }) =>
    intro.map(({ markup }) => plain(markup)),
  );
  return told.join(' ');
}

function named(rows: readonly (readonly string[])[]): readonly Row[] {
  return rows.map((cells): Row => {
    const [record, outcome, time, figure, interval, n, design, why] = cells;
    const all = { record, outcome, time, figure, interval, n, design, why };
    return Object.fromEntries(Object.entries(all).filter(([, words]) => words !== undefined));
  });
}

/** The comparison with each leading record of the main weights changed. */
function withLeads(change: (cell: KnownCell) => Partial<RecordUse>): ComparisonTable {
  return withMainCells((cell) =>
    cell.state === 'known' ? { ...cell, lead: { ...cell.lead, ...change(cell) } } : cell,
  );
}

describe('figures for clinicians', () => {
  it('take a row each: the end of the id, outcome, time, figure with its denominator, interval, size, design, why', async () => {
    const rows = await figures(makeComparison(fiveOptions));
    expect(rows[0]).toEqual({ record: 'Sleeve' });
    expect(rows[1]).toEqual({
      record: 'study-a',
      outcome: 'weight (TWL)',
      time: '5 y',
      figure: '93.4 kg',
      interval: 'SD 82.0 to 105.0',
      n: '4,000',
      design: 'cohort 2020',
      why: 'size',
    });
    expect(rows.find(({ outcome }) => outcome === 'leak')).toMatchObject({
      time: '≤ 30 d',
      figure: '6.0/1,000',
    });
  });

  it('tell an interval of an average from a spread of people, and say where neither is known', async () => {
    const rows = await figures(makeComparison(fiveOptions));
    expect(rows.find(({ figure }) => figure === '86.2 kg')).toMatchObject({
      outcome: 'weight (EWL)',
      interval: '84.0 to 88.0',
    });
    expect(rows.find(({ figure }) => figure === '116.1 kg')?.interval).toBe('–');
  });

  it.each([
    { tag: 'en', meaning: 'spread', interval: 'spread 1.0 to 69.0' },
    { tag: 'en', meaning: 'uncertainty', interval: '1.0 to 69.0' },
    { tag: 'en', meaning: 'unknown', interval: '1.0 to 69.0, kind not stated' },
    { tag: 'es', meaning: 'spread', interval: 'dispersión 1.0 a 69.0' },
  ] as const)('name a length of time and its interval: $tag $meaning', async ({ tag, meaning, interval }) => {
    const known = shareCell(stayPlace, [1, 2]);
    const value = { kind: 'amount' as const, value: 2.5, unit: 'days', low: 1, high: 69, meaning };
    const comparison = withStay(makeComparison(fiveOptions), { ...known, id: 'sleeve/stay', value });
    const rows = await figures(comparison, tag);
    expect(rows.find(({ figure }) => figure === '2.5 d')).toMatchObject({ interval });
  });

  it.each([
    { horizon: { months: 60 }, timeBasis: 'by', en: '≤ 5 y', es: '≤ 5 años' },
    { horizon: { months: 17 }, timeBasis: 'at', en: '17 mo', es: '17 m' },
    { horizon: { months: 48 }, timeBasis: 'mean-follow-up', en: '≈ 4 y', es: '≈ 4 años' },
    { horizon: { days: 30 }, timeBasis: 'unclear', en: '≈ 30 d', es: '≈ 30 d' },
    { horizon: {}, timeBasis: 'peri-operative', en: 'peri-op.', es: 'periop.' },
    { horizon: {}, timeBasis: 'unclear', en: 'not stated', es: 'no se indica' },
  ])('say in a few letters when people were counted: $en', async ({ horizon, timeBasis, en, es }) => {
    const comparison = withLeads(() => ({ horizon, timeBasis }));
    expect((await figures(comparison))[1]?.time).toBe(en);
    expect((await figures(comparison, 'es'))[1]?.time).toBe(es);
  });

  it('warn of a low projected weight and leave a size open that is not stated', async () => {
    const comparison = withMainCells((cell): Cell => {
      if (cell.state !== 'known' || cell.option !== 'sleeve') return cell;
      const value = { ...(cell.value as WeightAt), warning: 'under-20' as const };
      return { ...cell, lead: without(cell.lead, 'n'), value };
    });
    expect((await figures(comparison))[1]).toMatchObject({ n: '–', why: 'size Projected BMI under 20.' });
  });

  it('list the points of a weight line whose records lead nowhere', async () => {
    const comparison = makeComparison(fiveOptions);
    const [course] = comparison.weight.courses;
    const [first] = course?.points ?? [];
    if (course === undefined || first === undefined) throw new Error('no point');
    const point = {
      ...first,
      months: 36,
      record: 'sleeve.weight-loss.36m.study-a',
      value: { ...without(first.value, 'spread'), averageKg: 88 },
    };
    const weight = { ...comparison.weight, courses: [{ ...course, points: [...course.points, point] }] };
    const record = makeRecord({ id: point.record, value: { events: 5, n: 77 } });
    const base = evidenceFor(comparison);
    const evidence = { ...base, records: [...base.records, record] };
    const scene = await sceneFor('en', { comparison: { ...comparison, weight }, evidence });
    expect(allRows(scene)).toContainEqual({
      record: '36m.study-a',
      outcome: 'weight (TWL)',
      time: '3 y',
      figure: '88.0 kg',
      interval: '–',
      n: '77',
      design: 'cohort 2020',
      why: 'same people',
    });
    expect(introOf(scene)).toContain('Same people: those of the weight line');
  });

  it('leave an interval open that is stated at one end or not at all', async () => {
    const known = shareCell(stayPlace, [1, 2]);
    const interval = async (limits: object): Promise<string | undefined> => {
      const value = { kind: 'amount' as const, value: 2.5, unit: 'days', ...limits };
      const comparison = withStay(makeComparison(fiveOptions), { ...known, id: 'sleeve/stay', value });
      return (await figures(comparison)).find(({ figure }) => figure === '2.5 d')?.interval;
    };
    expect(await interval({})).toBe('–');
    expect(await interval({ low: 1 })).toBe('–');
    expect(await interval({ low: 1, high: 69 })).toBe('1.0 to 69.0, kind not stated');
  });

  it('name the kind of study and its year as far as they are known', async () => {
    const comparison = makeComparison(fiveOptions);
    const design = async (study: Study | undefined, record: object = {}): Promise<string | undefined> => {
      const base = evidenceFor(comparison);
      const studies = new Map(study === undefined ? [] : [['study-a', study]]);
      const records = base.records.map((one) => ({ ...one, ...record }));
      const scene = await sceneFor('en', { comparison, evidence: { ...base, studies, records } });
      return allRows(scene)[1]?.design;
    };
    const bare = makeStudy('study-a', {
      design: 'registry',
      citation: { authors: 'Example A', title: 'An example', journal: 'J Ex' },
      citation_unseen: ['year'],
    });
    expect(await design(bare)).toBe('registry');
    expect(await design(makeStudy('study-a'), { design: 'case-series' })).toBe('series 2020');
    expect(await design(undefined)).toBe('cohort');
  });
});

describe('figures on no page of the patient', () => {
  it('stand in a table of their own, under what is printed, with why they are left out', async () => {
    const comparison = makeComparison(fiveOptions);
    const [first] = comparison.weight.main.cells;
    if (first?.state !== 'known') throw new Error('no figure');
    const printed = new Set([`${first.id} ${first.lead.record}`]);
    const [on, off] = clinicianFigures(await sceneFor('en', { comparison, printed }));
    if (on === undefined || off === undefined) throw new Error('two tables are needed');
    expect(on.heading).toBe('Figures printed on the patient pages of this packet');
    expect(rowsOf(on.table).map(([record]) => record)).toEqual(['Sleeve', 'study-a']);
    expect(off.heading).toBe('Figures that fit this person, on no patient page of this packet');
    expect(plain(off.intro[0]?.markup ?? '')).toMatch(/^Left out where a line of one study/);
    expect(rowsOf(off.table).length).toBeGreaterThan(5);
    // Explained once, over the first.
    expect([on.intro.length, off.intro.length]).toEqual([2, 1]);
  });

  it('are all there are where the packet has no page for the patient', async () => {
    const parts = clinicianFigures(await sceneFor('en'));
    expect(parts.map(({ heading }) => heading)).toEqual([
      'Figures that fit this person, on no patient page of this packet',
    ]);
    expect(parts[0]?.intro).toHaveLength(3);
  });
});

describe('why a record leads', () => {
  const ledBy: Readonly<Record<RecordUse['ledBy'], readonly [word: string, sentence: string]>> = {
    'only-one': ['only fit', 'Only fit: no other record fits this person.'],
    match: ['people', 'People: its people are most like this person.'],
    time: ['time', 'Time: its time is nearest to the time asked.'],
    measure: ['measure', 'Measure: it measures the outcome most directly.'],
    'side-by-side': ['joint', 'Joint: it measured several of these options together.'],
    design: ['design', 'Design: its kind of study misleads least.'],
    dose: ['dose', 'Dose: its dose is the highest.'],
    size: ['size', 'Size: it counted the most people.'],
    year: ['year', 'Year: it was published last.'],
    id: ['equal', 'Equal: as good as another record; the first by name.'],
    'clinic-preference': ['clinic', 'Clinic: this clinic prefers it, for the reason in the sources.'],
  };
  const lead = async (comparison: ComparisonTable): Promise<string> =>
    introOf(await sceneFor('en', { comparison }));

  it.each(Object.entries(ledBy))(
    'is a word in the row and a sentence over the table: %s',
    async (code, said) => {
      const comparison = withLeads(() => ({ ledBy: code as RecordUse['ledBy'] }));
      expect((await figures(comparison))[1]?.why).toBe(said[0]);
      expect(await lead(comparison)).toContain(said[1]);
    },
  );

  it('is explained for the words that the table uses, and for no others', async () => {
    expect(await lead(makeComparison(fiveOptions))).toMatch(
      / Why a record leads. Size: it counted the most people\.$/,
    );
  });

  it('is not explained where no figure is shown', async () => {
    const comparison = makeComparison(['plication']);
    const bare = { ...comparison, topics: [] };
    expect(clinicianFigures(await sceneFor('en', { comparison: bare }))).toEqual([]);
  });

  it('says once under the table in what way near people differ, however many rows share it', async () => {
    const comparison = withLeads(({ option }) =>
      option === 'no-operation'
        ? { match: 'near', reasons: [{ code: 'age-unknown', yours: 45 }] }
        : { match: 'near', reasons: [{ code: 'bmi-mean-only', mean: 47.2, yours: 43.1 }] },
    );
    const scene = await sceneFor('en', { comparison: { ...comparison, topics: [] } });
    const why = allRows(scene).flatMap((row) => (row.why === undefined ? [] : [row.why]));
    expect(why).toEqual(['size, 1', 'size', 'size, 1', 'size', 'size, 2']);
    expect(
      clinicianFigures(scene)
        .at(-1)
        ?.table.notes.map(({ markup }) => plain(markup)),
    ).toEqual([
      'Near, by the numbers of the last column: the people differ from this person in one way. 1 only a mean BMI of 47.2 stated; BMI here 43.1. 2 age not stated; age here 45.',
    ]);
  });

  it('marks people whose BMI was assumed, unless the note on how they differ says it', async () => {
    const assumed = withLeads(() => ({ bmiBasis: 'assumed' }));
    expect((await figures(assumed))[1]?.why).toBe('size*');
    const near = withLeads(() => ({
      bmiBasis: 'assumed',
      match: 'near',
      reasons: [{ code: 'bmi-assumed', low: 35, high: 50, yours: 62 }],
    }));
    expect((await figures(near))[1]?.why).toBe('size, 1');
    const [note] = clinicianFigures(await sceneFor('en', { comparison: near })).at(-1)?.table.notes ?? [];
    expect(plain(note?.markup ?? '')).not.toContain('* BMI assumed');
  });
});
