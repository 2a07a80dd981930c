import { describe, expect, it } from 'vitest';

import { clinicianCautions } from '../../../../src/compose/view/clinician-cautions.ts';
import { clinicianFigures } from '../../../../src/compose/view/clinician-figures.ts';
import { numberStudies } from '../../../../src/compose/view/number-studies.ts';
import type { TableView } from '../../../../src/compose/view/shared-shapes.ts';
import { otherSources } from '../../../../src/compose/view/view-other-sources.ts';
import { viewSources } from '../../../../src/compose/view/view-sources.ts';
import type { Cell, ComparisonTable, WeightAt } from '../../../../src/model/comparison.ts';
import type { Reversibility } from '../../../../src/model/evidence-rules.ts';
import { makeRecord, makeStudy } from '../../../helpers/compare-inputs.ts';
import {
  evidenceFor,
  fiveOptions,
  makeComparison,
  refluxHit,
  shareCell,
  unknownCell,
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
