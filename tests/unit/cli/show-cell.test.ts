import { describe, expect, it } from 'vitest';

import { showCell, showHorizon, showReason, showValue } from '../../../src/cli/show-cell.ts';
import type { CellValue, KnownCell } from '../../../src/model/comparison.ts';

describe('a value for the clinician', () => {
  it.each<[string, CellValue, string]>([
    [
      'a share',
      { kind: 'proportion', value: 0.00161, interval: { low: 0.001495, high: 0.00175, basis: 'exact' } },
      '0.16 % (0.15–0.18 %)',
    ],
    ['a large share', { kind: 'proportion', value: 0.236 }, '24 %'],
    [
      'none seen',
      { kind: 'proportion', value: 0, events: 0, n: 212, zero: { n: 212, upper: 0.0172 } },
      '0 of 212, up to 1.7 %',
    ],
    [
      'a weight with its spread',
      {
        kind: 'weight',
        averageKg: 91.4,
        changeKg: -23.1,
        bmi: 34,
        twlPercent: 20,
        spread: { low: 79, high: 103.4, basis: 'sd', share: 'two-in-three' },
        metric: 'TWL',
        computed: false,
      },
      '91 kg (-23 kg), two-in-three (79–103)',
    ],
    [
      'a weight with its uncertainty',
      {
        kind: 'weight',
        averageKg: 91.4,
        changeKg: -23.1,
        bmi: 34,
        twlPercent: 20,
        uncertainty: { low: 91.2, high: 91.4 },
        metric: 'TWL',
        computed: false,
      },
      '91 kg (-23 kg), average (91)',
    ],
    [
      'an amount',
      { kind: 'amount', value: 3.09, unit: 'days', low: 1.6199999, high: 4.56, meaning: 'spread' },
      '3.09 days (1.62–4.56) spread',
    ],
    ['an amount alone', { kind: 'amount', value: 2, unit: 'days' }, '2 days'],
  ])('%s', (_, value, shown) => {
    expect(showValue(value)).toBe(shown);
  });
});

describe('a cell for the clinician', () => {
  const known: KnownCell = {
    id: 'sleeve/leak/30d',
    option: 'sleeve',
    outcome: 'leak',
    asked: { days: 30 },
    state: 'known',
    value: { kind: 'proportion', value: 0.012 },
    lead: {
      record: 'sleeve.leak.30d.a',
      study: 'a',
      match: 'near',
      reasons: [{ code: 'indication-mixed' }],
      bmiBasis: 'mean-sd',
      covered: {},
      ledBy: 'size',
      n: 4000,
      certainty: 'moderate',
      horizon: { days: 30 },
      timeBasis: 'by',
    },
    others: { low: 0.01, high: 0.02, records: ['b', 'c'] },
    setAside: [{ record: 'd', reason: { code: 'time-unclear' } }],
  };

  it('says the figure, its people, size, certainty, record, and what else there is', () => {
    expect(showCell(known)).toEqual([
      '1.2 %',
      'near: indication-mixed',
      'n 4000',
      'moderate',
      'sleeve.leak.30d.a',
      'others 1.0–2.0 % (2); 1 set aside',
    ]);
  });

  it('says how much of a medicine was taken', () => {
    const dosed = { ...known, lead: { ...known.lead, dose: '15 mg/week' } };
    expect(showCell(dosed).at(-1)).toBe('15 mg/week; others 1.0–2.0 % (2); 1 set aside');
  });

  it('says why nothing is known', () => {
    const { id, option, outcome, asked, setAside } = known;
    const cell = {
      id,
      option,
      outcome,
      asked,
      setAside,
      state: 'not-known',
      reason: { code: 'bmi-outside', low: 35, yours: 27.04 },
    } as const;
    expect(showCell(cell)).toEqual([
      'not known',
      'bmi-outside low 35 yours 27.04',
      '',
      '',
      '',
      '1 set aside',
    ]);
    expect(showCell({ ...cell, state: 'not-possible' })[0]).toBe('not possible');
  });

  it('names times and reasons', () => {
    expect([{ days: 30 }, { months: 12 }, { months: 60 }, { months: 18 }, {}].map(showHorizon)).toEqual([
      '30 days',
      '1 year',
      '5 years',
      '18 months',
      'any time',
    ]);
    expect(showReason({ code: 'no-record' })).toBe('no-record');
  });
});
