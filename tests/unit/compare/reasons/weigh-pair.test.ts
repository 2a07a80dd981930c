import { describe, expect, it } from 'vitest';

import { weighPair } from '../../../../src/compare/reasons/weigh-pair.ts';
import type { Claim } from '../../../../src/compare/reasons/weigh-pair.ts';
import { firstMonth, laterWindows, weightWindows } from '../../../../src/compare/weigh-time.ts';
import type { EvidenceRecord } from '../../../../src/model/evidence-record.ts';
import type { PairFinding } from '../../../../src/model/reason-check.ts';
import { makeEvidence, makeRecord, makeWeightRecord } from '../../../helpers/compare-inputs.ts';
import { makeDesks } from '../../../helpers/make-desks.ts';

const early = { outcomes: ['leak'], windows: [firstMonth], has: 'fewer' } as const satisfies Claim;
const weight = { outcomes: ['weight-loss'], windows: weightWindows, has: 'more' } as const satisfies Claim;

interface Asked {
  readonly claim?: Claim;
  readonly pair?: readonly [string, string];
  /** Options of the case, if not only the two. */
  readonly shown?: readonly string[];
}

/** The first option against the second, whose only evidence are these records. */
function weigh(records: readonly EvidenceRecord[], asked: Asked = {}): PairFinding | undefined {
  const { claim = early, pair = ['sleeve', 'bypass'] } = asked;
  const desks = makeDesks(records, asked.shown ?? pair);
  const [mine, theirs] = pair.map((code) => desks.find((desk) => desk.code === code));
  if (mine === undefined || theirs === undefined) throw new Error('two options were asked for');
  return weighPair({ mine, theirs }, claim, { desks, plans: makeEvidence([]).topics });
}

function leak(option: string, study: string, value: object): EvidenceRecord {
  return makeRecord({ id: `${option}.leak.30d.${study}`, option, study, value });
}

/** An odds ratio of leaks of one of the two against the other. */
function contrast(option: 'sleeve' | 'bypass', value: object, more: object = {}): EvidenceRecord {
  const versus = option === 'sleeve' ? 'bypass' : 'sleeve';
  return makeRecord({
    id: `${option}.leak.30d.study-c.vs-${versus}`,
    study: 'study-c',
    option,
    kind: 'contrast',
    versus,
    value: { measure: 'odds-ratio', interval: 'ci95', adjusted: true, ...value },
    ...more,
  });
}

describe('two figures of one study', () => {
  it('bear a claim out when the interval of their difference leaves out nought', () => {
    expect(
      weigh([leak('sleeve', 'a', { events: 10, n: 5000 }), leak('bypass', 'a', { events: 40, n: 5000 })]),
    ).toMatchObject({
      other: 'bypass',
      result: 'yes',
      basis: 'one-study',
      outcome: 'leak',
      asked: { days: 30 },
      records: ['sleeve.leak.30d.a', 'bypass.leak.30d.a'],
      mine: { value: 0.002 },
      theirs: { value: 0.008 },
    });
  });

  it.each([
    { what: 'speak against it the other way round', result: 'no', events: [40, 10] },
    { what: 'leave it open when chance could do it', result: 'unclear', events: [20, 26] },
  ])('$what', ({ result, events: [sleeve, bypass] }) => {
    const found = weigh([
      leak('sleeve', 'a', { events: sleeve, n: 5000 }),
      leak('bypass', 'a', { events: bypass, n: 5000 }),
    ]);
    expect(found?.result).toBe(result);
  });

  it('tell a difference although each interval alone reaches over the other', () => {
    // 2.0 % (1.6 to 2.4) and 2.7 % (2.3 to 3.2): the difference is 0.2 to 1.3 points.
    const found = weigh([
      leak('sleeve', 'a', { events: 100, n: 5000 }),
      leak('bypass', 'a', { events: 135, n: 5000 }),
    ]);
    expect(found?.result).toBe('yes');
  });

  it('leave it open where nobody knows how sure they are', () => {
    expect(weigh([leak('sleeve', 'a', { percent: 1 }), leak('bypass', 'a', { percent: 9 })])?.result).toBe(
      'unclear',
    );
  });

  it('leave it open where that is so of one of them', () => {
    const [sure, unsure] = [{ events: 10, n: 5000 }, { percent: 9 }];
    expect(weigh([leak('sleeve', 'a', sure), leak('bypass', 'a', unsure)])?.result).toBe('unclear');
    expect(weigh([leak('sleeve', 'a', unsure), leak('bypass', 'a', sure)])?.result).toBe('unclear');
  });

  it('are no different where both say the same, however surely', () => {
    const exactly = { percent: 5, low: 5, high: 5, interval: 'ci95', n: 1000 };
    const same = [leak('sleeve', 'a', exactly), leak('bypass', 'a', exactly)];
    expect(weigh(same)?.result).toBe('unclear');
    expect(weigh(same, { claim: { ...early, has: 'more' } })?.result).toBe('unclear');
  });

  it('count none seen with the upper limit of none', () => {
    const none = leak('sleeve', 'a', { events: 0, n: 100 });
    expect(weigh([none, leak('bypass', 'a', { events: 2, n: 100 })])?.result).toBe('unclear');
    expect(weigh([none, leak('bypass', 'a', { events: 15, n: 100 })])?.result).toBe('yes');
  });

  it('are those of the pages, where those come from one study, however large another is', () => {
    const shown = ['sleeve', 'bypass', 'band'];
    const records = [
      ...shown.map((option) => leak(option, 'pages', { events: 20, n: 2000 })),
      ...shown.slice(0, 2).map((option) => leak(option, 'larger', { events: 90, n: 9000 })),
    ];
    expect(weigh(records, { shown })).toMatchObject({
      basis: 'one-study',
      records: ['sleeve.leak.30d.pages', 'bypass.leak.30d.pages'],
    });
    expect(weigh(records)).toMatchObject({ records: ['sleeve.leak.30d.larger', 'bypass.leak.30d.larger'] });
  });

  it('are looked for beside those of the pages, where those come from two studies', () => {
    const shown = ['sleeve', 'bypass', 'band', 'plication'];
    const records = [
      leak('sleeve', 'a', { events: 10, n: 5000 }),
      leak('bypass', 'a', { events: 40, n: 5000 }),
      ...shown.slice(1).map((option) => leak(option, 'b', { events: 30, n: 5000 })),
    ];
    expect(weigh(records, { shown })).toMatchObject({
      basis: 'one-study',
      result: 'yes',
      records: ['sleeve.leak.30d.a', 'bypass.leak.30d.a'],
    });
  });
});

describe('figures of two studies', () => {
  const sleeve = leak('sleeve', 'a', { events: 10, n: 5000 });
  const bypass = leak('bypass', 'b', { events: 100, n: 5000 });

  it('bear a claim out when nothing known of one comes near anything known of the other', () => {
    expect(weigh([sleeve, bypass])).toMatchObject({ result: 'yes', basis: 'two-studies' });
    expect(weigh([sleeve, bypass], { pair: ['bypass', 'sleeve'] })?.result).toBe('no');
  });

  it('bear out that there is more of it too', () => {
    const claim = { ...early, has: 'more' } as const;
    expect(weigh([sleeve, bypass], { claim, pair: ['bypass', 'sleeve'] })?.result).toBe('yes');
    expect(weigh([sleeve, bypass], { claim })?.result).toBe('no');
  });

  it('leave it open where what is known of the two meets', () => {
    const between = (percent: number, low: number, high: number): object => ({
      percent,
      low,
      high,
      interval: 'ci95',
      n: 1000,
    });
    const meeting = [leak('sleeve', 'a', between(2, 1, 3)), leak('bypass', 'b', between(5, 3, 7))];
    expect(weigh(meeting)?.result).toBe('unclear');
    expect(weigh(meeting, { pair: ['bypass', 'sleeve'] })?.result).toBe('unclear');
  });

  it('leave it open where nobody knows how sure one of them is', () => {
    const unsure = [sleeve, leak('bypass', 'b', { percent: 9 })];
    expect(weigh(unsure)).toMatchObject({ result: 'unclear', basis: 'two-studies' });
    expect(weigh(unsure, { pair: ['bypass', 'sleeve'] })?.result).toBe('unclear');
  });

  it('leave it open when another study of one does', () => {
    expect(weigh([sleeve, bypass, leak('bypass', 'c', { events: 9, n: 4000 })])?.result).toBe('unclear');
    expect(weigh([sleeve, bypass, leak('sleeve', 'c', { events: 90, n: 4000 })])?.result).toBe('unclear');
    expect(weigh([sleeve, bypass, leak('sleeve', 'c', { events: 9, n: 4000 })])?.result).toBe('yes');
  });

  it('leave it open where nobody knows how sure one is, whatever other studies found', () => {
    const unsure = [leak('bypass', 'b', { percent: 9 }), leak('bypass', 'c', { percent: 12 })];
    expect(weigh([sleeve, ...unsure])?.result).toBe('unclear');
  });
});

describe('a published contrast', () => {
  it.each([
    { what: 'that is clear', value: { estimate: 0.5, low: 0.4, high: 0.7 }, result: 'yes' },
    {
      what: 'that is clear by a credible interval',
      value: { estimate: 0.5, low: 0.4, high: 0.7, interval: 'cri95' },
      result: 'yes',
    },
    { what: 'that may be chance', value: { estimate: 0.8, low: 0.6, high: 1.1 }, result: 'unclear' },
    { what: 'that is clear the other way', value: { estimate: 2, low: 1.5, high: 2.7 }, result: 'no' },
    {
      what: 'that is a difference',
      value: { measure: 'risk-difference', unit: 'percentage points', estimate: -2, low: -3, high: -1 },
      result: 'yes',
    },
  ])('$what says so', ({ value, result }) => {
    expect(weigh([contrast('sleeve', value)])).toMatchObject({
      result,
      basis: 'contrast',
      records: ['sleeve.leak.30d.study-c.vs-bypass'],
      contrast: { of: 'sleeve', estimate: value.estimate, low: value.low, high: value.high },
    });
  });

  it('written from the other side says the same, and is told as it was written', () => {
    expect(weigh([contrast('bypass', { estimate: 2, low: 1.5, high: 2.7 })])).toMatchObject({
      result: 'yes',
      records: ['bypass.leak.30d.study-c.vs-sleeve'],
      contrast: { of: 'bypass', estimate: 2 },
    });
  });

  it.each<[string, object, object]>([
    ['without an interval', { estimate: 0.5 }, {}],
    [
      'with an interval that is none of the difference',
      { estimate: 0.5, low: 0.4, high: 0.7, interval: 'range' },
      {},
    ],
    ['without a lower limit', { estimate: 0.5, high: 0.7 }, {}],
    ['without an upper limit', { estimate: 0.5, low: 0.4 }, {}],
    ['with limits alone', { low: 0.4, high: 0.7 }, {}],
    ['of too few people', { estimate: 0.5, low: 0.4, high: 0.7, n: 20 }, {}],
    ['that nobody read at its source', { estimate: 0.5, low: 0.4, high: 0.7 }, { seen: 'memory' }],
    [
      'of other people',
      { estimate: 0.5, low: 0.4, high: 0.7 },
      { people: { indication: 'after-band', diabetes: 'mixed' } },
    ],
    ['at another time', { estimate: 0.5, low: 0.4, high: 0.7 }, { time: { months: 12, basis: 'at' } }],
    ['of an operation done otherwise', { estimate: 0.5, low: 0.4, high: 0.7 }, { variant: 'with a ring' }],
    ['of a narrower outcome', { estimate: 0.5, low: 0.4, high: 0.7 }, { scope: 'narrower' }],
    ['with a third option', { estimate: 0.5, low: 0.4, high: 0.7 }, { versus: 'band' }],
  ])('%s says nothing', (_, value, more) => {
    expect(weigh([contrast('sleeve', value, more)])).toEqual({
      other: 'bypass',
      result: 'unknown',
    });
  });

  it.each([
    { what: 'ratio that reaches down to one', value: { estimate: 1.4, low: 1, high: 2 } },
    { what: 'ratio that reaches up to one', value: { estimate: 0.7, low: 0.5, high: 1 } },
    {
      what: 'difference that reaches down to nought',
      value: { measure: 'risk-difference', estimate: 2, low: 0, high: 4 },
    },
    {
      what: 'difference that reaches up to nought',
      value: { measure: 'risk-difference', estimate: -2, low: -4, high: 0 },
    },
  ])('as a $what leaves it open', ({ value }) => {
    expect(weigh([contrast('sleeve', value)])?.result).toBe('unclear');
  });

  it('has a unit only where it states one', () => {
    const ratio = weigh([contrast('sleeve', { estimate: 0.5, low: 0.4, high: 0.7 })]);
    expect(ratio).toHaveProperty('contrast');
    expect(ratio).not.toHaveProperty('contrast.unit');
  });

  it('and figures of one study that say the same are told by the figures, which the pages show', () => {
    const records = [
      contrast('sleeve', { estimate: 0.5, low: 0.4, high: 0.7 }),
      leak('sleeve', 'a', { events: 10, n: 5000 }),
      leak('bypass', 'a', { events: 40, n: 5000 }),
    ];
    expect(weigh(records)).toMatchObject({ result: 'yes', basis: 'one-study' });
  });

  it('and figures of one study at another time are told by the one that looked longer', () => {
    const claim = { outcomes: ['ulcer'], windows: laterWindows, has: 'fewer' } as const;
    const ulcers = (months: number): readonly EvidenceRecord[] => {
      const late = { outcome: 'ulcer', time: { months, basis: 'by' } };
      return [
        makeRecord({ ...leak('sleeve', 'a', { events: 10, n: 2000 }), ...late }),
        makeRecord({ ...leak('bypass', 'a', { events: 60, n: 2000 }), ...late }),
      ];
    };
    const ratio = (months: number): EvidenceRecord =>
      contrast(
        'sleeve',
        { estimate: 0.5, low: 0.4, high: 0.7 },
        { outcome: 'ulcer', time: { months, basis: 'by' } },
      );
    expect(weigh([ratio(60), ...ulcers(12)], { claim })).toMatchObject({
      basis: 'contrast',
      asked: { months: 60 },
    });
    expect(weigh([ratio(12), ...ulcers(60)], { claim })).toMatchObject({
      basis: 'one-study',
      asked: { months: 60 },
    });
  });

  it('and figures of one study that say the opposite leave it open', () => {
    const records = [
      contrast('sleeve', { estimate: 0.5, low: 0.4, high: 0.7 }),
      leak('sleeve', 'a', { events: 60, n: 5000 }),
      leak('bypass', 'a', { events: 10, n: 5000 }),
    ];
    expect(weigh(records)?.result).toBe('unclear');
    expect(weigh(records.slice(0, 1))?.result).toBe('yes');
  });

  it('says more than figures of two studies', () => {
    const records = [
      contrast('sleeve', { estimate: 0.9, low: 0.7, high: 1.2 }),
      leak('sleeve', 'a', { events: 10, n: 5000 }),
      leak('bypass', 'b', { events: 100, n: 5000 }),
    ];
    expect(weigh(records)?.result).toBe('unclear');
    expect(weigh(records.slice(1))?.result).toBe('yes');
  });
});

describe('a claim', () => {
  it('is answered by the first outcome that has a clear answer', () => {
    const claim = { ...early, outcomes: ['bleeding', 'leak'] };
    const bleeding = (option: string, events: number): EvidenceRecord =>
      makeRecord({
        id: `${option}.bleeding.30d.a`,
        outcome: 'bleeding',
        option,
        study: 'a',
        value: { events, n: 5000 },
      });
    const leaks = [
      leak('sleeve', 'a', { events: 10, n: 5000 }),
      leak('bypass', 'a', { events: 40, n: 5000 }),
    ];
    expect(weigh([bleeding('sleeve', 20), bleeding('bypass', 22), ...leaks], { claim })?.result).toBe('yes');
    expect(weigh([bleeding('sleeve', 60), bleeding('bypass', 22), ...leaks], { claim })).toMatchObject({
      outcome: 'bleeding',
      result: 'no',
    });
    expect(weigh([bleeding('sleeve', 20), bleeding('bypass', 22)], { claim })?.result).toBe('unclear');
  });

  it('of a harm is answered for an option that cannot cause it, and is none against one that cannot', () => {
    expect(weigh([], { pair: ['semaglutide', 'sleeve'] })).toMatchObject({
      other: 'sleeve',
      result: 'yes',
      basis: 'impossible',
      records: [],
    });
    expect(weigh([], { pair: ['semaglutide', 'sleeve'], claim: { ...early, has: 'more' } })?.result).toBe(
      'no',
    );
    expect(weigh([], { pair: ['sleeve', 'semaglutide'] })).toBeUndefined();
  });

  it('of lengths of time is left open: how sure they are is not worked out', () => {
    const stay = (option: string, estimate: number): EvidenceRecord =>
      makeRecord({
        id: `${option}.hospital-stay.a`,
        study: 'a',
        option,
        outcome: 'hospital-stay',
        kind: 'duration',
        value: { estimate, unit: 'days', n: 1000 },
      });
    const claim = { ...early, outcomes: ['hospital-stay'] };
    expect(weigh([stay('sleeve', 2), stay('bypass', 9)], { claim })).toMatchObject({
      result: 'unclear',
      mine: { kind: 'amount', value: 2 },
    });
  });

  it('without a figure on one side cannot be answered', () => {
    expect(weigh([leak('sleeve', 'a', { events: 10, n: 5000 })])).toEqual({
      other: 'bypass',
      result: 'unknown',
    });
  });

  it('that times answer in opposite ways is left open, and the longest that agrees is shown', () => {
    const ulcers = (option: string, months: number, events: number): EvidenceRecord =>
      makeRecord({
        id: `${option}.ulcer.${String(months)}m.a`,
        outcome: 'ulcer',
        option,
        study: 'a',
        time: { months, basis: 'by' },
        value: { events, n: 2000 },
      });
    const claim = { outcomes: ['ulcer'], windows: laterWindows, has: 'fewer' } as const;
    const both = (months: number, sleeve: number, bypass: number): EvidenceRecord[] => [
      ulcers('sleeve', months, sleeve),
      ulcers('bypass', months, bypass),
    ];
    expect(weigh([...both(12, 10, 60), ...both(60, 100, 40)], { claim })?.result).toBe('unclear');
    expect(weigh([...both(12, 10, 60), ...both(60, 40, 100), ...both(120, 60, 61)], { claim })).toMatchObject(
      {
        result: 'yes',
        asked: { months: 60 },
      },
    );
  });
});

type Value = Readonly<Record<string, string | number>>;

describe('weight lost', () => {
  const lost = (option: string, estimate: number, { study = 'a', ...value }: Value): EvidenceRecord =>
    makeWeightRecord({
      id: `${option}.weight-loss.60m.${study}`,
      option,
      study,
      value: { metric: 'TWL', unit: '%', reference: 'before-this-operation', estimate, ...value },
    });
  const asked = { claim: weight, pair: ['bypass', 'sleeve'] as const };

  it.each([
    { what: 'more by a spread of many people', spread: { sd: 8, n: 400 }, result: 'yes' },
    { what: 'perhaps more by a spread of few', spread: { sd: 8, n: 30 }, result: 'unclear' },
    { what: 'perhaps more by a spread of an unknown number', spread: { sd: 8 }, result: 'unclear' },
    { what: 'perhaps more without any', spread: {}, result: 'unclear' },
    {
      what: 'perhaps more by where half of the people end up',
      spread: { low: 20, high: 27, interval: 'iqr', n: 400 },
      result: 'unclear',
    },
  ])('is $what', ({ spread, result }) => {
    expect(weigh([lost('bypass', 25, spread), lost('sleeve', 22, spread)], asked)?.result).toBe(result);
  });

  const sure = (estimate: number): Value => ({
    low: estimate - 1,
    high: estimate + 1,
    interval: 'ci95',
    n: 1000,
  });

  it('is as sure as its source says, before what a spread of people makes of it', () => {
    const published = (estimate: number): Value => ({
      low: estimate - 9,
      high: estimate + 9,
      interval: 'ci95',
    });
    const spread = { sd: 8, n: 400 };
    const records = [
      lost('bypass', 25, { ...spread, ...published(25) }),
      lost('sleeve', 22, { ...spread, ...published(22) }),
    ];
    expect(weigh(records, asked)?.result).toBe('unclear');
  });

  it.each([
    { what: 'clear where the averages lie apart', sleeve: 23, result: 'yes' },
    { what: 'unclear where they come near each other', sleeve: 24, result: 'unclear' },
  ])('in two studies is $what', ({ sleeve, result }) => {
    // With 400 people and a standard deviation of 8 an average is sure to 0.8 points.
    const records = [
      lost('bypass', 25, { sd: 8, n: 400, study: 'a' }),
      lost('sleeve', sleeve, { sd: 8, n: 400, study: 'b' }),
    ];
    expect(weigh(records, asked)).toMatchObject({ result, basis: 'two-studies' });
  });

  it('in two studies takes in what other studies found, as weight lost', () => {
    const known = [
      lost('bypass', 30, { ...sure(30), study: 'a' }),
      lost('sleeve', 20, { ...sure(20), study: 'b' }),
    ];
    const other = (estimate: number): EvidenceRecord => lost('sleeve', estimate, { n: 40, study: 'c' });
    expect(weigh([...known, other(22)], asked)?.result).toBe('yes');
    expect(weigh([...known, other(29.5)], asked)?.result).toBe('unclear');
  });

  it('is compared in kilograms of this person, and more of it is more', () => {
    const records = [lost('bypass', 25, sure(25)), lost('sleeve', 20, sure(20))];
    expect(weigh(records, asked)).toMatchObject({
      result: 'yes',
      asked: { months: 60 },
      mine: { kind: 'weight', changeKg: -114.5 * 0.25 },
    });
    expect(weigh(records, { claim: weight, pair: ['sleeve', 'bypass'] })?.result).toBe('no');
  });
});
