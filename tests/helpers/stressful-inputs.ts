import fc from 'fast-check';
import { stringify } from 'yaml';

import {
  conditionCodes,
  documentKinds,
  historyCodes,
  matterCodes,
  medicineCodes,
  reasonCodes,
} from '../../src/model/codes.ts';
import { testCodes } from '../../src/model/aftercare-codes.ts';
import {
  adviceCodes,
  medicineTopics,
  signCodes,
  staffCodes,
  supplementCodes,
} from '../../src/model/protocol-codes.ts';
import { localText, nameOf } from './stressful-words.ts';

/** A case and a clinic profile as a clinic might write them, as texts of their files. */
export interface StressfulInputs {
  readonly case: string;
  readonly clinic: string;
  readonly language: 'en' | 'es';
}

export interface Edition {
  readonly language: 'en' | 'es';
  readonly paper: 'letter' | 'a4';
}

/** What a person had before, and what is in place. A band may be asked to come out. */
const pasts = [
  { asked: 'first-operation', operation: null, status: null },
  { asked: 'second-operation', operation: 'band', status: 'in-place' },
  { asked: 'second-operation', operation: 'sleeve', status: 'in-place' },
  { asked: 'second-operation', operation: 'bypass', status: 'in-place' },
  { asked: 'second-operation', operation: 'plication', status: 'in-place' },
  { asked: 'second-operation', operation: 'endoscopic-sleeve', status: 'in-place' },
  { asked: 'after-removal', operation: 'band', status: 'removed' },
] as const;
type Past = (typeof pasts)[number];

const treatments = [
  'sleeve',
  'bypass',
  'one-anastomosis-bypass',
  'duodenal-switch',
  'single-anastomosis-switch',
  'band',
  'plication',
  'endoscopic-sleeve',
  'balloon',
] as const;
const otherOptions = ['semaglutide', 'tirzepatide', 'lifestyle'] as const;

const phone = fc.constantFrom('555-0107', '+44 (0)20 7946 0991 / 12');
const reason = fc.oneof(
  fc.record({ code: fc.constantFrom(...reasonCodes) }),
  fc.record({ text: localText() }),
);
const reasons = fc.uniqueArray(reason, { minLength: 1, maxLength: 5, selector: JSON.stringify });

function someOf<T>(values: readonly T[]): fc.Arbitrary<T[]> {
  return fc.oneof(fc.subarray([...values], { maxLength: 3 }), fc.subarray([...values]));
}

/** The chosen treatment stands among the options, of which there are two to ten. */
function optionsOf({ operation, status }: Past): fc.Arbitrary<{ options: string[]; chosen: string }> {
  const removal = operation === 'band' && status === 'in-place' ? ['band-removal'] : [];
  const operations: readonly string[] = [...treatments, ...removal];
  return fc.constantFrom(...operations).chain((chosen) => {
    const others = [...operations, ...otherOptions].filter((option) => option !== chosen);
    const count = fc.constantFrom(0, 1, 3, 4, 8);
    return count
      .chain((length) => fc.shuffledSubarray(others, { minLength: length, maxLength: length }))
      .map((rest) => ({ options: [chosen, ...rest, 'no-operation'], chosen }));
  });
}

const person = fc.record({
  name: nameOf(80),
  born: fc.constantFrom('1958-03-08', '1985-12-24', '2001-06-30'),
  sex: fc.constantFrom('female', 'male', 'not-stated'),
  height: fc.constantFrom('158 cm', '183 cm', '5 ft 11 in'),
  weight: fc.constantFrom('78.5 kg', '118 kg', '171.5 kg', '458 lb'),
  ancestry_threshold: fc.constantFrom('standard', 'asian'),
});

function healthOf({ operation, status }: Past) {
  const earlier = {
    operation: fc.constant(operation),
    status: fc.constant(status),
    date: fc.constant('2019-03'),
    weight_before: fc.constant('150.5 kg'),
    lowest_weight: fc.constant('84 kg'),
    trouble: fc.constantFrom('reflux', 'weight-regain'),
  };
  const optional = { requiredKeys: ['operation', 'status'] } satisfies fc.RecordConstraints<
    keyof typeof earlier
  >;
  return fc.record(
    {
      smoking: fc.constantFrom('never', 'former', 'current', 'not-asked'),
      conditions: someOf(conditionCodes),
      medicines: someOf(medicineCodes),
      history: someOf(historyCodes),
      earlier_operations:
        operation === null ? fc.constant([]) : fc.record(earlier, optional).map((one) => [one]),
    },
    { requiredKeys: ['smoking', 'earlier_operations'] },
  );
}

function decisionOf(past: Past) {
  const matter = fc.oneof(
    fc.record({ code: fc.constantFrom(...matterCodes) }),
    fc.record({ text: localText() }),
  );
  return optionsOf(past).chain(({ options, chosen }) => {
    const against = options.filter((option) => option !== chosen && option !== 'no-operation');
    return fc
      .record(
        {
          leaning: reasons.map((list) => ({ option: chosen, reasons: list })),
          advised_against: fc
            .subarray(against, { maxLength: Math.min(3, against.length) })
            .chain((list) =>
              fc.tuple(...list.map((option) => fc.record({ option: fc.constant(option), reasons }))),
            ),
          matters_most: fc.uniqueArray(matter, { maxLength: 5, selector: JSON.stringify }),
        },
        { requiredKeys: [] },
      )
      .map((said) => ({ asked: past.asked, options, chosen, ...said }));
  });
}

const cases = fc.constantFrom(...pasts).chain((past) =>
  fc.record({
    plainleaf: fc.constant(1),
    case: fc.constantFrom('Q-1', 'QUILLBROOK.2026-11-24_REFERENCE-00417.A'),
    example: fc.boolean(),
    languages: fc.constant(['en', 'es']),
    documents: fc.constant([...documentKinds]),
    patient: person,
    health: healthOf(past),
    decision: decisionOf(past),
    plan: fc.record(
      {
        operation_date: fc.constantFrom('2026-12-31', '2027-02-10'),
        surgeon: fc.constant('s1'),
        next_visit: fc.constant('2026-12-03'),
      },
      { requiredKeys: ['operation_date', 'surgeon'] },
    ),
    interpreter: fc.constantFrom({ needed: false }, { needed: true, language: 'es' }),
  }),
);

/** Stages of eating without a gap, from none to eight. */
const diet = fc
  .array(fc.record({ days: fc.integer({ min: 1, max: 12 }), name: localText(40), what: localText() }), {
    minLength: 1,
    maxLength: 8,
  })
  .map((stages) => {
    let next = 0;
    return stages.map(({ days, name, what }, index) => {
      const from = next;
      next += days;
      return { name, what, from_day: from, ...(index === stages.length - 1 ? {} : { to_day: next - 1 }) };
    });
  });

const spans = [
  '1 day',
  '2 days',
  '1 week',
  '2 weeks',
  '4 weeks',
  '6 weeks',
  '3 months',
  '12 months',
] as const;

function everyEntry<T>(entries: readonly fc.Arbitrary<T>[]): fc.Arbitrary<T[]> {
  return fc.tuple(...entries);
}

/** Entries for some of the keys, each key once. */
function forSome<K extends string, T>(
  keys: readonly K[],
  entry: (key: K) => fc.Arbitrary<T>,
): fc.Arbitrary<T[]> {
  const few = fc.subarray([...keys], { minLength: 1, maxLength: 2 });
  return fc
    .oneof(few, fc.subarray([...keys], { minLength: 1 }))
    .chain((chosen) => everyEntry(chosen.map(entry)));
}

const visits = forSome(spans, (after) =>
  fc.record(
    {
      after: fc.constant(after),
      with: fc.uniqueArray(fc.constantFrom(...staffCodes), { minLength: 1, maxLength: 8 }),
      way: fc.constantFrom('in-person', 'phone', 'video'),
      what: localText(),
      every: fc.constant('6 months'),
    },
    { requiredKeys: ['after', 'with'] },
  ),
);

const activity = fc.array(
  fc.record({ from: fc.constantFrom(...spans), what: localText() }, { requiredKeys: ['what'] }),
  { minLength: 1, maxLength: 4 },
);

const supplements = forSome(
  supplementCodes.filter((code) => !code.startsWith('iron-as')),
  (supplement) =>
    fc.record(
      {
        supplement: fc.constant(supplement),
        product: localText(80),
        dose: fc.constantFrom('1 tablet', '2 capsules'),
        times_a_day: fc.integer({ min: 1, max: 6 }),
        from: fc.constantFrom(...spans),
        how: localText(),
      },
      { requiredKeys: ['supplement', 'product'] },
    ),
);

const bloodTests = fc.array(
  fc.record(
    {
      tests: fc.uniqueArray(fc.constantFrom(...testCodes), { minLength: 1, maxLength: 14 }),
      other: localText(),
      at: fc.constantFrom(['3 months'], ['1 month', '3 months', '6 months', '12 months', '24 months']),
      every: fc.constant('12 months'),
    },
    { requiredKeys: ['tests', 'at'] },
  ),
  { minLength: 1, maxLength: 4 },
);

const signs = fc
  .tuple(
    fc.shuffledSubarray([...signCodes], { minLength: 1 }),
    fc.array(localText(), { maxLength: 3 }),
    fc.tuple(fc.nat(12), fc.nat(12)),
    fc.constantFrom({}, { fever: '38 C', pulse: 120 }),
  )
  .map(([codes, texts, [now, today], numbers]) => {
    const coded = codes.map((code) => ({ code }));
    return {
      ...numbers,
      now: [...coded.slice(0, now + 1), ...texts.slice(0, 1).map((text) => ({ text }))],
      today: [...coded.slice(now + 1, now + 1 + today), ...texts.slice(1, 2).map((text) => ({ text }))],
      at_visit: [...coded.slice(now + 1 + today), ...texts.slice(2).map((text) => ({ text }))],
    };
  });

const call = fc.array(
  fc.record(
    {
      who: localText(60),
      phone,
      urgency: fc.constantFrom(['now'], ['today', 'visit'], ['now', 'today', 'visit']),
      hours: localText(80),
    },
    { requiredKeys: ['who', 'phone', 'urgency'] },
  ),
  { minLength: 1, maxLength: 5 },
);

const advice = forSome(adviceCodes, (about) => fc.record({ about: fc.constant(about), what: localText() }));
const medicinesAfter = forSome(medicineTopics, (about) =>
  fc.record({ about: fc.constant(about), what: localText() }),
);

/** Treatments that have the practice of a sleeve. */
const operated = [...treatments.filter((option) => option !== 'sleeve'), 'band-removal'];

/** One practice for every treatment: a topic is written for all of them or for none. */
const protocol = fc
  .record(
    {
      stay: localText(120),
      time_off: localText(120),
      visits: localText(),
      for_life: localText(),
      diet,
      follow_up: visits,
      lifting: activity,
      driving: activity,
      work: activity,
      walking: activity,
      wound: activity,
      medicines_after: medicinesAfter,
      supplements,
      blood_tests: bloodTests,
      advice,
      call,
    },
    { requiredKeys: ['supplements'] },
  )
  .chain((topics) => signs.map((warnings) => ({ ...topics, warnings })))
  .map((topics) => ({
    ...Object.fromEntries(Object.entries(topics).map(([topic, entry]) => [topic, { sleeve: entry }])),
    same_as: Object.fromEntries(operated.map((option) => [option, 'sleeve'])),
  }));

const study = fc.record({
  oversight: localText(),
  approval: fc.constant('TF-2025-118'),
  contact: phone,
  form: fc.constantFrom(null, 'Study consent, version 3'),
});

const clinics = (paper: 'letter' | 'a4') =>
  fc.record(
    {
      plainleaf: fc.constant(1),
      clinic: fc.record({
        name: nameOf(60),
        address: nameOf(160),
        jurisdiction: fc.constantFrom('US', 'UK', 'Europe'),
        phones: fc.record({ day: phone, out_of_hours: phone, emergency: phone }),
        paper: fc.constant(paper),
        units: fc.constantFrom('metric', 'us', 'both'),
      }),
      surgeons: fc.record({ id: fc.constant('s1'), name: nameOf(60) }).map((one) => [one]),
      language_notice: fc.record({
        languages: fc.constantFrom(['en'], ['en', 'es']),
        phone,
      }),
      protocol,
      under_study: fc
        .constantFrom(null, {})
        .chain((none) =>
          none === null ? fc.constant({}) : fc.record({ plication: study, 'endoscopic-sleeve': study }),
        ),
      second_opinion: fc.array(fc.record({ name: nameOf(80), phone }), { maxLength: 3 }),
    },
    { requiredKeys: ['plainleaf', 'clinic', 'surgeons', 'language_notice', 'protocol'] },
  );

/** What a clinic may write that the checks of its files let pass, for documents of every kind. */
export function stressfulInputs({ language, paper }: Edition): fc.Arbitrary<StressfulInputs> {
  return fc.tuple(cases, clinics(paper)).map(([one, clinic]) => ({
    case: stringify(one, { aliasDuplicateObjects: false }),
    clinic: stringify(clinic, { aliasDuplicateObjects: false }),
    language,
  }));
}
