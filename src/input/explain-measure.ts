import { doseUnits, parseDose, readDoseForm } from '../model/dose.ts';
import { longestSpan, parseSpan, readSpanForm, spanUnits } from '../model/span.ts';
import type { SpanUnit } from '../model/span.ts';
import { parseTemperature, readTemperatureForm } from '../model/temperature.ts';
import type { Explanation } from './explain-quantity.ts';

const spanSample = 'Write a number, a space and days, weeks, months or years, for example 2 weeks.';
const doseSample = 'Write a number, a space and a unit, for example 500 mg or 1 tablet.';
const temperatureSample = 'Write for example 38 C or 100.4 F.';

/** Why a length of time is refused, and how to write it. `plain` is the text of a bare number. */
export function explainSpan(value: unknown, plain?: string): Explanation {
  const expected = 'expected a length of time with its unit';
  if (typeof value === 'number') {
    const number = plain ?? String(value);
    return badUnit(
      `${expected}, found a number`,
      `Write ${number} days, weeks, months or years, whichever it is.`,
    );
  }
  if (typeof value !== 'string') return badUnit(expected, spanSample);
  const read = readSpanForm(value);
  if (read !== undefined) {
    const most = `${String(longestSpan[read.unit])} ${read.unit}s`;
    return {
      code: 'CASE_OUT_OF_RANGE',
      message: `expected at most ${most}`,
      hint: 'Check the number and its unit.',
    };
  }
  const form = correctSpan(value);
  return badUnit(expected, form === undefined ? spanSample : `Write ${form}.`);
}

/** Why a dose is refused, and how to write it. */
export function explainDose(value: unknown, plain?: string): Explanation {
  if (typeof value === 'number') {
    const number = plain ?? String(value);
    const hint = `Write ${number} with its unit: ${doseUnits.join(', ')}.`;
    return badUnit('expected a dose with its unit, found a number', hint);
  }
  if (typeof value !== 'string') return badUnit('expected a dose with its unit', doseSample);
  if (readDoseForm(value) !== undefined) {
    return {
      code: 'CASE_OUT_OF_RANGE',
      message: 'expected a dose over 0 and up to 100000',
      hint: 'Check the number.',
    };
  }
  const form = correctDose(value);
  const hint = form === undefined ? doseSample : `Write ${form}.`;
  return /\d,\d/.test(value) ? withComma(hint) : badUnit('expected a dose with its unit', hint);
}

/** Why a temperature is refused, and how to write it. */
export function explainTemperature(value: unknown, plain?: string): Explanation {
  if (typeof value === 'number') {
    const number = plain ?? String(value);
    const unit = value < 60 ? 'C' : 'F';
    return badUnit('expected a temperature with its unit, found a number', `Write ${number} ${unit}.`);
  }
  if (typeof value !== 'string') return badUnit('expected a temperature in C or F', temperatureSample);
  if (readTemperatureForm(value) !== undefined) {
    const message = 'expected a temperature from 37 to 41 C (98.6 to 105.8 F)';
    return { code: 'CASE_OUT_OF_RANGE', message, hint: 'Check the number and its unit.' };
  }
  const form = correctTemperature(value);
  const hint = form === undefined ? temperatureSample : `Write ${form}.`;
  return /\d,\d/.test(value) ? withComma(hint) : badUnit('expected a temperature in C or F', hint);
}

function badUnit(message: string, hint: string): Explanation {
  return { code: 'CASE_BAD_UNIT', message, hint };
}

function withComma(hint: string): Explanation {
  return { code: 'CASE_DECIMAL_COMMA', message: 'a number is written with a comma', hint };
}

const spanWords: Readonly<Record<string, SpanUnit>> = {
  d: 'day',
  w: 'week',
  wk: 'week',
  m: 'month',
  mo: 'month',
  y: 'year',
  yr: 'year',
};

/** The length of time that was most likely meant, in the form of the format. */
function correctSpan(text: string): string | undefined {
  const match = /^(\d{1,4}) ?([a-z]+)\.?$/i.exec(text.trim());
  const word = (match?.[2] ?? '').toLowerCase().replace(/s$/, '');
  const unit = spanUnits.find((one) => one === word) ?? spanWords[word];
  if (match === null || unit === undefined) return undefined;
  const count = Number(match[1]);
  return checked(`${String(count)} ${unit}${count === 1 ? '' : 's'}`, parseSpan);
}

const doseWords: Readonly<Record<string, string>> = {
  mcg: 'microgram',
  ug: 'microgram',
  µg: 'microgram',
  μg: 'microgram',
  milligram: 'mg',
  milligrams: 'mg',
  gram: 'g',
  grams: 'g',
  iu: 'IU',
  ie: 'IU',
  ml: 'mL',
  tab: 'tablet',
  tabs: 'tablets',
  pill: 'tablet',
  pills: 'tablets',
};

function correctDose(text: string): string | undefined {
  const match = /^(\d{1,3}(?:,\d{3})+|\d+(?:[.,]\d+)?) ?([a-zµμ]+)\.?$/i.exec(text.trim());
  const [, number = '', word = ''] = match ?? [];
  // 1,500 is fifteen hundred to some and one and a half to others: only the unit is certain.
  if (match === null || /,\d{3}$/.test(number)) return undefined;
  const unit = doseWords[word.toLowerCase()] ?? word;
  return checked(`${number.replace(',', '.')} ${unit}`, parseDose);
}

function correctTemperature(text: string): string | undefined {
  const match = /^(\d{2,3}(?:[.,]\d)?) ?(?:°|degrees)? ?(c|f)[a-z]*$/i.exec(text.trim());
  if (match === null) return undefined;
  return checked(`${(match[1] ?? '').replace(',', '.')} ${(match[2] ?? '').toUpperCase()}`, parseTemperature);
}

function checked(form: string, parse: (text: string) => unknown): string | undefined {
  return parse(form) === undefined ? undefined : form;
}
