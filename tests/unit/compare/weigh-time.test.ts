import { describe, expect, it } from 'vitest';

import {
  anyTime,
  firstMonth,
  laterWindows,
  monthsOf,
  weighTime,
  weightWindows,
} from '../../../src/compare/weigh-time.ts';
import type { TimeWindow } from '../../../src/compare/weigh-time.ts';

function windowAt(windows: readonly TimeWindow[], months: number): TimeWindow {
  const found = windows.find(({ asked }) => asked.months === months);
  if (found === undefined) throw new Error(`no window at ${months} months`);
  return found;
}

describe('the first month', () => {
  it('prefers 30 days, then the stay in hospital, then 90 days', () => {
    const at30 = weighTime({ days: 30, basis: 'by' }, firstMonth);
    const stay = weighTime({ basis: 'peri-operative' }, firstMonth);
    const at90 = weighTime({ days: 90, basis: 'by' }, firstMonth);
    const steps = [at30, stay, at90].map((verdict) => (verdict.inside ? verdict.steps : NaN));
    expect(steps).toEqual([...steps].sort((a, b) => a - b));
    expect(steps[0]).toBe(0);
  });

  it('ends at three months', () => {
    expect(weighTime({ months: 3, basis: 'by' }, firstMonth).inside).toBe(true);
    expect(weighTime({ days: 93, basis: 'by' }, firstMonth)).toEqual({ inside: false, why: 'other-time' });
  });

  it('takes an unclear time with a number, last, and none without', () => {
    expect(weighTime({ days: 30, basis: 'unclear' }, firstMonth)).toEqual({
      inside: true,
      steps: 0,
      rank: 2,
    });
    expect(weighTime({ basis: 'unclear' }, firstMonth)).toEqual({ inside: false, why: 'time-unclear' });
  });
});

describe('weight', () => {
  it.each([
    [12, 10, 18],
    [24, 21, 30],
    [60, 54, 72],
    [120, 108, 144],
  ])('is asked at %i months and answered from %i to %i', (asked, from, to) => {
    const window = windowAt(weightWindows, asked);
    expect(weighTime({ months: from, basis: 'at' }, window).inside).toBe(true);
    expect(weighTime({ months: to, basis: 'at' }, window).inside).toBe(true);
    expect(weighTime({ months: from - 0.1, basis: 'at' }, window).inside).toBe(false);
    expect(weighTime({ months: to + 0.1, basis: 'at' }, window).inside).toBe(false);
  });

  it('never lets one record stand for two times', () => {
    for (let months = 0; months <= 300; months += 1) {
      const fitting = weightWindows.filter((window) => weighTime({ months, basis: 'at' }, window).inside);
      expect(fitting.length).toBeLessThan(2);
    }
  });
});

describe('later years', () => {
  it('lists the longest first and never lets one record stand for two times', () => {
    const asked = laterWindows.map((window) => window.asked.months ?? 0);
    expect(asked).toEqual([...asked].sort((a, b) => b - a));
    for (let months = 0; months <= 300; months += 1) {
      const fitting = laterWindows.filter((window) => weighTime({ months, basis: 'by' }, window).inside);
      expect(fitting.length).toBeLessThan(2);
    }
  });

  it('does not take what happened in hospital for a later harm', () => {
    expect(weighTime({ basis: 'peri-operative' }, windowAt(laterWindows, 12))).toEqual({
      inside: false,
      why: 'other-time',
    });
  });

  it('counts distance in tenths of the time asked and puts a mean follow-up behind a stated time', () => {
    const window = windowAt(laterWindows, 60);
    expect(weighTime({ months: 58, basis: 'by' }, window)).toEqual({ inside: true, steps: 0, rank: 0 });
    expect(weighTime({ months: 72, basis: 'by' }, window)).toEqual({ inside: true, steps: 2, rank: 0 });
    expect(weighTime({ months: 60, basis: 'mean-follow-up' }, window)).toEqual({
      inside: true,
      steps: 0,
      rank: 1,
    });
  });
});

describe('other times', () => {
  it('are all the same for the stay in hospital', () => {
    expect(weighTime({ basis: 'peri-operative' }, anyTime).inside).toBe(true);
    expect(weighTime({ basis: 'unclear' }, anyTime).inside).toBe(true);
  });

  it('are told in months', () => {
    expect(monthsOf({ days: 365.25, basis: 'by' })).toBe(12);
    expect(monthsOf({ months: 5, basis: 'by' })).toBe(5);
    expect(monthsOf({ basis: 'unclear' })).toBeUndefined();
  });
});
