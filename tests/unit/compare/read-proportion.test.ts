import { describe, expect, it } from 'vitest';

import { readProportion } from '../../../src/compare/read-proportion.ts';
import type { Proportion, SetAsideReason } from '../../../src/model/comparison.ts';
import type { RecordOf } from '../../../src/model/evidence-record.ts';
import { makeRecord } from '../../helpers/compare-inputs.ts';

function read(value: object, rest: object = {}): Proportion | SetAsideReason {
  return readProportion(makeRecord({ value, ...rest }) as RecordOf<'risk'>);
}

const late = { time: { months: 60, basis: 'by' } };

describe('readProportion', () => {
  it('divides events by people', () => {
    expect(read({ events: 598, n: 370_369 })).toMatchObject({
      value: 598 / 370_369,
      events: 598,
      n: 370_369,
    });
  });

  it('takes a percent with or without the number of people', () => {
    expect(read({ percent: 1.5, n: 2000 })).toMatchObject({
      value: 0.015,
      n: 2000,
      interval: { basis: 'score' },
    });
    expect(read({ percent: 1.5 })).toEqual({ kind: 'proportion', value: 0.015 });
    expect(read({ events: 18, percent: 1.08 })).toEqual({ kind: 'proportion', value: 0.0108, events: 18 });
  });

  it('prefers a published 95 % interval to its own', () => {
    expect(read({ percent: 5, n: 100, low: 2, high: 10, interval: 'ci95' })).toMatchObject({
      interval: { low: 0.02, high: 0.1, basis: 'published' },
    });
  });

  it('does not take the range of other studies or an unnamed bracket for an interval of the share', () => {
    expect(read({ percent: 5, low: 2, high: 10, interval: 'range' })).toEqual({
      kind: 'proportion',
      value: 0.05,
    });
    expect(read({ percent: 5, n: 100, low: 2, high: 10, interval: 'unstated' })).toMatchObject({
      interval: { basis: 'score' },
    });
  });

  it('uses the exact interval when fewer than five had it or did not', () => {
    expect(read({ events: 4, n: 1000 })).toMatchObject({ interval: { basis: 'exact' } });
    expect(read({ events: 996, n: 1000 })).toMatchObject({ interval: { basis: 'exact' } });
    expect(read({ events: 5, n: 1000 })).toMatchObject({ interval: { basis: 'score' } });
  });

  it('gives no interval to a percent of people who are counted only at the start', () => {
    expect(read({ percent: 20, n: 500, n_is: 'start' }, late)).not.toHaveProperty('interval');
    expect(
      read({ percent: 20, n: 500, n_is: 'start' }, { ...late, followed: { seen: 100, of: 500 } }),
    ).toMatchObject({
      interval: { low: expect.closeTo(0.1334, 4) as number },
    });
  });

  it('says of none how many there may still be', () => {
    expect(read({ events: 0, n: 212 })).toEqual({
      kind: 'proportion',
      value: 0,
      events: 0,
      n: 212,
      zero: { n: 212, upper: expect.closeTo(0.01725, 5) as number },
    });
    expect(read({ percent: 0, n: 212 })).toMatchObject({ zero: { n: 212 } });
  });

  it('says nothing of none of an unknown number', () => {
    expect(read({ percent: 0 })).toEqual({ code: 'group-size-unknown' });
    expect(read({ events: 0, n: 209, n_is: 'start' }, late)).toEqual({ code: 'group-size-unknown' });
    expect(
      read({ events: 0, n: 209, n_is: 'start' }, { ...late, followed: { seen: 50, of: 209 } }),
    ).toMatchObject({
      zero: { n: 50 },
    });
    expect(read({ events: 0, n: 40, n_is: 'start' })).toMatchObject({ zero: { n: 40 } });
    const nobody = { ...late, followed: { seen: 0, of: 209 } };
    expect(read({ events: 0, n: 209 }, nobody)).toEqual({ code: 'group-size-unknown' });
  });

  it('says nothing of fewer than 30 people, whether any had it or none', () => {
    expect(read({ events: 1, n: 29 })).toEqual({ code: 'too-few-people', n: 29 });
    expect(read({ events: 0, n: 29 })).toEqual({ code: 'too-few-people', n: 29 });
    expect(read({ percent: 50, n: 12 })).toEqual({ code: 'too-few-people', n: 12 });
    expect(read({ events: 1, n: 30 })).toMatchObject({ events: 1, n: 30 });
  });

  it('leaves out rates, bare ranges and bare counts', () => {
    expect(read({ rate: 4.9, per: 1000, unit: 'person-years' })).toEqual({
      code: 'other-measure',
      kind: 'rate',
    });
    expect(read({ low: 8, high: 12, interval: 'range' })).toEqual({ code: 'other-measure', kind: 'range' });
    expect(read({ events: 3 })).toEqual({ code: 'other-measure', kind: 'count' });
  });
});
