import { expect } from 'vitest';

import { checkEvidence, evidenceRules, loadEvidence } from '../../../src/evidence/index.ts';
import { readEvidence } from '../../../src/evidence/read-evidence.ts';
import { canonicalJson, sha256 } from '../../../src/io/digest.ts';
import { reasonCodes } from '../../../src/model/codes.ts';
import { criterionCounts } from '../../../src/model/criterion.ts';
import type { EvidenceBase } from '../../../src/model/evidence.ts';
import type { Diagnostic } from '../../../src/diagnostics/diagnostic.ts';
import { createMemoryWorkspace } from '../../helpers/memory-workspace.ts';

/** As many criteria as each standard has; of the last, three say more. */
function criteria(): string {
  const rows = Object.entries(criterionCounts).flatMap(([set, count], at) => {
    const row = (index: number): string => {
      const letters = set === 'clear-communication' ? 'cm' : String.fromCharCode(97 + at);
      const id = `${letters}-${String(index + 1)}`;
      return `- { id: ${id}, set: ${set}, says: something, by: study, seen: memory }\n`;
    };
    const stated = set === 'clear-communication' ? 3 : 0;
    return Array.from({ length: count - stated }, (_, index) => row(index + stated));
  });
  return `${rows.join('')}- { id: cm-1, set: clear-communication, says: one, by: generator, check: lists, seen: page, seen_at: ['https://example.org/c'] }
- { id: cm-2, set: clear-communication, says: two, by: generator, check: person, after: cm-1, seen: memory }
- { id: cm-3, set: clear-communication, says: three, by: none, seen: memory }
`;
}

/** A whole release with a few entries of each sort, invented, and without any fault. */
const files = {
  'release.yaml': `
version: '2026.11'
date: 2026-11-25
next_review: 2027-11-25
review_months: { established: 24, newer: 12, under-study: 6 }
made_by: {en: invented for tests}
paid_by: {en: nobody}
changes: null
earlier: []
`,
  'options.yaml': `
- { code: sleeve, maturity: established, name: Sleeve, kind: operation, meaning: An operation., choosable: true, figures_from: sleeve }
- { code: tablet, maturity: newer, name: Tablet, kind: medicine, meaning: A medicine., choosable: true, figures_from: tablet }
- { code: usual-care, maturity: established, name: Usual care, kind: none, meaning: Nothing., choosable: false, figures_from: usual-care }
- { code: no-operation, maturity: established, name: Wait, kind: none, meaning: Nothing now., choosable: true, figures_from: usual-care }
`,
  'outcomes.yaml': `
- { code: leak, group: [early-harm], better: lower, meaning: A leak., applies_to: [operation] }
- { code: weight-loss, group: [weight], better: higher, meaning: Weight lost., applies_to: [operation, medicine, none] }
- { code: responder-5-TWL, group: [weight], better: higher, meaning: Lost 5%., applies_to: [medicine] }
- { code: wellbeing, group: [benefit], better: higher, meaning: A score., applies_to: [operation] }
- { code: sore, group: [late-harm], better: lower, meaning: A sore., applies_to: [operation], new_without: reflux }
- { code: taste, group: [living-with-it], better: lower, meaning: A taste., applies_to: [operation] }
- { code: stay, group: [stay-and-recovery], better: lower, meaning: Days., applies_to: [operation] }
`,
  'metrics.yaml': `
- { code: TWL, unit: '%', meaning: Percent lost. }
- { code: score, unit: points, meaning: A score. }
`,
  'topics.yaml': `
first-month: { picture: [leak], most: 1, rows: [leak] }
later-years: { picture: [sore], most: 1, rows: [sore] }
living-with-it: { most: 1, rows: [taste] }
benefits: [{ condition: reflux, outcomes: [wellbeing] }]
`,
  'studies/a.yaml': `
- id: alpha-2020
  design: cohort
  cohort: alpha
  overlaps: [beta-2021]
  citation: { authors: A B, year: 2020, title: First, journal: J }
  seen_at: ['https://example.org/alpha']
- id: beta-2021
  design: meta-analysis
  cohort: beta
  overlaps: [alpha-2020]
  citation: { year: 2021, title: Second }
  citation_unseen: [authors, journal]
  seen_at: ['https://example.org/beta']
- id: gamma-2022
  design: registry
  cohort: gamma
  citation: { authors: C D, year: 2022, journal: K }
  citation_unseen: [title]
`,
  'records/sleeve.yaml': `
- id: sleeve.leak.30d.alpha-2020
  study: alpha-2020
  option: sleeve
  outcome: leak
  kind: risk
  people: { indication: first-operation, bmi: { mean: 45, sd: 6, low: 35, high: 60 }, age: { mean: 44 }, diabetes: mixed }
  time: { days: 30, basis: by }
  value: { events: 3, n: 200 }
  followed: { seen: 200, of: 210 }
  certainty: low
  seen: page
- id: sleeve.leak.12m.alpha-2020
  study: alpha-2020
  option: sleeve
  outcome: leak
  kind: risk
  people: { indication: first-operation, diabetes: unknown }
  time: { months: 12, basis: by }
  value: { percent: 1.5, n: 200, low: 0.5, high: 4.3, interval: ci95 }
  certainty: low
  seen: page
- id: sleeve.weight-loss.12m.beta-2021
  study: beta-2021
  option: sleeve
  outcome: weight-loss
  kind: weight
  people: { indication: first-operation, diabetes: unknown }
  time: { months: 12, basis: at }
  value: { metric: TWL, estimate: 25.0, unit: '%', low: 23.0, high: 27.0, interval: ci95, reference: before-this-operation }
  certainty: moderate
  seen: page
- id: sleeve.wellbeing.12m.beta-2021
  study: beta-2021
  option: sleeve
  outcome: wellbeing
  kind: score
  people: { indication: first-operation, diabetes: unknown }
  time: { months: 12, basis: at }
  value: { metric: score, estimate: 12.5, unit: points, before: 50.0, after: 62.5 }
  certainty: low
  seen: page
- id: sleeve.stay.peri.gamma-2022
  study: gamma-2022
  option: sleeve
  outcome: stay
  kind: duration
  people: { indication: unknown, diabetes: unknown }
  time: { basis: peri-operative }
  value: { estimate: 2.1, unit: days, n: 40, sd: 0.8 }
  certainty: low
  seen: memory
- id: sleeve.leak.30d.beta-2021.vs-usual-care
  study: beta-2021
  option: sleeve
  outcome: leak
  kind: contrast
  versus: usual-care
  people: { indication: first-operation, diabetes: unknown }
  time: { days: 30, basis: by }
  value: { measure: odds-ratio, estimate: 2.05, low: 1.02, high: 4.11, interval: ci95, adjusted: unstated }
  certainty: low
  seen: page
`,
  'records/tablet.yaml': `
- id: tablet.responder-5-TWL.12m.beta-2021
  study: beta-2021
  option: tablet
  outcome: responder-5-TWL
  dose: unstated
  kind: benefit
  people: { indication: none, diabetes: none }
  time: { months: 12, basis: at }
  value: { percent: 64, reference: before-this-operation }
  certainty: high
  seen: page-2nd
`,
  'reversibility.yaml': `
- option: sleeve
  undo:
    possible: 'no'
    how: It cannot be undone.
    what_remains: A narrow stomach.
    weight_after: { statement: Not known., basis: not-known }
    data:
      - { what: undone anyway, events: 1, n: 4, study: alpha-2020, seen: page }
  change_to: []
  sources:
    - { point: all of it, study: alpha-2020, seen: page }
- option: tablet
  undo:
    possible: 'yes'
    how: It can be stopped.
    what_remains: Nothing.
    weight_after: { statement: Unknown., basis: not-known }
    data: []
  change_to: []
  sources: []
- option: usual-care
  undo:
    possible: 'yes'
    how: There is nothing to undo.
    what_remains: Nothing.
    weight_after: { statement: Unknown., basis: not-known }
    data: []
  change_to: []
  sources: []
`,
  'cautions.yaml': `
- id: reflux-sleeve
  when: { condition: reflux }
  options: [sleeve]
  effect: extra-risk
  statement: Reflux may get worse.
  strength: strong
  basis: page
  sources: [{ study: alpha-2020, seen: page }]
  seen: page
- id: reflux-tablet
  when: { condition: reflux }
  options: [tablet]
  effect: needs-check
  statement: Some say reflux may get worse.
  ask: Ask your surgeon about vitamin B12 and reflux.
  strength: weak
  basis: practice
  sources: [{ point: no source read, seen: memory }]
  seen: memory
`,
  'caution-coverage.yaml': `
- code: reflux
  by_row: [sleeve, tablet]
  others: [{ options: [usual-care], why: nothing is done }]
`,
  'standing.yaml': `
- id: sleeve.us
  option: sleeve
  standing: endorsed-by-society
  jurisdiction: US
  body: A society
  date: null
  statement: On its list.
  source: https://example.org/list
  seen: page
`,
  'risk-factors.yaml': `
- { id: smoking.sleeve, factor: smoking, option: sleeve, outcome: leak, measure: odds-ratio, estimate: 2, low: 1.5, high: 2.7, study: alpha-2020, seen: page }
`,
  'definitions.yaml': `
- { id: bmi, term: BMI, value: 30, unit: kg/m2, study: alpha-2020, seen: page }
`,
  'reasons.yaml': `
${reasonCodes
  .filter((code) => code !== 'more-weight-loss' && code !== 'fits-what-matters')
  .map((code) => `- { code: ${code}, looks: [] }\n`)
  .join('')}- code: fits-what-matters
  looks: [{ look: wishes, reasons: { most-weight-loss: more-weight-loss }, kinds: {}, yes: supports }]
- code: more-weight-loss
  looks: [{ look: compare, outcomes: [weight-loss], times: weight, than: all, has: more, yes: supports }]
`,
  'criteria.yaml': `
${criteria()}`,
  'consent-elements.yaml': `
- { id: first, says: one, by: pages, where: [{ block: facts, words: consent.facts.clinic }], sources: [{ document: ethics-code, seen: page, seen_at: ['https://example.org/e'] }] }
- { id: second, says: two, by: study, sources: [{ document: court-ruling, seen: memory }] }
`,
  'aftercare/facts.yaml': `
- id: fluid.rho
  options: [tablet]
  topic: fluid
  subject: fluid
  use: rule
  value: { low: 2, high: 3, unit: L/day }
  who: adults
  timing: { phase: after-operation, from_day: 0, to_day: 30 }
  source: rho-2019
  seen: page
  seen_at: https://example.org/rho-2
  conflict_with: [fluid.sigma]
- id: fluid.sigma
  options: [sleeve]
  extrapolated_to: [tablet]
  topic: fluid
  subject: fluid
  use: rule
  value: { low: 1.5, high: null, unit: L/day }
  who: adults
  timing: { phase: after-operation }
  source: sigma
  seen: memory
  conflict_with: [fluid.rho]
- id: smoking.upsilon
  options: [sleeve]
  topic: smoking
  subject: smoking-before
  use: rule
  value: { low: 4, high: null, unit: weeks }
  who: smokes
  timing: { phase: before-operation, from_week: -4, to_week: 0 }
  source: upsilon-2021
  seen: page
- id: supplement.vitamin-b12.upsilon
  options: [sleeve]
  topic: supplement
  subject: vitamin-b12
  use: rule
  value: { low: 350, high: 500, unit: microgram/day }
  who: adults
  timing: { phase: after-operation, every: day, to: lifelong }
  source: upsilon-2021
  seen: page
- id: supplement.iron.ferrous-sulfate.rho
  options: [sleeve]
  topic: supplement
  subject: iron-as-ferrous-sulfate
  use: prescriber
  value: { low: 200, high: 200, unit: mg/day }
  who: menstruates
  timing: { phase: each-dose }
  one_of: iron-salt
  source: upsilon-2021
  seen: page-2nd
- id: supplement.iron.upsilon
  options: [tablet]
  topic: supplement
  subject: iron
  use: rule
  value: iron in food
  who: adults
  timing: { phase: hospital-stay }
  source: upsilon-2021
  seen: page
- id: blood-test.core.upsilon
  options: [sleeve]
  topic: blood-test
  subject: core-tests
  use: rule
  value: { tests: [kidney, liver] }
  who: adults
  timing: { phase: after-operation, at_months: [3, 6], to: lifelong }
  source: upsilon-2021
  seen: page
- id: blood-test.fats.upsilon
  options: [sleeve]
  topic: blood-test
  subject: blood-fats-test
  use: rule
  value: { tests: [blood-fats] }
  who: adults
  timing: { phase: after-operation, every_months: [6, 12] }
  source: upsilon-2021
  seen: page
- id: warning-emergency.belly-pain.rho
  options: [sleeve]
  topic: warning-emergency
  subject: belly-pain
  urgency: now
  use: rule
  value: belly pain
  who: adults
  timing: { phase: after-operation }
  source: upsilon-2021
  seen: page
- id: driving.upsilon
  options: []
  topic: driving
  subject: brake-reaction-time
  use: context
  value: braking was slower
  who: measured-group
  timing: { phase: after-operation }
  source: upsilon-2021
  seen: page
`,
  'aftercare-sources.yaml': `
- id: rho-2019
  kind: guideline
  citation: { authors: R S, year: 2019, title: First, journal: J }
  seen_at: ['https://example.org/rho-1', 'https://example.org/rho-2']
- id: sigma
  kind: practice
  citation: { journal: K, title: Third }
  citation_unseen: [authors, year]
- id: upsilon-2021
  kind: review
  citation: { authors: U V, year: 2021, title: Second, journal: J }
  seen_at: ['https://example.org/upsilon']
`,
  'copy-sites.yaml': `
- { site: copies.example, what: copies }
`,
  'arithmetic-exceptions.yaml': `
[]
`,
} as const;

export type SmallFile = keyof typeof files;

export const folder = 'evidence';

export function smallEvidence(): Record<string, string> {
  return Object.fromEntries(Object.entries(files).map(([path, text]) => [`${folder}/${path}`, text]));
}

/** The small evidence as the other stages see it. */
export async function smallBase(): Promise<EvidenceBase> {
  const digester = { sha256, canonicalJson };
  const loaded = await loadEvidence(createMemoryWorkspace(smallEvidence()), { folder, digester });
  if (!loaded.ok) throw new Error(JSON.stringify(loaded.diagnostics));
  return loaded.value;
}

export interface Planted {
  readonly files: Record<string, string>;
  readonly file: string;
  /** Line of the planted text, counted here and not by the code under test. */
  readonly line: number;
}

/** The small evidence with one text changed; `text` must stand in the file exactly once. */
export function plant(file: SmallFile, text: string, replacement: string): Planted {
  const whole = files[file];
  const parts = whole.split(text);
  if (parts.length !== 2) throw new Error(`${text} stands ${String(parts.length - 1)} times in ${file}`);
  const [before = ''] = parts;
  return {
    files: { ...smallEvidence(), [`${folder}/${file}`]: parts.join(replacement) },
    file: `${folder}/${file}`,
    line: before.split('\n').length,
  };
}

export async function diagnose(planted: Record<string, string>): Promise<readonly Diagnostic[]> {
  return checkEvidence(createMemoryWorkspace(planted), folder);
}

/** What one rule finds in files whose shape is correct. */
export function findingsOf(rule: string, planted: Record<string, string>): readonly Diagnostic[] {
  const found = Object.entries(planted).map(([path, text]) => ({
    path: path.slice(folder.length + 1),
    text,
  }));
  const read = readEvidence(found, folder);
  if (!read.ok) throw new Error(`the planted error is one of shape: ${JSON.stringify(read.diagnostics)}`);
  return evidenceRules.filter(({ name }) => name === rule).flatMap(({ check }) => check(read.value));
}

/** The part of a diagnostic that a planted error must bring about. */
export function foundAt({ file, line }: Planted, code: string): unknown {
  return expect.objectContaining({
    code,
    severity: 'error',
    message: expect.stringMatching(/\S/) as unknown,
    hint: expect.stringMatching(/^[A-Z]/) as unknown,
    span: expect.objectContaining({ file, line }) as unknown,
  });
}
