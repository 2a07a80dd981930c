import { describe, expect, it } from 'vitest';

import { compareTables } from '../../../src/compare/compare-tables.ts';
import { compareCases } from '../../../src/compare/index.ts';
import type { ComparisonTable } from '../../../src/model/comparison.ts';
import type { MortalityScore } from '../../../src/model/mortality-score.ts';
import {
  compareWell,
  makeCase,
  makeCaution,
  makeClinic,
  makeEvidence,
  makeRecord,
  makeWeightRecord,
  today,
} from '../../helpers/compare-inputs.ts';
import type { CaseChanges } from '../../helpers/compare-inputs.ts';
import { noDifference } from '../../helpers/no-difference.ts';

const evidence = makeEvidence(
  [
    makeRecord({ people: { indication: 'first-operation', bmi: { low: 35, high: 50 }, diabetes: 'mixed' } }),
    makeRecord({ id: 'bypass.leak.30d.study-b', study: 'study-b', option: 'bypass' }),
    makeWeightRecord(),
  ],
  { cautions: [makeCaution({ options: ['sleeve', 'band'] })] },
);

function table(changes: CaseChanges = {}): ComparisonTable {
  return compareWell(evidence, changes);
}

describe('two comparisons of one case', () => {
  it('do not differ', () => {
    expect(compareTables(table(), table())).toEqual({
      ...noDifference,
      cellCount: expect.any(Number) as number,
    });
  });

  it('do not differ for the order of options and conditions', () => {
    const conditions = ['reflux', 'sleep-apnoea'];
    const options = ['sleeve', 'band', 'no-operation'];
    const turned = table({
      health: { conditions: [...conditions].reverse() },
      decision: { options: [...options].reverse() },
    });
    expect(compareTables(table({ health: { conditions }, decision: { options } }), turned).isSame).toBe(true);
  });
});

describe('two comparisons', () => {
  it('differ in a cell by value, lead or reason, each by its name', () => {
    const { cells, records, person } = compareTables(table(), table({ patient: { weight: '140 kg' } }));
    const byId = new Map(cells.map((cell) => [cell.id, cell]));
    expect(byId.get('sleeve/leak/30d')).toMatchObject({
      before: { state: 'known', lead: { record: 'sleeve.leak.30d.study-a' } },
      after: { state: 'not-known', reason: { code: 'bmi-outside', low: 35, high: 50, yours: 52.7 } },
      what: expect.arrayContaining(['state', 'value', 'lead', 'reason']) as string[],
    });
    expect(byId.get('sleeve/weight-loss/60m')?.what).toEqual(['value']);
    expect(byId.has('bypass/leak/30d')).toBe(false);
    expect(records).toEqual([
      { id: 'sleeve.leak.30d.study-a', before: 'sleeve.leak.30d.study-a', after: null },
    ]);
    expect(person.map(({ id }) => id)).toEqual(['weightKg', 'bmi']);
  });

  it('differ in the course of weight of one study of an option, not of another', () => {
    const courseOf = (study: string, option: string, points: readonly number[]) => ({
      option,
      study,
      points: points.map((months) => ({ months })),
    });
    const holding = (...courses: readonly object[]): ComparisonTable =>
      ({ ...table(), weight: { ...table().weight, courses } }) as ComparisonTable;
    const kept = [courseOf('a', 'sleeve', [12, 60]), courseOf('a', 'bypass', [12, 60])];
    const before = holding(courseOf('b', 'sleeve', [12, 24]), ...kept);
    const after = holding(courseOf('b', 'sleeve', [12, 36]), ...kept);
    expect(compareTables(before, after)).toMatchObject({
      courses: [
        { before: { study: 'b', points: [{}, { months: 24 }] }, after: { points: [{}, { months: 36 }] } },
      ],
      elsewhere: [],
    });
  });

  it('name the property of the lead that differs', () => {
    const [first, second] = [table(), table()];
    const swapped = JSON.parse(
      JSON.stringify(second).replaceAll('"match":"like-you"', '"match":"near"'),
    ) as ComparisonTable;
    expect(compareTables(first, swapped).cells.map(({ what }) => what)).toEqual([
      ['lead.match'],
      ['lead.match'],
      ['lead.match'],
    ]);
  });

  it('differ in options, cautions, notes, frames and the weight that is mainly shown', () => {
    const before = table({ decision: { options: ['sleeve', 'no-operation'] } });
    const after = table({
      patient: { weight: '80 kg' },
      health: { conditions: ['reflux'] },
      decision: { options: ['bypass', 'sleeve', 'no-operation'] },
    });
    const difference = compareTables(before, after);
    expect(difference.options).toMatchObject([{ id: 'bypass', before: null, after: { code: 'bypass' } }]);
    expect(difference.options[0]?.after).not.toHaveProperty('stay');
    expect(difference.cautions).toMatchObject([{ id: 'reflux-sleeve', before: null }]);
    expect(difference.notes).toEqual([{ id: 'under-35', before: null, after: 'under-35' }]);
    expect(difference.elsewhere).toEqual([]);
    const other = { ...after, weight: { ...after.weight, mainMonths: 24 } };
    expect(compareTables(after, other).horizon).toEqual([{ id: 'main', before: 60, after: 24 }]);
    const [topic, ...topics] = after.topics;
    if (topic === undefined) throw new Error('a table without topics');
    const framed = { ...after, topics: [{ ...topic, denominator: 1000 as const }, ...topics] };
    expect(
      compareTables({ ...framed, topics: [{ ...topic, denominator: 100 }, ...topics] }, framed).topics,
    ).toEqual([
      {
        id: 'first-month',
        before: { denominator: 100, picture: topic.picture?.outcome ?? null },
        after: { denominator: 1000, picture: topic.picture?.outcome ?? null },
      },
    ]);
  });

  it('differ in cautions that pull apart and in the old score, whatever the order of the options', () => {
    const first = table({ health: { conditions: ['high-blood-pressure'] } });
    const score = { ...first.mortalityScore, options: ['sleeve', 'bypass'] } as MortalityScore;
    const conflict = {
      caution: 'reflux-sleeve',
      to: 'bypass',
      from: ['sleeve'],
      against: ['smoking-bypass'],
    };
    const before = { ...first, mortalityScore: score };
    const turned = { ...before, mortalityScore: { ...score, options: ['bypass', 'sleeve'] } };
    expect(compareTables(before, turned).isSame).toBe(true);
    const after = { ...before, mortalityScore: null, conflicts: [conflict] };
    expect(compareTables(before, after)).toMatchObject({
      isSame: false,
      conflicts: [{ id: 'reflux-sleeve bypass', before: null, after: conflict }],
      score: [{ id: 'mortality', before: { ...score, options: ['bypass', 'sleeve'] }, after: null }],
      elsewhere: [],
    });
  });

  it('differ in a caution, or in the old score, that reaches one option more', () => {
    const first = table({ health: { conditions: ['reflux', 'high-blood-pressure'] } });
    const reaching = (...options: readonly string[]): ComparisonTable => ({
      ...first,
      cautions: first.cautions.map((caution) => ({ ...caution, options })),
      mortalityScore: { ...first.mortalityScore, options } as MortalityScore,
    });
    expect(compareTables(reaching('sleeve'), reaching('sleeve', 'band'))).toMatchObject({
      cautions: [{ before: { options: ['sleeve'] }, after: { options: ['band', 'sleeve'] } }],
      score: [{ before: { options: ['sleeve'] }, after: { options: ['band', 'sleeve'] } }],
      elsewhere: [],
    });
  });

  it('never differ unnoticed, whatever a table comes to hold', () => {
    const before = table();
    const after = {
      ...before,
      evidence: { ...before.evidence, version: '2027.01' },
      weight: { ...before.weight, more: 1 },
    } as ComparisonTable;
    expect(compareTables(before, after)).toMatchObject({
      isSame: false,
      cells: [],
      elsewhere: ['evidence', 'weight.more'],
    });
  });
});

describe('a row that only one of two cases shows', () => {
  const clinic = makeClinic();
  const compared = (changes: CaseChanges) => ({
    input: { case: makeCase(changes), clinic, evidence, date: today },
    table: table(changes),
  });
  const options = ['sleeve', 'no-operation'];

  it('is worked out for the other case, which is marked as not showing it', () => {
    const { cells } = compareCases(
      compared({ decision: { options } }),
      compared({ patient: { weight: '140 kg' }, decision: { options } }),
    );
    expect(cells.find(({ id }) => id === 'sleeve/leak/30d')).toMatchObject({
      hidden: 'after',
      before: { state: 'known' },
      after: { state: 'not-known', reason: { code: 'bmi-outside' } },
    });
  });

  it('stays away where the other case does not have the option', () => {
    const { cells } = compareCases(
      compared({}),
      compared({ decision: { options: ['bypass', 'no-operation'] } }),
    );
    const sleeve = cells.filter(({ id }) => id.startsWith('sleeve/'));
    expect(sleeve.length).toBeGreaterThan(0);
    expect(sleeve.filter(({ after, hidden }) => after !== null || hidden !== undefined)).toEqual([]);
  });
});
