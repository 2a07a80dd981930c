import { describe, expect, it } from 'vitest';

import { clinicianCautions } from '../../../../src/compose/view/clinician-cautions.ts';
import { clinicianFigures } from '../../../../src/compose/view/clinician-figures.ts';
import { clinicianSetAside } from '../../../../src/compose/view/clinician-set-aside.ts';
import { citationOf, numberStudies } from '../../../../src/compose/view/number-studies.ts';
import type { TableView } from '../../../../src/compose/view/shared-shapes.ts';
import { viewClinician } from '../../../../src/compose/view/view-clinician.ts';
import { otherSources } from '../../../../src/compose/view/view-other-sources.ts';
import { viewSources } from '../../../../src/compose/view/view-sources.ts';
import type { ClinicProfile } from '../../../../src/model/clinic.ts';
import type { Cell, ComparisonTable, RecordUse, WeightAt } from '../../../../src/model/comparison.ts';
import type { EvidenceRecord } from '../../../../src/model/evidence-record.ts';
import type { Reversibility } from '../../../../src/model/evidence-rules.ts';
import type { Study } from '../../../../src/model/study.ts';
import { makeCase, makeClinic, makeRecord, makeStudy } from '../../../helpers/compare-inputs.ts';
import {
  evidenceFor,
  fiveOptions,
  makeComparison,
  practiceHit,
  refluxHit,
  shareCell,
  unknownCell,
  withRecords,
} from '../../../helpers/compose-inputs.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';

const plain = (markup: string): string =>
  markup
    .replace(/<[^>]*>/g, '')
    .replaceAll('\u00a0', ' ')
    .replaceAll('&amp;', '&');

function rowsOf(table: TableView): readonly (readonly string[])[] {
  return table.rows.map(({ group, cells }) =>
    group === ''
      ? cells.map(({ lines }) => lines.map(({ words }) => plain(words.markup)).join(' '))
      : [group],
  );
}

function withStay(comparison: ComparisonTable, stay: Cell): ComparisonTable {
  const [first, ...others] = comparison.options;
  if (first === undefined) throw new Error('no option');
  return { ...comparison, options: [{ ...first, stay }, ...others] };
}

/** The same without the named keys. */
function without<T extends object, K extends keyof T>(value: T, ...keys: readonly K[]): Omit<T, K> {
  return Object.fromEntries(Object.entries(value).filter(([key]) => !keys.includes(key as K))) as Omit<T, K>;
}

const stayPlace = { option: 'sleeve', outcome: 'hospital-stay', asked: {} };

describe('figures for clinicians', () => {
  it('tell an interval of an average from a spread of people, and say where neither is known', async () => {
    const rows = rowsOf(clinicianFigures(await sceneFor('en'))).map((cells) => cells.slice(0, 4));
    expect(rows).toContainEqual([
      'bypass.weight-loss.study-a',
      'Weight from EWL, after 5 years',
      '86.2 kg',
      'CI 84.0 to 88.0',
    ]);
    expect(rows).toContainEqual([
      'no-operation.weight-loss.study-a',
      'Weight from TWL, after 5 years',
      '116.1 kg',
      'not stated',
    ]);
  });

  it.each([
    ['spread', 'spread 1.0 to 69.0'],
    ['uncertainty', 'CI 1.0 to 69.0'],
    ['unknown', '1.0 to 69.0, kind not stated'],
  ] as const)('name the interval of a length of time: %s', async (meaning, said) => {
    const known = shareCell(stayPlace, [1, 2]);
    const value = { kind: 'amount' as const, value: 2.5, unit: 'days', low: 1, high: 69, meaning };
    const comparison = withStay(makeComparison(fiveOptions), { ...known, id: 'sleeve/stay', value });
    const row = rowsOf(clinicianFigures(await sceneFor('en', { comparison }))).find(
      ([record]) => record === 'sleeve.hospital-stay.study-a',
    );
    expect(row?.slice(2, 4)).toEqual(['2.5 days', said]);
  });

  it('warn of a low projected weight and leave a size open that is not stated', async () => {
    const comparison = makeComparison(fiveOptions);
    const cells = comparison.weight.main.cells.map((cell): Cell => {
      if (cell.state !== 'known' || cell.option !== 'sleeve') return cell;
      const lead = without(cell.lead, 'n');
      const value = cell.value as WeightAt;
      return { ...cell, lead, value: { ...value, warning: 'under-20' } };
    });
    const weight = { ...comparison.weight, main: { ...comparison.weight.main, cells } };
    const row = rowsOf(clinicianFigures(await sceneFor('en', { comparison: { ...comparison, weight } })))[1];
    expect(row?.slice(4)).toEqual(['–', 'cohort, 2020', 'largest Projected BMI under 20.']);
  });

  it('list the points of a weight line whose records lead nowhere', async () => {
    const comparison = makeComparison(fiveOptions);
    const [course] = comparison.weight.courses;
    if (course === undefined) throw new Error('no course');
    const [first] = course.points;
    if (first === undefined) throw new Error('no point');
    const bare = without(first.value, 'spread');
    const point = {
      ...first,
      months: 36,
      record: 'sleeve.weight-loss.36m.study-a',
      value: { ...bare, averageKg: 88 },
    };
    const weight = { ...comparison.weight, courses: [{ ...course, points: [...course.points, point] }] };
    const record = makeRecord({ id: point.record, value: { events: 5, n: 77 } });
    const base = evidenceFor(comparison);
    const evidence = { ...base, records: [...base.records, record] };
    const scene = await sceneFor('en', { comparison: { ...comparison, weight }, evidence });
    expect(rowsOf(clinicianFigures(scene))).toContainEqual([
      point.record,
      'Weight from TWL, after 3 years',
      '88.0 kg',
      'not stated',
      '77',
      'cohort, 2020',
      'course over time',
    ]);
    const sleeve = viewSources(scene).topics[0]?.rows.find(({ name }) => name === 'Weight over time');
    expect(plain(sleeve?.lines[0]?.words.markup ?? '')).toContain('3 years: 194 lb (88 kg)');
  });
});

describe('why a record leads', () => {
  const ledBy: Readonly<Record<RecordUse['ledBy'], string>> = {
    'only-one': 'only record',
    match: 'best match',
    time: 'nearest time',
    measure: 'best measure',
    'side-by-side': 'compared side by side',
    design: 'best design',
    size: 'largest',
    year: 'newest',
    id: 'by id',
    'clinic-preference': 'preferred by the clinic',
  };

  it.each(Object.entries(ledBy))('is said in the last column: %s', async (code, words) => {
    const comparison = makeComparison(fiveOptions);
    const cells = comparison.weight.main.cells.map((cell): Cell =>
      cell.state === 'known' ? { ...cell, lead: { ...cell.lead, ledBy: code as RecordUse['ledBy'] } } : cell,
    );
    const weight = { ...comparison.weight, main: { ...comparison.weight.main, cells } };
    const rows = rowsOf(clinicianFigures(await sceneFor('en', { comparison: { ...comparison, weight } })));
    expect(rows[1]?.at(-1)).toBe(words);
  });

  it('names the kind of study and its year as far as they are known', async () => {
    const comparison = makeComparison(fiveOptions);
    const design = async (study: Study | undefined, record: object = {}): Promise<string | undefined> => {
      const base = evidenceFor(comparison);
      const studies = new Map(study === undefined ? [] : [['study-a', study]]);
      const records = base.records.map((one) => ({ ...one, ...record }));
      const scene = await sceneFor('en', { comparison, evidence: { ...base, studies, records } });
      return rowsOf(clinicianFigures(scene))[1]?.[5];
    };
    const bare = makeStudy('study-a', {
      design: 'registry',
      citation: { authors: 'Example A', title: 'An example', journal: 'J Ex' },
      citation_unseen: ['year'],
    });
    expect(await design(bare)).toBe('registry');
    expect(await design(makeStudy('study-a'), { design: 'case-series' })).toBe('series, 2020');
    expect(await design(undefined)).toBe('cohort');
  });
});

describe('other figures for clinicians', () => {
  it('give the range of other averages in kilograms', async () => {
    const comparison = makeComparison(fiveOptions);
    const cells = comparison.weight.main.cells.map((cell): Cell =>
      cell.state === 'known' && cell.option === 'sleeve'
        ? { ...cell, others: { low: 86.2, high: 96.2, records: ['sleeve.other.study-b', 'sleeve.other.c'] } }
        : cell,
    );
    const weight = { ...comparison.weight, main: { ...comparison.weight.main, cells } };
    const scene = await sceneFor('en', { comparison: { ...comparison, weight } });
    expect(rowsOf(clinicianFigures(scene))[1]?.[3]).toBe('SD 82.0 to 105.0; 2 others 86.2 to 96.2');
  });

  it.each([
    [
      'en',
      'not stated; 4 others 18.0 to 41.0; pooled 31.0 (22.0 to 43.0), expected 5.0 to 96.0, 5 studies, I² 96%',
    ],
    [
      'es',
      'no se indica; otros 4 18.0 a 41.0; conjunto 31.0 (22.0 a 43.0), esperado 5.0 a 96.0, 5 estudios, I² 96%',
    ],
  ])('give what four studies or more say together, tied to all of their records: %s', async (tag, words) => {
    const comparison = makeComparison(fiveOptions);
    const records = ['sleeve.other.b', 'sleeve.other.c', 'sleeve.other.d', 'sleeve.other.e'];
    const topics = comparison.topics.map((topic) => ({
      ...topic,
      rows: topic.rows.map((row) => ({
        ...row,
        cells: row.cells.map((cell): Cell =>
          cell.id === 'sleeve/bleeding/30d' && cell.state === 'known'
            ? {
                ...cell,
                others: { low: 0.018, high: 0.041, records },
                pooled: {
                  value: 0.031,
                  low: 0.022,
                  high: 0.043,
                  studies: 5,
                  heterogeneity: 96,
                  expected: { low: 0.005, high: 0.096 },
                },
              }
            : cell,
        ),
      })),
    }));
    const table = clinicianFigures(await sceneFor(tag, { comparison: { ...comparison, topics } }));
    const at = rowsOf(table).findIndex(([record]) => record === 'sleeve.bleeding.study-a');
    expect(rowsOf(table)[at]?.[3]).toContain(words);
    const [cell] = table.rows[at]?.cells[3]?.lines ?? [];
    expect(cell?.words.markup).toContain(
      `<fig cell="sleeve/bleeding/30d" records="sleeve.bleeding.study-a ${records.join(' ')}">31.0`,
    );
  });

  it('leave an interval open that is stated at one end or not at all', async () => {
    const known = shareCell(stayPlace, [1, 2]);
    const interval = async (limits: object): Promise<string | undefined> => {
      const value = { kind: 'amount' as const, value: 2.5, unit: 'days', ...limits };
      const comparison = withStay(makeComparison(fiveOptions), { ...known, id: 'sleeve/stay', value });
      const rows = rowsOf(clinicianFigures(await sceneFor('en', { comparison })));
      return rows.find(([record]) => record === 'sleeve.hospital-stay.study-a')?.[3];
    };
    expect(await interval({})).toBe('not stated');
    expect(await interval({ low: 1 })).toBe('not stated');
    expect(await interval({ low: 1, high: 69 })).toBe('1.0 to 69.0, kind not stated');
  });
});

describe('records set aside', () => {
  type Aside = Cell['setAside'][number];
  const aside = (id: string, reason: Aside['reason'] = { code: 'indication-mixed' }): Aside => ({
    record: `sleeve.leak.${id}`,
    reason,
  });
  const table = async (
    cells: readonly Cell[],
    records: readonly EvidenceRecord[] = [],
  ): Promise<readonly (readonly string[])[]> => {
    const comparison = makeComparison(['sleeve']);
    const rows = cells.map((cell) => ({ outcome: cell.outcome, asked: cell.asked, cells: [cell] }));
    const topics = [{ id: 'first-month' as const, denominator: 1000 as const, picture: null, rows }];
    const evidence = evidenceFor(comparison);
    const scene = await sceneFor('en', {
      comparison: { ...comparison, topics },
      evidence: { ...evidence, records: [...evidence.records, ...records] },
    });
    return rowsOf(clinicianSetAside(scene));
  };
  const unknown = (outcome: string, asked: object, setAside: readonly Aside[]): Cell => ({
    ...unknownCell({ option: 'sleeve', outcome, asked }),
    setAside,
  });

  it('are named by id with what they found, the rest counted', async () => {
    const records = [
      makeRecord({ id: 'sleeve.leak.30d.a', value: { events: 7, n: 121 } }),
      makeRecord({ id: 'sleeve.leak.30d.b', kind: 'report', value: { events: 12 } }),
    ];
    const setAside = ['30d.a', '30d.b', '30d.c', '30d.d'].map((id) => aside(id));
    expect(await table([unknown('leak', { days: 30 }, setAside)], records)).toEqual([
      ['Sleeve'],
      ['A leak, 30 days', 'not known', 'first and second operations mixed: 30d.a = 7/121, 30d.b, 2 records'],
    ]);
  });

  it('share a row where the reasons are equal: times of an outcome, then other outcomes', async () => {
    const setAside = [aside('a')];
    const rows = await table([
      unknown('leak', { days: 30 }, setAside),
      unknown('leak', { months: 12 }, setAside),
      unknown('ulcer', {}, setAside),
      unknown('clot', { days: 30 }, [aside('b')]),
    ]);
    expect(rows.slice(1)).toEqual([
      ['A leak, 30 days, 1 year; An ulcer', 'not known', 'first and second operations mixed: a'],
      ['A blood clot, 30 days', 'not known', 'first and second operations mixed: b'],
    ]);
  });

  it('name the three commonest reasons and count the rest', async () => {
    const setAside = [
      aside('a', { code: 'pregnancy' }),
      aside('b', { code: 'diabetes-only' }),
      aside('c', { code: 'diabetes-only' }),
      aside('d', { code: 'time-unclear' }),
      aside('e', { code: 'time-unclear' }),
      aside('f', { code: 'weaker-match' }),
      aside('g', { code: 'weaker-match' }),
      aside('h', { code: 'weaker-match' }),
    ];
    const [, row] = await table([unknown('leak', { days: 30 }, setAside)]);
    expect(row?.[2]).toBe(
      'people fit less well than those of the record used: f, g, 1 record; people with diabetes only: b, c; time not clear: d, e; other reason: 1 record',
    );
  });

  it('are not listed where there are none', async () => {
    expect(await table([unknown('leak', { days: 30 }, [])])).toEqual([]);
  });
});

describe('cautions for clinicians', () => {
  it('say what the clinic has confirmed, and only what is known of one that the evidence does not hold', async () => {
    const lost = { ...practiceHit, id: 'bmi-very-high-sleeve' };
    const comparison = makeComparison(fiveOptions, { cautions: [practiceHit, lost] });
    const clinic = { ...makeClinic(), cautions: { [practiceHit.id]: 'confirmed' as const } };
    const rows = rowsOf(clinicianCautions(await sceneFor('en', { comparison, clinic })));
    expect(rows.map((cells) => cells[3])).toEqual([
      'Confirmed by this clinic. A statement for clinicians.',
      'Needs confirming.',
    ]);
  });
});

describe('the facts of a case', () => {
  const fact = async (
    label: string,
    health: Readonly<Record<string, unknown>>,
  ): Promise<string | undefined> => {
    const file = makeCase({ decision: { options: fiveOptions }, health });
    const { facts } = viewClinician(await sceneFor('en', { case: file }));
    return facts.find((one) => one.label === label)?.value.replaceAll('\u00a0', ' ');
  };

  it('say a pregnancy', async () => {
    expect(await fact('Pregnancy', { pregnancy: { now: true } })).toBe('pregnant now');
    expect(await fact('Pregnancy', { pregnancy: { planned_within_months: 1 } })).toBe(
      'planned within 1 month',
    );
  });

  it('say of earlier operations what is known, and events of the past', async () => {
    const bare = { operation: 'sleeve', status: 'converted' };
    const ill = { operation: 'band', date: '2009', trouble: 'reflux', status: 'removed' };
    expect(await fact('Earlier', { earlier_operations: [bare, ill], history: ['pancreatitis'] })).toMatch(
      /^Sleeve, converted; Stomach band, 2009, removed, trouble: acid .*; an inflamed pancreas/,
    );
  });
});

describe('the decision of a case', () => {
  it('names an option that is not compared by its code', async () => {
    const decision = {
      options: fiveOptions,
      leaning: { option: 'band', reasons: [{ code: 'can-be-undone' }] },
      advised_against: [{ option: 'sleeve', reasons: [{ text: { en: 'No.' } }] }],
    };
    const view = viewClinician(await sceneFor('en', { case: makeCase({ decision }) }));
    expect(view.decision.map(({ markup }) => plain(markup))).toEqual([
      'Dr. A. Example leans to: band. It can be undone.',
      'Advised against: Sleeve. No.',
    ]);
  });
});

describe('citations', () => {
  it('give what is known of a study, and the address under which it is found', async () => {
    const cite = async (study: Study): Promise<string> =>
      plain(citationOf(await sceneFor('en'), study).markup);
    const unseen = { citation: { title: 'Is it safe?' }, citation_unseen: ['authors', 'year', 'journal'] };
    expect(await cite(makeStudy('a', unseen))).toBe(
      'Is it safe? example.org. Not yet confirmed: authors, year, and journal.',
    );
    expect(await cite(without(makeStudy('a', unseen), 'seen_at'))).toBe(
      'Is it safe? Not yet confirmed: authors, year, and journal.',
    );
    const whole = { authors: 'Example A', year: 2020, title: 'An example', journal: 'J Ex' };
    expect(await cite(makeStudy('a', { citation: { ...whole, doi: '10.1000/x', pmid: '123' } }))).toBe(
      'Example A. (2020). An example. J Ex. doi.org/10.1000/x; PubMed 123.',
    );
    expect(await cite(makeStudy('a', { citation: { ...whole, pmid: '123' } }))).toBe(
      'Example A. (2020). An example. J Ex. PubMed 123.',
    );
  });
});

describe('sources of an option', () => {
  it('leave out a stay that the clinic states itself, and figures that no page prints', async () => {
    const stay = { ...shareCell(stayPlace, [1, 2]), id: 'sleeve/stay' };
    const value = { kind: 'amount' as const, value: 2, unit: 'days' };
    const comparison = withRecords(withStay(makeComparison(fiveOptions), { ...stay, value }));
    const base = evidenceFor(comparison);
    const record = makeRecord({
      id: stay.lead.record,
      kind: 'duration',
      outcome: 'hospital-stay',
      value: { estimate: 2, unit: 'days' },
    });
    const evidence = { ...base, records: [...base.records, record] };
    const names = async (clinic: ClinicProfile): Promise<readonly string[]> =>
      (viewSources(await sceneFor('en', { comparison, evidence, clinic })).topics[0]?.rows ?? []).map(
        ({ name }) => name.replaceAll('\u00a0', ' '),
      );
    const clinic = makeClinic();
    const own = { ...clinic, protocol: { ...clinic.protocol, stay: { sleeve: { en: '1 night' } } } };
    const shown = await names(clinic);
    expect(shown).toContain('Days in hospital');
    // The weight at one year stands in the line over time alone.
    expect(shown.filter((name) => name.startsWith('Weight'))).toEqual([
      'Weight, 5 years',
      'Weight over time',
    ]);
    expect(await names(own)).toEqual(shown.filter((name) => name !== 'Days in hospital'));
  });

  it('explain each kind of study and each degree of certainty that occurs, once, and no other', async () => {
    const comparison = makeComparison(fiveOptions);
    const base = evidenceFor(comparison);
    const records = base.records.map((record, index) =>
      index === 0 ? { ...record, design: 'registry' as const } : record,
    );
    const view = viewSources(await sceneFor('en', { comparison, evidence: { ...base, records } }));
    const { words } = await sceneFor('en');
    const explained = (group: string, meanings: string, code: string): string => {
      const name = words.plain(`sources.${group}.${code}`);
      return plain(
        words.say(`sources.explained.${group}`, { name, meaning: words.plain(`${meanings}.${code}`) }).markup,
      );
    };
    expect(view.designs.map(({ markup }) => plain(markup))).toEqual([
      explained('designs', 'codes.designs', 'cohort'),
      explained('designs', 'codes.designs', 'registry'),
    ]);
    expect(view.certainties.map(({ markup }) => plain(markup))).toEqual([
      explained('certainties', 'codes.certainty', 'moderate'),
    ]);
  });

  it('say of people whatever was stated, and that nothing was', async () => {
    const comparison = makeComparison(fiveOptions);
    const base = evidenceFor(comparison);
    const people = { indication: 'first-operation' as const, diabetes: 'unknown' as const };
    const evidence = { ...base, records: base.records.map((record) => ({ ...record, people })) };
    const { topics } = viewSources(await sceneFor('en', { comparison, evidence }));
    for (const { lines } of topics.flatMap(({ rows }) =>
      rows.filter(({ name }) => !name.includes('over time')),
    ))
      expect(lines.map(({ words }) => plain(words.markup)).join(' ')).toContain('BMI and age not stated.');
  });
});

describe('where points were read', () => {
  const entry: Reversibility = {
    option: 'sleeve',
    undo: {
      possible: 'no',
      how: 'x',
      what_remains: 'x',
      weight_after: { statement: 'x', basis: 'page', study: 'study-c' },
      data: [
        { what: 'x', study: 'study-b', seen: 'page' },
        { what: 'x', study: 'study-d', seen: 'memory' },
      ],
    },
    change_to: [],
    sources: [
      { point: 'x', url: 'https://www.example.org/a/', seen: 'page' },
      { url: 'https://example.org/b', seen: 'memory' },
    ],
  };

  it('names the studies and addresses read on a page, and no others', async () => {
    const comparison = makeComparison(fiveOptions, { cautions: [refluxHit] });
    const base = evidenceFor(comparison);
    const cautions = base.cautions.map((caution) => ({
      ...caution,
      sources: [
        { url: 'https://www.example.org/c', seen: 'page' as const },
        { aftercare: 'fact-1', seen: 'page' as const },
        // A source without a name is none.
        { seen: 'page' as const },
      ],
    }));
    const evidence = {
      ...base,
      cautions,
      reversibility: new Map([['sleeve', entry]]),
      studies: new Map([['study-b', makeStudy('study-b')]]),
    };
    const scene = await sceneFor('en', { comparison, evidence });
    const numbers = numberStudies(scene, []);
    const points = otherSources(scene, numbers).points.map(({ markup }) => plain(markup));
    expect(points).toEqual([
      'You have acid that rises into your food pipe (reflux). For a sleeve: example.org/c.',
      'On undoing a sleeve: Studies 1 and 2. example.org/a.',
    ]);
    // A study that the evidence does not hold is cited by its id, so that it cannot go unseen.
    expect(numbers.citations().map(({ markup }) => plain(markup))).toEqual([
      'Example A. (2020). An example. J Ex 2020. example.org.',
      'study-c',
    ]);
    expect(rowsOf(clinicianCautions(scene))[0]?.[3]).toContain('[example.org, fact-1]');
  });

  it('says nothing of an option or a caution whose sources nobody has read', async () => {
    const comparison = makeComparison(fiveOptions, { cautions: [refluxHit] });
    const unread = { point: 'x', url: 'https://example.org/a', seen: 'memory' as const };
    const base = evidenceFor(comparison);
    const undo: Reversibility['undo'] = {
      ...entry.undo,
      weight_after: { statement: 'x', basis: 'not-known' },
      data: [],
    };
    const evidence = {
      ...base,
      cautions: base.cautions.map((caution) => ({ ...caution, sources: [unread] })),
      reversibility: new Map([['sleeve', { ...entry, undo, sources: [unread] }]]),
    };
    const scene = await sceneFor('en', { comparison, evidence });
    expect(otherSources(scene, numberStudies(scene, [])).points).toEqual([]);
  });
});

describe('a share without a count', () => {
  it('says in the sources that the size is not stated', async () => {
    const comparison = makeComparison(fiveOptions);
    const known = shareCell({ option: 'sleeve', outcome: 'reflux', asked: { months: 60 } }, [31, 100]);
    const lead = without(known.lead, 'n');
    const cell: Cell = { ...known, lead, value: { kind: 'proportion', value: 0.31 } };
    const topics = comparison.topics.map((topic) =>
      topic.id === 'living-with-it'
        ? {
            ...topic,
            rows: [
              {
                outcome: 'reflux',
                asked: { months: 60 },
                cells: [cell, unknownCell({ ...known, option: 'bypass' })],
              },
            ],
          }
        : topic,
    );
    const base = evidenceFor(comparison);
    const record = makeRecord({
      id: lead.record,
      value: { percent: 31 },
      people: { indication: 'first-operation', age: { low: 18 }, bmi: { high: 60 }, diabetes: 'none' },
    });
    const evidence = { ...base, records: [...base.records.filter(({ id }) => id !== record.id), record] };
    const scene = await sceneFor('en', { comparison: { ...comparison, topics }, evidence });
    const row = viewSources(scene).topics[0]?.rows.find(({ name }) => name === 'Reflux, 5\u00a0years');
    const said = row?.lines.map(({ words }) => plain(words.markup)).join(' ');
    expect(said).toContain('31 out of 100. Number of people not stated.');
    expect(said).toContain('BMI: 60 or less. Age: 18 or more. None had diabetes.');
  });
});
