import { describe, expect, it } from 'vitest';

import type { ComparisonTable, KnownCell } from '../../../src/model/comparison.ts';
import type { EvidenceRecord } from '../../../src/model/evidence-record.ts';
import {
  compareWell,
  makeEvidence,
  makeRecord,
  makeStudy,
  makeWeightRecord,
} from '../../helpers/compare-inputs.ts';

const two = { decision: { options: ['sleeve', 'bypass'] } };

function leak(study: string, option: string, n: number): EvidenceRecord {
  return makeRecord({ id: `${option}-${study}`, study, option, value: { events: n / 50, n } });
}

function compare(
  records: readonly EvidenceRecord[],
  designs: Readonly<Record<string, string>>,
): ComparisonTable {
  const studies = Object.entries(designs).map(([id, design]) => makeStudy(id, { design }));
  return compareWell(makeEvidence(records, { studies }), two);
}

function leads(table: ComparisonTable): readonly KnownCell['lead'][] {
  const cells = table.topics[0]?.rows[0]?.cells ?? [];
  return cells.map((cell) => {
    if (cell.state !== 'known') throw new Error('not known');
    return cell.lead;
  });
}

describe('figures that stand beside each other', () => {
  it('come from the study that counted both, before larger studies of one', () => {
    const table = compare(
      [
        leak('both', 'sleeve', 2000),
        leak('both', 'bypass', 2000),
        leak('one', 'sleeve', 90_000),
        leak('two', 'bypass', 90_000),
      ],
      { both: 'registry', one: 'registry', two: 'registry' },
    );
    expect(leads(table).map(({ study, ledBy }) => [study, ledBy])).toEqual([
      ['both', 'side-by-side'],
      ['both', 'side-by-side'],
    ]);
  });

  it('come from one study that is silent on BMI, before two that state it', () => {
    const silent = { indication: 'first-operation', diabetes: 'mixed', age: { low: 18, high: 65 } };
    const records = [
      { ...leak('both', 'sleeve', 2000), people: silent },
      { ...leak('both', 'bypass', 2000), people: silent },
      leak('one', 'sleeve', 90_000),
      leak('two', 'bypass', 90_000),
    ] as EvidenceRecord[];
    const table = compare(records, { both: 'registry', one: 'registry', two: 'registry' });
    expect(leads(table).map(({ study }) => study)).toEqual(['both', 'both']);
    const stated = [leak('stated', 'sleeve', 1500), leak('stated', 'bypass', 1500)];
    const better = compare([...records, ...stated], { both: 'registry', stated: 'cohort' });
    expect(leads(better).map(({ study }) => study)).toEqual(['stated', 'stated']);
  });

  it('do not undo the figures of the very group that the person belongs to', () => {
    const people = {
      indication: 'first-operation',
      diabetes: 'unknown',
      group: 'bmi-60-plus',
      bmi: { low: 60 },
    };
    const general = { indication: 'first-operation', diabetes: 'mixed', bmi: { low: 35, high: 80 } };
    const records = [
      { ...leak('both', 'sleeve', 90_000), people: general },
      { ...leak('both', 'bypass', 90_000), people: general },
      { ...leak('group', 'sleeve', 1000), people },
    ] as EvidenceRecord[];
    const table = compareWell(records, { ...two, patient: { weight: '170 kg' } });
    expect(leads(table).map(({ study }) => study)).toEqual(['group', 'both']);
  });

  it('come from the better design, then the larger study, where several counted both', () => {
    const records = ['registry', 'trial', 'series'].flatMap((study) => [
      leak(study, 'sleeve', 3000),
      leak(study, 'bypass', 3000),
    ]);
    const designs = { registry: 'registry', trial: 'randomised-trial', series: 'case-series' };
    expect(leads(compare(records, designs)).map(({ study }) => study)).toEqual(['trial', 'trial']);
    const larger = [
      ...['small', 'large'].flatMap((study) =>
        ['sleeve', 'bypass'].map((option) => leak(study, option, study === 'large' ? 9000 : 3000)),
      ),
    ];
    expect(
      leads(compare(larger, { small: 'registry', large: 'registry' })).map(({ study }) => study),
    ).toEqual(['large', 'large']);
  });

  it('do not come from a study too small to tell', () => {
    const records = [
      leak('tiny', 'sleeve', 100),
      leak('tiny', 'bypass', 100),
      leak('one', 'sleeve', 90_000),
      leak('two', 'bypass', 90_000),
    ];
    const table = compare(records, { tiny: 'randomised-trial', one: 'registry', two: 'registry' });
    expect(leads(table).map(({ study }) => study)).toEqual(['one', 'two']);
  });

  it('do not come from a study that fits the person less well', () => {
    const near = { people: { indication: 'first-operation', diabetes: 'mixed', bmi: { mean: 45 } } };
    const far = [leak('both', 'sleeve', 5000), leak('both', 'bypass', 5000)].map((record) =>
      makeRecord({ ...record, ...near }),
    );
    const table = compare([...far, leak('one', 'sleeve', 2000), leak('two', 'bypass', 2000)], {
      both: 'registry',
      one: 'registry',
      two: 'registry',
    });
    expect(leads(table).map(({ study }) => study)).toEqual(['one', 'two']);
  });
});

function weight(study: string, months: number, estimate: number): EvidenceRecord {
  return makeWeightRecord({
    id: `${study}-${String(months)}`,
    study,
    time: { months, basis: 'at' },
    value: { metric: 'TWL', unit: '%', estimate, n: 500, reference: 'before-this-operation' },
  });
}

describe('the course of weight', () => {
  it('joins the times of the study that gives the main figure, and no other', () => {
    const records = [
      weight('main', 12, 30),
      weight('main', 60, 25),
      weight('other', 24, 40),
      weight('other', 120, 10),
    ];
    const studies = ['main', 'other'].map((id) => makeStudy(id, {}));
    const { courses } = compareWell(makeEvidence(records, { studies }), {
      decision: { options: ['sleeve'] },
    }).weight;
    expect(courses.map(({ study, points }) => [study, points.map(({ months }) => months)])).toEqual([
      ['main', [12, 60]],
    ]);
  });

  it('is not drawn when the study of the main figure gives no other time', () => {
    const records = [weight('main', 60, 25), weight('other', 12, 40), weight('other', 24, 30)];
    const studies = ['main', 'other'].map((id) => makeStudy(id, {}));
    const { courses } = compareWell(makeEvidence(records, { studies }), {
      decision: { options: ['sleeve'] },
    }).weight;
    expect(courses).toEqual([]);
  });

  it('is that of one dose of a medicine', () => {
    const on = (record: EvidenceRecord, mg: number): EvidenceRecord => ({
      ...record,
      id: `${record.id}-${String(mg)}`,
      dose: { mg: [mg], per: 'week' },
    });
    const records = [
      on(weight('main', 12, 20), 5),
      on(weight('main', 12, 30), 15),
      on(weight('main', 60, 25), 15),
    ];
    const drawn = (given: readonly EvidenceRecord[]): readonly string[] =>
      compareWell(makeEvidence(given), { decision: { options: ['sleeve'] } }).weight.courses.flatMap(
        ({ points }) => points.map(({ record }) => record),
      );
    expect(drawn(records)).toEqual(['main-12-15', 'main-60-15']);
    expect(drawn([on(weight('main', 12, 20), 5), on(weight('main', 60, 25), 15)])).toEqual([]);
  });
});
