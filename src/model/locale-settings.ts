import { z } from 'zod';

import { weekdays } from './calendar-day.ts';
import { OwnNamesSchema } from './own-names.ts';

const words = z.array(z.string().min(1)).default([]);

const UnitPatternSchema = z.string().regex(/\{\{n\}\}/, 'expected {{n}} where the number stands');

const UnitsSchema = z
  .strictObject({
    kilogram: UnitPatternSchema.describe('A weight: {{n}} kg'),
    pound: UnitPatternSchema.describe('A weight: {{n}} lb'),
  })
  .describe('How a number and its unit are written; a space is kept from breaking');

/** What `locale.yaml` of a language says. */
export const LocaleSettingsSchema = z
  .strictObject({
    name: z.string().min(1).describe('Name of the language in the language itself'),
    direction: z.enum(['ltr', 'rtl']).describe('ltr: left to right; rtl: right to left'),
    format: z
      .string()
      .refine(isUnicodeLocale, 'expected a Unicode locale, for example en-US or es-419')
      .describe('Whose way of writing numbers, dates and lists; a Unicode locale'),
    plurals: z
      .string()
      .refine(hasPlurals, 'expected a Unicode locale whose plural forms are known, for example en')
      .optional()
      .describe('Whose plural forms, where Unicode knows none of this language; a Unicode locale'),
    units: UnitsSchema,
    own_names: OwnNamesSchema.nullable()
      .default(null)
      .describe('Names of days, months and languages, where Unicode has none in this language'),
    first_weekday: z.enum(weekdays).describe('Day with which a week of a calendar begins'),
    range_word: z.string().min(1).describe('Word between the two ends of a range: to'),
    nor_word: z
      .string()
      .min(1)
      .optional()
      .describe('Word before the last of a list after a denial, where it is not the word for or'),
    semicolon: z
      .string()
      .min(1)
      .default(';')
      .describe('Mark between figures whose decimals a comma shows, with the white before it'),
    small_after_colon: z
      .boolean()
      .optional()
      .describe('Whether a sentence that follows a colon on the same line begins with a small letter'),
    common_words: z.array(z.string().min(1)).min(5).describe('Frequent words that only this language has'),
    misleading: z
      .strictObject({
        never: words.describe('Never in a patient text; # stands for a number'),
        only_with_count: words.describe('In a patient text only beside a figure'),
      })
      .describe('Words that mislead about chance'),
    passive: z
      .strictObject({
        verbs: words.describe('Forms of the verb that makes a passive: is, was, be'),
        between: words.describe('Words that may stand between it and the participle: not, also'),
        endings: words.describe('Endings of regular participles: ed'),
        participles: words.describe('Participles with other endings: done'),
        others: words.describe('Words with such an ending that are no participles: hundred'),
      })
      .nullable()
      .default(null)
      .describe('How this language says that something is done to somebody; null: not checked'),
    reader_words: words.describe('Words with which a text speaks to its reader: you, your'),
    sentence_words: z.int().min(10).max(60).describe('Longer patient sentences draw a warning'),
  })
  .describe('Settings of one language');

export type LocaleSettings = z.infer<typeof LocaleSettingsSchema>;

function hasPlurals(tag: string): boolean {
  try {
    return Intl.PluralRules.supportedLocalesOf([tag]).length === 1;
  } catch {
    return false;
  }
}

function isUnicodeLocale(tag: string): boolean {
  try {
    return Intl.NumberFormat.supportedLocalesOf([tag]).length === 1;
  } catch {
    return false;
  }
}
