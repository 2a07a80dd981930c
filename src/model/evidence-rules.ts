import { z } from 'zod';

import { aftercareSubjects } from './aftercare-codes.ts';
import { IntervalKindSchema, RecordTimeSchema } from './evidence-record.ts';
import { SeenSchema } from './study.ts';

/** Where one point of a row was read: a study, an aftercare fact, an address, or nowhere. */
export const PointSourceSchema = z
  .strictObject({
    point: z.string().min(1).optional().describe('what it supports'),
    study: z.string().optional().describe('id of a publication'),
    aftercare: z.string().optional().describe('id of an aftercare fact'),
    url: z.url().optional().describe('address read'),
    text: z.string().min(1).optional().describe('what the text is, where only a copy of it was read'),
    seen: SeenSchema,
    note: z.string().min(1).optional().describe('caveat'),
  })
  .describe('where a point was read');
export type PointSource = z.infer<typeof PointSourceSchema>;

const codes = z.union([z.string(), z.array(z.string()).min(1)]);
const half = z.strictObject({
  low: z.number().optional().describe('this value and over'),
  below: z.number().optional().describe('under this value'),
});

export const CautionWhenSchema = z
  .strictObject({
    condition: codes.optional().describe('any of these conditions'),
    medicine: codes.optional().describe('any of these medicines'),
    history: codes.optional().describe('any of these in the past'),
    smoking: z.literal('current').optional().describe('smokes now'),
    pregnancy: z.enum(['now', 'planned']).optional().describe('pregnant or planning to be'),
    bmi: half.optional().describe('body mass index, kg/m2'),
    age: half.optional().describe('age, years'),
    threshold: z
      .enum(['standard', 'asian'])
      .optional()
      .describe('only for people to whom these BMI cut-offs apply'),
    asked: z.literal('first-operation').optional().describe('only for people never operated on'),
  })
  .describe('what the case must say; every key must hold, a list means any of them');
export type CautionWhen = z.infer<typeof CautionWhenSchema>;

export const CautionSchema = z
  .strictObject({
    id: z
      .string()
      .regex(/^[a-z0-9-]+$/)
      .describe('stable id'),
    when: CautionWhenSchema,
    options: z.array(z.string()).min(1).describe('options it touches'),
    effect: z
      .enum(['contra-indicated', 'outside-indication', 'prefer-other', 'extra-risk', 'needs-check'])
      .describe('what it means for the choice'),
    statement: z.string().min(1).describe('the warning; on a patient page only if basis is page'),
    ask: z
      .string()
      .min(1)
      .optional()
      .describe('the line a patient page prints when basis is practice; no number'),
    favours: z
      .array(z.string())
      .min(1)
      .optional()
      .describe('options that the statement itself holds up as better than those it touches'),
    opens_with_reason: z
      .literal(true)
      .optional()
      .describe(
        'the first sentence of its words says by itself, in every language, what speaks against the option',
      ),
    call_now: z
      .array(z.enum(aftercareSubjects['warning-emergency']))
      .min(1)
      .optional()
      .describe(
        'signs for which to call at once; its words then have a `choice` too, printed beside the option itself',
      ),
    strength: z.enum(['strong', 'moderate', 'weak']).describe('how well founded'),
    basis: z.enum(['page', 'practice']).describe('a source was read, or usual practice only'),
    sources: z.array(PointSourceSchema).min(1).describe('what it stands on'),
    seen: SeenSchema,
    note: z.string().min(1).optional().describe('caveat for clinicians'),
  })
  .describe('a warning that a case triggers');
export type Caution = z.infer<typeof CautionSchema>;

export const CautionCoverageSchema = z
  .strictObject({
    code: z.string().describe('what a case may say'),
    by_row: z.array(z.string()).describe('options that a caution row names'),
    others: z
      .array(
        z.strictObject({
          options: z.array(z.string()).min(1).describe('options without a row'),
          why: z.string().min(1).describe('why; "not known" is printed as not known'),
        }),
      )
      .describe('all other options'),
  })
  .describe('which options a code touches');
export type CautionCoverage = z.infer<typeof CautionCoverageSchema>;

export const UndoFigureSchema = z
  .strictObject({
    what: z.string().min(1).describe('what was counted'),
    events: z.int().nonnegative().optional().describe('people with it'),
    n: z.int().positive().optional().describe('people in whom it was undone'),
    percent: z.number().min(0).max(100).optional().describe('percent of them'),
    estimate: z.number().optional().describe('average; its unit is in `what`'),
    low: z.number().optional().describe('lower end'),
    high: z.number().optional().describe('upper end'),
    interval: IntervalKindSchema.optional(),
    time: RecordTimeSchema.partial({ basis: true }).optional(),
    study: z.string().describe('id of the publication'),
    seen: SeenSchema,
    note: z.string().min(1).optional().describe('caveat'),
  })
  .describe('a figure of people in whom it was undone, never of all who have the option');
export type UndoFigure = z.infer<typeof UndoFigureSchema>;

export const ReversibilitySchema = z
  .strictObject({
    option: z.string().describe('code of options.yaml'),
    undo: z.strictObject({
      possible: z.enum(['yes', 'partly', 'no']).describe('can it be undone'),
      takes_out: z
        .enum(['stomach'])
        .optional()
        .describe('what it takes out of the body in part; that stays gone, whatever comes later'),
      how: z.string().min(1).describe('what undoing takes'),
      what_remains: z.string().min(1).describe('what does not come back'),
      weight_after: z
        .strictObject({
          statement: z.string().min(1).describe('what happens to weight'),
          basis: z.enum(['page', 'not-known']).describe('not-known: no number is given'),
          study: z.string().optional().describe('id of the publication'),
        })
        .describe('weight after undoing'),
      data: z.array(UndoFigureSchema).describe('figures'),
      second_hand: z
        .array(z.string().min(1))
        .optional()
        .describe('read in a second account; clinicians only'),
      recalled: z.array(z.string().min(1)).optional().describe('not read anywhere; clinicians only'),
    }),
    change_to: z.array(z.string()).describe('options it can be turned into'),
    note: z.string().min(1).optional().describe('caveat'),
    sources: z.array(PointSourceSchema).describe('where each point was read'),
  })
  .describe('whether an option can be undone, and what then');
export type Reversibility = z.infer<typeof ReversibilitySchema>;

export const StandingSchema = z
  .strictObject({
    id: z
      .string()
      .regex(/^[a-z0-9.-]+$/)
      .describe('stable id'),
    option: z.string().describe('code of options.yaml'),
    standing: z
      .enum(['endorsed-by-society', 'licensed-by-regulator', 'under-study'])
      .describe('a licence is not an endorsement'),
    maturity: z.enum(['established', 'newer']).optional().describe('newer: in about the last ten years'),
    jurisdiction: z.string().min(1).describe('where it holds'),
    body: z.string().min(1).describe('who said so'),
    date: z
      .string()
      .regex(/^\d{4}(-\d{2}(-\d{2})?)?$/)
      .nullable()
      .describe('year, month or day; null: not on the page'),
    statement: z.string().min(1).describe('what was said'),
    source: z.url().describe('address read'),
    seen: SeenSchema,
    note: z.string().min(1).optional().describe('caveat'),
  })
  .describe('how one body saw an option on a date');
export type Standing = z.infer<typeof StandingSchema>;

export const RiskFactorSchema = z
  .strictObject({
    id: z
      .string()
      .regex(/^[a-z0-9.-]+$/)
      .describe('stable id'),
    factor: z.string().min(1).describe('what raises or lowers the harm'),
    option: z.string().describe('code of options.yaml'),
    outcome: z.string().describe('code of outcomes.yaml'),
    measure: z
      .enum(['odds-ratio', 'risk-ratio', 'hazard-ratio', 'risk-difference', 'percent'])
      .describe('percent: risk in a class of a score'),
    estimate: z.number().optional().describe('size'),
    unit: z.literal('percentage points').optional().describe('unit of a difference'),
    low: z.number().optional().describe('lower end, 95% confidence'),
    high: z.number().optional().describe('upper end, 95% confidence'),
    events: z.int().nonnegative().optional().describe('people with the event'),
    n: z.int().positive().optional().describe('people behind it'),
    direction: z.enum(['up', 'none']).optional().describe('stated without a figure'),
    study: z.string().describe('id of the publication'),
    seen: SeenSchema,
    note: z.string().min(1).optional().describe('caveat'),
  })
  .describe('for clinicians; never a patient figure');
export type RiskFactor = z.infer<typeof RiskFactorSchema>;

export const DefinitionSchema = z
  .strictObject({
    id: z
      .string()
      .regex(/^[a-z0-9-]+$/)
      .describe('stable id'),
    term: z.string().min(1).describe('what is defined'),
    value: z.union([z.string().min(1), z.number()]).describe('definition or threshold'),
    unit: z.string().min(1).describe('unit, or statement, formula, text'),
    people: z.string().min(1).optional().describe('whom it concerns'),
    study: z.string().describe('id of the publication'),
    seen: SeenSchema,
    seen_at: z.url().optional().describe('address read'),
    note: z.string().min(1).optional().describe('caveat'),
  })
  .describe('a definition, threshold or statement; not a figure for a person');
export type Definition = z.infer<typeof DefinitionSchema>;

/** The codes of caution-coverage.yaml that a caution is about; a caution on several conditions has several. */
export function coverageCodes(when: CautionWhen): readonly string[] {
  const { condition = [], medicine = [], history = [] } = when;
  return [...[condition, medicine, history].flat(), ...habitCodes(when), ...limitCodes(when)];
}

function habitCodes({ smoking, pregnancy }: CautionWhen): readonly string[] {
  return [...(smoking ? ['smoking'] : []), ...(pregnancy ? [`pregnancy-${pregnancy}`] : [])];
}

/** From 40 kg/m2 on a limit speaks of a high BMI, below it of one too low for the treatment. */
function limitCodes({ bmi, age }: CautionWhen): readonly string[] {
  return [
    ...(bmi ? [(bmi.low ?? 0) >= 40 ? 'bmi-high' : 'bmi-low'] : []),
    ...(age ? [age.below === undefined ? 'age-over-65' : 'age-under-18'] : []),
  ];
}
