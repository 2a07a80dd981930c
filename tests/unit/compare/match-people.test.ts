import { describe, expect, it } from 'vitest';

import { matchPeople } from '../../../src/compare/match-people.ts';
import type { PeopleMatch } from '../../../src/compare/match-people.ts';
import type { MatchedOption } from '../../../src/compare/subject.ts';
import { firstSleeve, makeRecord, makeSubject } from '../../helpers/compare-inputs.ts';
import type { CaseChanges } from '../../helpers/compare-inputs.ts';

interface Scene {
  readonly people?: Readonly<Record<string, unknown>>;
  readonly person?: CaseChanges;
  readonly option?: MatchedOption;
  readonly outcome?: string;
}

/** Matches people like those of the woman (first operation, diabetes unknown) unless changed. */
function match({ people, person, option = firstSleeve, outcome = 'leak' }: Scene): PeopleMatch {
  const record = makeRecord({
    outcome,
    people: { indication: 'first-operation', diabetes: 'unknown', ...people },
  });
  return matchPeople(record, makeSubject(person), option);
}

function level(scene: Scene): string {
  return match(scene).level;
}

const of = (weight: string): CaseChanges => ({ patient: { weight } });
/** 163 cm tall. */
const bmi = (value: number): CaseChanges => of(`${(value * 1.63 ** 2).toFixed(2)} kg`);

const second = (operation: string, extra: CaseChanges = {}): CaseChanges => ({
  ...extra,
  health: { earlier_operations: [{ operation, status: 'in-place' }] },
  decision: { asked: 'second-operation' },
});
const afterBand: MatchedOption = { kind: 'operation', indication: 'after-band' };
const medicine: MatchedOption = { kind: 'medicine', indication: 'none' };

describe('BMI of the people', () => {
  it('covers a stated range with both ends and nothing outside it', () => {
    const people = { bmi: { low: 35, high: 50 } };
    expect(level({ people, person: bmi(35) })).toBe('like-you');
    expect(level({ people, person: bmi(50) })).toBe('like-you');
    expect(match({ people, person: bmi(50.2) })).toMatchObject({
      level: 'other-people',
      reasons: [{ code: 'bmi-outside', low: 35, high: 50, yours: 50.2 }],
    });
  });

  it('prefers the stated range to the mean', () => {
    expect(level({ people: { bmi: { low: 35, high: 40, mean: 38, sd: 10 } } })).toBe('other-people');
  });

  it('caps an open range at mean plus two standard deviations', () => {
    const people = { bmi: { low: 35, mean: 40, sd: 2 } };
    expect(level({ people, person: bmi(44) })).toBe('like-you');
    expect(level({ people, person: bmi(44.2) })).toBe('other-people');
    expect(level({ people: { bmi: { low: 35, mean: 40 } }, person: bmi(60) })).toBe('like-you');
  });

  it('has the limits of the sex of the person, and of a sex that is not stated those that hold for both', () => {
    const people = {
      bmi: { low: 38, mean: 41, sd: 4 },
      bmi_by_sex: { female: { low: 38 }, male: { low: 34 } },
    };
    const at = (value: number, sex: string): PeopleMatch =>
      match({ people, person: { patient: { ...bmi(value).patient, sex } } });
    expect(at(34, 'male')).toMatchObject({ level: 'like-you', covered: { bmiLow: 34, bmiHigh: 49 } });
    expect(at(33.8, 'male').level).toBe('other-people');
    expect(at(38, 'female')).toMatchObject({ level: 'like-you', covered: { bmiLow: 38 } });
    expect(at(37.8, 'female').reasons).toMatchObject([{ code: 'bmi-outside', low: 38 }]);
    expect(at(37.8, 'not-stated').reasons).toMatchObject([{ code: 'bmi-outside', low: 38 }]);
    expect(at(38, 'not-stated').level).toBe('like-you');
  });

  it('takes mean ± 2 SD when no range is stated', () => {
    const people = { bmi: { mean: 45, sd: 5 } };
    expect(match({ people, person: bmi(35) })).toMatchObject({ level: 'like-you', bmiBasis: 'mean-sd' });
    expect(level({ people, person: bmi(34.8) })).toBe('other-people');
  });

  it('does not believe a tail under the indication of the day where nearly all of a study is above it', () => {
    const people = { bmi: { mean: 43.9, sd: 6.4 } };
    expect(match({ people, person: bmi(35) })).toMatchObject({ level: 'like-you', covered: { bmiLow: 35 } });
    expect(match({ people, person: bmi(34.6) })).toMatchObject({
      level: 'other-people',
      reasons: [{ code: 'bmi-outside', low: 35, high: 56.7, yours: 34.6 }],
    });
  });

  it('believes it where a sixth of the people or more would lie there', () => {
    expect(match({ people: { bmi: { mean: 38, sd: 4 } }, person: bmi(31) })).toMatchObject({
      level: 'like-you',
      covered: { bmiLow: 30 },
    });
  });

  it('believes it after another operation, where nothing is known of the indication', () => {
    const people = { indication: 'after-band', bmi: { mean: 42, sd: 6 } };
    expect(match({ people, person: second('band', bmi(31)), option: afterBand })).toMatchObject({
      level: 'like-you',
      covered: { bmiLow: 30 },
    });
  });

  it('covers the very end of mean ± 2 SD, whatever a computer makes of it', () => {
    expect(47.6 - 2 * 5.6).not.toBe(36.4);
    expect(level({ people: { bmi: { mean: 47.6, sd: 5.6 } }, person: bmi(36.4) })).toBe('like-you');
  });

  it('takes a mean alone for near within 5 kg/m²', () => {
    const people = { bmi: { mean: 45 } };
    expect(match({ people })).toMatchObject({
      level: 'near',
      bmiBasis: 'mean-only',
      reasons: [{ code: 'bmi-mean-only', mean: 45, yours: 43.1 }],
    });
    expect(level({ people: { bmi: { median: 48.2 } } })).toBe('other-people');
  });

  it('assumes 35 and over for a silent study of first operations, and says so', () => {
    expect(match({})).toMatchObject({ level: 'like-you', bmiBasis: 'assumed', covered: { bmiLow: 35 } });
    expect(match({ person: bmi(34) })).toMatchObject({
      level: 'other-people',
      reasons: [{ code: 'bmi-assumed', low: 35, high: 50, yours: 34 }],
    });
  });

  it('takes limits that contradict each other for nobody, however near one of them is', () => {
    const people = { bmi: { low: 35, high: 60 }, age: { low: 18, high: 28 }, group: 'over-65' };
    expect(level({ people, person: { patient: { born: '1962-03-01' } } })).toBe('other-people');
  });

  it('assumes no more than 50: above, a silent study is only near, and a group that begins there is not cut off', () => {
    expect(match({ person: bmi(50) }).level).toBe('like-you');
    expect(match({ person: bmi(62) })).toMatchObject({
      level: 'near',
      reasons: [{ code: 'bmi-assumed', low: 35, high: 50, yours: 62 }],
    });
    const group = { people: { group: 'bmi-50-plus' }, person: bmi(62) };
    expect(match(group)).toMatchObject({ level: 'like-you', bmiBasis: 'stated-range' });
    const under = { people: { group: 'bmi-under-35' }, person: bmi(40) };
    expect(match(under)).toMatchObject({
      level: 'other-people',
      reasons: [{ code: 'bmi-outside', low: 30, high: 34.9, yours: 40 }],
    });
  });

  it('assumes 30 and over for medicines, endoscopic treatment, programmes and no treatment', () => {
    for (const kind of ['medicine', 'programme', 'none'] as const) {
      const option = { kind, indication: 'none' } as const;
      expect(level({ people: { indication: 'none' }, person: bmi(30), option })).toBe('like-you');
      expect(level({ people: { indication: 'none' }, person: bmi(29.8), option })).toBe('other-people');
    }
    const balloon = { kind: 'endoscopic', indication: 'first-operation' } as const;
    expect(level({ person: bmi(30), option: balloon })).toBe('like-you');
  });

  it('assumes nothing after another operation', () => {
    const people = { indication: 'after-band' };
    const scene = (value: number): Scene => ({
      people,
      option: afterBand,
      person: second('band', bmi(value)),
    });
    expect(match(scene(31))).toMatchObject({
      level: 'near',
      reasons: [{ code: 'bmi-unknown' }],
      bmiBasis: 'unknown',
    });
    expect(match(scene(29.8))).toMatchObject({ level: 'other-people', reasons: [{ code: 'bmi-unknown' }] });
  });

  it.each([
    ['bmi-under-35', 34.8, 35],
    ['bmi-50-plus', 50, 49.8],
    ['bmi-60-plus', 60, 59.8],
  ] as const)('narrows to the group %s', (group, inside, outside) => {
    expect(level({ people: { group }, person: bmi(inside) })).toBe('like-you');
    expect(match({ people: { group }, person: bmi(outside) }).reasons[0]).toMatchObject({
      code: 'bmi-outside',
    });
    expect(level({ people: { group, bmi: { mean: inside } }, person: bmi(inside) })).toBe('like-you');
  });

  it('believes what a study of 50 and over says of the spread of its people', () => {
    const people = { group: 'bmi-50-plus', bmi: { mean: 55, sd: 4 } };
    expect(match({ people, person: bmi(62) })).toMatchObject({
      level: 'like-you',
      bmiBasis: 'mean-sd',
      covered: { bmiLow: 50, bmiHigh: 63 },
    });
    expect(level({ people, person: bmi(64) })).toBe('other-people');
  });

  it('assumes where a silent group under 35 begins, and ends it where it says so', () => {
    const silent = { people: { group: 'bmi-under-35' }, person: bmi(29) };
    expect(match(silent).reasons).toEqual([{ code: 'bmi-assumed', low: 30, high: 34.9, yours: 29 }]);
    const people = { indication: 'after-band', group: 'bmi-under-35', bmi: { high: 33 } };
    expect(level({ people, option: afterBand, person: second('band', bmi(33)) })).toBe('like-you');
    expect(level({ people, option: afterBand, person: second('band', bmi(34)) })).toBe('other-people');
  });

  it('does not take a group under 35 for people of any weight below', () => {
    expect(level({ people: { group: 'bmi-under-35', bmi: { mean: 33 } }, person: bmi(29) })).toBe(
      'other-people',
    );
    expect(level({ people: { group: 'bmi-under-35', bmi: { low: 28, high: 35 } }, person: bmi(29) })).toBe(
      'like-you',
    );
  });
});

describe('age of the people', () => {
  const born = (year: number): CaseChanges => ({ patient: { born: `${year}-01-01` } });

  it('is near within 5 years outside the stated range and other beyond', () => {
    const people = { age: { low: 18, high: 60 } };
    expect(level({ people, person: born(1966) })).toBe('like-you');
    expect(match({ people, person: born(1961) })).toMatchObject({
      level: 'near',
      reasons: [{ code: 'age-outside', low: 18, high: 60, yours: 65 }],
    });
    expect(level({ people, person: born(1960) })).toBe('other-people');
  });

  it('takes mean ± 2 SD when no range is stated', () => {
    const people = { age: { mean: 40, sd: 5 } };
    expect(level({ people, person: born(1976) })).toBe('like-you');
    expect(level({ people, person: born(1975) })).toBe('near');
  });

  it('names it when a study that does not say how old its people were would stand for someone over 65', () => {
    expect(level({ person: born(1961) })).toBe('like-you');
    expect(match({ person: born(1960) })).toMatchObject({
      level: 'near',
      reasons: [{ code: 'age-unknown', yours: 66 }],
    });
    expect(level({ people: { age: { low: 18 } }, person: born(1950) })).toBe('near');
  });

  it.each([
    ['over-60', 1966, 1967],
    ['over-65', 1961, 1962],
    ['over-70', 1956, 1957],
  ] as const)('fits the group %s from its age on', (group, inside, outside) => {
    expect(level({ people: { group }, person: born(inside) })).toBe('like-you');
    expect(level({ people: { group }, person: born(outside) })).not.toBe('like-you');
  });

  it('never applies adult figures under 18, whatever the range', () => {
    expect(match({ people: { age: { low: 12, high: 74 } }, person: born(2009) })).toMatchObject({
      level: 'other-people',
      reasons: [{ code: 'adults-only', yours: 17 }],
    });
  });

  it('keeps adolescents and adults apart', () => {
    const people = { group: 'adolescents', age: { low: 13, high: 19 } };
    expect(level({ people, person: born(2010) })).toBe('like-you');
    expect(match({ people, person: born(2008) }).reasons).toEqual([{ code: 'adolescents-only', yours: 18 }]);
  });
});

describe('what was done before', () => {
  it('keeps first operations, second operations and no operation apart', () => {
    expect(match({ people: { indication: 'after-band' } }).reasons).toEqual([
      { code: 'indication', theirs: 'after-band', yours: 'first-operation' },
    ]);
    expect(level({ people: { indication: 'none' } })).toBe('other-people');
    const people = { indication: 'first-operation', bmi: { low: 30 } };
    expect(level({ people, option: afterBand, person: second('band') })).toBe('other-people');
  });

  it('takes mixed people for near', () => {
    const people = { indication: 'mixed', bmi: { low: 30, high: 60 } };
    expect(match({ people })).toMatchObject({ level: 'near', reasons: [{ code: 'indication-mixed' }] });
    expect(level({ people, option: afterBand, person: second('band') })).toBe('near');
  });

  it('takes people of whom nothing is said for near to first operations only', () => {
    const people = { indication: 'unknown', bmi: { low: 30, high: 60 } };
    expect(match({ people })).toMatchObject({ level: 'near', reasons: [{ code: 'indication-unknown' }] });
    expect(match({ people, option: afterBand, person: second('band') }).reasons).toEqual([
      { code: 'indication', theirs: 'unknown', yours: 'after-band' },
    ]);
  });

  it('does not apply figures of people never operated on to people who were', () => {
    const people = { indication: 'none', bmi: { low: 27, high: 60 } };
    expect(level({ people, option: medicine })).toBe('like-you');
    expect(match({ people, option: medicine, person: second('sleeve') }).reasons).toEqual([
      { code: 'indication', theirs: 'none', yours: 'after-sleeve' },
    ]);
    expect(
      level({ people: { ...people, indication: 'mixed' }, option: medicine, person: second('sleeve') }),
    ).toBe('other-people');
  });

  it('finds nothing after an operation that was not studied', () => {
    const option = { kind: 'operation', indication: 'after-other' } as const;
    expect(level({ people: { indication: 'after-sleeve' }, option, person: second('duodenal-switch') })).toBe(
      'other-people',
    );
  });

  it('names it when the earlier operation was removed, or was not the only one', () => {
    const people = { indication: 'after-band', bmi: { low: 30, high: 60 } };
    const removed: CaseChanges = {
      health: { earlier_operations: [{ operation: 'band', status: 'removed' }] },
      decision: { asked: 'after-removal' },
    };
    const two: CaseChanges = {
      health: {
        earlier_operations: [
          { operation: 'sleeve', status: 'converted' },
          { operation: 'band', status: 'in-place' },
        ],
      },
      decision: { asked: 'second-operation' },
    };
    expect(match({ people, option: afterBand, person: removed })).toMatchObject({
      level: 'near',
      reasons: [{ code: 'removed-before' }],
    });
    expect(match({ people, option: afterBand, person: two })).toMatchObject({
      level: 'near',
      reasons: [{ code: 'several-operations', count: 2 }],
    });
  });
});

describe('the exchange of a band', () => {
  const withBand = (plan: Readonly<Record<string, unknown>>): CaseChanges => ({
    health: { earlier_operations: [{ operation: 'band', status: 'in-place' }] },
    decision: { asked: 'second-operation' },
    plan,
  });
  const people = { indication: 'after-band', bmi: { low: 30, high: 60 } };
  const levels = (stages: string | undefined, plan: Readonly<Record<string, unknown>>): string =>
    level({
      people: stages === undefined ? people : { ...people, stages },
      option: afterBand,
      person: withBand(plan),
    });

  it('in another number of operations than planned is a named difference', () => {
    expect(
      match({ people: { ...people, stages: 'one' }, option: afterBand, person: withBand({ stages: 'two' }) }),
    ).toMatchObject({ level: 'near', reasons: [{ code: 'stages', theirs: 'one' }] });
    expect(levels('two', { stages: 'one' })).toBe('near');
  });

  it('as planned, in some of each, or not stated on either side, is none', () => {
    expect(levels('one', { stages: 'one' })).toBe('like-you');
    expect(levels('either', { stages: 'two' })).toBe('like-you');
    expect(levels('unstated', { stages: 'two' })).toBe('like-you');
    expect(levels(undefined, { stages: 'two' })).toBe('like-you');
    expect(levels('two', {})).toBe('like-you');
  });
});

describe('illness, groups and sex', () => {
  const diabetes: CaseChanges = { health: { conditions: ['type-2-diabetes'] } };

  it('keeps people with and without diabetes apart where a study does', () => {
    expect(match({ people: { diabetes: 'all' } }).reasons).toEqual([{ code: 'diabetes-only' }]);
    expect(level({ people: { diabetes: 'all' }, person: diabetes })).toBe('like-you');
    expect(match({ people: { diabetes: 'none' }, person: diabetes }).reasons).toEqual([
      { code: 'no-diabetes-only' },
    ]);
    expect(level({ people: { diabetes: 'mixed' }, person: diabetes })).toBe('like-you');
  });

  it.each(['heart-disease', 'high-blood-pressure', 'prediabetes', 'sleep-apnoea', 'knee-arthritis'])(
    'applies the group %s only to those who have it',
    (group) => {
      expect(match({ people: { group } }).reasons).toEqual([{ code: 'group', group }]);
      expect(level({ people: { group }, person: { health: { conditions: [group] } } })).toBe('like-you');
    },
  );

  it.each(['veterans', 'medicare', 'same-day-discharge'])('takes the group %s for near', (group) => {
    expect(match({ people: { group } })).toMatchObject({
      level: 'near',
      reasons: [{ code: 'group', group }],
    });
  });

  it.each(['high-risk', 'infertility', 'pregnancy'])('never applies the group %s', (group) => {
    expect(level({ people: { group } })).toBe('other-people');
  });

  it('applies figures of women or men only to them', () => {
    expect(level({ people: { female_percent: 100 } })).toBe('like-you');
    expect(match({ people: { female_percent: 0 } }).reasons).toEqual([{ code: 'group', group: 'men' }]);
    const unstated: CaseChanges = { patient: { sex: 'not-stated' } };
    expect(level({ people: { female_percent: 100 }, person: unstated })).toBe('near');
    expect(match({ people: { female_percent: 0 }, person: unstated })).toMatchObject({
      level: 'near',
      reasons: [{ code: 'group', group: 'men' }],
    });
    // With another difference they are other people, as everyone who differs twice.
    const heavier: CaseChanges = { patient: { ...bmi(48).patient, sex: 'not-stated' } };
    expect(level({ people: { female_percent: 0, bmi: { mean: 45 } }, person: heavier })).toBe('other-people');
    expect(level({ people: { female_percent: 99 }, person: { patient: { sex: 'male' } } })).toBe('like-you');
  });

  it('does not give the chance of new trouble to those who have it', () => {
    const reflux: CaseChanges = { health: { conditions: ['severe-reflux'] } };
    expect(level({ outcome: 'reflux' })).toBe('like-you');
    expect(match({ outcome: 'reflux', person: reflux }).reasons).toEqual([
      { code: 'already-has', condition: 'reflux' },
    ]);
  });

  it('applies nothing in pregnancy', () => {
    const pregnant: CaseChanges = { health: { pregnancy: { now: true } } };
    expect(match({ person: pregnant })).toMatchObject({
      level: 'other-people',
      reasons: [{ code: 'pregnancy' }],
    });
  });
});

describe('the special group of a person', () => {
  const born = (year: number): CaseChanges => ({ patient: { born: `${year}-01-01` } });

  it.each<[string, CaseChanges, readonly string[]]>([
    ['someone over 70', born(1950), ['over-70', 'over-65', 'over-60']],
    ['a BMI over 60', bmi(62), ['bmi-60-plus', 'bmi-50-plus']],
    ['a BMI under 35', bmi(33), ['bmi-under-35']],
    ['someone of 16', born(2010), ['adolescents']],
    ['someone of 20', born(2006), ['young-adults']],
  ])(
    'of %s is the nearer the narrower it is, and people in general are the farthest',
    (_, person, groups) => {
      const near = groups.map((group) => match({ people: { group }, person }).apart);
      const all = [...near, match({ person }).apart];
      expect(all).toEqual([...new Set(all)].sort((a, b) => a - b));
    },
  );

  it('is none that the person does not belong to', () => {
    expect(match({ people: { group: 'over-70' } }).apart).toBe(match({}).apart);
  });
});

describe('several differences', () => {
  it('makes other people of two differences that alone would be near, and names the first', () => {
    const people = { indication: 'mixed', bmi: { mean: 45 } };
    expect(match({ people })).toMatchObject({
      level: 'other-people',
      reasons: [{ code: 'indication-mixed' }],
    });
  });

  it('names a difference that excludes before one that does not', () => {
    const people = { indication: 'mixed', diabetes: 'all' };
    expect(match({ people }).reasons).toEqual([{ code: 'diabetes-only' }]);
  });
});
