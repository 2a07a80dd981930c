import { z } from 'zod';

import {
  aftercareSubjectCodes,
  aftercareTopics,
  routeCodes,
  testCodes,
  urgencies,
  whoCodes,
} from './aftercare-codes.ts';
import { aftercareUnits } from './aftercare-units.ts';
import { published, SeenSchema } from './study.ts';

const id = z.string().regex(/^[a-z0-9.-]+$/);

export const AftercareSourceSchema = z
  .strictObject({
    id: id.describe('stable id; apart from those of the studies'),
    kind: z
      .enum([
        'guideline',
        'regulator',
        'review',
        'trial',
        'trial-nonrandomised',
        'cohort',
        'expert-consensus',
        'textbook',
        'clinician-page',
        'definition',
        'practice',
      ])
      .describe('what sort of text it is; practice: habit of the trade, nothing to read'),
    ...published,
    country: z.string().min(1).optional().describe('where it holds or was made'),
    replaced: z.literal(true).optional().describe('a newer edition exists, so no page prints it as a rule'),
    note: z.string().min(1).optional().describe('caveats'),
  })
  .describe('where facts on aftercare were read');
export type AftercareSource = z.infer<typeof AftercareSourceSchema>;

const limit = z.number().nonnegative().nullable();

export const AmountSchema = z
  .strictObject({
    low: limit.describe('at least; null: no limit below'),
    high: limit.describe('at most; null: no limit above'),
    unit: z.enum(aftercareUnits).describe('unit of both'),
  })
  .describe('an amount or a length of time');
export type Amount = z.infer<typeof AmountSchema>;

const count = z.int().min(-1200).max(1200);
const times = z.array(z.int().min(1).max(1200)).min(1);
const range = z.tuple([z.int().positive(), z.int().positive()]);

export const AftercareTimingSchema = z
  .strictObject({
    phase: z
      .enum([
        'before-operation',
        'hospital-stay',
        'after-operation',
        'before-and-after',
        'after-each-band-fill',
        'each-dose',
        'preconception',
        'pregnancy',
      ])
      .describe('when it holds; in pregnancy weeks are those of the pregnancy'),
    from_day: count
      .optional()
      .describe('day counted from the operation, which is day 0; negative: before it'),
    to_day: count.optional().describe('last day'),
    from_week: count.optional().describe('in weeks'),
    to_week: count.optional().describe('in weeks'),
    from_month: count.optional().describe('in months'),
    to_month: count.optional().describe('in months'),
    at_weeks: times.optional().describe('on these weeks'),
    at_months: times.optional().describe('on these months'),
    every: z
      .enum(['day', 'visit', 'trimester', 'signs'])
      .optional()
      .describe('signs: only when signs suggest'),
    every_months: z
      .union([z.int().positive(), range])
      .optional()
      .describe('again after so many months, or from so many to so many'),
    until_stable_every_months: range.optional().describe('while weight still changes'),
    stable_every_months: range.optional().describe('once weight is steady'),
    stage: z.int().min(1).max(9).optional().describe('place in its timetable'),
    length: z.literal(true).optional().describe('the value says how long it lasts'),
    to: z.enum(['lifelong', 'birth', 'week-12-of-pregnancy']).optional().describe('how long it goes on'),
  })
  .describe('when it holds');
export type AftercareTiming = z.infer<typeof AftercareTimingSchema>;

export const AftercareFactSchema = z
  .strictObject({
    id: id.describe('topic, what it is, source; never used again for another'),
    options: z.array(z.string()).describe('options that the source speaks of; none: context for clinicians'),
    extrapolated_to: z
      .array(z.string())
      .min(1)
      .optional()
      .describe("options it did not study but teams treat alike; never printed as the guideline's own"),
    topic: z.enum(aftercareTopics).describe('what it is about'),
    subject: z.enum(aftercareSubjectCodes).describe('more closely'),
    urgency: z.enum(urgencies).optional().describe('of a sign: how fast to call'),
    use: z
      .enum(['rule', 'prescriber', 'confirm', 'context'])
      .describe(
        'rule: may print as the rule of its source; prescriber: somebody prescribes it; confirm: the clinic has to; context: for clinicians',
      ),
    value: z
      .union([
        AmountSchema,
        z.strictObject({ tests: z.array(z.enum(testCodes)).min(1) }).describe('what is tested'),
        z.string().min(1),
      ])
      .describe(
        'an amount, tests, or what it says in our words; words are for clinicians, pages have their own',
      ),
    who: z.enum(whoCodes).describe('whom it is about'),
    people: z.string().min(1).optional().describe('whom, where the code says less than the source'),
    not_for: z
      .array(z.enum(['blood-thinner', 'pregnancy']))
      .min(1)
      .optional()
      .describe('no rule for people with this medicine, or pregnant or planning to be'),
    timing: AftercareTimingSchema.optional(),
    route: z.enum(routeCodes).optional().describe('how it is taken'),
    one_of: z
      .enum(['iron-salt', 'vitamin-b12-way', 'vitamin-b12-way-in-pregnancy', 'protein-count'])
      .optional()
      .describe('facts with the same word are alternatives: one is taken, and they are never added'),
    source: id.describe('id of its source'),
    seen: SeenSchema,
    seen_at: z.url().optional().describe('where it was read, if its source has several addresses'),
    conflict_with: z
      .array(id)
      .min(1)
      .optional()
      .describe('facts that say otherwise, written both ways: the clinic decides, neither prints as a rule'),
    note: z.string().min(1).optional().describe('caveats'),
  })
  .describe('one thing that a source says of the time before and after a treatment');
export type AftercareFact = z.infer<typeof AftercareFactSchema>;
