import { z } from 'zod';
import { testCodes, urgencies } from './aftercare-codes.ts';
import { weekdays } from './calendar-day.ts';
import {
  adviceCodes,
  callSigns,
  medicineTopics,
  personCodes,
  signCodes,
  staffCodes,
  supplementCodes,
} from './protocol-codes.ts';
import {
  DoseSchema,
  IsoDateSchema,
  LocalTextSchema,
  OptionCodeSchema,
  PhoneSchema,
  SpanSchema,
  TemperatureSchema,
} from './scalars.ts';

const day = z.number().int().min(0).max(3650);
const from = SpanSchema.optional().describe('Begins so long after the operation; left out: at once');
const until = SpanSchema.optional().describe('Ends so long after the operation; left out: no end is set');
const only = z.enum(personCodes).optional().describe('Only for these people; left out: for everybody');
const weekdayList = z.array(z.enum(weekdays)).min(1);

/** When the clinic sees people. A visit that falls on another day moves to the next one. */
export const VisitingSchema = z.strictObject({
  weekdays: weekdayList
    .default(['monday', 'tuesday', 'wednesday', 'thursday', 'friday'])
    .describe('Days of the week on which the clinic sees people; else Monday to Friday'),
  closed: z.array(IsoDateSchema).max(400).default([]).describe('Days on which it is closed'),
});

const DietStageSchema = z.strictObject({
  name: LocalTextSchema.describe('Name of the stage'),
  from_day: day.describe('First day; the day of the operation is 0'),
  to_day: day.optional().describe('Last day; left out in the last stage: for good'),
  what: LocalTextSchema.describe('What to eat and drink'),
});

const VisitSchema = z.strictObject({
  after: SpanSchema.describe('How long after the operation, for example 2 weeks'),
  with: z.array(z.enum(staffCodes)).min(1).describe('Who sees the person'),
  way: z.enum(['in-person', 'phone', 'video']).default('in-person').describe('How they meet'),
  weekdays: weekdayList.optional().describe('Days of the week of this visit, if not those of the clinic'),
  every: SpanSchema.optional().describe('Again each time after so long'),
  until,
  what: LocalTextSchema.optional().describe('What it is for'),
});

const ActivitySchema = z.strictObject({
  from,
  until,
  what: LocalTextSchema.describe('What to do or not to do'),
});

const MedicineAfterSchema = z.strictObject({
  about: z.enum(medicineTopics).describe('What it is for'),
  from,
  until,
  for: only,
  what: LocalTextSchema.describe('What to take or to avoid, and how'),
});

const SupplementSchema = z.strictObject({
  supplement: z
    .enum(supplementCodes)
    .describe('What it is; iron is elemental, iron-as-… the weight of a salt'),
  product: LocalTextSchema.optional().describe('Product, as printed'),
  dose: DoseSchema.optional().describe('What is taken at one time, for example 500 mg or 1 tablet'),
  times_a_day: z
    .number()
    .int()
    .min(1)
    .max(6)
    .optional()
    .describe('How many times on a day of taking; else once'),
  every: SpanSchema.optional().describe('For example 3 months for an injection; left out: every day'),
  from,
  until: SpanSchema.optional().describe('Ends so long after the operation; left out: for life'),
  for: only,
  how: LocalTextSchema.optional().describe('How to take it'),
});

const BloodTestSchema = z.strictObject({
  tests: z.array(z.enum(testCodes)).default([]).describe('What is tested'),
  other: LocalTextSchema.optional().describe('What else is tested, in words'),
  at: z
    .array(SpanSchema)
    .default([])
    .describe('How long after the operation, for example [3 months, 6 months]'),
  every: SpanSchema.optional().describe('Afterwards again each time after so long, for example 12 months'),
  until,
  for: only,
});

const AdviceSchema = z.strictObject({
  about: z.enum(adviceCodes).describe('What it is about'),
  before: SpanSchema.optional().describe('Begins so long before the operation and ends with it'),
  from,
  until,
  for: only,
  what: LocalTextSchema.describe('What the clinic advises'),
});

const sign = z.union([
  z.strictObject({
    code: z.enum(signCodes).describe('A coded sign, translated by plainleaf'),
    for: only,
    means: LocalTextSchema.optional().describe(
      'What the clinic counts as this sign, for example how long it lasts; printed behind it, per language',
    ),
    first: LocalTextSchema.optional().describe('What to do before the call, in free words, per language'),
  }),
  z.strictObject({ text: LocalTextSchema.describe('A sign in free words, per language'), for: only }),
]);

const WarningsSchema = z.strictObject({
  fever: TemperatureSchema.optional().describe('From this temperature on a fever counts, for example 38 C'),
  pulse: z
    .number()
    .int()
    .min(60)
    .max(200)
    .optional()
    .describe('Over so many beats a minute a pulse counts as fast'),
  now: z.array(sign).default([]).describe('Signs to call about at once'),
  today: z.array(sign).default([]).describe('Signs to call about on the same day'),
  at_visit: z.array(sign).default([]).describe('Signs to speak of at the next visit'),
});

const CallSchema = z.strictObject({
  who: LocalTextSchema.describe('Whom to call, as printed'),
  phone: PhoneSchema.describe('In quotes'),
  urgency: z.array(z.enum(urgencies)).min(1).describe('For which signs: now, today, visit'),
  about: z
    .enum(callSigns)
    .optional()
    .describe('Only for this sign, for example self-harm; left out: for every sign'),
  hours: LocalTextSchema.optional().describe('When somebody answers'),
});

/** Rows of the protocol, each a list in order. */
const lists = {
  diet: [DietStageSchema, 'stages of eating, in order'],
  follow_up: [VisitSchema, 'visits and calls after it'],
  lifting: [ActivitySchema, 'lifting'],
  driving: [ActivitySchema, 'driving'],
  work: [ActivitySchema, 'going back to work'],
  walking: [ActivitySchema, 'walking and exercise'],
  wound: [ActivitySchema, 'showering and care of the wounds'],
  medicines_after: [MedicineAfterSchema, 'medicines to take or avoid after it'],
  supplements: [SupplementSchema, 'vitamins and minerals'],
  blood_tests: [BloodTestSchema, 'blood tests after it'],
  advice: [AdviceSchema, 'anything else that guidelines leave to the clinic'],
  call: [CallSchema, "whom to call; else the clinic's phones"],
} as const;

function byOption<T extends z.ZodType>(entry: T, about: string) {
  return z.record(OptionCodeSchema, entry).default({}).describe(`Option code: ${about}`);
}

function listByOption<T extends z.ZodType>([entry, about]: readonly [T, string]) {
  return byOption(z.array(entry).min(1), about);
}

/**
 * The clinic's own practice for an option, printed as the clinic's. It wins over guidelines; where they conflict and
 * the clinic says nothing, no rule prints.
 */
export const ProtocolSchema = z.strictObject({
  stay: byOption(LocalTextSchema, 'how long in hospital'),
  time_off: byOption(LocalTextSchema, 'time off work'),
  visits: byOption(LocalTextSchema, 'visits'),
  for_life: byOption(LocalTextSchema, 'what it asks for life'),
  same_as: z
    .record(OptionCodeSchema, OptionCodeSchema)
    .default({})
    .describe(
      'Option code: another whose practice below also holds for it, where it says nothing of its own',
    ),
  diet: listByOption(lists.diet),
  follow_up: listByOption(lists.follow_up),
  lifting: listByOption(lists.lifting),
  driving: listByOption(lists.driving),
  work: listByOption(lists.work),
  walking: listByOption(lists.walking),
  wound: listByOption(lists.wound),
  medicines_after: listByOption(lists.medicines_after),
  supplements: listByOption(lists.supplements),
  blood_tests: listByOption(lists.blood_tests),
  advice: listByOption(lists.advice),
  warnings: byOption(WarningsSchema, 'warning signs and their thresholds'),
  call: listByOption(lists.call),
});
export type Protocol = z.infer<typeof ProtocolSchema>;
