import { z } from 'zod';
import { monthLength } from './calendar-day.ts';
import { parseDose } from './dose.ts';
import { fieldRoles } from './field-roles.ts';
import { parseHeight, parseWeight } from './quantity.ts';
import { parseSpan } from './span.ts';
import { parseTemperature } from './temperature.ts';

/** True for a day that exists, written year-month-day. */
export function isRealDate(text: string): boolean {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (match === null) return false;
  const [year, month, day] = [Number(match[1]), Number(match[2]), Number(match[3])];
  return day >= 1 && day <= monthLength(year, month);
}

/** True for a year (1900 to 2199), a month or a day that exists, written 2019, 2019-03 or 2019-03-31. */
export function isPartialDate(text: string): boolean {
  return /^(19|20|21)\d{2}(-(0[1-9]|1[0-2]))?$/.test(text) || isRealDate(text);
}

function dateOf(role: 'date' | 'birth-date'): z.ZodString {
  return z
    .string()
    .refine(isRealDate, { error: 'expected a real date written year-month-day, for example 2026-12-31' })
    .register(fieldRoles, { role });
}
export const IsoDateSchema = dateOf('date');
export const BirthDateSchema = dateOf('birth-date');

/** A bare year is a number to YAML; it is taken as the text it was meant to be. */
export const PartialDateSchema = z
  .union([z.string(), z.number().int().transform(String)])
  .refine(isPartialDate, { error: 'expected a year, year-month or year-month-day, for example 2019-03' })
  .register(fieldRoles, { role: 'partial-date' });

export const ReferenceSchema = z
  .string()
  .regex(
    /^[A-Za-z0-9][A-Za-z0-9._-]{0,39}$/,
    'expected letters, digits, dots, hyphens or underscores, at most 40',
  )
  .register(fieldRoles, { role: 'reference' });

export const PhoneSchema = z
  .string()
  .regex(/^[+0-9(][0-9 ()./-]{1,24}$/, 'expected a phone number in quotes, digits with spaces or hyphens')
  .register(fieldRoles, { role: 'phone' });

// Control characters, halves of characters and marks that turn the order of letters round would print as something else.
const unprintable = /[\p{Cc}\p{Cs}\u202a-\u202e\u2066-\u2069\ufeff\ufffd\ufffe\uffff]/u;

function tidy(text: string): string {
  return text
    .normalize('NFC')
    .replace(/[ \t\r\n]+/g, ' ')
    .trim();
}

/** One line of words: white space runs become one space, letters are composed (NFC). */
function line(max: number): z.ZodString {
  return z
    .string()
    .overwrite(tidy)
    .min(1, 'expected words, found none')
    .max(max, `expected at most ${String(max)} characters`)
    .refine((text) => !unprintable.test(text), { error: 'expected letters that can be printed' });
}

export function nameSchema(max: number): z.ZodString {
  return line(max).register(fieldRoles, { role: 'name' });
}

export function wordsSchema(max: number): z.ZodString {
  return line(max).register(fieldRoles, { role: 'words' });
}

/** A number or name that an office gives, such as an approval number. */
export function labelSchema(max: number): z.ZodString {
  return line(max).register(fieldRoles, { role: 'label' });
}

export const languageTagPattern = /^[a-z]{2,3}(-[A-Za-z0-9]{2,8}){0,3}$/;

export const LanguageTagSchema = z
  .string()
  .regex(languageTagPattern, 'expected a language tag such as en or es')
  .register(fieldRoles, { role: 'language-tag' });

export const LanguageSchema = z
  .string()
  .regex(languageTagPattern, 'expected a language tag such as en or es')
  .register(fieldRoles, { role: 'language' });

/** Text per language: {en: …, es: …}, at most 300 characters each. */
export const LocalTextSchema = z
  .record(LanguageTagSchema, wordsSchema(300))
  .refine((texts) => Object.keys(texts).length > 0, { error: 'expected words for at least one language' })
  .register(fieldRoles, { role: 'local-text' });
export type LocalText = z.infer<typeof LocalTextSchema>;

const code = z.string().regex(/^[a-z0-9][a-z0-9.-]{0,99}$/i, 'expected a code');
export const OptionCodeSchema = code.clone().register(fieldRoles, { role: 'option' });
export const EarlierOperationCodeSchema = code.clone().register(fieldRoles, { role: 'earlier-operation' });
export const OutcomeCodeSchema = code.clone().register(fieldRoles, { role: 'outcome' });
export const TroubleCodeSchema = code.clone().register(fieldRoles, { role: 'trouble' });
export const RecordIdSchema = code.clone().register(fieldRoles, { role: 'record' });
export const CautionIdSchema = code.clone().register(fieldRoles, { role: 'caution' });

/** Body weight from 30 to 400 kg, written in kg or lb. */
export const WeightSchema = z
  .string()
  .transform(
    (text, context) =>
      parseWeight(text) ??
      refuse(context, 'expected a weight from 30 to 400 kg (66.2 to 881 lb), for example 114.5 kg or 252 lb'),
  )
  .register(fieldRoles, { role: 'weight' });

/** Height from 120 to 230 cm, written in cm, m, or ft and in. */
export const HeightSchema = z
  .string()
  .transform(
    (text, context) =>
      parseHeight(text) ??
      refuse(
        context,
        'expected a height from 120 to 230 cm (4 ft to 7 ft 6 in), for example 163 cm or 5 ft 4 in',
      ),
  )
  .register(fieldRoles, { role: 'height' });

/** A length of time from 1 day to 50 years, written in days, weeks, months or years. */
export const SpanSchema = z
  .string()
  .transform(
    (text, context) =>
      parseSpan(text) ??
      refuse(context, 'expected a length of time, for example 10 days, 2 weeks or 6 months'),
  )
  .register(fieldRoles, { role: 'span' });

/** What is taken at one time, written with its unit. */
export const DoseSchema = z
  .string()
  .transform(
    (text, context) =>
      parseDose(text) ?? refuse(context, 'expected a dose with its unit, for example 500 mg or 1 tablet'),
  )
  .register(fieldRoles, { role: 'dose' });

/** Body temperature from 37 to 41 degrees Celsius, written in C or F. */
export const TemperatureSchema = z
  .string()
  .transform(
    (text, context) =>
      parseTemperature(text) ??
      refuse(
        context,
        'expected a temperature from 37 to 41 C (98.6 to 105.8 F), for example 38 C or 100.4 F',
      ),
  )
  .register(fieldRoles, { role: 'temperature' });

function refuse(context: z.core.$RefinementCtx, message: string): never {
  context.addIssue({ code: 'custom', message });
  return z.NEVER;
}
