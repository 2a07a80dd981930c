import { z } from 'zod';

import { BmiBySexSchema } from './bmi-by-sex.ts';
import { MedicineDoseSchema } from './medicine-dose.ts';
import { ScopeSchema, TogetherSchema } from './record-scope.ts';
import { SeenSchema, StudyDesignSchema, readings } from './study.ts';

/** Codes of options are plain text; options.yaml defines which exist. */
export type OptionCode = string;

export const IndicationSchema = z
  .enum([
    'first-operation',
    'after-band',
    'after-sleeve',
    'after-bypass',
    'after-plication',
    'band-trouble',
    'none',
    'mixed',
    'unknown',
  ])
  .describe('what the people had before; none: nobody was operated on');
export type Indication = z.infer<typeof IndicationSchema>;

export const PeopleGroupSchema = z
  .enum([
    'adolescents',
    'young-adults',
    'over-60',
    'over-65',
    'over-70',
    'bmi-under-35',
    'bmi-50-plus',
    'bmi-60-plus',
    'pregnancy',
    'infertility',
    'high-risk',
    'heart-disease',
    'high-blood-pressure',
    'prediabetes',
    'sleep-apnoea',
    'knee-arthritis',
    'veterans',
    'medicare',
    'same-day-discharge',
  ])
  .describe('set when the people are unlike most candidates');
export type PeopleGroup = z.infer<typeof PeopleGroupSchema>;

/** A spread of people in one measure. `low` and `high` are limits of entry or the range seen. */
export const SpreadSchema = z.strictObject({
  mean: z.number().positive().optional().describe('mean'),
  median: z.number().positive().optional().describe('median'),
  sd: z.number().positive().optional().describe('standard deviation of people'),
  low: z.number().nonnegative().optional().describe('lower limit or lowest seen'),
  high: z.number().positive().optional().describe('upper limit or highest seen'),
});
export type Spread = z.infer<typeof SpreadSchema>;

export const PeopleSchema = z
  .strictObject({
    indication: IndicationSchema,
    stages: z
      .enum(['one', 'two', 'either', 'unstated'])
      .optional()
      .describe('exchange of a band: out and the new operation at once, in two operations, or some of each'),
    bmi: SpreadSchema.optional().describe('body mass index, kg/m2'),
    bmi_by_sex: BmiBySexSchema.optional(),
    age: SpreadSchema.optional().describe('age, years'),
    female_percent: z.number().min(0).max(100).optional().describe('women, percent'),
    diabetes: z.enum(['all', 'none', 'mixed', 'unknown']).describe('how many had diabetes'),
    group: PeopleGroupSchema.optional(),
    other: z.string().min(1).optional().describe('anything else about the people'),
  })
  .describe('who was measured');
export type People = z.infer<typeof PeopleSchema>;

export const RecordTimeSchema = z
  .strictObject({
    days: z.int().nonnegative().optional().describe('days since treatment'),
    months: z.number().nonnegative().optional().describe('months since treatment'),
    basis: z
      .enum(['by', 'at', 'mean-follow-up', 'peri-operative', 'unclear'])
      .describe('by: any time up to then; at: state then'),
  })
  .describe('when it was measured');
export type RecordTime = z.infer<typeof RecordTimeSchema>;

export const IntervalKindSchema = z
  .enum(['ci95', 'ci98', 'cri95', 'iqr', 'range', 'unstated'])
  .describe(
    'iqr and range are spreads of people; ci and cri are uncertainty of an average; unstated is neither',
  );

const bounds = {
  low: z.number().optional().describe('lower end of the interval'),
  high: z.number().optional().describe('upper end of the interval'),
  interval: IntervalKindSchema.optional(),
};
const size = {
  n: z.int().positive().optional().describe('people behind the figure'),
  n_is: z.literal('start').optional().describe('n counts people at the start, not those seen then'),
};
const average = {
  sd: z.number().positive().optional().describe('standard deviation of people'),
  se: z.number().positive().optional().describe('standard error of the mean'),
  average: z.literal('median').optional().describe('set when the estimate is a median; else it is a mean'),
};
const reference = {
  reference: z
    .enum(['before-this-operation', 'before-first-operation', 'unstated'])
    .optional()
    .describe('which weight the percent counts from'),
};

/** A share of people, or a rate. Which keys go together: see the rule share-has-denominator. */
export const ShareValueSchema = z.strictObject({
  events: z.int().nonnegative().optional().describe('people with the event'),
  ...size,
  percent: z.number().min(0).max(100).optional().describe('percent of people'),
  rate: z.number().nonnegative().optional().describe('events per `per` units of time'),
  per: z
    .union([z.literal(100), z.literal(1000)])
    .optional()
    .describe('denominator of the rate'),
  unit: z.literal('person-years').optional().describe('unit of the rate'),
  ...bounds,
  ...reference,
});
export type ShareValue = z.infer<typeof ShareValueSchema>;

export const WeightValueSchema = z.strictObject({
  metric: z.string().describe('code of metrics.yaml'),
  estimate: z.number().optional().describe('plus is loss; in weight-regain plus is gain'),
  unit: z.string().describe('unit of the metric'),
  ...bounds,
  ...average,
  ...size,
  ...reference,
});

export const ScoreValueSchema = z.strictObject({
  metric: z.string().describe('code of metrics.yaml'),
  estimate: z.number().describe('mean change'),
  unit: z.string().describe('unit of the metric'),
  before: z.number().optional().describe('mean before'),
  before_sd: z.number().positive().optional().describe('standard deviation before'),
  after: z.number().optional().describe('mean after'),
  after_sd: z.number().positive().optional().describe('standard deviation after'),
  ...bounds,
  ...average,
  ...size,
});

export const DurationValueSchema = z.strictObject({
  estimate: z.number().nonnegative().optional().describe('mean or median length'),
  unit: z.enum(['days', 'hours', 'days/year']).describe('unit of time'),
  before: z.number().nonnegative().optional().describe('the same before treatment'),
  ...bounds,
  ...average,
  ...size,
});

export const ContrastValueSchema = z.strictObject({
  measure: z
    .enum([
      'odds-ratio',
      'risk-ratio',
      'hazard-ratio',
      'rate-ratio',
      'risk-difference',
      'mean-difference',
      'standardised-difference',
      'relative-difference',
    ])
    .describe('differences are option minus versus; relative-difference is in percent'),
  metric: z.string().optional().describe('code of metrics.yaml, for differences of a measure'),
  estimate: z.number().optional().describe('ratio or difference'),
  unit: z.string().optional().describe('unit of the difference'),
  adjusted: z
    .union([z.boolean(), z.literal('unstated')])
    .describe('adjusted for other causes, as the source says'),
  se: z.number().positive().optional().describe('standard error'),
  ...bounds,
  ...size,
  ...reference,
});

export const ReportValueSchema = z.strictObject({
  events: z.int().nonnegative().describe('reports to a regulator; never a rate'),
});

const common = {
  id: z
    .string()
    .regex(/^[a-z0-9.+-]+$/i)
    .describe('option.outcome.time.study and what tells it apart'),
  study: z.string().describe('id of the publication'),
  option: z.string().describe('code of options.yaml'),
  outcome: z.string().describe('code of outcomes.yaml'),
  definition: z.string().min(1).optional().describe('how the source defined it'),
  scope: ScopeSchema.optional(),
  together: TogetherSchema.optional(),
  new_only: z.literal(true).optional().describe('counts nobody who had it before; see the definition'),
  variant: z.string().min(1).optional().describe('how it differed from the option as done today'),
  dose: MedicineDoseSchema.optional(),
  cohort: z.string().min(1).optional().describe("whose people; wins over the study's"),
  design: StudyDesignSchema.optional(),
  people: PeopleSchema,
  time: RecordTimeSchema,
  followed: z
    .strictObject({
      seen: z.int().nonnegative().optional().describe('people still followed then'),
      of: z.int().positive().optional().describe('people at the start'),
      percent: z.number().min(0).max(100).optional().describe('percent still followed'),
    })
    .optional()
    .describe('who was still followed'),
  certainty: z.enum(['high', 'moderate', 'low', 'very-low']).describe('how sure'),
  seen: SeenSchema,
  seen_at: z
    .array(z.url())
    .min(1)
    .optional()
    .describe("where this figure was read, if not at the study's addresses"),
  ...readings,
  note: z.string().min(1).optional().describe('caveats that change the meaning'),
};

/** One published figure, told apart by `kind`. Keys are those of the data files. */
export const EvidenceRecordSchema = z.discriminatedUnion('kind', [
  z.strictObject({ ...common, kind: z.literal('risk'), value: ShareValueSchema }),
  z.strictObject({ ...common, kind: z.literal('benefit'), value: ShareValueSchema }),
  z.strictObject({ ...common, kind: z.literal('weight'), value: WeightValueSchema }),
  z.strictObject({ ...common, kind: z.literal('score'), value: ScoreValueSchema }),
  z.strictObject({ ...common, kind: z.literal('duration'), value: DurationValueSchema }),
  z.strictObject({
    ...common,
    kind: z.literal('contrast'),
    versus: z.string().describe('an option, or a named comparison group'),
    value: ContrastValueSchema,
  }),
  z.strictObject({ ...common, kind: z.literal('report'), value: ReportValueSchema }),
]);
export type EvidenceRecord = z.infer<typeof EvidenceRecordSchema>;
export type EvidenceKind = EvidenceRecord['kind'];
export type RecordOf<K extends EvidenceKind> = Extract<EvidenceRecord, { kind: K }>;
