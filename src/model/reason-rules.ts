import { z } from 'zod';

import { conditionCodes, matterCodes, medicineCodes, reasonCodes } from './codes.ts';
import { CautionSchema } from './evidence-rules.ts';

const kind = z.enum(['operation', 'endoscopic', 'medicine', 'programme', 'none']);
const meaning = z.enum(['supports', 'contradicts']).optional();
const outcomes = z.array(z.string().min(1)).min(1).describe('codes of outcomes.yaml, most direct first');
const answers = {
  yes: meaning.describe('what it means if so'),
  no: meaning.describe('what it means if not'),
};
const effects = z
  .array(CautionSchema.shape.effect)
  .min(1)
  .describe('cautions that count: what they mean for the choice');

/** One place where the case or the evidence may bear a reason out, or not. */
export const ReasonLookSchema = z
  .discriminatedUnion('look', [
    z
      .strictObject({
        look: z.literal('compare'),
        outcomes,
        times: z.enum(['first-month', 'later-years', 'weight']).describe('which times count'),
        than: z.enum(['alike', 'all']).describe('alike: options of the same sort, where there are any'),
        has: z.enum(['fewer', 'more']).describe('what is claimed of the option'),
        ...answers,
      })
      .describe('yes: clearly so against each other option; no: clearly the other way round against one'),
    z
      .strictObject({
        look: z.literal('recover'),
        outcomes,
        at_least: z
          .number()
          .min(0)
          .max(100)
          .describe(
            'percent, where no figure of people without treatment is known: a lower limit from this up counts',
          ),
        ...answers,
      })
      .describe('yes: clearly more recover than without treatment; no: clearly fewer'),
    z
      .strictObject({ look: z.literal('undo'), ...answers })
      .describe('yes: it can be undone; no: it cannot; partly is neither'),
    z
      .strictObject({ look: z.literal('under-study'), ...answers })
      .describe('yes: it is under study where the clinic is; no: it is established'),
    z
      .strictObject({
        look: z.literal('cautions'),
        condition: z.array(z.enum(conditionCodes)).optional().describe('cautions about these conditions'),
        medicine: z.array(z.enum(medicineCodes)).optional().describe('cautions about these medicines'),
        effects,
        warned: meaning.describe('what it means that one of them warns of the option'),
        favoured: meaning.describe('what it means that one of them holds the option up as better'),
        spared: meaning.describe(
          'what it means that for all that the case has the option has no caution, for a known reason',
        ),
      })
      .describe('what cautions say of the option, for conditions and medicines of the case'),
    z
      .strictObject({ look: z.literal('fewer-cautions'), effects, ...answers })
      .describe(
        'yes: an illness of the case warns of each option of the same sort and not of this one; no: the reverse',
      ),
    z
      .strictObject({
        look: z.literal('wishes'),
        reasons: z
          .partialRecord(z.enum(matterCodes), z.enum(reasonCodes))
          .describe('the reason that each wish amounts to'),
        kinds: z
          .partialRecord(z.enum(matterCodes), z.array(kind))
          .describe('kinds of option that meet a wish'),
        ...answers,
      })
      .describe('yes: every coded wish is borne out; no: one is contradicted'),
  ])
  .describe('where the case or the evidence may bear a reason out');
export type ReasonLook = z.infer<typeof ReasonLookSchema>;
export type LookOf<K extends ReasonLook['look']> = Extract<ReasonLook, { look: K }>;

/** What a coded reason of a surgeon claims, and where that can be checked. */
export const ReasonRuleSchema = z
  .strictObject({
    code: z.enum(reasonCodes).describe('code that cases use'),
    needs: z
      .strictObject({
        condition: z.array(z.enum(conditionCodes)).min(1).optional().describe('any of these conditions'),
        any_condition: z.literal(true).optional().describe('a condition of whatever sort'),
        medicine: z.array(z.enum(medicineCodes)).min(1).optional().describe('any of these medicines'),
        earlier_operation: z.literal(true).optional().describe('an operation for weight before'),
        wish: z.literal(true).optional().describe('something that matters most to the person'),
      })
      .default({})
      .describe('what the case must say for the reason to be about this person; every key must hold'),
    by_number: z
      .literal(true)
      .optional()
      .describe('it claims what numbers could show: patients are told where there are none'),
    looks: z.array(ReasonLookSchema).describe('empty: that the case says so is all there is to check'),
  })
  .describe('what a coded reason claims, and where that can be checked');
export type ReasonRule = z.infer<typeof ReasonRuleSchema>;
