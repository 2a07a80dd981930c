import { describe, expect, it } from 'vitest';

import type { KnownCell, OutcomeRow } from '../../../src/model/comparison.ts';
import type { EvidenceBase } from '../../../src/model/evidence.ts';
import {
  compareWell,
  makeClinic,
  makeEvidence,
  makeRecord,
  makeStudy,
  makeWeightRecord,
} from '../../helpers/compare-inputs.ts';

interface Entry {
  readonly id: string;
  readonly study?: object;
  readonly record?: object;
}

const covered = { indication: 'first-operation', diabetes: 'mixed', age: { low: 18, high: 65 } };
const nearPeople = { ...covered, bmi: { mean: 45 } };

/** The leak cell (or weight at 5 years) of a sleeve from records of as many studies. */
function leadOf(
  entries: readonly Entry[],
  make = makeRecord,
  prefer: readonly string[] = [],
): KnownCell['lead'] {
  const clinic = makeClinic({ prefer: prefer.map((record) => ({ record, reason: { en: 'ours' } })) });
  const table = compareWell(evidenceOf(entries, make), { decision: { options: ['sleeve'] } }, clinic);
  return firstLead(make === makeRecord ? (table.topics[0]?.rows ?? []) : [table.weight.main]);
}

/** The same leak cell for a person of 163 cm and 170 kg: BMI 64.0. */
function leadOfHeavy(entries: readonly Entry[]): KnownCell['lead'] {
  const changes = { patient: { weight: '170 kg' }, decision: { options: ['sleeve'] } };
  return firstLead(compareWell(evidenceOf(entries, makeRecord), changes).topics[0]?.rows ?? []);
}

function evidenceOf(entries: readonly Entry[], make: typeof makeRecord): EvidenceBase {
  // 100 events of 10,000: enough for any design to count.
  const value = make === makeRecord ? { value: { events: 100, n: 10_000 } } : {};
  const records = entries.map(({ id, record }) => make({ id, study: id, ...value, ...record }));
  const studies = entries.map(({ id, study }) => makeStudy(id, study as Record<string, unknown>));
  return makeEvidence(records, { studies });
}

function firstLead(rows: readonly OutcomeRow[]): KnownCell['lead'] {
  const cell = rows[0]?.cells[0];
  if (cell?.state !== 'known') throw new Error(`not known: ${JSON.stringify(cell)}`);
  return cell.lead;
}

describe('the record that leads', () => {
  it('is the only one', () => {
    expect(leadOf([{ id: 'a' }])).toMatchObject({ record: 'a', ledBy: 'only-one' });
  });

  it('is of people like this person before a larger trial of people only near', () => {
    const lead = leadOf([
      {
        id: 'near',
        study: { design: 'randomised-trial' },
        record: { people: nearPeople, value: { events: 900, n: 90_000 } },
      },
      { id: 'like' },
    ]);
    expect(lead).toMatchObject({ record: 'like', ledBy: 'match', match: 'like-you', reasons: [] });
  });

  it('is of the time asked before a better design at another time', () => {
    const lead = leadOf([
      { id: 'late', study: { design: 'registry' }, record: { time: { days: 90, basis: 'by' } } },
      { id: 'at30' },
    ]);
    expect(lead).toMatchObject({ record: 'at30', ledBy: 'time' });
  });

  it('states a number of people before one that does not', () => {
    const lead = leadOf([
      { id: 'trial', study: { design: 'randomised-trial' }, record: { value: { percent: 1 } } },
      { id: 'cohort' },
    ]);
    expect(lead).toMatchObject({ record: 'cohort', ledBy: 'size' });
    expect(leadOf([{ id: 'trial', record: { value: { percent: 1 } } }]).record).toBe('trial');
  });

  it('has 30 people or more where any has', () => {
    const lead = leadOf([
      { id: 'tiny', record: { value: { events: 1, n: 29 } } },
      { id: 'late', record: { time: { days: 90, basis: 'by' } } },
    ]);
    expect(lead).toMatchObject({ record: 'late', ledBy: 'only-one' });
    const loss = { metric: 'TWL', unit: '%', estimate: 25, reference: 'before-this-operation' };
    const weight = leadOf(
      [
        { id: 'tiny', record: { value: { ...loss, n: 29 } } },
        { id: 'later', record: { time: { months: 70, basis: 'at' }, value: { ...loss, n: 30 } } },
      ],
      makeWeightRecord,
    );
    expect(weight).toMatchObject({ record: 'later', ledBy: 'size' });
  });

  it('is of the highest dose of a medicine, before a larger group on less and a mean over several doses', () => {
    const on = (id: string, mg: readonly number[] | 'unstated', n = 10_000): Entry => ({
      id,
      record: {
        dose: mg === 'unstated' ? mg : { mg, per: 'week' },
        value: { events: n / 100, n },
      },
    });
    const groups = [
      on('a', [10], 90_000),
      on('b', [10, 15], 90_000),
      on('c', [15]),
      on('d', 'unstated', 90_000),
    ];
    expect(leadOf(groups)).toMatchObject({ record: 'c', ledBy: 'dose', dose: '15 mg/week' });
    expect(leadOf(groups.slice(0, 2))).toMatchObject({ record: 'b', dose: '10 or 15 mg/week' });
    expect(leadOf([on('a', 'unstated'), on('b', [5])])).toMatchObject({ record: 'b', ledBy: 'dose' });
    // A better design on less comes first, and a dose that the clinic prefers.
    const trial = { ...on('trial', [5]), study: { design: 'randomised-trial' } };
    expect(leadOf([trial, on('c', [15])])).toMatchObject({ record: 'trial', ledBy: 'design' });
    expect(leadOf(groups, makeRecord, ['a'])).toMatchObject({ record: 'a', ledBy: 'clinic-preference' });
  });

  it('states a BMI before one that only leaves it to be assumed, at the same time and with enough people', () => {
    const silent = { indication: 'first-operation', diabetes: 'mixed', age: { low: 18, high: 65 } };
    const trial = { id: 'silent', study: { design: 'randomised-trial' }, record: { people: silent } };
    expect(leadOf([trial, { id: 'stated' }])).toMatchObject({ record: 'stated', ledBy: 'match' });
    const late = { id: 'stated', record: { time: { days: 90, basis: 'by' } } };
    expect(leadOf([trial, late])).toMatchObject({ record: 'silent', ledBy: 'time' });
    const small = { id: 'stated', record: { value: { events: 1, n: 100 } } };
    expect(leadOf([trial, small])).toMatchObject({ record: 'silent', ledBy: 'design' });
  });

  it('is of the very group that the person belongs to, the narrowest first, before larger general ones', () => {
    const of = (id: string, people: object, n = 10_000): Entry => ({
      id,
      record: { people: { ...covered, ...people }, value: { events: n / 100, n } },
    });
    const general = of('general', { bmi: { low: 30, high: 80 } }, 900_000);
    const fifty = of('a-fifty', { bmi: { low: 50 }, group: 'bmi-50-plus' });
    const sixty = of('b-sixty', { bmi: { low: 60 }, group: 'bmi-60-plus' }, 1000);
    expect(leadOfHeavy([general, fifty])).toMatchObject({
      record: 'a-fifty',
      ledBy: 'match',
    });
    expect(leadOfHeavy([general, fifty, sixty]).record).toBe('b-sixty');
    expect(leadOf([general, fifty, sixty]).record).toBe('general');
  });

  it('follows the design: trial, registry, cohort, series, the rest', () => {
    const designs = ['randomised-trial', 'registry', 'cohort', 'case-series', 'systematic-review'];
    for (const [index, design] of designs.slice(1).entries()) {
      const lead = leadOf([
        { id: 'a-worse', study: { design }, record: { value: { events: 500, n: 50_000 } } },
        { id: 'b-better', study: { design: designs[index] }, record: { value: { events: 400, n: 40_000 } } },
      ]);
      expect(lead).toMatchObject({ record: 'b-better', ledBy: 'design' });
    }
  });

  it('takes a meta-analysis for what it pools', () => {
    const meta = (design_note?: string): string =>
      leadOf([
        {
          id: 'meta',
          study: { design: 'meta-analysis', ...(design_note === undefined ? {} : { design_note }) },
        },
        { id: 'registry', study: { design: 'registry' } },
      ]).record;
    expect(meta()).toBe('registry');
    expect(meta('12 trials, 12,351 people')).toBe('meta');
  });

  it('lets the design of a record win over that of its study', () => {
    const lead = leadOf([
      { id: 'a', study: { design: 'randomised-trial' }, record: { design: 'case-series' } },
      { id: 'b', study: { design: 'registry' } },
    ]);
    expect(lead.record).toBe('b');
  });

  it('is not a small trial when the harm is rare', () => {
    const registry = {
      id: 'registry',
      study: { design: 'registry' },
      record: { value: { events: 1100, n: 692_000 } },
    };
    const trial = (events: number, n: number): Entry => ({
      id: 'trial',
      study: { design: 'randomised-trial' },
      record: { value: { events, n } },
    });
    expect(leadOf([registry, trial(2, 30)])).toMatchObject({ record: 'registry', ledBy: 'design' });
    expect(leadOf([registry, trial(2, 312)]).record).toBe('registry');
    expect(leadOf([registry, trial(15, 10_000)])).toMatchObject({ record: 'trial', ledBy: 'design' });
  });

  it('is a trial of 300 people when the harm is common', () => {
    const lead = leadOf([
      { id: 'registry', study: { design: 'registry' }, record: { value: { events: 5000, n: 50_000 } } },
      { id: 'trial', study: { design: 'randomised-trial' }, record: { value: { events: 30, n: 300 } } },
    ]);
    expect(lead.record).toBe('trial');
  });

  it('then has more people, then is newer, then comes first by id', () => {
    expect(leadOf([{ id: 'a' }, { id: 'b', record: { value: { events: 200, n: 20_000 } } }])).toMatchObject({
      record: 'b',
      ledBy: 'size',
    });
    const cited = (year: number): object => ({ citation: { authors: 'E', year, title: 'T', journal: 'J' } });
    expect(leadOf([{ id: 'a' }, { id: 'b', study: cited(2024) }])).toMatchObject({
      record: 'b',
      ledBy: 'year',
    });
    expect(leadOf([{ id: 'b' }, { id: 'a' }])).toMatchObject({ record: 'a', ledBy: 'id' });
  });

  it('is measured in percent of total weight before one that is computed', () => {
    const computed = { metric: 'EWL', estimate: 60, unit: '%', n: 5000, reference: 'before-this-operation' };
    const lead = leadOf(
      [{ id: 'trial', study: { design: 'randomised-trial' }, record: { value: computed } }, { id: 'twl' }],
      makeWeightRecord,
    );
    expect(lead).toMatchObject({ record: 'twl', ledBy: 'measure' });
  });

  it('is the one the clinic prefers, if its people are near enough', () => {
    const entries = [{ id: 'like' }, { id: 'near', record: { people: nearPeople } }];
    expect(leadOf(entries, makeRecord, ['near'])).toMatchObject({
      record: 'near',
      ledBy: 'clinic-preference',
    });
    const other = [{ id: 'like' }, { id: 'other', record: { people: { ...covered, bmi: { low: 60 } } } }];
    expect(leadOf(other, makeRecord, ['other']).record).toBe('like');
    const unread = [{ id: 'like' }, { id: 'unread', record: { seen: 'memory' } }];
    expect(leadOf(unread, makeRecord, ['unread']).record).toBe('like');
  });
});
