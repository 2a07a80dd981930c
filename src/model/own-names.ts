import { z } from 'zod';

const name = z.string().min(1);
const pattern = (...parts: readonly string[]): z.ZodType<string> =>
  z
    .string()
    .refine(
      (text) => parts.every((part) => text.includes(`{{${part}}}`)),
      `expected ${parts.map((part) => `{{${part}}}`).join(', ')}`,
    );

/** Names and orders of a language that the platform does not know; all as they stand within a sentence. */
export const OwnNamesSchema = z.strictObject({
  months: z.array(name).length(12).describe('From January'),
  short_months: z.array(name).length(12),
  weekdays: z.array(name).length(7).describe('From Monday'),
  short_weekdays: z.array(name).length(7),
  date: pattern('day', 'month', 'year').describe('A day: {{day}} {{month}} {{year}}'),
  first_day: name.optional().describe('The first of a month, where it is no plain 1: 1ye'),
  month_day: pattern('day', 'month').describe('A day of this year: {{day}} {{month}}'),
  month_year: pattern('month', 'year').describe('A month: {{month}} {{year}}'),
  weekday_date: pattern('weekday', 'date').describe('A day of the week with its date: {{weekday}} {{date}}'),
  list: z
    .strictObject({ and: name, or: name })
    .describe('Word before the last of several, with its spaces: " and "'),
  languages: z.record(z.string(), name).describe('Names of languages by their tag'),
});

export type OwnNames = z.infer<typeof OwnNamesSchema>;
