import { describe, expect, it } from 'vitest';

import { evidenceRules } from '../../../src/evidence/index.ts';
import { aftercareElsewhere, smallAftercarePlants } from './aftercare-plants.ts';
import { diagnose, findingsOf, foundAt, plant, smallEvidence } from './small-evidence.ts';
import type { SmallFile } from './small-evidence.ts';

type Plant = readonly [what: string, code: string, file: SmallFile, text: string, replacement: string];

const leak = 'sleeve.leak.30d.alpha-2020';

/** From what undoing takes to the end of its row. */
function undoing(how: string, seen: string): string {
  return `how: ${how}
    what_remains: A narrow stomach.
    weight_after: { statement: Not known., basis: not-known }
    data:
      - { what: undone anyway, events: 1, n: 4, study: alpha-2020, seen: ${seen} }
  change_to: []
  sources:
    - { point: all of it, study: alpha-2020, seen: ${seen} }`;
}

/** An outcome with parts that do not fit. */
function partOf(code: string, what: string, parts: string): Plant {
  const head = `{ code: ${code},`;
  return [what, 'EVIDENCE_INVALID', 'outcomes.yaml', head, `${head} parts: ${parts},`];
}

/** One planted error a row; the rule that must find it is the heading. */
const figurePlants: Readonly<Record<string, readonly Plant[]>> = {
  'release-dated': [
    [
      'a next review before the release',
      'EVIDENCE_INVALID',
      'release.yaml',
      'next_review: 2027-11-25',
      'next_review: 2026-01-01',
    ],
  ],
  'release-history': [
    [
      'a version that is not the month of its date',
      'EVIDENCE_INVALID',
      'release.yaml',
      "version: '2026.11'",
      "version: '2026.10'",
    ],
    [
      'a first release that changed something',
      'EVIDENCE_INVALID',
      'release.yaml',
      'changes: null',
      'changes: { added: [], changed: [], withdrawn: [] }',
    ],
    [
      'an earlier release that is later',
      'EVIDENCE_INVALID',
      'release.yaml',
      'changes: null\nearlier: []',
      told({ earlier: [first('2027.01', '2027-01-25')] }),
    ],
    [
      'a release of which nothing is told',
      'EVIDENCE_INVALID',
      'release.yaml',
      'changes: null\nearlier: []',
      `changes: null\nearlier: [${first('2026.05', '2026-05-25')}]`,
    ],
    [
      'one id twice in a release',
      'EVIDENCE_INVALID',
      'release.yaml',
      'changes: null\nearlier: []',
      told({ added: [leak], changed: [leak] }),
    ],
    [
      'an added record that is not there, and was not withdrawn',
      'EVIDENCE_INVALID',
      'release.yaml',
      'changes: null\nearlier: []',
      told({ added: ['sleeve.gone.30d.alpha-2020'] }),
    ],
    [
      'a withdrawn record that is there',
      'EVIDENCE_INVALID',
      'release.yaml',
      'changes: null\nearlier: []',
      told({ withdrawn: [leak] }),
    ],
  ],
  'review-dated': [
    [
      'a study read after the release',
      'EVIDENCE_REVIEW',
      'studies/a.yaml',
      'cohort: gamma',
      'seen_on: 2026-11-26\n  cohort: gamma',
    ],
    [
      'a figure read before its study came out',
      'EVIDENCE_REVIEW',
      'records/tablet.yaml',
      'seen: page-2nd',
      'seen_on: 2020-12-31\n  seen: page-2nd',
    ],
    [
      'a review before the reading',
      'EVIDENCE_REVIEW',
      'studies/a.yaml',
      'cohort: gamma',
      'review_by: 2026-10-01\n  seen_on: 2026-10-01\n  cohort: gamma',
    ],
    [
      'a review before the first release',
      'EVIDENCE_REVIEW',
      'records/tablet.yaml',
      'seen: page-2nd',
      'review_by: 2026-11-25\n  seen: page-2nd',
    ],
    [
      'an added record that nobody says when they read',
      'EVIDENCE_REVIEW',
      'release.yaml',
      'changes: null\nearlier: []',
      told({ added: [leak] }),
    ],
  ],
  'maturity-agrees': [
    [
      'an option called settled that a body calls newer',
      'EVIDENCE_REVIEW',
      'standing.yaml',
      'jurisdiction: US',
      'maturity: newer\n  jurisdiction: US',
    ],
    [
      'an option called settled that is under study',
      'EVIDENCE_REVIEW',
      'standing.yaml',
      'standing: endorsed-by-society',
      'standing: under-study',
    ],
    [
      'an option called newer that everybody has under study',
      'EVIDENCE_REVIEW',
      'standing.yaml',
      'option: sleeve\n  standing: endorsed-by-society',
      'option: tablet\n  standing: under-study',
    ],
  ],
  'reversal-stated': [
    [
      'an option of which nothing says whether it can be undone',
      'EVIDENCE_INVALID',
      'reversibility.yaml',
      '- option: usual-care',
      '- option: leak',
    ],
    [
      'a part that is taken out and comes back',
      'EVIDENCE_INVALID',
      'reversibility.yaml',
      "option: tablet\n  undo:\n    possible: 'yes'",
      "option: tablet\n  undo:\n    takes_out: stomach\n    possible: 'yes'",
    ],
  ],
  'id-unique': [
    ['one study id twice', 'EVIDENCE_DUPLICATE_ID', 'studies/a.yaml', '- id: gamma-2022', '- id: beta-2021'],
    ['one metric code twice', 'EVIDENCE_DUPLICATE_ID', 'metrics.yaml', '- { code: score', '- { code: TWL'],
  ],
  'code-known': [
    [
      'a study that is not there',
      'EVIDENCE_UNKNOWN_CODE',
      'risk-factors.yaml',
      'study: alpha-2020',
      'study: delta-2020',
    ],
    [
      'an outcome that is not there',
      'EVIDENCE_UNKNOWN_CODE',
      'records/tablet.yaml',
      '  outcome: responder-5-TWL',
      '  outcome: responder-6-TWL',
    ],
    [
      'a metric that is not there',
      'EVIDENCE_UNKNOWN_CODE',
      'records/sleeve.yaml',
      'metric: TWL',
      'metric: TWM',
    ],
    [
      'an option that is not there',
      'EVIDENCE_UNKNOWN_CODE',
      'cautions.yaml',
      'options: [tablet]',
      'options: [tablett]',
    ],
    [
      'an option held up as better that is not there',
      'EVIDENCE_UNKNOWN_CODE',
      'cautions.yaml',
      'effect: extra-risk',
      'favours: [tablett]\n  effect: extra-risk',
    ],
    [
      'a condition that no case can have',
      'EVIDENCE_UNKNOWN_CODE',
      'cautions.yaml',
      'when: { condition: reflux }\n  options: [sleeve]',
      'when: { condition: refluxx }\n  options: [sleeve]',
    ],
    [
      'a comparison with nothing known',
      'EVIDENCE_UNKNOWN_CODE',
      'records/sleeve.yaml',
      'versus: usual-care',
      'versus: usual',
    ],
    [
      'an option to take figures from that is not there',
      'EVIDENCE_UNKNOWN_CODE',
      'options.yaml',
      'choosable: true, figures_from: usual-care',
      'choosable: true, figures_from: care',
    ],
    [
      'an outcome of a topic that is not there',
      'EVIDENCE_UNKNOWN_CODE',
      'topics.yaml',
      'rows: [sore]',
      'rows: [soar]',
    ],
    [
      'a drawn outcome that is not there',
      'EVIDENCE_UNKNOWN_CODE',
      'topics.yaml',
      'picture: [leak]',
      'picture: [lake]',
    ],
    [
      'a benefit for a condition that no case can have',
      'EVIDENCE_UNKNOWN_CODE',
      'topics.yaml',
      'condition: reflux',
      'condition: refluxx',
    ],
    [
      'trouble that is new without a condition that no case can have',
      'EVIDENCE_UNKNOWN_CODE',
      'outcomes.yaml',
      'new_without: reflux',
      'new_without: refluxx',
    ],
    [
      'a part that is no outcome',
      'EVIDENCE_UNKNOWN_CODE',
      'outcomes.yaml',
      'new_without: reflux',
      'parts: [{ outcomes: [lake], held_against: records }]',
    ],
    [
      'an event that no case can have',
      'EVIDENCE_UNKNOWN_CODE',
      'outcomes.yaml',
      'new_without: reflux',
      'never_after: reflux',
    ],
    [
      'a source that is no study',
      'EVIDENCE_UNKNOWN_CODE',
      'reversibility.yaml',
      '{ point: all of it, study: alpha-2020',
      '{ point: all of it, url: "https://example.org", study: alpha',
    ],
  ],
  'id-matches-content': [
    [
      'an id with another outcome',
      'EVIDENCE_ID_MISMATCH',
      'records/sleeve.yaml',
      '- id: sleeve.stay.peri',
      '- id: sleeve.leak.peri',
    ],
    [
      'an id with another time',
      'EVIDENCE_ID_MISMATCH',
      'records/sleeve.yaml',
      '- id: sleeve.weight-loss.12m',
      '- id: sleeve.weight-loss.24m',
    ],
    [
      'an id that only begins like its study',
      'EVIDENCE_ID_MISMATCH',
      'records/tablet.yaml',
      '.beta-2021\n',
      '.beta-2021b\n',
    ],
    [
      'a record in the file of another option',
      'EVIDENCE_ID_MISMATCH',
      'records/tablet.yaml',
      '  option: tablet',
      '  option: sleeve',
    ],
  ],
  'citation-complete': [
    [
      'neither title nor authors with journal',
      'EVIDENCE_NO_CITATION',
      'studies/a.yaml',
      'citation: { authors: C D, year: 2022, journal: K }',
      'citation: { year: 2022, journal: K }',
    ],
    [
      'a missing year that nobody declared',
      'EVIDENCE_NO_CITATION',
      'studies/a.yaml',
      'citation: { year: 2021, title: Second }',
      'citation: { title: Second }',
    ],
  ],
  'years-in-order': [
    [
      'years the wrong way round',
      'EVIDENCE_INVALID',
      'studies/a.yaml',
      'cohort: gamma',
      'years: { from: 2015, to: 2010 }\n  cohort: gamma',
    ],
    [
      'people treated after publication',
      'EVIDENCE_INVALID',
      'studies/a.yaml',
      'cohort: gamma',
      'years: { to: 2023 }\n  cohort: gamma',
    ],
  ],
  'place-where-seen': [
    [
      'a page-read record whose study has no address',
      'EVIDENCE_NO_LOCATOR',
      'records/sleeve.yaml',
      'seen: memory',
      'seen: page',
    ],
    [
      'a page-read point of a caution without address',
      'EVIDENCE_NO_LOCATOR',
      'cautions.yaml',
      '[{ study: alpha-2020, seen: page }]',
      '[{ study: gamma-2022, seen: page }]',
    ],
    [
      'a page-read figure of a reversal without address',
      'EVIDENCE_NO_LOCATOR',
      'reversibility.yaml',
      'n: 4, study: alpha-2020',
      'n: 4, study: gamma-2022',
    ],
    [
      'a point of a caution that was read in a copy of nobody knows what',
      'EVIDENCE_NO_LOCATOR',
      'cautions.yaml',
      '[{ study: alpha-2020, seen: page }]',
      "[{ url: 'https://copies.example/a', seen: page }]",
    ],
    [
      'a page-read definition without address',
      'EVIDENCE_NO_LOCATOR',
      'definitions.yaml',
      'study: alpha-2020',
      'study: gamma-2022',
    ],
  ],
  'overlap-both-ways': [
    [
      'an overlap written one way',
      'EVIDENCE_OVERLAP',
      'studies/a.yaml',
      '  cohort: gamma',
      '  overlaps: [alpha-2020]\n  cohort: gamma',
    ],
    [
      'an overlap with itself',
      'EVIDENCE_OVERLAP',
      'studies/a.yaml',
      'overlaps: [alpha-2020]',
      'overlaps: [beta-2021]',
    ],
    [
      'an overlap with nothing',
      'EVIDENCE_UNKNOWN_CODE',
      'studies/a.yaml',
      'overlaps: [alpha-2020]',
      'overlaps: [omega]',
    ],
  ],
  'overlap-group-closed': [
    [
      'an overlap with one of two studies of a cohort',
      'EVIDENCE_OVERLAP',
      'studies/a.yaml',
      'cohort: gamma',
      'cohort: beta',
    ],
  ],
  'people-stated': [
    [
      'a mean outside its range',
      'EVIDENCE_NO_PEOPLE',
      'records/sleeve.yaml',
      'mean: 45, sd: 6',
      'mean: 25, sd: 6',
    ],
    [
      'a spread without a mean',
      'EVIDENCE_NO_PEOPLE',
      'records/sleeve.yaml',
      'age: { mean: 44 }',
      'age: { sd: 10 }',
    ],
    ['a BMI that says nothing', 'EVIDENCE_NO_PEOPLE', 'records/sleeve.yaml', 'age: { mean: 44 }', 'age: {}'],
    [
      'a group that its ages contradict',
      'EVIDENCE_NO_PEOPLE',
      'records/sleeve.yaml',
      'age: { mean: 44 }',
      'group: over-65, age: { mean: 44 }',
    ],
    [
      'limits of BMI that are the same for women and men',
      'EVIDENCE_NO_PEOPLE',
      'records/sleeve.yaml',
      'low: 35, high: 60 }',
      'low: 35, high: 60 }, bmi_by_sex: { female: { low: 35, high: 60 }, male: { low: 35, high: 60 } }',
    ],
    [
      'a BMI that is wider than it was for men',
      'EVIDENCE_NO_PEOPLE',
      'records/sleeve.yaml',
      'low: 35, high: 60 }',
      'low: 35, high: 60 }, bmi_by_sex: { female: { low: 35 }, male: { low: 40 } }',
    ],
    [
      'an operation on people nobody operated on',
      'EVIDENCE_NO_PEOPLE',
      'records/sleeve.yaml',
      'indication: unknown',
      'indication: none',
    ],
  ],
  'exchange-stated': [
    [
      'a band of which nothing says when it came out',
      'EVIDENCE_NO_PEOPLE',
      'records/sleeve.yaml',
      'indication: first-operation, bmi',
      'indication: after-band, bmi',
    ],
    [
      'an exchange in people who had no band',
      'EVIDENCE_NO_PEOPLE',
      'records/sleeve.yaml',
      'indication: first-operation, bmi',
      'indication: first-operation, stages: one, bmi',
    ],
  ],
  'subgroup-stated': [
    [
      'women who are not stated',
      'EVIDENCE_NO_PEOPLE',
      'records/sleeve.yaml',
      '- id: sleeve.leak.12m.alpha-2020\n',
      '- id: sleeve.leak.12m.alpha-2020.women\n',
    ],
    [
      'men and a BMI of which only the sex is stated',
      'EVIDENCE_NO_PEOPLE',
      'records/sleeve.yaml',
      '- id: sleeve.stay.peri.gamma-2022\n  study: gamma-2022\n  option: sleeve\n  outcome: stay\n  kind: duration\n  people: {',
      '- id: sleeve.stay.peri.gamma-2022.men-bmi40-45\n  study: gamma-2022\n  option: sleeve\n  outcome: stay\n  kind: duration\n  people: { female_percent: 0,',
    ],
    [
      'people with diabetes who are not stated',
      'EVIDENCE_NO_PEOPLE',
      'records/tablet.yaml',
      '.12m.beta-2021\n',
      '.12m.beta-2021.diabetes\n',
    ],
    [
      'people sent home the same day who are not stated',
      'EVIDENCE_NO_PEOPLE',
      'records/tablet.yaml',
      '.12m.beta-2021\n',
      '.12m.beta-2021.same-day\n',
    ],
  ],
  'scope-defined': [
    [
      'a figure that counts less, and nothing says what',
      'EVIDENCE_INVALID',
      'records/sleeve.yaml',
      'kind: risk\n  people: { indication: first-operation, bmi',
      'scope: narrower\n  kind: risk\n  people: { indication: first-operation, bmi',
    ],
    [
      'a figure of new cases of what nobody is said to be free of',
      'EVIDENCE_INVALID',
      'records/sleeve.yaml',
      'kind: risk\n  people: { indication: first-operation, bmi',
      'new_only: true\n  kind: risk\n  people: { indication: first-operation, bmi',
    ],
  ],
  'dose-stated': [
    [
      'a medicine without a dose',
      'EVIDENCE_INVALID',
      'records/tablet.yaml',
      'option: tablet\n  outcome: responder-5-TWL\n  dose: unstated\n',
      'option: tablet\n  outcome: responder-5-TWL\n',
    ],
    [
      'an operation with a dose',
      'EVIDENCE_INVALID',
      'records/sleeve.yaml',
      'value: { events: 3, n: 200 }',
      'dose: unstated\n  value: { events: 3, n: 200 }',
    ],
    [
      'one amount twice',
      'EVIDENCE_INVALID',
      'records/tablet.yaml',
      'dose: unstated',
      'dose: { mg: [5, 5], per: week }',
    ],
    [
      'an id with another dose',
      'EVIDENCE_INVALID',
      'records/tablet.yaml',
      '.beta-2021\n',
      '.beta-2021.5mg\n',
    ],
  ],
  'time-stated': [
    [
      'days and months at once',
      'EVIDENCE_NO_TIME',
      'records/sleeve.yaml',
      'time: { basis: peri-operative }',
      'time: { days: 3, months: 1, basis: at }',
    ],
    [
      'a state at no time',
      'EVIDENCE_NO_TIME',
      'records/sleeve.yaml',
      'time: { basis: peri-operative }',
      'time: { basis: at }',
    ],
    [
      'peri-operative with a number',
      'EVIDENCE_NO_TIME',
      'records/sleeve.yaml',
      'time: { basis: peri-operative }',
      'time: { days: 3, basis: peri-operative }',
    ],
  ],
  'outcome-possible': [
    [
      'a figure for what is said to be impossible',
      'EVIDENCE_INVALID',
      'outcomes.yaml',
      'meaning: Lost 5%., applies_to: [medicine]',
      'meaning: Lost 5%., applies_to: [operation]',
    ],
  ],
  'topic-fits': [
    [
      'an outcome of another group',
      'EVIDENCE_INVALID',
      'topics.yaml',
      'most: 1, rows: [leak]',
      'most: 1, rows: [taste]',
    ],
    ['an outcome twice', 'EVIDENCE_INVALID', 'topics.yaml', 'rows: [sore]', 'rows: [sore, sore]'],
    [
      'a benefit that is none',
      'EVIDENCE_INVALID',
      'topics.yaml',
      'outcomes: [wellbeing]',
      'outcomes: [taste]',
    ],
  ],
  'parts-fit': [
    partOf('leak', 'an outcome that is part of itself', '[{ outcomes: [leak], held_against: first-month }]'),
    partOf('sore', 'a part twice', '[{ outcomes: [leak, leak], held_against: records }]'),
    partOf(
      'sore',
      'a part that is better the other way',
      '[{ outcomes: [wellbeing], held_against: records }]',
    ),
    partOf(
      'sore',
      'a part that cannot follow',
      '[{ outcomes: [leak], held_against: records, after: [medicine] }]',
    ),
    partOf('sore', 'a whole that no first month shows', '[{ outcomes: [leak], held_against: first-month }]'),
    [
      'a part of which its whole is a part',
      'EVIDENCE_INVALID',
      'outcomes.yaml',
      'applies_to: [operation], new_without: reflux }\n- { code: taste, group: [living-with-it], better: lower,',
      'applies_to: [operation], parts: [{ outcomes: [taste], held_against: records }] }\n- { code: taste, parts: [{ outcomes: [leak], held_against: records }, { outcomes: [sore], held_against: records }], group: [living-with-it], better: lower,',
    ],
  ],
  'reasons-checked': [
    [
      'a reason that nothing checks',
      'EVIDENCE_INVALID',
      'reasons.yaml',
      '- { code: reflux-better, looks: [] }',
      '# nothing',
    ],
    [
      'a reason twice',
      'EVIDENCE_INVALID',
      'reasons.yaml',
      '- { code: reflux-worse, looks: [] }\n',
      '- { code: reflux-worse, looks: [] }\n- { code: reflux-worse, looks: [] }\n',
    ],
    [
      'a reason judged by an outcome of another sort',
      'EVIDENCE_INVALID',
      'reasons.yaml',
      'outcomes: [weight-loss]',
      'outcomes: [leak]',
    ],
    [
      'a wish judged by a reason that is judged by wishes',
      'EVIDENCE_INVALID',
      'reasons.yaml',
      'reasons: { most-weight-loss: more-weight-loss }',
      'reasons: { most-weight-loss: fits-what-matters }',
    ],
  ],
  'consent-elements-complete': [
    [
      'an element twice',
      'EVIDENCE_INVALID',
      'consent-elements.yaml',
      '- { id: second, says: two, by: study',
      '- { id: first, says: two, by: study',
    ],
    [
      'an element of these pages without its place',
      'EVIDENCE_INVALID',
      'consent-elements.yaml',
      'by: pages, where: [{ block: facts, words: consent.facts.clinic }]',
      'by: pages',
    ],
    [
      'an element of another form with a place on these pages',
      'EVIDENCE_INVALID',
      'consent-elements.yaml',
      'says: two, by: study',
      'says: two, by: study, where: [{ block: facts, words: consent.facts.clinic }]',
    ],
    [
      'an element read on no page',
      'EVIDENCE_INVALID',
      'consent-elements.yaml',
      "seen: page, seen_at: ['https://example.org/e']",
      'seen: page',
    ],
    [
      'an element with a page on which it was not read',
      'EVIDENCE_INVALID',
      'consent-elements.yaml',
      'seen: memory',
      "seen: memory, seen_at: ['https://example.org/e']",
    ],
    [
      'an element of a law that nobody but us has written',
      'EVIDENCE_INVALID',
      'consent-elements.yaml',
      'document: court-ruling, seen: memory',
      'document: court-ruling, seen: own',
    ],
  ],
  'criteria-complete': [
    [
      'a criterion left out',
      'EVIDENCE_INVALID',
      'criteria.yaml',
      '- { id: cm-3, set: clear-communication, says: three, by: none, seen: memory }',
      '# nothing',
    ],
    [
      'a criterion twice',
      'EVIDENCE_INVALID',
      'criteria.yaml',
      '- { id: cm-3, set: clear-communication',
      '- { id: cm-2, set: clear-communication',
    ],
    [
      'a criterion of these pages that nothing looks for',
      'EVIDENCE_INVALID',
      'criteria.yaml',
      'by: generator, check: person, after',
      'by: generator, after',
    ],
    [
      'a criterion of no page that something looks for',
      'EVIDENCE_INVALID',
      'criteria.yaml',
      'says: three, by: none,',
      'says: three, by: none, check: person,',
    ],
    [
      'a criterion that hangs on one that is not there',
      'EVIDENCE_INVALID',
      'criteria.yaml',
      'after: cm-1',
      'after: cm-99',
    ],
    [
      'a criterion read on no page',
      'EVIDENCE_INVALID',
      'criteria.yaml',
      "seen: page, seen_at: ['https://example.org/c']",
      'seen: page',
    ],
    [
      'a place where a criterion was not read',
      'EVIDENCE_INVALID',
      'criteria.yaml',
      'after: cm-1, seen: memory',
      "after: cm-1, seen: memory, seen_at: ['https://example.org/c']",
    ],
  ],
  'share-has-denominator': [
    [
      'events without people',
      'EVIDENCE_NO_DENOMINATOR',
      'records/sleeve.yaml',
      'value: { events: 3, n: 200 }',
      'value: { events: 3 }',
    ],
    [
      'a rate without its time',
      'EVIDENCE_NO_DENOMINATOR',
      'records/sleeve.yaml',
      'value: { events: 3, n: 200 }',
      'value: { rate: 3, per: 100 }',
    ],
    [
      'a rate beside a percent',
      'EVIDENCE_NO_DENOMINATOR',
      'records/sleeve.yaml',
      'value: { events: 3, n: 200 }',
      'value: { rate: 3, per: 100, unit: person-years, percent: 2 }',
    ],
    [
      'no figure at all',
      'EVIDENCE_NO_DENOMINATOR',
      'records/sleeve.yaml',
      'value: { events: 3, n: 200 }',
      'value: { n: 200 }',
    ],
    [
      'a mark on people who are not counted',
      'EVIDENCE_NO_DENOMINATOR',
      'records/tablet.yaml',
      'value: { percent: 64',
      'value: { percent: 64, n_is: start',
    ],
    [
      'the unit of a rate without a rate',
      'EVIDENCE_NO_DENOMINATOR',
      'records/tablet.yaml',
      'value: { percent: 64',
      'value: { percent: 64, per: 100',
    ],
  ],
  'interval-in-order': [
    [
      'low above high',
      'EVIDENCE_INTERVAL_REVERSED',
      'records/sleeve.yaml',
      'low: 23.0, high: 27.0',
      'low: 27.0, high: 23.0',
    ],
    [
      'an estimate outside',
      'EVIDENCE_INTERVAL_REVERSED',
      'records/sleeve.yaml',
      'low: 1.02, high: 4.11',
      'low: 3.02, high: 4.11',
    ],
    [
      'one end only',
      'EVIDENCE_INTERVAL_REVERSED',
      'records/sleeve.yaml',
      'low: 23.0, high: 27.0',
      'low: 23.0',
    ],
    [
      'an interval of no kind',
      'EVIDENCE_INTERVAL_REVERSED',
      'records/sleeve.yaml',
      'high: 27.0, interval: ci95',
      'high: 27.0',
    ],
    [
      'a kind without ends',
      'EVIDENCE_INTERVAL_REVERSED',
      'records/sleeve.yaml',
      'n: 40, sd: 0.8',
      'n: 40, interval: iqr',
    ],
    [
      'neither estimate nor range',
      'EVIDENCE_INTERVAL_REVERSED',
      'records/sleeve.yaml',
      'value: { estimate: 2.1, unit: days',
      'value: { unit: days',
    ],
    [
      'a risk factor outside its interval',
      'EVIDENCE_INTERVAL_REVERSED',
      'risk-factors.yaml',
      'estimate: 2,',
      'estimate: 3,',
    ],
    [
      'a reversal outside its interval',
      'EVIDENCE_INTERVAL_REVERSED',
      'reversibility.yaml',
      'events: 1, n: 4',
      'percent: 25, low: 30, high: 60, interval: ci95',
    ],
  ],
  'unit-fits-metric': [
    ['a weight in another unit', 'EVIDENCE_UNIT', 'records/sleeve.yaml', "unit: '%'", 'unit: kg'],
    [
      'a ratio with a unit',
      'EVIDENCE_UNIT',
      'records/sleeve.yaml',
      'adjusted: unstated',
      "adjusted: unstated, unit: '%'",
    ],
    [
      'a difference of percents in percent',
      'EVIDENCE_UNIT',
      'records/sleeve.yaml',
      'measure: odds-ratio,',
      "measure: mean-difference, metric: TWL, unit: '%',",
    ],
    [
      'a risk difference without its unit',
      'EVIDENCE_UNIT',
      'records/sleeve.yaml',
      'measure: odds-ratio,',
      'measure: risk-difference,',
    ],
  ],
  'reference-weight-stated': [
    [
      'a percent of an unnamed weight',
      'EVIDENCE_UNIT',
      'records/sleeve.yaml',
      'interval: ci95, reference: before-this-operation',
      'interval: ci95',
    ],
    [
      'a responder of an unnamed weight',
      'EVIDENCE_UNIT',
      'records/tablet.yaml',
      '64, reference: before-this-operation',
      '64',
    ],
  ],
  'arithmetic-agrees': [
    [
      'more events than people',
      'EVIDENCE_ARITHMETIC',
      'records/sleeve.yaml',
      'events: 3, n: 200',
      'events: 300, n: 200',
    ],
    [
      'a percent that is not its count',
      'EVIDENCE_ARITHMETIC',
      'records/sleeve.yaml',
      'events: 3, n: 200',
      'events: 3, n: 200, percent: 2.5',
    ],
    [
      'no events, yet a percent',
      'EVIDENCE_ARITHMETIC',
      'records/sleeve.yaml',
      'events: 3, n: 200',
      'events: 0, percent: 2.5',
    ],
    [
      'a percent of no whole number of people',
      'EVIDENCE_ARITHMETIC',
      'records/sleeve.yaml',
      'percent: 1.5, n: 200',
      'percent: 1.7, n: 200',
    ],
    [
      'an interval too narrow for its people',
      'EVIDENCE_ARITHMETIC',
      'records/sleeve.yaml',
      'low: 0.5, high: 4.3',
      'low: 1.4, high: 1.6',
    ],
    [
      'more people than were followed',
      'EVIDENCE_ARITHMETIC',
      'records/sleeve.yaml',
      'n: 200 }\n  followed: { seen: 200, of: 210 }',
      'n: 200 }\n  followed: { seen: 150, of: 160 }',
    ],
    [
      'more people seen than there were',
      'EVIDENCE_ARITHMETIC',
      'records/sleeve.yaml',
      'n: 200 }\n  followed: { seen: 200, of: 210 }',
      'n: 200 }\n  followed: { seen: 220, of: 210 }',
    ],
    [
      'a change that is not after less before',
      'EVIDENCE_ARITHMETIC',
      'records/sleeve.yaml',
      'after: 62.5',
      'after: 65.5',
    ],
    [
      'an estimate at one side of its interval',
      'EVIDENCE_ARITHMETIC',
      'records/sleeve.yaml',
      'estimate: 25.0',
      'estimate: 26.5',
    ],
    [
      'a ratio at one side of its interval',
      'EVIDENCE_ARITHMETIC',
      'records/sleeve.yaml',
      'estimate: 2.05',
      'estimate: 2.65',
    ],
    [
      'a ratio of less than nothing',
      'EVIDENCE_ARITHMETIC',
      'records/sleeve.yaml',
      'low: 1.02, high: 4.11',
      'low: -1.02, high: 4.11',
    ],
    [
      'an exception that is not needed',
      'EVIDENCE_ARITHMETIC',
      'arithmetic-exceptions.yaml',
      '[]',
      '- { record: sleeve.leak.30d.alpha-2020, check: count, reason: none }',
    ],
  ],
  'favoured-was-read': [
    [
      'an option held up as better by usual practice',
      'EVIDENCE_INVALID',
      'cautions.yaml',
      'effect: needs-check',
      'favours: [sleeve]\n  effect: needs-check',
    ],
    [
      'a caution that holds up all that it warns of',
      'EVIDENCE_INVALID',
      'cautions.yaml',
      'effect: extra-risk',
      'favours: [sleeve]\n  effect: extra-risk',
    ],
  ],
  'unread-never-prints': [
    [
      'a page as basis that nobody read',
      'EVIDENCE_UNVERIFIED',
      'cautions.yaml',
      'basis: page\n  sources: [{ study: alpha-2020, seen: page }]',
      'basis: page\n  sources: [{ study: alpha-2020, seen: memory }]',
    ],
    [
      'practice without a line to ask with',
      'EVIDENCE_UNVERIFIED',
      'cautions.yaml',
      'ask: Ask your surgeon about vitamin B12 and reflux.\n  strength: weak\n  basis: practice',
      'basis: practice\n  strength: weak',
    ],
    [
      'a number in a line to ask with',
      'EVIDENCE_UNVERIFIED',
      'cautions.yaml',
      'ask: Ask your surgeon about vitamin B12 and reflux.',
      'ask: Ask your surgeon about the 4% of reflux.',
    ],
    [
      'a number in what undoing takes that nobody read',
      'EVIDENCE_UNVERIFIED',
      'reversibility.yaml',
      undoing('It cannot be undone.', 'page'),
      undoing('It takes 2 operations.', 'memory'),
    ],
    [
      'a number for what is not known',
      'EVIDENCE_UNVERIFIED',
      'reversibility.yaml',
      'statement: Not known.',
      'statement: About 10 kg.',
    ],
    [
      'weight after undoing from no study',
      'EVIDENCE_UNVERIFIED',
      'reversibility.yaml',
      'Not known., basis: not-known',
      'Not known., basis: page',
    ],
  ],
  'coverage-complete': [
    [
      'an option left out',
      'EVIDENCE_INVALID',
      'caution-coverage.yaml',
      'others: [{ options: [usual-care], why: nothing is done }]',
      'others: []',
    ],
    [
      'a row that no caution backs',
      'EVIDENCE_INVALID',
      'caution-coverage.yaml',
      'by_row: [sleeve, tablet]',
      'by_row: [sleeve, tablet, usual-care]',
    ],
    [
      'a row left out',
      'EVIDENCE_INVALID',
      'caution-coverage.yaml',
      'by_row: [sleeve, tablet]',
      'by_row: [sleeve]',
    ],
    [
      'a caution on an uncovered code',
      'EVIDENCE_INVALID',
      'cautions.yaml',
      'when: { condition: reflux }\n  options: [tablet]',
      'when: { smoking: current }\n  options: [tablet]',
    ],
  ],
};

const plants: Readonly<Record<string, readonly Plant[]>> = {
  ...figurePlants,
  ...Object.fromEntries(
    Object.entries(smallAftercarePlants).map(([rule, rows]) => [
      rule,
      [...(figurePlants[rule] ?? []), ...rows],
    ]),
  ),
};

function first(version: string, date: string): string {
  return `{ version: '${version}', date: ${date}, digest: '${'0'.repeat(64)}', changes: null }`;
}

/** The end of a release file whose release is the second. */
function told(
  changes: Readonly<Partial<Record<'added' | 'changed' | 'withdrawn' | 'earlier', string[]>>>,
): string {
  const { added = [], changed = [], withdrawn = [], earlier = [first('2026.05', '2026-05-25')] } = changes;
  const gone = withdrawn.map((record) => `{ record: ${record}, why: retracted }`);
  const lists = `added: [${added.join()}], changed: [${changed.join()}], withdrawn: [${gone.join()}]`;
  return `changes: { ${lists} }\nearlier: [${earlier.join()}]`;
}

/** Errors whose place is not the line that was changed. */
const elsewhere: Readonly<Record<string, readonly [file: SmallFile, text: string]>> = {
  ...aftercareElsewhere,
  'an option of which nothing says whether it can be undone': ['options.yaml', '- { code: no-operation'],
  'an earlier release that is later': ['release.yaml', 'earlier: []'],
  'an added record that nobody says when they read': [
    'records/sleeve.yaml',
    '- id: sleeve.leak.30d.alpha-2020\n',
  ],
  'an option called settled that a body calls newer': ['options.yaml', '- { code: sleeve'],
  'an option called settled that is under study': ['options.yaml', '- { code: sleeve'],
  'an option called newer that everybody has under study': ['options.yaml', '- { code: tablet'],
  'an overlap with one of two studies of a cohort': ['studies/a.yaml', 'overlaps: [beta-2021]'],
  'a reason that nothing checks': ['reasons.yaml', '- code: more-weight-loss'],
  'a criterion left out': ['criteria.yaml', '- { id: cm-2,'],
  'a reason twice': ['reasons.yaml', '- { code: diabetes-better, looks: [] }'],
  'a figure for what is said to be impossible': ['records/tablet.yaml', '  outcome: responder-5-TWL'],
  'a page-read record whose study has no address': ['records/sleeve.yaml', 'study: gamma-2022'],
};

describe('the small evidence', () => {
  it('is without fault, so that a planted error is the only one', async () => {
    expect(await diagnose(smallEvidence())).toEqual([]);
  });
});

describe.each(Object.entries(plants))('the rule %s', (rule, rows) => {
  const cases = rows.map(([what, code, file, text, replacement]) => ({
    what,
    code,
    file,
    text,
    replacement,
  }));
  it.each(cases)('finds $what, at its file and line', ({ what, code, file, text, replacement }) => {
    const planted = plant(file, text, replacement);
    const place = elsewhere[what];
    const expected = place ? { ...plant(place[0], place[1], place[1]), files: planted.files } : planted;
    expect(findingsOf(rule, planted.files)).toContainEqual(foundAt(expected, code));
  });
});

describe('an option that is new to the data', () => {
  const others = 'others: [{ options: [usual-care], why: nothing is done }]';
  const general = (rows: string): string =>
    `others: []\n- { code: every-code, by_row: [${rows}], others: [{ options: [usual-care], why: not known }] }`;

  it('may give one reason for every caution code that does not name it', () => {
    expect(
      findingsOf('coverage-complete', plant('caution-coverage.yaml', others, general('')).files),
    ).toEqual([]);
  });

  it('may not call a caution row its own there', () => {
    const planted = plant('caution-coverage.yaml', others, general('sleeve'));
    expect(findingsOf('coverage-complete', planted.files)).toMatchObject([
      { code: 'EVIDENCE_INVALID', message: 'no caution row names sleeve' },
    ]);
  });
});

describe('the list of rules', () => {
  it('has a planted error for every rule', () => {
    expect(evidenceRules.map(({ name }) => name).sort((a, b) => a.localeCompare(b))).toEqual(
      Object.keys(plants).sort((a, b) => a.localeCompare(b)),
    );
  });

  it('describes every rule in words', () => {
    for (const { description } of evidenceRules) expect(description).toMatch(/^[a-z].{20,}/);
  });
});
