import { beforeAll, describe, expect, it } from 'vitest';

import { checkEvidence, listRecords, loadEvidence } from '../../../src/evidence/index.ts';
import { readDataFiles } from '../../../src/evidence/data-files.ts';
import { canonicalJson, sha256 } from '../../../src/io/digest.ts';
import { createNodeWorkspace } from '../../../src/io/node-workspace.ts';
import { isPossible } from '../../../src/model/evidence.ts';
import type { EvidenceBase, OptionKind } from '../../../src/model/evidence.ts';

const folder = 'src/evidence/data';
const workspace = createNodeWorkspace();

/** Counted by hand over the files (grep -c '^- id:'); a record that is lost or added must be meant. */
const recordCounts: Readonly<Record<string, number>> = {
  'any-medicine': 4,
  'any-surgery': 131,
  balloon: 48,
  band: 84,
  'band-removal': 22,
  bypass: 326,
  'duodenal-switch': 53,
  'endoscopic-sleeve': 36,
  lifestyle: 70,
  'one-anastomosis-bypass': 49,
  plication: 85,
  semaglutide: 38,
  'single-anastomosis-switch': 23,
  sleeve: 263,
  tirzepatide: 62,
  'usual-care': 63,
};

describe('the shipped evidence', () => {
  let evidence: EvidenceBase;

  beforeAll(async () => {
    const loaded = await loadEvidence(workspace, { folder, digester: { sha256, canonicalJson } });
    if (!loaded.ok) throw new Error(JSON.stringify(loaded.diagnostics.slice(0, 5)));
    evidence = loaded.value;
  });

  it('keeps every rule', async () => {
    expect(await checkEvidence(workspace, folder)).toEqual([]);
  });

  it('has the records that were brought in, option by option', () => {
    const counts = Object.fromEntries(
      [...evidence.recordsByOption].map(([option, records]) => [option, records.length]),
    );
    expect(counts).toEqual(recordCounts);
    expect(evidence.records).toHaveLength(1357);
  });

  it('has the other entries that were brought in', () => {
    expect({
      options: evidence.options.length,
      outcomes: evidence.outcomes.length,
      metrics: evidence.metrics.length,
      studies: evidence.studies.size,
      reversibility: evidence.reversibility.size,
      cautions: evidence.cautions.length,
      coverage: evidence.cautionCoverage.length,
      standing: evidence.standing.length,
      riskFactors: evidence.riskFactors.length,
      definitions: evidence.definitions.length,
      criteria: evidence.criteria.length,
      consentElements: evidence.consentElements.length,
    }).toEqual({
      options: 17,
      outcomes: 109,
      metrics: 27,
      studies: 429,
      reversibility: 14,
      cautions: 194,
      coverage: 54,
      standing: 36,
      riskFactors: 68,
      definitions: 31,
      criteria: 88,
      consentElements: 39,
    });
  });

  it('has a study for every record', () => {
    expect(evidence.records.filter((record) => !evidence.studies.has(record.study))).toEqual([]);
  });

  it('lets 1,211 records print, each of a study with an address and a title or authors', () => {
    const rows = listRecords(evidence, { printable: true });
    expect(rows).toHaveLength(1211);
    const unsupported = rows.filter(
      ({ study }) => !study?.seen_at || !(study.citation.title ?? study.citation.authors),
    );
    expect(unsupported.map(({ record }) => record.id)).toEqual([]);
  });

  it('marks what a clinician would not call by the name of its outcome, as counting less or more', () => {
    const scopeOf = (id: string) => evidence.records.find((record) => record.id === id)?.scope;
    expect(scopeOf('bypass.ulcer.48m.ulcer-perforated-ny')).toBe('narrower');
    expect(scopeOf('sleeve.clot.30d.nsqip-2010-2014')).toBe('narrower');
    expect(scopeOf('plication.reoperation.60m.talebpour-2012')).toBe('narrower');
    expect(scopeOf('sleeve.reoperation.60m.pcornet-2018-abstract')).toBe('wider');
    expect(scopeOf('balloon.ulcer.12m.brazil-igb-experts')).toBe('narrower');
    expect(scopeOf('duodenal-switch.leak.peri.biertho-2013')).toBe('wider');
    expect(scopeOf('sleeve.leak.30d.mbsaqip-2015-2020')).toBeUndefined();
    const printable = listRecords(evidence, { printable: true });
    expect(printable.filter(({ record }) => record.scope !== undefined)).toHaveLength(133);
  });

  it('calls nobody mixed where second operations were few, so that no second operation is promised their luck', () => {
    const few = evidence.records.filter(({ note }) => note?.startsWith('a few second operations') === true);
    expect(few.length).toBeGreaterThan(0);
    expect(new Set(few.map(({ people }) => people.indication))).toEqual(new Set(['first-operation']));
  });

  it('takes no side effect of a dummy injection for one of a programme', () => {
    const effects = ['nausea', 'vomiting', 'diarrhoea', 'constipation', 'hair-loss', 'side-effect-stop'];
    const plain = evidence.records.filter(
      ({ option, outcome, kind, variant }) =>
        ['lifestyle', 'usual-care'].includes(option) &&
        effects.includes(outcome) &&
        kind === 'risk' &&
        variant === undefined,
    );
    expect(plain.map(({ id }) => id)).toEqual([]);
  });

  it('lets a person choose the treatments, and not a group of them', () => {
    const choosable = evidence.options.filter((option) => option.choosable).map(({ code }) => code);
    expect(choosable).toHaveLength(14);
    expect(choosable).not.toContain('any-surgery');
    expect(choosable).not.toContain('any-medicine');
    expect(choosable).toContain('no-operation');
  });

  it('says for every choosable option whether it can be undone', () => {
    const silent = evidence.options.filter(
      (option) => option.choosable && !evidence.reversibility.has(option.figures_from),
    );
    expect(silent).toEqual([]);
  });

  it('calls what only an operation can cause impossible without one, and what can befall anyone possible', () => {
    const isPossibleIn = (kind: OptionKind) => (code: string) =>
      evidence.outcomes.some((outcome) => outcome.code === code && isPossible(outcome, kind, false));
    const surgical = ['leak', 'stricture', 'internal-hernia', 'slippage', 'erosion', 'port-problem'];
    expect(surgical.filter(isPossibleIn('operation'))).toEqual(surgical);
    for (const kind of ['medicine', 'programme', 'none'] as const)
      expect(surgical.filter(isPossibleIn(kind))).toEqual([]);
    const human = [
      'death',
      'gallstones',
      'reflux',
      'anaemia',
      'deficiency-iron',
      'clot',
      'ulcer',
      'fracture',
    ];
    expect(human.filter(isPossibleIn('none'))).toEqual(human);
  });

  it('is in files small enough to review, and names no path of a machine', async () => {
    const files = await readDataFiles(workspace, folder);
    const tooLarge = files.filter(({ text }) => text.length > 250_000);
    const withPaths = files.filter(({ text }) => /(^|[\s'"(])\/(work|tmp|home)\//.test(text));
    expect([...tooLarge, ...withPaths].map(({ path }) => path)).toEqual([]);
    expect(files.length).toBeGreaterThan(25);
  });
});
