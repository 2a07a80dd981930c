import { describe, expect, it } from 'vitest';

import { readAmount } from '../../../src/compare/read-amount.ts';
import type { Amount, SetAsideReason } from '../../../src/model/comparison.ts';
import type { EvidenceRecord, RecordOf } from '../../../src/model/evidence-record.ts';
import { compareWell, makeRecord } from '../../helpers/compare-inputs.ts';

function stay(id: string, value: object): EvidenceRecord {
  const time = { basis: 'peri-operative' };
  return makeRecord({ id, study: id, outcome: 'hospital-stay', kind: 'duration', time, value });
}

function read(value: object): Amount | SetAsideReason {
  return readAmount(stay('a', { unit: 'days', ...value }) as RecordOf<'duration'>);
}

describe('readAmount', () => {
  it('takes a standard deviation, quartiles or a range for a spread of people, never below nothing', () => {
    expect(read({ estimate: 0.34, sd: 0.73 })).toMatchObject({ low: 0, high: 1.07, meaning: 'spread' });
    expect(read({ estimate: 3, low: 1, high: 45, interval: 'range' })).toMatchObject({ meaning: 'spread' });
    expect(read({ estimate: 3, low: 2, high: 4, interval: 'iqr' })).toMatchObject({ meaning: 'spread' });
  });

  it('takes an interval or a standard error for the uncertainty of the average', () => {
    expect(read({ estimate: 3, low: 2, high: 4, interval: 'ci95' })).toMatchObject({
      meaning: 'uncertainty',
    });
    // 1.96 standard errors on either side.
    expect(read({ estimate: 9, se: 2 })).toMatchObject({
      low: expect.closeTo(5.08, 2) as number,
      high: expect.closeTo(12.92, 2) as number,
      meaning: 'uncertainty',
    });
  });

  it('does not guess what an unnamed bracket means', () => {
    expect(read({ estimate: 3, low: 2, high: 4, interval: 'unstated' })).toMatchObject({
      meaning: 'unknown',
    });
    expect(read({ estimate: 3, low: 2, high: 4 })).toMatchObject({ meaning: 'unknown' });
  });

  it('gives a bare average without bounds, and nothing without an average', () => {
    expect(read({ estimate: 3, n: 47 })).toEqual({ kind: 'amount', value: 3, unit: 'days' });
    expect(read({ low: 12, high: 14, interval: 'range' })).toEqual({ code: 'other-measure', kind: 'range' });
  });
});

describe('the stay in hospital of an option', () => {
  it('compares only lengths in the same unit', () => {
    const records = [
      stay('days', { estimate: 2, unit: 'days', n: 900 }),
      stay('more-days', { estimate: 3, unit: 'days', n: 400 }),
      stay('hours', { estimate: 40, unit: 'hours', n: 500 }),
    ];
    expect(compareWell(records).options[0]?.stay).toMatchObject({
      id: 'sleeve/hospital-stay/stay',
      value: { kind: 'amount', value: 2 },
      others: { low: 3, high: 3, records: ['more-days'] },
      setAside: [{ record: 'hours', reason: { code: 'other-measure', kind: 'duration' } }],
    });
  });
});
