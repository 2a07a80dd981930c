import { describe, expect, it } from 'vitest';
import { explainDose, explainSpan, explainTemperature } from '../../../src/input/explain-measure.ts';

const anySpan = 'Write a number, a space and days, weeks, months or years, for example 2 weeks.';
const anyDose = 'Write a number, a space and a unit, for example 500 mg or 1 tablet.';

describe('a length of time that is refused', () => {
  it.each([
    ['2weeks', 'CASE_BAD_UNIT', 'Write 2 weeks.'],
    ['2 w', 'CASE_BAD_UNIT', 'Write 2 weeks.'],
    ['1 wk', 'CASE_BAD_UNIT', 'Write 1 week.'],
    ['10 Days', 'CASE_BAD_UNIT', 'Write 10 days.'],
    ['6 mos.', 'CASE_BAD_UNIT', 'Write 6 months.'],
    ['2 yrs', 'CASE_BAD_UNIT', 'Write 2 years.'],
    ['0 days', 'CASE_BAD_UNIT', anySpan],
    ['a week', 'CASE_BAD_UNIT', anySpan],
    ['1.5 months', 'CASE_BAD_UNIT', anySpan],
    ['', 'CASE_BAD_UNIT', anySpan],
    ['1001 days', 'CASE_OUT_OF_RANGE', 'Check the number and its unit.'],
    ['51 years', 'CASE_OUT_OF_RANGE', 'Check the number and its unit.'],
  ])('%s: %s, %s', (written, code, hint) => {
    expect(explainSpan(written)).toMatchObject({ code, hint });
  });

  it('asks for the unit of a bare number, as it was written', () => {
    expect(explainSpan(14, '014').hint).toBe('Write 014 days, weeks, months or years, whichever it is.');
    expect(explainSpan(14).hint).toBe('Write 14 days, weeks, months or years, whichever it is.');
    expect(explainSpan(['2 weeks'])).toMatchObject({ code: 'CASE_BAD_UNIT', hint: anySpan });
  });
});

describe('a dose that is refused', () => {
  it.each([
    ['500mg', 'CASE_BAD_UNIT', 'Write 500 mg.'],
    ['500 MCG', 'CASE_BAD_UNIT', 'Write 500 microgram.'],
    ['500 µg', 'CASE_BAD_UNIT', 'Write 500 microgram.'],
    ['500 μg', 'CASE_BAD_UNIT', 'Write 500 microgram.'],
    ['3000 iu', 'CASE_BAD_UNIT', 'Write 3000 IU.'],
    ['2 pills', 'CASE_BAD_UNIT', 'Write 2 tablets.'],
    ['some', 'CASE_BAD_UNIT', anyDose],
    ['500 furlongs', 'CASE_BAD_UNIT', anyDose],
    ['12,5 mg', 'CASE_DECIMAL_COMMA', 'Write 12.5 mg.'],
    ['1,500 mg', 'CASE_DECIMAL_COMMA', anyDose],
    ['0 mg', 'CASE_OUT_OF_RANGE', 'Check the number.'],
    ['100001 IU', 'CASE_OUT_OF_RANGE', 'Check the number.'],
  ])('%s: %s, %s', (written, code, hint) => {
    expect(explainDose(written)).toMatchObject({ code, hint });
  });

  it('guesses no unit of a bare number', () => {
    expect(explainDose(500).hint).toMatch(/^Write 500 with its unit: mg, microgram, /);
    expect(explainDose({})).toMatchObject({ code: 'CASE_BAD_UNIT', hint: anyDose });
  });
});

describe('a temperature that is refused', () => {
  it.each([
    ['38', 'CASE_BAD_UNIT', 'Write for example 38 C or 100.4 F.'],
    ['38C', 'CASE_BAD_UNIT', 'Write 38 C.'],
    ['38.5 °C', 'CASE_BAD_UNIT', 'Write 38.5 C.'],
    ['101 degrees Fahrenheit', 'CASE_BAD_UNIT', 'Write 101 F.'],
    ['38,5 C', 'CASE_DECIMAL_COMMA', 'Write 38.5 C.'],
    ['36.9 C', 'CASE_OUT_OF_RANGE', 'Check the number and its unit.'],
    ['100.4 C', 'CASE_OUT_OF_RANGE', 'Check the number and its unit.'],
    ['38 F', 'CASE_OUT_OF_RANGE', 'Check the number and its unit.'],
  ])('%s: %s, %s', (written, code, hint) => {
    expect(explainTemperature(written)).toMatchObject({ code, hint });
  });

  it('tells a bare number by its size', () => {
    expect(explainTemperature(38.5, '38.5').hint).toBe('Write 38.5 C.');
    expect(explainTemperature(101).hint).toBe('Write 101 F.');
    expect(explainTemperature(true)).toMatchObject({ code: 'CASE_BAD_UNIT' });
  });
});
