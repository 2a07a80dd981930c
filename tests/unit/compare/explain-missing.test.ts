import { describe, expect, it } from 'vitest';

import type { Refusal } from '../../../src/compare/assess-record.ts';
import { explainMissing } from '../../../src/compare/explain-missing.ts';
import { makeRecord } from '../../helpers/compare-inputs.ts';

type Parts = Partial<Omit<Refusal, 'record'>> & { readonly months?: number };

function refusal({ months = 60, ...parts }: Parts): Refusal {
  const record = makeRecord({ time: { months, basis: 'at' } });
  return {
    record,
    stage: 'people',
    reason: { code: 'no-record' } as never,
    inTime: true,
    fits: false,
    ...parts,
  };
}

const outside = (low: number, inTime = true): Refusal =>
  refusal({ reason: { code: 'bmi-outside', low, yours: 30 }, inTime });
const meanOnly = (mean: number): Refusal => refusal({ reason: { code: 'bmi-mean-only', mean, yours: 30 } });
const unread = (parts: Parts): Refusal =>
  refusal({ stage: 'seen', reason: { code: 'not-verified', seen: 'memory' }, ...parts });
const otherTime = (months: number): Refusal =>
  refusal({ stage: 'time', reason: { code: 'other-time' }, inTime: false, fits: true, months });

describe('why nothing is known', () => {
  it('is that nobody recorded anything, where there is nothing', () => {
    expect(explainMissing([])).toEqual({ code: 'no-record' });
  });

  it('of people with other limits names the study that came nearest, whatever the order', () => {
    const far = [outside(50), outside(35), outside(40)];
    for (const list of [far, [...far].reverse()])
      expect(explainMissing(list)).toEqual({ code: 'bmi-outside', low: 35, yours: 30 });
  });

  it('of people of whom only a mean is known names the nearest mean, above or below', () => {
    const means = [meanOnly(44), meanOnly(23), meanOnly(39)];
    for (const list of [means, [...means].reverse()])
      expect(explainMissing(list)).toEqual({ code: 'bmi-mean-only', mean: 23, yours: 30 });
  });

  it('is what most studies share, of equally many the first by its code', () => {
    expect(explainMissing([meanOnly(31), outside(50), outside(35)])).toMatchObject({ code: 'bmi-outside' });
    expect(explainMissing([outside(50), meanOnly(31)])).toMatchObject({ code: 'bmi-mean-only' });
  });

  it('of studies equally near is worded as most of them are', () => {
    const low = refusal({ reason: { code: 'bmi-outside', low: 35, yours: 30 } });
    const both = refusal({ reason: { code: 'bmi-outside', low: 35, high: 50, yours: 30 } });
    for (const list of [
      [both, low, low],
      [low, low, both],
    ])
      expect(explainMissing(list)).toEqual({ code: 'bmi-outside', low: 35, yours: 30 });
  });

  it('is another history or age group only where no study came nearer', () => {
    const history = refusal({ reason: { code: 'indication', indication: 'after-band' } as never });
    expect(explainMissing([history, history, outside(50)])).toMatchObject({ code: 'bmi-outside' });
    expect(explainMissing([history])).toMatchObject({ code: 'indication' });
  });

  it('is of studies of that time, before those of other times', () => {
    expect(explainMissing([outside(35, false), outside(50)])).toMatchObject({ low: 50 });
    expect(explainMissing([outside(35, false)])).toMatchObject({ low: 35 });
  });

  it('is an unread figure of such people at that time, before all else', () => {
    expect(explainMissing([otherTime(24), outside(35), unread({ fits: true })])).toEqual({
      code: 'not-verified',
    });
  });

  it('is another time where the unread figure of such people is of another time', () => {
    const later = unread({ fits: true, inTime: false });
    expect(explainMissing([later])).toEqual({ code: 'other-time' });
    expect(explainMissing([later, outside(35, false)])).toEqual({ code: 'other-time' });
    expect(explainMissing([later, outside(35)])).toMatchObject({ code: 'bmi-outside' });
  });

  it('is an unread figure of other people, where that is all there is', () => {
    expect(explainMissing([unread({})])).toEqual({ code: 'not-verified' });
    expect(explainMissing([unread({}), outside(35, false)])).toMatchObject({ code: 'bmi-outside' });
  });

  it('names the longest study of such people, unless one that nobody read is longer', () => {
    expect(explainMissing([otherTime(12), otherTime(24.04), otherTime(6)])).toEqual({
      code: 'other-time',
      longestMonths: 24,
    });
    const longer = unread({ fits: true, inTime: false, months: 36 });
    expect(explainMissing([otherTime(24), longer])).toEqual({ code: 'other-time' });
    const asLong = unread({ fits: true, inTime: false, months: 24 });
    expect(explainMissing([otherTime(24), asLong])).toEqual({ code: 'other-time', longestMonths: 24 });
  });

  it('is that the time is not stated, where no study of such people states one and none is unread', () => {
    const unclear = refusal({ stage: 'time', reason: { code: 'time-unclear' }, inTime: false, fits: true });
    expect(explainMissing([unclear, unclear])).toEqual({ code: 'time-unclear' });
    expect(explainMissing([unclear, otherTime(12)])).toEqual({ code: 'other-time' });
    expect(explainMissing([unclear, unread({ fits: true, inTime: false })])).toEqual({ code: 'other-time' });
  });

  it('is that what was counted or done is another thing, before people and times that do not fit', () => {
    const other = (reason: object, parts: Parts = {}): Refusal =>
      refusal({ stage: 'kind', reason: reason as never, fits: true, ...parts });
    const part = { code: 'other-measure', kind: 'narrower' };
    const variant = { code: 'variant', variant: 'open surgery' };
    expect(explainMissing([other(part), otherTime(24), outside(50)])).toEqual({ code: 'counted-in-part' });
    expect(explainMissing([other(part), other(variant)])).toEqual({ code: 'done-otherwise' });
    // Of other people or another time it comes last, but nobody reads that there was no study.
    expect(explainMissing([other(part, { fits: false }), outside(35)])).toMatchObject({
      code: 'bmi-outside',
    });
    expect(explainMissing([other({ ...part, kind: 'wider' }, { fits: false })])).toEqual({
      code: 'counted-in-part',
    });
    expect(explainMissing([other({ code: 'other-measure', kind: 'score' })])).toEqual({ code: 'no-record' });
    // Nor that none lasted longer, where one of them did.
    const late = other(variant, { inTime: false, months: 120 });
    expect(explainMissing([late, otherTime(24)])).toEqual({ code: 'other-time' });
  });

  it('is not that something was done in another way, where people had stopped it', () => {
    const stopped = refusal({ stage: 'kind', reason: { code: 'variant', variant: 'stopped' }, fits: true });
    const record = { ...stopped.record, id: 'semaglutide.reflux.24m.x.stopped' };
    expect(explainMissing([{ ...stopped, record }])).toEqual({ code: 'no-record' });
  });

  it('is figures that contradict each other, cannot be turned into weight, or count too few people', () => {
    const at = (reason: object): Refusal => refusal({ stage: 'value', reason: reason as never, fits: true });
    const few = [at({ code: 'too-few-people', n: 12 }), at({ code: 'too-few-people', n: 20 })];
    expect(explainMissing([otherTime(24), ...few])).toEqual({ code: 'too-few-people', n: 20 });
    expect(explainMissing([...few, at({ code: 'not-convertible' })])).toEqual({ code: 'not-convertible' });
    expect(explainMissing([at({ code: 'not-convertible' }), at({ code: 'contradicted' })])).toEqual({
      code: 'contradicted',
    });
    expect(explainMissing([at({ code: 'group-size-unknown' }), outside(35)])).toMatchObject({
      code: 'bmi-outside',
    });
  });
});
