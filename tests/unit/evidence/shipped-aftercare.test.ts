import { beforeAll, describe, expect, it } from 'vitest';

import { loadEvidence } from '../../../src/evidence/index.ts';
import { canonicalJson, sha256 } from '../../../src/io/digest.ts';
import { createNodeWorkspace } from '../../../src/io/node-workspace.ts';
import { aftercareSubjects, testCodes, whoCodes } from '../../../src/model/aftercare-codes.ts';
import { whyWithheld } from '../../../src/model/aftercare-rules.ts';
import { aftercareUnits, unitsOfSubject } from '../../../src/model/aftercare-units.ts';
import type { AftercareFact } from '../../../src/model/aftercare.ts';
import type { EvidenceBase } from '../../../src/model/evidence.ts';

const folder = 'src/evidence/data';
let evidence: EvidenceBase;

beforeAll(async () => {
  const loaded = await loadEvidence(createNodeWorkspace(), { folder, digester: { sha256, canonicalJson } });
  if (!loaded.ok) throw new Error(JSON.stringify(loaded.diagnostics.slice(0, 5)));
  evidence = loaded.value;
});

function tally(words: readonly string[]): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const word of words) counts[word] = (counts[word] ?? 0) + 1;
  return counts;
}

function rulesFor(option: string): readonly AftercareFact[] {
  return evidence.aftercare.filter(
    (fact) => whyWithheld(fact, evidence.aftercareSources.get(fact.source), option).length === 0,
  );
}

function amountOf(id: string): unknown {
  return evidence.aftercare.find((fact) => fact.id === id)?.value;
}

describe('the shipped facts on aftercare', () => {
  it('are those that were brought in, by topic and by how they were read', () => {
    expect(evidence.aftercare).toHaveLength(233);
    expect(evidence.aftercareSources.size).toBe(68);
    expect(tally(evidence.aftercare.map(({ topic }) => topic))).toEqual({
      'liver-diet': 4,
      'tests-before': 2,
      smoking: 3,
      alcohol: 4,
      'diet-stage': 23,
      'eating-habit': 2,
      protein: 8,
      fluid: 2,
      supplement: 62,
      'blood-test': 14,
      'other-test': 2,
      'follow-up': 10,
      'clot-prevention': 7,
      'pain-medicine': 2,
      'medicine-form': 4,
      'diabetes-medicine': 4,
      'blood-pressure-medicine': 1,
      'acid-medicine': 3,
      'gallstone-medicine': 5,
      pregnancy: 6,
      contraception: 4,
      driving: 2,
      work: 3,
      lifting: 3,
      activity: 2,
      'warning-emergency': 24,
      'emergency-first': 9,
      'warning-clinic': 7,
      carry: 1,
      'unit-conversion': 10,
    });
    // Two definitions of units had no address to read them at, and count as recalled.
    expect(tally(evidence.aftercare.map(({ seen }) => seen))).toEqual({
      page: 158,
      'page-2nd': 27,
      memory: 48,
    });
  });

  it('use every code that the schema lists', () => {
    const used = new Set<string>(evidence.aftercare.map(({ subject }) => subject));
    expect(
      Object.values(aftercareSubjects)
        .flat()
        .filter((code) => !used.has(code)),
    ).toEqual([]);
    const whom = new Set<string>(evidence.aftercare.map(({ who }) => who));
    expect(whoCodes.filter((code) => !whom.has(code))).toEqual([]);
    const amounts = evidence.aftercare.flatMap(({ value, subject }) =>
      typeof value === 'object' && 'unit' in value ? [{ ...value, subject }] : [],
    );
    expect(aftercareUnits.filter((unit) => !amounts.some((amount) => amount.unit === unit))).toEqual([]);
    const counted = new Set<string>(amounts.map(({ subject }) => subject));
    expect(Object.keys(unitsOfSubject).filter((subject) => !counted.has(subject))).toEqual([]);
    const tested = new Set(
      evidence.aftercare.flatMap(({ value }) =>
        typeof value === 'object' && 'tests' in value ? value.tests : [],
      ),
    );
    expect(testCodes.filter((code) => !tested.has(code))).toEqual([]);
  });

  it('hold the figures as they were read', () => {
    expect(amountOf('supplement.calcium.standard.asmbs-2016')).toEqual({
      low: 1200,
      high: 1500,
      unit: 'mg/day',
    });
    expect(amountOf('supplement.vitamin-b12.oral.asmbs-2016')).toEqual({
      low: 350,
      high: 500,
      unit: 'microgram/day',
    });
    expect(amountOf('supplement.vitamin-d.aace-2013')).toEqual({ low: 3000, high: null, unit: 'IU/day' });
    expect(amountOf('supplement.vitamin-k.duodenal-switch.oma-2024')).toEqual({
      low: 300,
      high: 300,
      unit: 'microgram/day',
    });
    expect(amountOf('warning-emergency.fever-number.cooper-2011')).toEqual({
      low: 38,
      high: null,
      unit: 'celsius',
    });
  });

  it('let nothing print as a rule that conflicts, was not read, is of an older edition, or of another operation', () => {
    for (const option of ['sleeve', 'bypass', 'one-anastomosis-bypass', 'plication', 'band', 'semaglutide']) {
      for (const fact of rulesFor(option)) {
        expect([fact.id, fact.seen, fact.use, fact.conflict_with]).toEqual([
          fact.id,
          'page',
          'rule',
          undefined,
        ]);
        expect(fact.options).toContain(option);
        expect(evidence.aftercareSources.get(fact.source)?.replaced).toBeUndefined();
      }
    }
  });

  it('leave this much to print after a sleeve, little after plication, and for a medicine only when to call the emergency number first', () => {
    const topics = tally(rulesFor('sleeve').map(({ topic }) => topic));
    expect(topics).toEqual({
      'liver-diet': 1,
      alcohol: 1,
      protein: 4,
      supplement: 11,
      'blood-test': 1,
      'follow-up': 2,
      'medicine-form': 1,
      'diabetes-medicine': 1,
      pregnancy: 1,
      'warning-emergency': 9,
      'emergency-first': 9,
      'warning-clinic': 3,
      carry: 1,
    });
    const furtherFor = (option: string): readonly string[] =>
      rulesFor(option).flatMap(({ id, topic }) => (topic === 'emergency-first' ? [] : [id]));
    expect(furtherFor('semaglutide')).toEqual([]);
    expect(furtherFor('plication')).toEqual(['warning-emergency.vomiting-pain.plication']);
  });

  it('name no salt of iron among what may print, so that amounts of iron cannot be added', () => {
    const irons = evidence.options.flatMap(({ code }) =>
      rulesFor(code)
        .filter(({ subject }) => subject.startsWith('iron-as-'))
        .map(({ id }) => id),
    );
    expect(irons).toEqual([]);
  });
});
