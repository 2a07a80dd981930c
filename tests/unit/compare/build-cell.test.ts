import { describe, expect, it } from 'vitest';

import type { Cell, ComparisonTable } from '../../../src/model/comparison.ts';
import { OutcomeDefinitionSchema } from '../../../src/model/evidence.ts';
import type { OutcomeDefinition } from '../../../src/model/evidence.ts';
import type { EvidenceRecord } from '../../../src/model/evidence-record.ts';
import {
  compareWell,
  makeClinic,
  makeEvidence,
  makeRecord,
  makeStudy,
} from '../../helpers/compare-inputs.ts';
import type { CaseChanges } from '../../helpers/compare-inputs.ts';

const people = {
  indication: 'first-operation',
  bmi: { low: 35, high: 60 },
  age: { low: 18, high: 65 },
  diabetes: 'mixed',
};

/** The cell of an option; by default of leak within 30 days after a sleeve. */
function cellOf(table: ComparisonTable, id = 'sleeve/leak/30d'): Cell {
  const rows = table.topics.flatMap(({ picture, rows: own }) => (picture === null ? own : [picture, ...own]));
  const cell = [...rows, ...table.weight.over].flatMap(({ cells }) => cells).find((one) => one.id === id);
  if (cell === undefined) throw new Error(`no cell ${id}`);
  return cell;
}

function leak(id: string, changes: object = {}): EvidenceRecord {
  return makeRecord({ id, study: id, ...changes });
}

describe('other studies beside the lead', () => {
  const lead = leak('lead', { value: { events: 100, n: 10_000 } });

  it('give their lowest and highest figure, without the lead', () => {
    const table = compareWell([
      lead,
      leak('x', { value: { events: 8, n: 2000 } }),
      leak('y', { value: { events: 30, n: 1000 } }),
    ]);
    expect(cellOf(table)).toMatchObject({
      state: 'known',
      lead: { record: 'lead' },
      others: { low: 0.004, high: 0.03, records: ['x', 'y'] },
      setAside: [],
    });
  });

  it('are never of another dose of a medicine, nor pooled with it, even in another trial', () => {
    const on = (id: string, mg: readonly number[] | 'unstated', events: number): EvidenceRecord =>
      leak(id, { dose: mg === 'unstated' ? mg : { mg, per: 'week' }, value: { events, n: 1000 } });
    const records = [
      on('a', [15], 20),
      on('b', [10], 90),
      on('c', [15], 30),
      on('d', [10, 15], 80),
      on('e', [15], 25),
      on('f', 'unstated', 70),
      on('g', [15], 35),
    ];
    const cell = cellOf(compareWell(records));
    expect(cell).toMatchObject({
      lead: { record: 'a', dose: '15 mg/week' },
      others: { low: 0.025, high: 0.035, records: ['c', 'e', 'g'] },
      pooled: { studies: 4 },
      setAside: [
        { record: 'b', reason: { code: 'other-dose', mg: [10], per: 'week' } },
        { record: 'd', reason: { code: 'other-dose', mg: [10, 15], per: 'week' } },
        { record: 'f', reason: { code: 'dose-unstated' } },
      ],
    });
    // Nobody can say that two doses which are not stated are the same.
    const open = cellOf(compareWell([on('f', 'unstated', 70), on('h', 'unstated', 90)]));
    expect(open).not.toHaveProperty('others');
  });

  it('are of another dose before they are the same people', () => {
    const studies = [makeStudy('lead', { cohort: 'trial' }), makeStudy('x', { cohort: 'trial' })];
    const week = (mg: number): object => ({ dose: { mg: [mg], per: 'week' } });
    const records = [leak('lead', week(15)), leak('x', week(5))];
    expect(cellOf(compareWell(makeEvidence(records, { studies })))).toMatchObject({
      setAside: [{ record: 'x', reason: { code: 'other-dose', mg: [5] } }],
    });
  });

  it('are never the same people as the lead or as each other', () => {
    const studies = [
      makeStudy('lead', { cohort: 'registry' }),
      makeStudy('x', { cohort: 'registry' }),
      makeStudy('y', { overlaps: ['z'] }),
      makeStudy('z', { overlaps: ['y'] }),
    ];
    const records = [lead, leak('x'), leak('y', { value: { events: 30, n: 1500 } }), leak('z')];
    expect(cellOf(compareWell(makeEvidence(records, { studies })))).toMatchObject({
      others: { records: ['y'] },
      setAside: [
        { record: 'x', reason: { code: 'same-people', as: 'lead' } },
        { record: 'z', reason: { code: 'same-people', as: 'y' } },
      ],
    });
  });

  it('believe the cohort of a record before that of its study', () => {
    const studies = [makeStudy('lead', { cohort: 'registry' }), makeStudy('x', { cohort: 'registry' })];
    const table = compareWell(makeEvidence([lead, leak('x', { cohort: 'other' })], { studies }));
    expect(cellOf(table)).toMatchObject({ others: { records: ['x'] } });
  });

  it('fit as well as the lead', () => {
    const near = leak('near', { people: { ...people, indication: 'mixed' } });
    expect(cellOf(compareWell([lead, near]))).toMatchObject({
      setAside: [{ record: 'near', reason: { code: 'weaker-match' } }],
    });
  });

  it('have enough people to move by less than 1 in 100 with one person, unless the lead has fewer too', () => {
    const small = leak('small', { value: { events: 1, n: 99 } });
    expect(cellOf(compareWell([lead, small]))).toMatchObject({
      setAside: [{ record: 'small', reason: { code: 'too-few-people', n: 99 } }],
    });
    const smaller = leak('smaller', { value: { events: 1, n: 60 } });
    expect(cellOf(compareWell([small, smaller]))).toMatchObject({ others: { records: ['smaller'] } });
  });
});

describe('beside a figure of people over 65', () => {
  const old: CaseChanges = { patient: { born: '1959-01-02' } };
  const over65 = { ...people, group: 'over-65', age: { low: 65, high: 90 } };
  const anyAge = { ...people, age: { low: 18, high: 90 } };
  const general = ['a', 'b', 'c', 'd'].map((id, index) =>
    leak(id, { people: anyAge, value: { events: 10 + index, n: 9000 } }),
  );

  it('those of all ages are no other findings, but other people', () => {
    const lead = leak('lead', { people: over65, value: { events: 9, n: 900 } });
    const cell = cellOf(compareWell([lead, ...general], old));
    expect(cell).toMatchObject({ state: 'known', lead: { record: 'lead' } });
    expect(cell).not.toHaveProperty('others');
    expect(cell.setAside.map(({ reason }) => reason.code)).toEqual(general.map(() => 'weaker-match'));
  });

  it('another study of people over 65 stands', () => {
    const lead = leak('lead', { people: over65, value: { events: 9, n: 900 } });
    const other = leak('other', { people: over65, value: { events: 8, n: 400 } });
    expect(cellOf(compareWell([lead, other, ...general], old))).toMatchObject({
      others: { low: 0.02, high: 0.02, records: ['other'] },
    });
  });
});

describe('the mean of four studies or more', () => {
  const others = ['b', 'c', 'd', 'e'].map((id, index) => leak(id, { value: { events: 10 + index, n: 900 } }));

  it('takes in the figure that leads', () => {
    const cell = cellOf(compareWell([leak('a'), ...others]));
    expect(cell).toMatchObject({ lead: { record: 'a' }, pooled: { studies: 5 } });
  });

  it('is not made where the figure that leads has no counts and could be no part of it', () => {
    const later = others.map((record) => makeRecord({ ...record, time: { days: 60, basis: 'by' } }));
    const cell = cellOf(compareWell([leak('a', { value: { percent: 3 } }), ...later]));
    expect(cell).toMatchObject({ lead: { record: 'a' }, others: { records: ['b', 'c', 'd', 'e'] } });
    expect(cell).not.toHaveProperty('pooled');
  });
});

describe('records set aside', () => {
  it.each([
    ['not-verified', { seen: 'memory' }],
    ['not-verified', { seen: 'page-2nd' }],
    ['variant', { variant: 'open operation' }],
    ['other-measure', { scope: 'narrower', definition: 'only deep vein clots' }],
    ['other-measure', { scope: 'wider' }],
    ['bmi-outside', { people: { ...people, bmi: { low: 60 } } }],
    ['other-time', { time: { months: 60, basis: 'by' } }],
    ['time-unclear', { time: { basis: 'unclear' } }],
    ['group-size-unknown', { value: { percent: 0 } }],
    ['other-measure', { value: { rate: 2, per: 1000, unit: 'person-years' } }],
    [
      'other-measure',
      { kind: 'contrast', versus: 'bypass', value: { measure: 'odds-ratio', estimate: 1, adjusted: true } },
    ],
    ['other-measure', { kind: 'report', value: { events: 5 } }],
  ])('say %s', (code, changes) => {
    const cell = cellOf(compareWell([leak('good'), leak('odd', changes)]));
    expect(cell).toMatchObject({ state: 'known', lead: { record: 'good' } });
    expect(cell).not.toHaveProperty('others');
    expect(cell).toMatchObject({ setAside: [{ record: 'odd', reason: { code } }] });
  });

  it('include what was measured after the treatment was stopped', () => {
    const id = 'sleeve.leak.30d.trial.stopped';
    const stopped = makeRecord({ id, study: 'trial', definition: 'stopped at week 68' });
    expect(cellOf(compareWell([leak('good'), stopped]))).toMatchObject({
      setAside: [{ record: stopped.id, reason: { code: 'variant', variant: 'stopped at week 68' } }],
    });
    const unexplained = makeRecord({ id, study: 'trial' });
    expect(cellOf(compareWell([leak('good'), unexplained]))).toMatchObject({
      setAside: [{ record: id, reason: { code: 'variant', variant: 'stopped' } }],
    });
  });

  it('include a record whose publication is not there to be cited', () => {
    const evidence = makeEvidence([leak('good'), leak('orphan')]);
    const studies = new Map([...evidence.studies].filter(([id]) => id !== 'orphan'));
    expect(cellOf(compareWell({ ...evidence, studies }))).toMatchObject({
      setAside: [{ record: 'orphan', reason: { code: 'not-verified' } }],
    });
  });
});

describe('a cell without a figure', () => {
  const options = { options: ['sleeve', 'bypass'] };
  /** A known bypass cell keeps the row, so that the sleeve cell can be looked at. */
  const bypass = leak('bypass', { option: 'bypass' });

  function reasonFor(records: readonly EvidenceRecord[], changes: CaseChanges = {}): unknown {
    const cell = cellOf(compareWell([...records, bypass], { decision: options, ...changes }));
    if (cell.state !== 'not-known') throw new Error(cell.state);
    return cell.reason;
  }

  it('says that there is no record, or none that anybody read', () => {
    expect(reasonFor([])).toEqual({ code: 'no-record' });
    expect(reasonFor([leak('a', { seen: 'memory' })])).toEqual({ code: 'not-verified' });
    expect(reasonFor([leak('a', { variant: 'open operation' })])).toEqual({ code: 'done-otherwise' });
  });

  it('says that people like this one were followed to another time', () => {
    const at = (months: number): EvidenceRecord => leak(`m${months}`, { time: { months, basis: 'by' } });
    const other = leak('other', { people: { ...people, bmi: { low: 60 } } });
    expect(reasonFor([at(6), at(24), other])).toEqual({ code: 'other-time', longestMonths: 24 });
    const early = [leak('a', { time: { days: 120, basis: 'by' } })];
    expect(reasonFor(early)).toEqual({ code: 'other-time', longestMonths: 3.9 });
    expect(reasonFor([leak('a', { time: { basis: 'unclear' } })])).toEqual({ code: 'time-unclear' });
  });

  it('does not speak for an unread study of people like this one', () => {
    const other = leak('other', { people: { ...people, diabetes: 'all' } });
    const unread = (changes: object = {}): EvidenceRecord => leak('unread', { seen: 'page-2nd', ...changes });
    expect(reasonFor([other])).toEqual({ code: 'diabetes-only' });
    expect(reasonFor([other, unread()])).toEqual({ code: 'not-verified' });
    const far = unread({ people: { ...people, bmi: { low: 60 } } });
    expect(reasonFor([other, far])).toEqual({ code: 'diabetes-only' });
    const later = unread({ time: { months: 36, basis: 'by' } });
    const sooner = leak('sooner', { time: { months: 24, basis: 'by' } });
    expect(reasonFor([sooner])).toEqual({ code: 'other-time', longestMonths: 24 });
    expect(reasonFor([sooner, later])).toEqual({ code: 'other-time' });
    const otherLater = leak('other', {
      people: { ...people, diabetes: 'all' },
      time: { months: 60, basis: 'by' },
    });
    expect(reasonFor([otherLater, later])).toEqual({ code: 'other-time' });
    expect(reasonFor([sooner, otherLater])).toEqual({ code: 'other-time', longestMonths: 24 });
    expect(reasonFor([unread({ scope: 'wider' })])).toEqual({ code: 'no-record' });
  });

  it('says who was studied, in a way that is true of all studies', () => {
    const withBmi = (id: string, low: number): EvidenceRecord =>
      leak(id, { people: { ...people, bmi: { low, high: 90 } } });
    expect(reasonFor([withBmi('a', 60), withBmi('b', 50), withBmi('c', 70)])).toEqual({
      code: 'bmi-outside',
      low: 50,
      high: 90,
      yours: 43.1,
    });
  });

  it('does not speak of people with another history while others come nearer', () => {
    const after = (id: string): EvidenceRecord =>
      leak(id, { people: { ...people, indication: 'after-band' } });
    const tooHeavy = leak('heavy', { people: { ...people, bmi: { low: 60, high: 90 } } });
    expect(reasonFor([after('a'), after('b'), tooHeavy])).toMatchObject({ code: 'bmi-outside' });
    expect(reasonFor([after('a'), after('b')])).toEqual({
      code: 'indication',
      theirs: 'after-band',
      yours: 'first-operation',
    });
  });

  it('says what an outcome cannot follow from', () => {
    const table = compareWell([leak('a')], { decision: { options: ['sleeve', 'semaglutide'] } });
    expect(cellOf(table, 'semaglutide/leak/30d')).toEqual({
      id: 'semaglutide/leak/30d',
      option: 'semaglutide',
      outcome: 'leak',
      asked: { days: 30 },
      setAside: [],
      state: 'not-possible',
    });
  });

  it('takes nothing for impossible after an earlier operation, except a stay in hospital without one', () => {
    const table = compareWell([leak('a', { people: { ...people, indication: 'after-band' } })], {
      health: { earlier_operations: [{ operation: 'band', status: 'in-place' }] },
      decision: { asked: 'second-operation', options: ['sleeve', 'semaglutide'] },
    });
    expect(cellOf(table, 'semaglutide/leak/30d').state).toBe('not-known');
    expect(table.options[1]?.stay.state).toBe('not-possible');
  });

  it('knows that a gallbladder that is out cannot make stones', () => {
    const stones = makeRecord({ outcome: 'gallstones', time: { months: 24, basis: 'by' } });
    expect(compareWell([stones]).topics[1]?.rows).toHaveLength(1);
    expect(compareWell([stones], { health: { history: ['gallbladder-removed'] } }).topics[1]?.rows).toEqual(
      [],
    );
    const other = { health: { history: ['stomach-operation'] } };
    expect(compareWell([stones], other).topics[1]?.rows).toHaveLength(1);
  });

  it('says in pregnancy that it is pregnancy, even where there is no record', () => {
    const table = compareWell([leak('a')], { health: { pregnancy: { now: true } } });
    const reasons = table.weight.over
      .flatMap(({ cells }) => cells)
      .map((cell) => cell.state === 'not-known' && cell.reason);
    expect(new Set(reasons.map((reason) => JSON.stringify(reason)))).toEqual(
      new Set(['{"code":"pregnancy"}']),
    );
    expect(table.recordsUsed).toEqual([]);
    expect(table.notes).toEqual(['pregnant']);
  });
});

describe('the count of this surgeon', () => {
  const result = {
    option: 'sleeve',
    outcome: 'leak',
    days: 30,
    events: 1,
    n: 212,
    from: '2021-01',
    to: '2025-12',
  };

  it('stands beside the figure, with its own interval', () => {
    const table = compareWell([leak('a')], {}, makeClinic({ results: [result] }));
    expect(cellOf(table)).toMatchObject({
      own: {
        events: 1,
        n: 212,
        surgeon: 'surgeon-1',
        tooFew: false,
        score: { low: expect.closeTo(0.00083, 4) as number, high: expect.closeTo(0.0262, 3) as number },
      },
    });
  });

  it('says when it is too few to tell', () => {
    const table = compareWell([leak('a')], {}, makeClinic({ results: [{ ...result, n: 29 }] }));
    expect(cellOf(table)).toMatchObject({ own: { n: 29, tooFew: true } });
    const enough = compareWell([leak('a')], {}, makeClinic({ results: [{ ...result, n: 30 }] }));
    expect(cellOf(enough)).toMatchObject({ own: { n: 30, tooFew: false } });
  });

  it('takes the count nearest to the time asked, of the same outcome and option', () => {
    const results = [
      { ...result, days: 90, events: 9 },
      result,
      { ...result, outcome: 'bleeding' },
      { ...result, option: 'bypass' },
    ];
    expect(cellOf(compareWell([leak('a')], {}, makeClinic({ results })))).toMatchObject({
      own: { events: 1, days: 30 },
    });
  });

  it('of two as near is that of the later years, then that of more people', () => {
    const results = [
      { ...result, from: '2015-01', to: '2020-12', n: 900, events: 5 },
      { ...result, n: 100, events: 7 },
      result,
    ];
    for (const list of [results, [...results].reverse()])
      expect(cellOf(compareWell([leak('a')], {}, makeClinic({ results: list })))).toMatchObject({
        own: { events: 1, n: 212, to: '2025-12' },
      });
  });

  it('stays away where another operates, of whom the clinic gives no count', () => {
    const other = { plan: { surgeon: 'surgeon-2' } };
    expect(cellOf(compareWell([leak('a')], other, makeClinic({ results: [result] })))).not.toHaveProperty(
      'own',
    );
  });

  it('of five years, in days as a clinic counts them, stands beside the figure of five years', () => {
    const late = makeRecord({ outcome: 'reoperation', time: { months: 60, basis: 'by' } });
    const results = [{ ...result, outcome: 'reoperation', days: 1826 }];
    const table = compareWell([late], {}, makeClinic({ results }));
    expect(cellOf(table, 'sleeve/reoperation/60m')).toMatchObject({ own: { events: 1, days: 1826 } });
    const early = makeClinic({ results: [{ ...result, outcome: 'reoperation', days: 60 }] });
    expect(cellOf(compareWell([late], {}, early), 'sleeve/reoperation/60m')).not.toHaveProperty('own');
  });

  it('does not stand beside a second operation or at another time', () => {
    const after = leak('a', { people: { ...people, indication: 'after-band' } });
    const second: CaseChanges = {
      health: { earlier_operations: [{ operation: 'band', status: 'in-place' }] },
      decision: { asked: 'second-operation', options: ['sleeve'] },
    };
    expect(cellOf(compareWell([after], second, makeClinic({ results: [result] })))).not.toHaveProperty('own');
    const year = makeClinic({ results: [{ ...result, days: 365 }] });
    expect(cellOf(compareWell([leak('a')], {}, year))).not.toHaveProperty('own');
  });
});

describe('counts that cannot both be true', () => {
  const few = makeRecord({
    id: 'few',
    study: 'few',
    outcome: 'reoperation',
    time: { months: 60, basis: 'mean-follow-up' },
    value: { events: 8, n: 800 },
  });
  const changed = (extra: object = {}): EvidenceRecord =>
    makeRecord({
      id: 'changed',
      study: 'changed',
      outcome: 'conversion',
      time: { months: 14, basis: 'by' },
      value: { events: 30, n: 100 },
      ...extra,
    });

  it('set aside fewer further operations than changes to another operation, and say so', () => {
    const other = makeRecord({ option: 'bypass', outcome: 'reoperation', time: { months: 60, basis: 'by' } });
    expect(cellOf(compareWell([few, changed(), other]), 'sleeve/reoperation/60m')).toMatchObject({
      state: 'not-known',
      reason: { code: 'contradicted' },
      setAside: [{ record: 'few', reason: { code: 'contradicted', by: 'changed' } }],
    });
  });

  it.each([
    ['later', { time: { months: 120, basis: 'by' } }],
    ['at an unknown time', { time: { basis: 'unclear' } }],
    ['of other people', { people: { ...people, bmi: { low: 60 } } }],
    ['that nobody read', { seen: 'memory' }],
    ['compatible by chance', { value: { events: 3, n: 100 } }],
  ])('do not count changes %s', (_, extra) => {
    expect(cellOf(compareWell([few, changed(extra)]), 'sleeve/reoperation/60m').state).toBe('known');
  });

  it('hold only after the kinds of option that the outcome names', () => {
    const [balloon, out] = [{ option: 'balloon' }, { option: 'balloon', outcome: 'removal' }];
    const records = [{ ...few, ...balloon }, changed(out)];
    const table = compareWell(records, { decision: { options: ['balloon'] } });
    expect(cellOf(table, 'balloon/reoperation/60m').state).toBe('known');
  });

  it('are those that the outcomes name as parts, whatever the outcome', () => {
    const ulcer = makeRecord({
      id: 'ulcer',
      study: 'ulcer',
      outcome: 'ulcer',
      time: { months: 24, basis: 'by' },
      value: { events: 30, n: 100 },
    });
    const bypass = { ...few, id: 'bypass', option: 'bypass' };
    const named = OutcomeDefinitionSchema.parse({
      code: 'reoperation',
      group: ['early-harm', 'late-harm'],
      better: 'lower',
      meaning: 'One more operation.',
      applies_to: ['operation'],
      parts: [{ outcomes: ['ulcer'], held_against: 'records' }],
    });
    const judged = (records: readonly EvidenceRecord[], outcomes: readonly OutcomeDefinition[]): Cell =>
      cellOf(compareWell(makeEvidence([bypass, ...records], { outcomes })), 'sleeve/reoperation/60m');
    expect(judged([few, ulcer], [])).toMatchObject({ state: 'known' });
    expect(judged([few, ulcer], [named])).toMatchObject({ reason: { code: 'contradicted' } });
    expect(judged([few, changed()], [named])).toMatchObject({ state: 'known' });
  });
});

describe('serious complications of the first month', () => {
  const serious = (events: number, id = 'serious'): EvidenceRecord =>
    leak(id, { outcome: 'major-complication', value: { events, n: 1000 } });
  const cell = (records: readonly EvidenceRecord[]): Cell => {
    const bypass = leak('bypass', { option: 'bypass', outcome: 'major-complication' });
    const options = { decision: { options: ['sleeve', 'bypass'] } };
    return cellOf(compareWell([...records, bypass], options), 'sleeve/major-complication/30d');
  };

  it.each(['leak', 'reoperation', 'death'])('are never fewer than %s alone', (outcome) => {
    const part = leak('part', { outcome, value: { events: 32, n: 1000 } });
    expect(cell([serious(8), part])).toMatchObject({
      state: 'not-known',
      reason: { code: 'contradicted' },
      setAside: [{ record: 'serious', reason: { code: 'contradicted', by: 'part' } }],
    });
    expect(cell([serious(8), serious(40, 'more'), part])).toMatchObject({ lead: { record: 'more' } });
    expect(cell([serious(32), part]).state).toBe('known');
  });

  it('may be fewer than what is not always serious, or is of another option', () => {
    expect(
      cell([serious(8), leak('part', { outcome: 'readmission', value: { events: 32, n: 1000 } })]).state,
    ).toBe('known');
    const elsewhere = leak('part', { option: 'bypass', value: { events: 9, n: 1000 } });
    expect(cell([serious(8), elsewhere]).state).toBe('known');
  });
});
