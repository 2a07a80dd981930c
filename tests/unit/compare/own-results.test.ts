import { describe, expect, it } from 'vitest';

import type { OptionDesk } from '../../../src/compare/describe-option.ts';
import { findOwnResult } from '../../../src/compare/own-results.ts';
import type { TimeWindow } from '../../../src/compare/weigh-time.ts';
import type { ClinicResult } from '../../../src/model/clinic.ts';

const month: TimeWindow = { asked: { days: 30 }, unit: 'days', from: 20, to: 45 };
const year: TimeWindow = { asked: { months: 12 }, unit: 'months', from: 9, to: 18 };

const result = (days: number, given: Partial<ClinicResult> = {}): ClinicResult => ({
  option: 'sleeve',
  outcome: 'leak',
  events: 1,
  n: 100,
  from: '2021-01',
  to: '2025-12',
  days,
  ...given,
});

function find(results: readonly ClinicResult[], window: TimeWindow, operatedBefore = false) {
  const clinic = { surgeons: [{ id: 'one', results }] };
  const desk = { code: 'sleeve', surgeon: 'one', clinic, subject: { operatedBefore } };
  return findOwnResult(desk as unknown as OptionDesk, 'leak', window);
}

describe("the clinic's own result", () => {
  it.each([19, 46])(
    'is none where people were counted after %d days, outside the time of the row',
    (days) => {
      expect(find([result(days)], month)).toBeUndefined();
    },
  );

  it.each([20, 45])('is taken at an end of that time, after %d days', (days) => {
    expect(find([result(days)], month)?.days).toBe(days);
  });

  it('is the one nearest to the time asked, on either side', () => {
    expect(find([result(22), result(33), result(44)], month)?.days).toBe(33);
    expect(find([result(40), result(28)], month)?.days).toBe(28);
  });

  it('counts months as parts of a year of 365.25 days', () => {
    expect(find([result(300), result(365), result(500)], year)?.days).toBe(365);
    // 9 months are 273.9 days, 18 months 547.9.
    expect(find([result(273)], year)).toBeUndefined();
    expect(find([result(274)], year)?.days).toBe(274);
    expect(find([result(548)], year)).toBeUndefined();
  });

  it('is of two at one time the newer, then the larger', () => {
    const older = result(30, { to: '2023-12', n: 900 });
    const small = result(30, { n: 50 });
    expect(find([older, small, result(30)], month)).toMatchObject({ to: '2025-12', n: 100, tooFew: false });
  });

  it('stands only beside first operations', () => {
    expect(find([result(30)], month, true)).toBeUndefined();
  });
});
