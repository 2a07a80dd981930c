import { beforeAll, describe, expect, it } from 'vitest';

import { evidenceRules, loadEvidence } from '../../../src/evidence/index.ts';
import { canonicalJson, sha256 } from '../../../src/io/digest.ts';
import { createMemoryWorkspace } from '../../helpers/memory-workspace.ts';
import { copyOf, placeOf, shippedData, spoil } from '../../helpers/shipped-files.ts';
import type { Spot } from '../../helpers/shipped-files.ts';
import { shippedAftercarePlants } from './aftercare-plants.ts';
import type { Plant } from './aftercare-plants.ts';

/** One error a rule, each in an entry of its own, so that all can be planted in one copy of the shipped data. */
const plants: readonly Plant[] = [
  ...shippedAftercarePlants,
  {
    what: 'a citation without its title',
    rule: 'citation-complete',
    code: 'EVIDENCE_NO_CITATION',
    file: 'studies/a-c.yaml',
    entry: 'adams-2012',
    text: '    title: Health Benefits of Gastric Bypass Surgery After 6 Years\n',
    by: '',
    found: 'authors: Adams TD',
  },
  {
    what: 'a figure called read of a study without an address',
    rule: 'place-where-seen',
    code: 'EVIDENCE_NO_LOCATOR',
    file: 'records/plication.yaml',
    entry: 'plication.major-complication.peri.fried-2012',
    text: 'seen: memory',
    by: 'seen: page',
    found: 'study: fried-2012',
  },
  {
    what: 'events without a number of people',
    rule: 'share-has-denominator',
    code: 'EVIDENCE_NO_DENOMINATOR',
    file: 'records/sleeve.yaml',
    entry: 'sleeve.leak.30d.mbsaqip-2015-2020',
    text: 'events: 598, n: 370369',
    by: 'events: 598',
    found: 'value:',
  },
  {
    what: 'an interval whose ends are changed over',
    rule: 'interval-in-order',
    code: 'EVIDENCE_INTERVAL_REVERSED',
    file: 'records/sleeve.yaml',
    entry: 'sleeve.alcohol-problem.32m.alcohol-norway-2020',
    text: 'low: 2.94, high: 6.7',
    by: 'low: 6.7, high: 2.94',
    found: 'value:',
  },
  {
    what: 'a mean age outside its range',
    rule: 'people-stated',
    code: 'EVIDENCE_NO_PEOPLE',
    file: 'records/sleeve.yaml',
    entry: 'sleeve.acid-medicine.120m.sleevepass-2022',
    text: 'mean: 48.4',
    by: 'mean: 68.4',
    found: '{\n      indication',
  },
  {
    what: 'women whom the people do not state',
    rule: 'subgroup-stated',
    code: 'EVIDENCE_NO_PEOPLE',
    file: 'records/sleeve.yaml',
    entry: 'sleeve.bleeding.30d.nsqip-2010-2011',
    text: '- id: sleeve.bleeding.30d.nsqip-2010-2011\n',
    by: '- id: sleeve.bleeding.30d.nsqip-2010-2011.women\n',
    found: { file: 'records/sleeve.yaml', entry: '', text: 'sleeve.bleeding.30d.nsqip-2010-2011.women' },
  },
  {
    what: 'people who had a band, of whom nothing says how it was exchanged',
    rule: 'exchange-stated',
    code: 'EVIDENCE_NO_PEOPLE',
    file: 'records/sleeve.yaml',
    entry: 'sleeve.death.30d.nsqip-2005-2011.after-band',
    text: '      stages: one,\n',
    by: '',
    found: '{\n      indication',
  },
  {
    what: 'a time that contradicts itself',
    rule: 'time-stated',
    code: 'EVIDENCE_NO_TIME',
    file: 'records/sleeve.yaml',
    entry: 'sleeve.alcohol-problem.24m.alcohol-michigan-2019',
    text: 'months: 24, basis: at',
    by: 'months: 24, basis: peri-operative',
    found: 'time:',
  },
  {
    what: 'a wider figure of which nothing says what it counts',
    rule: 'scope-defined',
    code: 'EVIDENCE_INVALID',
    file: 'records/sleeve.yaml',
    entry: 'sleeve.alcohol-problem.12m.alcohol-michigan-2019',
    text: '  definition: 3-question screen (AUDIT-C) positive, old cases as well as new\n',
    by: '',
    found: 'scope: wider',
  },
  {
    what: 'a figure of a medicine whose dose nobody states',
    rule: 'dose-stated',
    code: 'EVIDENCE_INVALID',
    file: 'records/tirzepatide.yaml',
    entry: 'tirzepatide.weight-loss.17m.surmount-1-2022.15mg.twl',
    text: '  dose: { mg: [15], per: week }\n',
    by: '',
    found: 'option: tirzepatide',
  },
  {
    what: 'people treated after their study came out',
    rule: 'years-in-order',
    code: 'EVIDENCE_INVALID',
    file: 'studies/d-l.yaml',
    entry: 'higa-bypass-10y',
    text: 'years: { from: 1998, to: 1999 }',
    by: 'years: { from: 1998, to: 2019 }',
    found: 'years:',
  },
  {
    what: 'an overlap that one of two studies no longer names',
    rule: 'overlap-both-ways',
    code: 'EVIDENCE_OVERLAP',
    file: 'studies/a-c.yaml',
    entry: 'adams-2017',
    text: '  overlaps: [survival-adams-2023]\n',
    by: '',
    found: { file: 'studies/s-z.yaml', entry: 'survival-adams-2023', text: 'overlaps:' },
  },
  {
    what: 'an overlap with one of two studies of the same people',
    rule: 'overlap-group-closed',
    code: 'EVIDENCE_OVERLAP',
    file: 'studies/d-l.yaml',
    entry: 'fried-2012',
    text: '[ji-2014, kourkoulos-2012]',
    by: '[ji-2014]',
    found: 'overlaps:',
  },
  {
    what: 'a percent of weight in kilograms',
    rule: 'unit-fits-metric',
    code: 'EVIDENCE_UNIT',
    file: 'records/semaglutide.yaml',
    entry: 'semaglutide.weight-loss.16m.step-1-2021.twl',
    text: "unit: '%'",
    by: 'unit: kg',
    found: 'unit: kg',
  },
  {
    what: 'a percent of a weight that is not named',
    rule: 'reference-weight-stated',
    code: 'EVIDENCE_UNIT',
    file: 'records/semaglutide.yaml',
    entry: 'semaglutide.weight-loss.16m.step-2.twl',
    text: ', reference: before-this-operation',
    by: '',
    found: '{ metric: TWL',
  },
  {
    what: 'a percent that its events and people do not make',
    rule: 'arithmetic-agrees',
    code: 'EVIDENCE_ARITHMETIC',
    file: 'records/sleeve.yaml',
    entry: 'sleeve.bleeding.30d.mbsaqip-2015-band-janik.after-band',
    text: 'events: 6, n: 1354',
    by: 'events: 6, n: 1354, percent: 4.4',
    found: 'value:',
  },
  {
    what: 'an exception from the arithmetic that nothing needs',
    rule: 'arithmetic-agrees',
    code: 'EVIDENCE_ARITHMETIC',
    file: 'arithmetic-exceptions.yaml',
    entry: '',
    text: '# whole-people:',
    by: '- { record: sleeve.leak.30d.nsqip-2010-2014, check: count, reason: as printed }\n# whole-people:',
    found: 'sleeve.leak.30d.nsqip-2010-2014',
  },
  {
    what: 'one id twice',
    rule: 'id-unique',
    code: 'EVIDENCE_DUPLICATE_ID',
    file: 'definitions.yaml',
    entry: 'statement-oagb-meta',
    text: '- id: statement-oagb-meta\n',
    by: '- id: statement-oagb-ifso-2025\n',
    found: {
      file: 'definitions.yaml',
      entry: '',
      text: 'statement-oagb-ifso-2025\n  term: one-anastomosis bypass against',
    },
  },
  {
    what: 'an option that is not defined',
    rule: 'code-known',
    code: 'EVIDENCE_UNKNOWN_CODE',
    file: 'standing.yaml',
    entry: 'bypass.us.2025',
    text: 'option: bypass',
    by: 'option: bipass',
    found: 'option: bipass',
  },
  {
    what: 'an id that says another year than its study',
    rule: 'id-matches-content',
    code: 'EVIDENCE_ID_MISMATCH',
    file: 'records/sleeve.yaml',
    entry: 'sleeve.bleeding.30d.mbsaqip-sleeve-bleed-2015-2016',
    text: 'id: sleeve.bleeding.30d.mbsaqip-sleeve-bleed-2015-2016',
    by: 'id: sleeve.bleeding.30d.mbsaqip-sleeve-bleed-2015-2017',
    found: {
      file: 'records/sleeve.yaml',
      entry: '',
      text: 'sleeve.bleeding.30d.mbsaqip-sleeve-bleed-2015-2017',
    },
  },
  {
    what: 'an outcome called impossible of which there is a figure',
    rule: 'outcome-possible',
    code: 'EVIDENCE_INVALID',
    file: 'outcomes.yaml',
    entry: 'hyperinflation',
    text: 'applies_to: [endoscopic]',
    by: 'applies_to: [medicine]',
    found: {
      file: 'records/balloon.yaml',
      entry: 'balloon.hyperinflation.12m.brazil-igb-experts',
      text: 'outcome:',
    },
  },
  {
    what: 'a harm among the things to live with',
    rule: 'topic-fits',
    code: 'EVIDENCE_INVALID',
    file: 'topics.yaml',
    entry: '',
    text: '    - hair-loss\n',
    by: '    - hair-loss\n    - slippage\n',
    found: { file: 'topics.yaml', entry: '', text: '    - slippage\n    - acid-medicine' },
  },
  {
    what: 'a part that no table of the first month shows beside its whole',
    rule: 'parts-fit',
    code: 'EVIDENCE_INVALID',
    file: 'outcomes.yaml',
    entry: 'any-complication',
    text: 'outcomes: [leak, reoperation, death]',
    by: 'outcomes: [leak, reoperation, ulcer]',
    found: 'parts:',
  },
  {
    what: 'a reason judged by an outcome that has no figures of that sort',
    rule: 'reasons-checked',
    code: 'EVIDENCE_INVALID',
    file: 'reasons.yaml',
    entry: 'fewer-early-problems',
    text: 'outcomes: [major-complication, any-complication]',
    by: 'outcomes: [major-complication, barrett]',
    found: 'outcomes:',
  },
  {
    what: 'an element of a consent on our own pages, without its place',
    rule: 'consent-elements-complete',
    code: 'EVIDENCE_INVALID',
    file: 'consent-elements.yaml',
    entry: 'practitioner-named',
    text: '  where: [{ block: facts, words: consent.facts.surgeon }]\n',
    by: '',
    found: 'by: pages',
  },
  {
    what: 'a criterion met by a study and looked for on the pages',
    rule: 'criteria-complete',
    code: 'EVIDENCE_INVALID',
    file: 'criteria.yaml',
    entry: 'k-12',
    text: '  by: study\n',
    by: '  by: study\n  check: worksheet\n',
    found: 'check: worksheet',
  },
  {
    what: 'an option about which a caution code is silent',
    rule: 'coverage-complete',
    code: 'EVIDENCE_INVALID',
    file: 'caution-coverage.yaml',
    entry: 'bmi-low',
    text: "      { options: [usual-care], why: 'stomach, bowel and medicines are left as they are' },\n",
    by: '',
    found: '[\n      { options: [band-removal]',
  },
  {
    what: 'weight after undoing that is not known, with a number',
    rule: 'unread-never-prints',
    code: 'EVIDENCE_UNVERIFIED',
    file: 'reversibility.yaml',
    entry: '',
    text: 'statement: There is no undoing. For weight after a change',
    by: 'statement: There is no undoing in 9 of 10. For weight after a change',
    found: 'statement: There is no undoing in 9 of 10.',
  },
  {
    what: 'an option held up as better by what nobody read',
    rule: 'favoured-was-read',
    code: 'EVIDENCE_INVALID',
    file: 'cautions.yaml',
    entry: 'hiatal-hernia-others',
    text: 'effect: needs-check',
    by: 'effect: needs-check\n  favours: [bypass]',
    found: 'favours: [bypass]',
  },
  {
    what: 'an option of which nothing says whether it can be undone',
    rule: 'reversal-stated',
    code: 'EVIDENCE_INVALID',
    file: 'options.yaml',
    entry: 'no-operation',
    text: 'figures_from: usual-care',
    by: 'figures_from: any-medicine',
    found: 'code: no-operation',
  },
  {
    what: 'a review of the whole before the release',
    rule: 'release-dated',
    code: 'EVIDENCE_INVALID',
    file: 'release.yaml',
    entry: '',
    text: 'next_review: 2027-11-25',
    by: 'next_review: 2025-11-25',
    found: 'next_review:',
  },
  {
    what: 'a version of another month',
    rule: 'release-history',
    code: 'EVIDENCE_INVALID',
    file: 'release.yaml',
    entry: '',
    text: "version: '2026.11'",
    by: "version: '2026.12'",
    found: 'version:',
  },
  {
    what: 'a study read after the release',
    rule: 'review-dated',
    code: 'EVIDENCE_REVIEW',
    file: 'studies/a-c.yaml',
    entry: 'abdallah-plication',
    text: '  citation_unseen: [year]\n',
    by: '  citation_unseen: [year]\n  seen_on: 2026-12-01\n',
    found: 'seen_on:',
  },
  {
    what: 'an option called settled that is under study',
    rule: 'maturity-agrees',
    code: 'EVIDENCE_REVIEW',
    file: 'options.yaml',
    entry: 'plication',
    text: 'maturity: under-study',
    by: 'maturity: established',
    found: 'maturity:',
  },
];

/** What must be there for an entry to be one at all, each taken from a record of its own. */
const shapePlants: readonly (Spot & { readonly what: string; readonly code: string })[] = [
  {
    what: 'people',
    code: 'EVIDENCE_NO_PEOPLE',
    file: 'records/sleeve.yaml',
    entry: 'sleeve.leak.30d.mbsaqip-2015-2020',
    text: '  people: { indication: first-operation, diabetes: unknown }\n',
  },
  {
    what: 'time',
    code: 'EVIDENCE_NO_TIME',
    file: 'records/sleeve.yaml',
    entry: 'sleeve.bleeding.30d.nsqip-2010-2011',
    text: '  time: { days: 30, basis: by }\n',
  },
  {
    what: 'study',
    code: 'EVIDENCE_NO_CITATION',
    file: 'records/sleeve.yaml',
    entry: 'sleeve.alcohol-problem.32m.alcohol-norway-2020',
    text: '  study: alcohol-norway-2020\n',
  },
  {
    what: 'how it was seen',
    code: 'EVIDENCE_INVALID',
    file: 'records/plication.yaml',
    entry: 'plication.major-complication.peri.fried-2012',
    text: '  seen: memory\n',
  },
  {
    what: 'how sure it is',
    code: 'EVIDENCE_INVALID',
    file: 'records/sleeve.yaml',
    entry: 'sleeve.bleeding.30d.mbsaqip-2015-band-janik.after-band',
    text: '  certainty: moderate\n',
  },
];

/** What the loader says of a copy, as `code path:line`, sorted. */
async function loadCopy(files: Readonly<Record<string, string>>): Promise<readonly string[]> {
  const source = { folder: shippedData, digester: { sha256, canonicalJson } };
  const loaded = await loadEvidence(createMemoryWorkspace(files), source);
  const said = loaded.ok
    ? []
    : loaded.diagnostics.map(({ code, span }) => `${code} ${String(span?.file)}:${String(span?.line)}`);
  return said.sort(byText);
}

function byText(a: string, b: string): number {
  return a < b ? -1 : Number(a > b);
}

describe('a copy of the shipped evidence', () => {
  let said: readonly string[] = [];
  const files = copyOf(shippedData);
  /** The other end of the pair that an overlap names is taken away too, so that only the group stays open. */
  const otherEnd = { file: 'studies/d-l.yaml', entry: 'kourkoulos-2012', text: 'fried-2012, ' };

  beforeAll(async () => {
    for (const plant of plants) spoil(files, plant, plant.by);
    spoil(files, otherEnd, '');
    said = await loadCopy(files);
  });

  const expected = ({ code, found, ...own }: Plant): string =>
    `${code} ${placeOf(files, typeof found === 'string' ? { ...own, text: found } : found)}`;

  it('is loaded as it is', async () => {
    expect(await loadCopy(copyOf(shippedData))).toEqual([]);
  });

  it.each(plants)('is refused for $what, at its line ($rule)', (plant) => {
    expect(said).toContain(expected(plant));
  });

  it('is refused for what was planted, and for nothing else', () => {
    expect(said).toEqual(plants.map(expected).sort(byText));
  });

  it('has an error planted for every rule', () => {
    expect([...new Set(plants.map(({ rule }) => rule))].sort(byText)).toEqual(
      evidenceRules.map(({ name }) => name).sort(byText),
    );
  });
});

describe('a record of the shipped evidence', () => {
  let said: readonly string[] = [];
  const files = copyOf(shippedData);

  beforeAll(async () => {
    for (const plant of shapePlants) spoil(files, plant, '');
    said = await loadCopy(files);
  });

  it.each(shapePlants)('without $what is refused where it stands', ({ code, file, entry }) => {
    expect(said).toContain(`${code} ${placeOf(files, { file, entry, text: entry })}`);
  });

  it('is not refused for anything else', () => {
    expect(said).toHaveLength(shapePlants.length);
  });
});
