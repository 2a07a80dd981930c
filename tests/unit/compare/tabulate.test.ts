import { describe, expect, it } from 'vitest';

import type { Topic, TopicId } from '../../../src/model/comparison.ts';
import type { EvidenceRecord } from '../../../src/model/evidence-record.ts';
import { compareWell, makeRecord, makeWeightRecord } from '../../helpers/compare-inputs.ts';
import type { CaseChanges } from '../../helpers/compare-inputs.ts';

let made = 0;

/** One record of an outcome; `months` 0 is 30 days. */
function record(outcome: string, months = 0, changes: object = {}): EvidenceRecord {
  made += 1;
  const time = months === 0 ? { days: 30, basis: 'by' } : { months, basis: 'by' };
  const id = `r${String(made).padStart(3, '0')}`;
  return makeRecord({ id, study: id, outcome, time, value: { events: 50, n: 1000 }, ...changes });
}

function topic(id: TopicId, records: readonly EvidenceRecord[], changes: CaseChanges = {}): Topic {
  const found = compareWell(records, changes).topics.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no topic ${id}`);
  return found;
}

function outcomes({ rows }: Topic): readonly string[] {
  return rows.map(({ outcome }) => outcome);
}

describe('the first month', () => {
  it('draws serious complications in a thousand people, else any complication, else nothing', () => {
    const major = record('major-complication');
    const any = record('any-complication');
    expect(topic('first-month', [major, any]).picture).toMatchObject({
      outcome: 'major-complication',
      denominator: 1000,
    });
    expect(topic('first-month', [any]).picture).toMatchObject({
      outcome: 'any-complication',
      denominator: 1000,
    });
    expect(topic('first-month', []).picture).toBeNull();
  });

  it('keeps the four most important outcomes that are known, in order', () => {
    const all = ['infection', 'readmission', 'reoperation', 'clot', 'bleeding', 'leak', 'death'].map((one) =>
      record(one),
    );
    expect(outcomes(topic('first-month', all))).toEqual(['death', 'leak', 'bleeding', 'clot']);
    expect(outcomes(topic('first-month', [record('infection'), record('leak')]))).toEqual([
      'leak',
      'infection',
    ]);
  });
});

describe('one denominator for a table', () => {
  it('is 100, and 1,000 when any figure is under 1 in 100', () => {
    expect(topic('first-month', [record('leak')]).denominator).toBe(100);
    expect(
      topic('first-month', [record('leak'), record('death', 0, { value: { events: 9, n: 1000 } })])
        .denominator,
    ).toBe(1000);
    expect(topic('first-month', [record('leak', 0, { value: { events: 0, n: 1000 } })]).denominator).toBe(
      1000,
    );
  });

  it('counts what other studies found, unless they found nobody', () => {
    const lead = record('leak', 0, { value: { events: 500, n: 10_000 } });
    expect(
      topic('first-month', [lead, record('leak', 0, { value: { events: 5, n: 1000 } })]).denominator,
    ).toBe(1000);
    expect(
      topic('first-month', [lead, record('leak', 0, { value: { events: 0, n: 1000 } })]).denominator,
    ).toBe(100);
  });
});

describe('a length of time in a table', () => {
  it('says nothing of its denominator', () => {
    const hours = record('leak', 0, { kind: 'duration', value: { estimate: 0.004, unit: 'days', n: 1000 } });
    const { rows, denominator } = topic('first-month', [hours]);
    expect(rows[0]?.cells[0]).toMatchObject({ state: 'known', value: { kind: 'amount' } });
    expect(denominator).toBe(100);
  });
});

describe('later years', () => {
  it('draws further operations, else procedures, else removal, else change', () => {
    const records = ['conversion', 'removal', 'reintervention', 'reoperation'].map((one) => record(one, 60));
    for (let known = 1; known <= 4; known += 1) {
      const last = records[known - 1]?.outcome;
      const drawn = topic('later-years', records.slice(0, known));
      expect(drawn.picture).toMatchObject({ outcome: last, denominator: 100 });
      expect(outcomes(drawn)).not.toContain(last);
    }
  });

  it('asks each row at the one time at which most options are known', () => {
    const records = [
      record('ulcer', 120),
      record('ulcer', 36),
      record('ulcer', 36, { option: 'bypass' }),
      record('gallstones', 36),
      record('gallstones', 60),
    ];
    const { rows } = topic('later-years', records);
    expect(rows.map(({ outcome, asked }) => [outcome, asked.months])).toEqual([
      ['ulcer', 36],
      ['gallstones', 60],
    ]);
    expect(new Set(rows[0]?.cells.map(({ asked }) => asked.months))).toEqual(new Set([36]));
  });

  it('of times at which as many are known takes the longest', () => {
    const { rows } = topic('later-years', [record('ulcer', 12), record('ulcer', 120), record('ulcer', 24)]);
    expect(rows.map(({ asked }) => asked.months)).toEqual([120]);
  });

  it('keeps the eight rows known for most options, in their own order', () => {
    const once = ['ulcer', 'obstruction', 'stricture', 'gallstones', 'anaemia', 'malnutrition', 'fracture'];
    const twice = ['slippage', 'erosion'];
    const records = [
      ...once.map((one) => record(one, 60)),
      ...twice.flatMap((one) => [record(one, 60), record(one, 60, { option: 'bypass' })]),
    ];
    expect(outcomes(topic('later-years', records))).toEqual([...once.slice(0, 6), ...twice]);
  });
});

describe('what one lives with', () => {
  it('shows at most four rows, with no picture', () => {
    const all = ['reflux', 'dumping', 'nausea', 'vomiting', 'diarrhoea', 'constipation', 'hair-loss'];
    const living = topic(
      'living-with-it',
      all.map((one) => record(one, 12)),
    );
    expect(outcomes(living)).toEqual(all.slice(0, 4));
    expect(living.picture).toBeNull();
  });
});

describe('benefits', () => {
  const remission = record('diabetes-remission', 60, { kind: 'benefit' });
  const conditions = (...codes: string[]): CaseChanges => ({ health: { conditions: codes } });

  it('are shown only for conditions this person has', () => {
    expect(topic('benefits', [remission]).rows).toEqual([]);
    expect(outcomes(topic('benefits', [remission], conditions('type-2-diabetes')))).toEqual([
      'diabetes-remission',
    ]);
    expect(outcomes(topic('benefits', [remission], conditions('uncontrolled-diabetes')))).toEqual([
      'diabetes-remission',
    ]);
  });

  it('keep a row of which nothing is known, asked at five years', () => {
    const { rows } = topic('benefits', [], conditions('reflux', 'high-blood-pressure'));
    expect(rows.map(({ outcome, asked }) => [outcome, asked.months])).toEqual([
      ['hypertension-remission', 60],
      ['reflux-remission', 60],
    ]);
  });

  it('show sleep apnoea as gone, else as better', () => {
    const better = record('sleep-apnoea-improved', 60, { kind: 'benefit' });
    const gone = record('sleep-apnoea-remission', 60, { kind: 'benefit' });
    expect(outcomes(topic('benefits', [better], conditions('sleep-apnoea')))).toEqual([
      'sleep-apnoea-improved',
    ]);
    expect(outcomes(topic('benefits', [better, gone], conditions('sleep-apnoea')))).toEqual([
      'sleep-apnoea-remission',
    ]);
  });
});

describe('weight', () => {
  const at = (months: number): EvidenceRecord =>
    makeWeightRecord({ id: `w${months}`, time: { months, basis: 'at' } });

  it('has a row for 1, 2, 5 and 10 years', () => {
    expect(compareWell([]).weight.over.map(({ asked }) => asked.months)).toEqual([12, 24, 60, 120]);
  });

  it('has one for 3 years where that is known and 5 years are not', () => {
    const times = (...months: readonly number[]): readonly (number | undefined)[] =>
      compareWell(months.map(at)).weight.over.map(({ asked }) => asked.months);
    expect(times(12, 36)).toEqual([12, 24, 36, 60, 120]);
    expect(compareWell([at(12), at(36)]).weight.mainMonths).toBe(36);
    expect(times(36, 60)).toEqual([12, 24, 60, 120]);
  });

  it('is mainly shown at five years, else at the longest time that is known', () => {
    expect(compareWell([at(12), at(60), at(120)]).weight).toMatchObject({
      mainMonths: 60,
      main: { asked: { months: 60 } },
    });
    expect(compareWell([at(12), at(24)]).weight.mainMonths).toBe(24);
    expect(compareWell([]).weight.mainMonths).toBe(60);
  });

  it('is followed in the study that gives the main figure of the same option, not of another', () => {
    const of = (option: string, study: string, months: number): EvidenceRecord =>
      makeWeightRecord({ id: `${option}.${study}.${months}`, option, study, time: { months, basis: 'at' } });
    const { courses } = compareWell([
      of('sleeve', 'first', 12),
      of('sleeve', 'first', 60),
      of('bypass', 'second', 24),
      of('bypass', 'second', 60),
    ]).weight;
    expect(courses.map(({ option, study }) => `${option} ${study}`)).toEqual([
      'sleeve first',
      'bypass second',
    ]);
  });

  it('keeps the true time of the study', () => {
    const cell = compareWell([at(17)]).weight.over[0]?.cells[0];
    expect(cell).toMatchObject({ asked: { months: 12 }, lead: { horizon: { months: 17 }, timeBasis: 'at' } });
  });
});
