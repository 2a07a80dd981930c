import type { DiagnosticCode } from '../diagnostics/codes.ts';
import { heightBounds, parseHeight, parseWeight, readHeightForm, readWeightForm } from '../model/quantity.ts';

export interface Explanation {
  readonly code: DiagnosticCode;
  readonly message: string;
  readonly hint: string;
}

const weightSample = 'Write a number, a space and a unit, for example 114.5 kg or 252 lb.';
const heightSample = 'Write for example 163 cm, 1.63 m or 5 ft 4 in.';

/** Why a weight is refused, and how to write it. `plain` is the text of a bare number. */
export function explainWeight(value: unknown, plain?: string): Explanation {
  if (typeof value === 'number') {
    const number = plain ?? String(value);
    return badUnit(
      'expected a weight with its unit, found a number',
      `Write ${number} kg or ${number} lb, whichever it is.`,
    );
  }
  if (typeof value !== 'string') return badUnit('expected a weight with its unit', weightSample);
  if (readWeightForm(value) !== undefined) {
    const message = 'expected a weight from 30 to 400 kg (66.2 to 881 lb)';
    return { code: 'CASE_OUT_OF_RANGE', message, hint: 'Check the number and its unit.' };
  }
  const form = correctWeight(value);
  if (/\d,\d/.test(value)) return decimalComma(form, weightSample);
  return badUnit('expected a weight in kg or lb', form === undefined ? weightSample : `Write ${form}.`);
}

/** Why a height is refused, and how to write it. `plain` is the text of a bare number. */
export function explainHeight(value: unknown, plain?: string): Explanation {
  if (typeof value === 'number') {
    const form = bareHeight(plain ?? String(value));
    return badUnit(
      'expected a height with its unit, found a number',
      form === undefined ? heightSample : `Write ${form}.`,
    );
  }
  if (typeof value !== 'string') return badUnit('expected a height with its unit', heightSample);
  if (readHeightForm(value) !== undefined) {
    const message = 'expected a height from 120 to 230 cm (4 ft to 7 ft 6 in)';
    return { code: 'CASE_OUT_OF_RANGE', message, hint: 'Check the number and its unit.' };
  }
  const form = correctHeight(value);
  if (/\d,\d/.test(value)) return decimalComma(form, heightSample);
  return badUnit(
    'expected a height in cm, m, or ft and in',
    form === undefined ? heightSample : `Write ${form}.`,
  );
}

function badUnit(message: string, hint: string): Explanation {
  return { code: 'CASE_BAD_UNIT', message, hint };
}

function decimalComma(form: string | undefined, sample: string): Explanation {
  const hint = form === undefined ? `Write a decimal point. ${sample}` : `Write ${form}.`;
  return { code: 'CASE_DECIMAL_COMMA', message: 'a number is written with a comma', hint };
}

/** The weight that was most likely meant, in the form of the format; undefined when that is a guess. */
function correctWeight(text: string): string | undefined {
  const match = /^([\d.,]+) ?(kgs?|kilos?|kilograms?|lbs?|pounds?|#)\.?$/i.exec(text.trim());
  const stones = /^(\d{1,2}) ?(?:st|stones?)(?: ?(\d{1,2}) ?(?:lbs?|pounds?)?)?$/i.exec(text.trim());
  // A stone is 14 lb.
  if (stones !== null) return checked(`${Number(stones[1]) * 14 + Number(stones[2] ?? 0)} lb`, parseWeight);
  if (match === null) return undefined;
  const unit = /^(lb|po|#)/i.test(match[2] ?? '') ? 'lb' : 'kg';
  return checked(`${(match[1] ?? '').replace(',', '.')} ${unit}`, parseWeight);
}

function correctHeight(text: string): string | undefined {
  const plain = text
    .trim()
    .toLowerCase()
    .replace(',', '.')
    .replace(/[′’‘]/g, "'")
    .replace(/[″“”]|''/g, '"');
  const metric = /^([\d.]+) ?(cm|m|centimet(?:er|re)s?|met(?:er|re)s?)\.?$/.exec(plain);
  if (metric !== null)
    return checked(`${metric[1] ?? ''} ${metric[2]?.startsWith('c') === true ? 'cm' : 'm'}`, parseHeight);
  const feet = /^(\d) ?(?:ft\.?|feet|foot|') ?(?:(\d{1,2}(?:\.\d)?) ?(?:in\.?|inch(?:es)?|")?)?$/.exec(plain);
  if (feet !== null)
    return checked(`${feet[1] ?? ''} ft${feet[2] === undefined ? '' : ` ${feet[2]} in`}`, parseHeight);
  const inches = /^(\d{2}) ?(?:in\.?|inch(?:es)?|")$/.exec(plain);
  if (inches === null) return undefined;
  return checked(`${Math.floor(Number(inches[1]) / 12)} ft ${Number(inches[1]) % 12} in`, parseHeight);
}

function bareHeight(number: string): string | undefined {
  const value = Number(number);
  return value >= heightBounds.low && value <= heightBounds.high
    ? checked(`${number} m`, parseHeight)
    : checked(`${number} cm`, parseHeight);
}

function checked(form: string, parse: (text: string) => unknown): string | undefined {
  return parse(form) === undefined ? undefined : form;
}
