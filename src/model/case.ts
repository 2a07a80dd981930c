import { z } from 'zod';
import {
  conditionCodes,
  DocumentKindSchema,
  historyCodes,
  matterCodes,
  medicineCodes,
  PacketNameSchema,
  packetDocuments,
  reasonCodes,
} from './codes.ts';
import type { DocumentKind } from './codes.ts';
import {
  BirthDateSchema,
  EarlierOperationCodeSchema,
  HeightSchema,
  IsoDateSchema,
  LanguageSchema,
  LanguageTagSchema,
  LocalTextSchema,
  nameSchema,
  OptionCodeSchema,
  PartialDateSchema,
  ReferenceSchema,
  TroubleCodeSchema,
  WeightSchema,
} from './scalars.ts';

const reason = z.union([
  z.strictObject({ code: z.enum(reasonCodes).describe('A coded reason, translated by plainleaf') }),
  z.strictObject({ text: LocalTextSchema.describe('A reason in free words, per language') }),
]);

export const EarlierOperationSchema = z.strictObject({
  operation: EarlierOperationCodeSchema.describe(
    'Option code of the earlier operation, for example sleeve or band',
  ),
  date: PartialDateSchema.optional().describe('When: year, year-month or year-month-day'),
  weight_before: WeightSchema.optional().describe('Weight before that operation'),
  lowest_weight: WeightSchema.optional().describe('Lowest weight since'),
  trouble: TroubleCodeSchema.optional().describe(
    'Condition or outcome code of the trouble that leads to this decision',
  ),
  status: z.enum(['in-place', 'removed', 'reversed', 'converted']).describe('What became of it'),
});

export const CaseSchema = z
  .strictObject({
    plainleaf: z.literal(1).describe('Version of this format; always 1'),
    case: ReferenceSchema.describe("The clinic's own reference, in quotes"),
    example: z.boolean().default(false).describe('true for an invented person: every page says so'),
    languages: z
      .array(LanguageSchema)
      .min(1)
      .describe('Languages to make, one packet each, for example [en, es]'),
    documents: z.array(DocumentKindSchema).min(1).optional().describe('Which documents, in order'),
    packet: PacketNameSchema.optional().describe('A named list of documents, in place of documents'),
    patient: z
      .strictObject({
        name: nameSchema(80).describe('Printed; never in a log, message or file name'),
        born: BirthDateSchema.describe('Date of birth, year-month-day'),
        sex: z.enum(['female', 'male', 'not-stated']).describe('Used only where figures differ by it'),
        height: HeightSchema.describe('For example 163 cm or 5 ft 4 in'),
        weight: WeightSchema.describe('For example 114.5 kg or 252 lb'),
        ancestry_threshold: z
          .enum(['standard', 'asian'])
          .default('standard')
          .describe('Which BMI cut-offs apply'),
        large_print: z
          .boolean()
          .default(false)
          .describe('true for pages in large print: 18 points and more, set anew for it'),
      })
      .describe('The person'),
    health: z
      .strictObject({
        conditions: z.array(z.enum(conditionCodes)).default([]).describe('Coded conditions'),
        medicines: z.array(z.enum(medicineCodes)).default([]).describe('Coded medicines'),
        history: z.array(z.enum(historyCodes)).default([]).describe('Coded past events'),
        smoking: z.enum(['never', 'former', 'current', 'not-asked']).describe('Smoking'),
        pregnancy: z
          .strictObject({
            now: z.boolean().default(false).describe('Pregnant now'),
            planned_within_months: z
              .number()
              .int()
              .min(0)
              .max(120)
              .nullable()
              .default(null)
              .describe('Months, or null'),
          })
          .prefault({})
          .describe('Pregnancy now or planned'),
        earlier_operations: z
          .array(EarlierOperationSchema)
          .default([])
          .describe('Earlier weight-loss operations, oldest first'),
      })
      .describe('Health as far as it touches the decision'),
    decision: z
      .strictObject({
        asked: z
          .enum(['first-operation', 'second-operation', 'after-removal'])
          .describe('What is being decided'),
        options: z
          .array(OptionCodeSchema)
          .min(1)
          .max(10)
          .describe('Option codes, in the order they are printed'),
        matters_most: z
          .array(
            z.union([
              z.strictObject({ code: z.enum(matterCodes).describe('What matters, coded') }),
              z.strictObject({
                text: LocalTextSchema.describe('What matters, in their own words, per language'),
              }),
            ]),
          )
          .max(5)
          .default([])
          .describe('What the person said matters most, coded or in their own words'),
        leaning: z
          .strictObject({
            option: OptionCodeSchema.describe('Option code'),
            reasons: z.array(reason).min(1).max(5).describe('One to five reasons'),
          })
          .nullable()
          .default(null)
          .describe('Which way the surgeon leans; printed as one opinion'),
        advised_against: z
          .array(
            z.strictObject({
              option: OptionCodeSchema.describe('Option code'),
              reasons: z.array(reason).min(1).max(5).describe('One to five reasons'),
            }),
          )
          .default([])
          .describe('Options the surgeon advises against, each with its reasons'),
        chosen: OptionCodeSchema.nullable().default(null).describe('Option code, once chosen'),
      })
      .describe('The decision this person faces'),
    plan: z
      .strictObject({
        next_visit: IsoDateSchema.optional().describe('Date of the next visit'),
        operation_date: IsoDateSchema.optional().describe('Date of the operation, once known'),
        stages: z
          .enum(['one', 'two'])
          .optional()
          .describe(
            'How a band in place is exchanged: out and the new operation at once, or in two operations',
          ),
        surgeon: ReferenceSchema.describe("A surgeon's id from the clinic profile"),
      })
      .describe('Who and when'),
    interpreter: z
      .strictObject({
        needed: z.boolean().describe('Whether one is needed'),
        language: LanguageTagSchema.optional().describe('The language to interpret into'),
      })
      .default({ needed: false })
      .describe('Whether an interpreter is needed'),
  })
  .describe('One case: a person, their health, and the decision they face');

export type Case = z.infer<typeof CaseSchema>;
export type EarlierOperation = z.infer<typeof EarlierOperationSchema>;
export type Reason = z.infer<typeof reason>;

/** The documents to make, in order: those listed, or those of the named packet. */
export function documentsOf(asked: Pick<Case, 'documents' | 'packet'>): readonly DocumentKind[] {
  return asked.documents ?? (asked.packet === undefined ? [] : packetDocuments[asked.packet]);
}
