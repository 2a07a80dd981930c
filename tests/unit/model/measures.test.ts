import { describe, expect, it } from 'vitest';
import { doseUnits, doseUnitsOf, parseDose } from '../../../src/model/dose.ts';
import { supplementCodes } from '../../../src/model/protocol-codes.ts';
import { addSpan, parseSpan } from '../../../src/model/span.ts';
import { parseTemperature } from '../../../src/model/temperature.ts';

describe('a length of time', () => {
  it.each([
    ['1 day', '2028-02-29', '2028-03-01'],
    ['2 weeks', '2026-12-24', '2027-01-07'],
    ['1 month', '2027-01-31', '2027-02-28'],
    ['1 month', '2028-01-31', '2028-02-29'],
    ['12 months', '2028-02-29', '2029-02-28'],
    ['1 year', '2028-02-29', '2029-02-28'],
    ['4 years', '2028-02-29', '2032-02-29'],
  ])('%s after %s is %s', (text, start, end) => {
    const span = parseSpan(text);
    expect(span === undefined ? '' : addSpan(start, span)).toBe(end);
  });

  it('is counted from the first day when it is repeated, so that no month end is lost on the way', () => {
    const month = { count: 1, unit: 'month' } as const;
    expect([1, 2, 3].map((times) => addSpan('2027-01-31', month, times))).toEqual([
      '2027-02-28',
      '2027-03-31',
      '2027-04-30',
    ]);
    expect(addSpan('2027-03-31', month, -1)).toBe('2027-02-28');
  });

  it.each(['0 days', '01 week', '2 Weeks', '2  weeks', '2 weeks ', '1001 days', '121 months', '', 'week'])(
    'is not "%s"',
    (text) => {
      expect(parseSpan(text)).toBeUndefined();
    },
  );
});

describe('a dose', () => {
  it.each([
    ['500 mg', { amount: 500, unit: 'mg' }],
    ['1 tablet', { amount: 1, unit: 'tablet' }],
    ['2 tablets', { amount: 2, unit: 'tablet' }],
    ['12.5 micrograms', { amount: 12.5, unit: 'microgram' }],
    ['3000 IU', { amount: 3000, unit: 'IU' }],
  ])('%s is read', (text, dose) => {
    expect(parseDose(text)).toEqual(dose);
  });

  it.each(['500', '500mg', '0 mg', '100001 mg', '500 mgs', '-1 mg', '1e3 mg'])('is not "%s"', (text) => {
    expect(parseDose(text)).toBeUndefined();
  });

  it('of vitamin B12 and vitamin K is never in milligrams, and of iron never in micrograms', () => {
    expect(doseUnitsOf('vitamin-b12')).not.toContain('mg');
    expect(doseUnitsOf('vitamin-k')).not.toContain('mg');
    expect(doseUnitsOf('iron')).not.toContain('microgram');
    for (const code of supplementCodes) {
      expect(doseUnitsOf(code)).toContain('tablet');
      expect(doseUnits).toEqual(expect.arrayContaining([...doseUnitsOf(code)]));
    }
  });
});

describe('a temperature', () => {
  it('is the same in both units', () => {
    expect(parseTemperature('38 C')).toEqual({ celsius: 38, written: 'C' });
    const fahrenheit = parseTemperature('100.4 F');
    expect(fahrenheit?.written).toBe('F');
    expect(fahrenheit?.celsius).toBeCloseTo(38, 10);
  });

  it.each(['38', '38C', '36.9 C', '41.1 C', '98.5 F', '105.9 F', '38.55 C'])('is not "%s"', (text) => {
    expect(parseTemperature(text)).toBeUndefined();
  });
});
