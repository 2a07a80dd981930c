import { z } from 'zod';
import { kilogramsPerPound, metresPerInch } from './quantity.ts';
import type { Height, Weight } from './quantity.ts';

const monthLengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** True for a day that exists, written year-month-day. */
export function isRealDate(text: string): boolean {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (match === null) return false;
  const [year, month, day] = [Number(match[1]), Number(match[2]), Number(match[3])];
  const leap = month === 2 && (year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0)) ? 1 : 0;
  return day >= 1 && day <= (monthLengths[month - 1] ?? 0) + leap;
}

export const IsoDateSchema = z.string().refine(isRealDate, { params: { code: 'CASE_BAD_DATE' }, error: 'expected a real date written year-month-day, for example 2026-12-31' });

export const PartialDateSchema = z
  .string()
  .refine((text) => /^\d{4}(-(0[1-9]|1[0-2]))?$/.test(text) || isRealDate(text), {
    params: { code: 'CASE_BAD_DATE' },
    error: 'expected a year, year-month or year-month-day, for example 2019-03',
  });

export const ReferenceSchema = z
  .string()
  .regex(/^[A-Za-z0-9][A-Za-z0-9._-]{0,39}$/, 'expected letters, digits, dots, hyphens or underscores, at most 40');

/** Text per language: {en: …, es: …}. */
export const LocalTextSchema = z.record(z.string().regex(/^[a-z]{2,3}(-[A-Za-z0-9]+)*$/), z.string().min(1).max(300));
export type LocalText = z.infer<typeof LocalTextSchema>;

const weightForm = /^(\d{2,3}(?:\.\d{1,2})?) (kg|lb)$/;
const metricHeightForm = /^(\d{2,3}(?:\.\d)?) cm$|^([12]\.\d{1,3}) m$/;
const footHeightForm = /^([3-8]) ft(?: (\d{1,2}(?:\.\d)?) in)?$/;

export const WeightSchema = z.string().transform((text, context): Weight => {
  const match = weightForm.exec(text);
  const value = Number(match?.[1]);
  const kg = match?.[2] === 'lb' ? value * kilogramsPerPound : value;
  if (match === null) return refuse(context, 'CASE_BAD_UNIT', 'expected a weight with its unit, for example 114.5 kg or 252 lb');
  if (kg < 30 || kg > 400) return refuse(context, 'CASE_OUT_OF_RANGE', 'expected a weight between 30 and 400 kg (66 and 880 lb)');
  return { kg, written: match[2] === 'lb' ? 'lb' : 'kg' };
});

export const HeightSchema = z.string().transform((text, context): Height => {
  const metric = metricHeightForm.exec(text);
  const foot = footHeightForm.exec(text);
  if (metric === null && foot === null) return refuse(context, 'CASE_BAD_UNIT', 'expected a height with its unit, for example 163 cm or 5 ft 4 in');
  const m = metric === null ? (Number(foot?.[1]) * 12 + Number(foot?.[2] ?? 0)) * metresPerInch : metric[1] === undefined ? Number(metric[2]) : Number(metric[1]) / 100;
  if (m < 1.2 || m > 2.3 || Number(foot?.[2] ?? 0) >= 12) return refuse(context, 'CASE_OUT_OF_RANGE', 'expected a height between 120 and 230 cm (4 ft and 7 ft 6 in)');
  return { m, written: foot === null ? (metric?.[1] === undefined ? 'm' : 'cm') : 'ft' };
});

function refuse(context: z.core.$RefinementCtx, code: string, message: string): never {
  context.addIssue({ code: 'custom', message, params: { code } });
  return z.NEVER;
}
