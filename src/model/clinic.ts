import { z } from 'zod';
import { ProtocolSchema, VisitingSchema } from './clinic-protocol.ts';
import {
  CautionIdSchema,
  IsoDateSchema,
  labelSchema,
  LanguageSchema,
  LanguageTagSchema,
  LocalTextSchema,
  nameSchema,
  OptionCodeSchema,
  OutcomeCodeSchema,
  PartialDateSchema,
  PhoneSchema,
  RecordIdSchema,
  ReferenceSchema,
  wordsSchema,
} from './scalars.ts';
import { WordsReviewSchema } from './words-review.ts';

const ClinicResultSchema = z
  .strictObject({
    option: OptionCodeSchema.describe('Option code'),
    outcome: OutcomeCodeSchema.describe('Outcome code, for example leak'),
    days: z.number().int().min(1).max(36500).describe('Counted up to this day after the operation'),
    events: z.number().int().min(0).max(1_000_000).describe('How many people had it; 0 is worth saying'),
    n: z.number().int().min(1).max(1_000_000).describe('How many people had this option'),
    from: PartialDateSchema.describe('First operation counted, for example 2021-01'),
    to: PartialDateSchema.describe('Last operation counted'),
  })
  .describe("The surgeon's or clinic's own count");

const SurgeonSchema = z.strictObject({
  id: ReferenceSchema.describe('What a case writes under plan.surgeon'),
  name: nameSchema(60).describe('As printed, for example Dr. First Last'),
  names: z
    .record(LanguageTagSchema, nameSchema(60))
    .optional()
    .describe(
      'The same as it stands inside a sentence of a language that writes it otherwise, for example es: la Dra. First Last',
    ),
  pronoun: z.enum(['she', 'he', 'they']).default('they').describe('For languages that need it'),
  results: z
    .array(ClinicResultSchema)
    .default([])
    .describe('Own counts, one entry an option, outcome and time'),
});

const UnderStudySchema = z.strictObject({
  oversight: LocalTextSchema.describe('Who watches over the study'),
  approval: labelSchema(60).describe('Approval number'),
  contact: PhoneSchema.describe('Phone of the study office'),
  form: labelSchema(80)
    .nullable()
    .default(null)
    .describe('Name of the approval form; without it no final document'),
  form_names: z
    .record(LanguageTagSchema, labelSchema(80))
    .optional()
    .describe('Its name in languages in which it is approved too, as printed on it, for example es: …'),
});

const PreferenceSchema = z.strictObject({
  record: RecordIdSchema.describe('Record id that this clinic wants to lead'),
  reason: LocalTextSchema.describe('Why; printed in the sources'),
});

export const ClinicProfileSchema = z
  .strictObject({
    plainleaf: z.literal(1).describe('Version of this format; always 1'),
    clinic: z
      .strictObject({
        name: nameSchema(60).describe('As printed'),
        address: wordsSchema(160).describe('As printed, on one line'),
        jurisdiction: z
          .enum(['US', 'UK', 'Europe', 'international'])
          .default('international')
          .describe('Whose endorsements count'),
        phones: z
          .strictObject({
            day: PhoneSchema.describe('Clinic hours'),
            out_of_hours: PhoneSchema.describe('Nights and weekends'),
            emergency: PhoneSchema.describe('Emergency number, for example "911"'),
          })
          .describe('Printed on every patient page; in quotes'),
        paper: z.enum(['letter', 'a4']).describe('Paper size'),
        units: z.enum(['metric', 'us', 'both']).describe('Units printed: kg, lb, or both'),
        visiting: VisitingSchema.prefault({}).describe('When the clinic sees people'),
      })
      .describe('Who the clinic is and how it prints'),
    surgeons: z.array(SurgeonSchema).min(1).describe('Surgeons whom a case may name'),
    protocol: ProtocolSchema.prefault({}).describe("The clinic's own practice, printed as the clinic's"),
    under_study: z
      .record(OptionCodeSchema, UnderStudySchema)
      .default({})
      .describe('Option code: who watches over its study here'),
    prefer: z
      .array(PreferenceSchema)
      .default([])
      .describe('Records that are to lead here, each with its reason'),
    second_opinion: z
      .array(
        z.strictObject({
          name: nameSchema(80).describe('As printed'),
          phone: PhoneSchema.describe('In quotes'),
        }),
      )
      .default([])
      .describe('Whom to ask for a second opinion'),
    language_notice: z
      .strictObject({
        languages: z.array(LanguageSchema).min(1).max(20).describe('Languages of the notice, in order'),
        phone: PhoneSchema.describe('Whom to call for an interpreter; in quotes'),
      })
      .nullable()
      .default(null)
      .describe('Notice that language help is free; needed for the document language-notice'),
    cautions: z
      .record(CautionIdSchema, z.enum(['confirmed', 'struck']))
      .default({})
      .describe('Caution id: confirmed or struck by this clinic'),
    reviewed: z
      .array(WordsReviewSchema)
      .default([])
      .describe('Who read the words of which language; without it every packet in it is a draft'),
    approved: z
      .strictObject({
        by: nameSchema(60).describe('Name'),
        on: IsoDateSchema.describe('Date, year-month-day'),
      })
      .nullable()
      .default(null)
      .describe('Who approved this profile'),
  })
  .describe('One clinic: who it is, whom to call, its own practice and results');

export type ClinicProfile = z.infer<typeof ClinicProfileSchema>;
export type ClinicResult = z.infer<typeof ClinicResultSchema>;
