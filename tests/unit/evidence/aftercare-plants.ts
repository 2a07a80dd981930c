import type { Spot } from '../../helpers/shipped-files.ts';
import type { SmallFile } from './small-evidence.ts';

type Row = readonly [what: string, code: string, file: SmallFile, text: string, replacement: string];

const facts: SmallFile = 'aftercare/facts.yaml';
const sources: SmallFile = 'aftercare-sources.yaml';

/** Errors for the small evidence, by the rule that must find each. */
export const smallAftercarePlants: Readonly<Record<string, readonly Row[]>> = {
  'aftercare-source-present': [
    ['a fact of no source', 'EVIDENCE_NO_CITATION', facts, 'source: rho-2019', 'source: rho-2018'],
    [
      'a source without its year',
      'EVIDENCE_NO_CITATION',
      sources,
      'authors: R S, year: 2019,',
      'authors: R S,',
    ],
    ['a source that nobody can find', 'EVIDENCE_NO_CITATION', sources, ', title: Third', ''],
  ],
  'review-dated': [
    [
      'a source read after the release',
      'EVIDENCE_REVIEW',
      sources,
      'kind: review',
      'kind: review\n  seen_on: 2026-11-26',
    ],
  ],
  'aftercare-place-seen': [
    [
      'a fact called read of a source without an address',
      'EVIDENCE_NO_LOCATOR',
      facts,
      'seen: memory',
      'seen: page',
    ],
    [
      'a fact that does not say which of two addresses',
      'EVIDENCE_NO_LOCATOR',
      facts,
      '  seen_at: https://example.org/rho-2\n',
      '',
    ],
    [
      'an address that its source has not',
      'EVIDENCE_NO_LOCATOR',
      facts,
      'seen_at: https://example.org/rho-2',
      'seen_at: https://example.org/rho-3',
    ],
    [
      'a recalled fact with an address',
      'EVIDENCE_NO_LOCATOR',
      facts,
      'seen: memory',
      'seen: memory\n  seen_at: https://example.org/rho-2',
    ],
  ],
  'aftercare-code-fits': [
    ['an id of another topic', 'EVIDENCE_ID_MISMATCH', facts, 'id: fluid.sigma', 'id: protein.sigma'],
    ['a subject of another topic', 'EVIDENCE_INVALID', facts, 'subject: smoking-before', 'subject: fluid'],
    ['a sign without urgency', 'EVIDENCE_INVALID', facts, '  urgency: now\n', ''],
    ['an emergency that can wait', 'EVIDENCE_INVALID', facts, 'urgency: now', 'urgency: visit'],
    [
      'a habit that is urgent',
      'EVIDENCE_INVALID',
      facts,
      '  use: rule\n  value: { low: 4',
      '  urgency: today\n  use: rule\n  value: { low: 4',
    ],
  ],
  'aftercare-option-known': [
    [
      'an option that is not defined',
      'EVIDENCE_UNKNOWN_CODE',
      facts,
      'extrapolated_to: [tablet]',
      'extrapolated_to: [tablets]',
    ],
    [
      'an option in both lists',
      'EVIDENCE_INVALID',
      facts,
      'extrapolated_to: [tablet]',
      'extrapolated_to: [sleeve]',
    ],
    ['a rule for nobody', 'EVIDENCE_INVALID', facts, 'use: context', 'use: rule'],
  ],
  'aftercare-timing-stated': [
    ['a fact at no time', 'EVIDENCE_NO_TIME', facts, '  timing: { phase: each-dose }\n', ''],
    [
      'an end before its beginning',
      'EVIDENCE_NO_TIME',
      facts,
      'from_day: 0, to_day: 30',
      'from_day: 30, to_day: 1',
    ],
    ['two units at once', 'EVIDENCE_NO_TIME', facts, 'from_day: 0, to_day: 30', 'from_day: 0, to_week: 4'],
    [
      'days before, called after',
      'EVIDENCE_NO_TIME',
      facts,
      'from_day: 0, to_day: 30',
      'from_day: -3, to_day: 30',
    ],
    [
      'days after, called before',
      'EVIDENCE_NO_TIME',
      facts,
      'from_week: -4, to_week: 0',
      'from_week: -4, to_week: 1',
    ],
    ['months out of order', 'EVIDENCE_NO_TIME', facts, 'at_months: [3, 6]', 'at_months: [6, 3]'],
    ['an interval turned round', 'EVIDENCE_NO_TIME', facts, 'every_months: [6, 12]', 'every_months: [12, 6]'],
    [
      'a repetition in two ways',
      'EVIDENCE_NO_TIME',
      facts,
      'every_months: [6, 12]',
      'every: visit, every_months: 6',
    ],
    [
      'a length of no time',
      'EVIDENCE_NO_TIME',
      facts,
      'at_months: [3, 6]',
      'length: true, at_months: [3, 6]',
    ],
  ],
  'aftercare-unit-fits': [
    ['milligrams of vitamin B12', 'EVIDENCE_UNIT', facts, 'unit: microgram/day', 'unit: mg/day'],
    [
      'an amount of what has none',
      'EVIDENCE_UNIT',
      facts,
      'value: belly pain',
      'value: { low: 1, high: 2, unit: days }',
    ],
    [
      'limits turned round',
      'EVIDENCE_INTERVAL_REVERSED',
      facts,
      'low: 350, high: 500',
      'low: 500, high: 350',
    ],
    [
      'an amount without any limit',
      'EVIDENCE_INTERVAL_REVERSED',
      facts,
      'low: 1.5, high: null',
      'low: null, high: null',
    ],
  ],
  'aftercare-iron-apart': [
    ['a salt that is not one of several', 'EVIDENCE_UNIT', facts, '  one_of: iron-salt\n', ''],
    ['a salt counted as iron', 'EVIDENCE_UNIT', facts, 'subject: iron-as-ferrous-sulfate', 'subject: iron'],
    [
      'another salt than the id says',
      'EVIDENCE_UNIT',
      facts,
      'subject: iron-as-ferrous-sulfate',
      'subject: iron-as-ferrous-fumarate',
    ],
    [
      'iron by words of a salt',
      'EVIDENCE_UNIT',
      facts,
      'value: iron in food',
      'value: some ferrous gluconate',
    ],
  ],
  'aftercare-conflict-both-ways': [
    ['a conflict of one side', 'EVIDENCE_CONFLICT', facts, '  conflict_with: [fluid.rho]\n', ''],
    [
      'a conflict with itself',
      'EVIDENCE_CONFLICT',
      facts,
      'conflict_with: [fluid.rho]',
      'conflict_with: [fluid.sigma, fluid.rho]',
    ],
    [
      'a conflict with nothing',
      'EVIDENCE_UNKNOWN_CODE',
      facts,
      'conflict_with: [fluid.rho]',
      'conflict_with: [fluid.rho, fluid.tau]',
    ],
    [
      'a conflict of two treatments',
      'EVIDENCE_CONFLICT',
      facts,
      'extrapolated_to: [tablet]\n  topic: fluid',
      'topic: fluid',
    ],
  ],
  'aftercare-cited-known': [
    [
      'a caution on no fact',
      'EVIDENCE_UNKNOWN_CODE',
      'cautions.yaml',
      'sources: [{ study: alpha-2020, seen: page }]',
      'sources: [{ aftercare: fluid.tau, study: alpha-2020, seen: page }]',
    ],
    [
      'a caution that calls read what is recalled',
      'EVIDENCE_UNVERIFIED',
      'cautions.yaml',
      'sources: [{ study: alpha-2020, seen: page }]',
      'sources: [{ aftercare: fluid.sigma, study: alpha-2020, seen: page }]',
    ],
  ],
};

/** Errors whose place is not the line that was changed. */
export const aftercareElsewhere: Readonly<Record<string, readonly [file: SmallFile, text: string]>> = {
  'a source read after the release': [sources, 'citation: { authors: U V'],
  'a source that nobody can find': [sources, 'citation: { journal: K'],
  'a fact called read of a source without an address': [facts, 'seen: memory'],
  'a fact that does not say which of two addresses': [
    facts,
    'seen: page\n  seen_at: https://example.org/rho-2',
  ],
  'an address that its source has not': [facts, 'seen: page\n  seen_at: https://example.org/rho-2'],
  'a recalled fact with an address': [facts, 'seen: memory'],
  'an option in both lists': [facts, 'options: [sleeve]\n  extrapolated_to: [tablet]'],
  'a sign without urgency': [facts, '- id: warning-emergency.belly-pain.rho'],
  'a fact at no time': [facts, '- id: supplement.iron.ferrous-sulfate.rho'],
  'a salt that is not one of several': [facts, 'subject: iron-as-ferrous-sulfate'],
  'a conflict of one side': [facts, 'conflict_with: [fluid.sigma]'],
  'a conflict of two treatments': [facts, 'conflict_with: [fluid.sigma]'],
  'iron by words of a salt': [facts, 'subject: iron\n'],
};

export interface Plant extends Spot {
  readonly what: string;
  /** The rule that must find it. */
  readonly rule: string;
  readonly code: string;
  /** What stands there in place of the text. */
  readonly by: string;
  /** Text at whose line it must be found, in the entry or in another, once everything is planted. */
  readonly found: string | Spot;
}

/** Errors for a copy of the shipped evidence, each in an entry of its own. */
export const shippedAftercarePlants: readonly Plant[] = [
  {
    what: 'a fact of a source that is not there',
    rule: 'aftercare-source-present',
    code: 'EVIDENCE_NO_CITATION',
    file: 'aftercare/eating.yaml',
    entry: 'protein.range.michigan',
    text: 'source: michigan-pcp',
    by: 'source: michigan',
    found: 'source: michigan',
  },
  {
    what: 'a fact called read that nobody read',
    rule: 'aftercare-place-seen',
    code: 'EVIDENCE_NO_LOCATOR',
    file: 'aftercare/warnings.yaml',
    entry: 'warning-emergency.fainting',
    text: 'seen: memory',
    by: 'seen: page',
    found: 'seen: page',
  },
  {
    what: 'a wound that can wait for a visit as an emergency',
    rule: 'aftercare-code-fits',
    code: 'EVIDENCE_INVALID',
    file: 'aftercare/warnings.yaml',
    entry: 'warning-clinic.wound.cdc-ssi',
    text: 'urgency: today',
    by: 'urgency: now',
    found: 'urgency: now',
  },
  {
    what: 'context that became a rule',
    rule: 'aftercare-option-known',
    code: 'EVIDENCE_INVALID',
    file: 'aftercare/activity.yaml',
    entry: 'driving.reaction-time.appendectomy',
    text: 'use: context',
    by: 'use: rule',
    found: 'use: rule',
  },
  {
    what: 'tests that are never due',
    rule: 'aftercare-timing-stated',
    code: 'EVIDENCE_NO_TIME',
    file: 'aftercare/tests.yaml',
    entry: 'blood-test.core.bomss-2020',
    text: 'at_months: [3, 6, 12]',
    by: 'at_months: [3, 12, 6]',
    found: 'timing:',
  },
  {
    what: 'vitamin B12 a thousand times too strong, as the page prints it',
    rule: 'aftercare-unit-fits',
    code: 'EVIDENCE_UNIT',
    file: 'aftercare/supplements.yaml',
    entry: 'supplement.vitamin-b12.oral.asmbs-2016',
    text: 'unit: microgram/day',
    by: 'unit: mg/day',
    found: 'value:',
  },
  {
    what: 'the weight of a salt as elemental iron',
    rule: 'aftercare-iron-apart',
    code: 'EVIDENCE_UNIT',
    file: 'aftercare/supplements.yaml',
    entry: 'supplement.iron.ferrous-sulfate.daily.bomss-2020',
    text: 'subject: iron-as-ferrous-sulfate',
    by: 'subject: iron',
    found: 'subject:',
  },
  {
    what: 'a conflict that one of two guidelines no longer names',
    rule: 'aftercare-conflict-both-ways',
    code: 'EVIDENCE_CONFLICT',
    file: 'aftercare/eating.yaml',
    entry: 'fluid.band.textbook',
    text: '  conflict_with: [fluid.daily.aace-2013]\n',
    by: '',
    found: { file: 'aftercare/eating.yaml', entry: 'fluid.daily.aace-2013', text: 'conflict_with:' },
  },
  {
    what: 'a caution that stands on a fact that is not there',
    rule: 'aftercare-cited-known',
    code: 'EVIDENCE_UNKNOWN_CODE',
    file: 'cautions.yaml',
    entry: '',
    text: 'aftercare: smoking.stop.eras-2021',
    by: 'aftercare: smoking.stop.eras-2022',
    found: 'aftercare: smoking.stop.eras-2022',
  },
];
