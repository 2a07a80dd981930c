import { describe, expect, it } from 'vitest';

import { describeOption } from '../../../../src/compare/describe-option.ts';
import type { OptionDesk } from '../../../../src/compare/describe-option.ts';
import { describeSubject } from '../../../../src/compare/describe-person.ts';
import { weighPair } from '../../../../src/compare/reasons/weigh-pair.ts';
import { firstMonth, laterWindows, weightWindows } from '../../../../src/compare/weigh-time.ts';
import type { EvidenceRecord } from '../../../../src/model/evidence-record.ts';
import type { PairFinding } from '../../../../src/model/reason-check.ts';
import {
  makeCase,
  makeClinic,
  makeEvidence,
  makeRecord,
  makeWeightRecord,
  today,
} from '../../../helpers/compare-inputs.ts';

const early = { outcomes: ['leak'], windows: [firstMonth], has: 'fewer' } as const;
const weight = { outcomes: ['weight-loss'], windows: [...weightWindows].reverse(), has: 'more' } as const;

interface Asked {
  readonly claim?: Parameters<typeof weighPair>[1];
  readonly pair?: readonly [string, string];
  /** Options of the case, if not only the two. */
  readonly shown?: readonly string[];
}

/** The first option against the second, whose only evidence are these records. */
function weigh(records: readonly EvidenceRecord[], asked: Asked = {}): PairFinding | undefined {
  const { claim = early, pair = ['sleeve', 'bypass'] } = asked;
  const evidence = makeEvidence(records);
  const subject = describeSubject(makeCase(), evidence, today);
  const desks = (asked.shown ?? pair).map((code): OptionDesk => {
    const desk = describeOption(code, { subject, evidence, clinic: makeClinic(), surgeon: 'surgeon-1' });
    if (desk === undefined) throw new Error(`${code} cannot be chosen`);
    return desk;
  });
  const [mine, theirs] = pair.map((code) => desks.find((desk) => desk.code === code));
  if (mine === undefined || theirs === undefined) throw new Error('two options were asked for');
  return weighPair({ mine, theirs }, claim, { desks, plans: evidence.topics });
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

  it('count none seen with the upper limit of none', () => {
    const none = leak('sleeve', 'a', { events: 0, n: 100 });
    expect(weigh([none, leak('bypass', 'a', { events: 2, n: 100 })])?.result).toBe('unclear');
    expect(weigh([none, leak('bypass', 'a', { events: 15, n: 100 })])?.result).toBe('yes');
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

  it('leave it open when another study of one does', () => {
    expect(weigh([sleeve, bypass, leak('bypass', 'c', { events: 9, n: 4000 })])?.result).toBe('unclear');
  });
});

describe('a published contrast', () => {
  it.each([
    { what: 'that is clear', value: { estimate: 0.5, low: 0.4, high: 0.7 }, result: 'yes' },
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
      contrast: { of: 'sleeve', ...value },
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
  ])('%s says nothing', (_, value, more) => {
    expect(weigh([contrast('sleeve', value, more)])).toEqual({
      other: 'bypass',
      result: 'unknown',
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

describe('weight lost', () => {
  const lost = (option: string, estimate: number, value: object): EvidenceRecord =>
    makeWeightRecord({
      id: `${option}.weight-loss.60m.a`,
      option,
      study: 'a',
      value: { metric: 'TWL', unit: '%', reference: 'before-this-operation', estimate, ...value },
    });
  const asked = { claim: weight, pair: ['bypass', 'sleeve'] as const };

  it.each([
    { what: 'more by a spread of many people', spread: { sd: 8, n: 400 }, result: 'yes' },
    { what: 'perhaps more by a spread of few', spread: { sd: 8, n: 30 }, result: 'unclear' },
    { what: 'perhaps more by a spread of an unknown number', spread: { sd: 8 }, result: 'unclear' },
    { what: 'perhaps more without any', spread: {}, result: 'unclear' },
  ])('is $what', ({ spread, result }) => {
    expect(weigh([lost('bypass', 25, spread), lost('sleeve', 22, spread)], asked)?.result).toBe(result);
  });

  it('is compared in kilograms of this person, and more of it is more', () => {
    const sure = (estimate: number): object => ({ low: estimate - 1, high: estimate + 1, interval: 'ci95' });
    const records = [lost('bypass', 25, sure(25)), lost('sleeve', 20, sure(20))];
    expect(weigh(records, asked)).toMatchObject({
      result: 'yes',
      asked: { months: 60 },
      mine: { kind: 'weight', changeKg: -114.5 * 0.25 },
    });
    expect(weigh(records, { claim: weight, pair: ['sleeve', 'bypass'] })?.result).toBe('no');
  });
});
