import { z } from 'zod';
import { IsoDateSchema, LocalTextSchema, PartialDateSchema, ReferenceSchema } from './scalars.ts';

const phone = z
  .string()
  .regex(/^[+0-9][0-9 ()./-]{1,24}$/, 'expected a phone number in quotes, digits with spaces or hyphens');

const ClinicResultSchema = z
  .strictObject({
    option: z.string(),
    outcome: z.string(),
    days: z.number().int().min(1).max(36500).describe('Counted up to this day after the operation'),
    events: z.number().int().min(0),
    n: z.number().int().min(1),
    from: PartialDateSchema,
    to: PartialDateSchema,
  })
  .describe("The surgeon's or clinic's own count");

const SurgeonSchema = z.strictObject({
  id: ReferenceSchema,
  name: z.string().min(1).max(60),
  pronoun: z.enum(['she', 'he', 'they']).default('they').describe('For languages that need it'),
  results: z.array(ClinicResultSchema).default([]),
});

/** The clinic's own practice for an option, in short free words per language; printed as the clinic's. */
const ProtocolSchema = z.strictObject({
  stay: z.record(z.string(), LocalTextSchema).default({}).describe('Option code: how long in hospital'),
  time_off: z.record(z.string(), LocalTextSchema).default({}).describe('Option code: time off work'),
  visits: z.record(z.string(), LocalTextSchema).default({}).describe('Option code: visits'),
  for_life: z.record(z.string(), LocalTextSchema).default({}).describe('Option code: what it asks for life'),
});

const UnderStudySchema = z.strictObject({
  oversight: LocalTextSchema.describe('Who watches over the study'),
  approval: z.string().describe('Approval number'),
  contact: phone.describe('Phone of the study office'),
  form: z.string().nullable().default(null).describe('Name of the approval form; without it no final document'),
});

const PreferenceSchema = z.strictObject({
  record: z.string().describe('Record id that this clinic wants to lead'),
  reason: LocalTextSchema.describe('Why; printed in the sources'),
});

export const ClinicProfileSchema = z
  .strictObject({
    plainleaf: z.literal(1).describe('Version of this format; always 1'),
    clinic: z.strictObject({
      name: z.string().min(1).max(60),
      address: z.string().min(1).max(160),
      jurisdiction: z.enum(['US', 'UK', 'Europe', 'international']).default('international').describe('Whose endorsements count'),
      phones: z.strictObject({ day: phone, out_of_hours: phone, emergency: phone }),
      paper: z.enum(['letter', 'a4']),
      units: z.enum(['metric', 'us', 'both']),
    }),
    surgeons: z.array(SurgeonSchema).min(1),
    protocol: ProtocolSchema.prefault({}),
    under_study: z.record(z.string(), UnderStudySchema).default({}),
    prefer: z.array(PreferenceSchema).default([]),
    second_opinion: z.array(z.strictObject({ name: z.string().min(1).max(80), phone })).default([]),
    cautions: z
      .record(z.string(), z.enum(['confirmed', 'struck']))
      .default({})
      .describe('Caution id: confirmed or struck by this clinic'),
    approved: z.strictObject({ by: z.string(), on: IsoDateSchema }).nullable().default(null).describe('Who approved this profile'),
  })
  .describe('One clinic: who it is, whom to call, its own practice and results');

export type ClinicProfile = z.infer<typeof ClinicProfileSchema>;
export type ClinicResult = z.infer<typeof ClinicResultSchema>;
