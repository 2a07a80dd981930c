import { beforeAll, describe, expect, it } from 'vitest';

import { sayNear, saySetAside, whyUnknown } from '../../../../src/compose/view/say-reason.ts';
import type { Scene } from '../../../../src/compose/view/scene.ts';
import type { MissingReason, MatchReason, SetAsideReason } from '../../../../src/model/comparison-reasons.ts';
import { readShippedEvidence } from '../../../helpers/compare-inputs.ts';
import {
  fiveOptions,
  fiveYears,
  makeComparison,
  month,
  shareCell,
  unknownCell,
} from '../../../helpers/compose-inputs.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';

const place = { option: 'sleeve', outcome: 'leak', asked: month };

const match: { readonly [K in MatchReason['code']]: Extract<MatchReason, { code: K }> } = {
  'bmi-outside': { code: 'bmi-outside', low: 35, yours: 27.04 },
  'bmi-mean-only': { code: 'bmi-mean-only', mean: 45.9, yours: 43.1 },
  'bmi-assumed': { code: 'bmi-assumed', low: 35, high: 50, yours: 27.04 },
  'bmi-unknown': { code: 'bmi-unknown' },
  'age-outside': { code: 'age-outside', low: 18, high: 60, yours: 71 },
  'age-unknown': { code: 'age-unknown', yours: 17 },
  'adults-only': { code: 'adults-only', yours: 17 },
  'adolescents-only': { code: 'adolescents-only', yours: 45 },
  indication: { code: 'indication', theirs: 'first-operation', yours: 'after-other' },
  'indication-mixed': { code: 'indication-mixed' },
  'indication-unknown': { code: 'indication-unknown' },
  'operations-mixed': { code: 'operations-mixed', theirs: ['bypass', 'sleeve'] },
  'removed-before': { code: 'removed-before' },
  stages: { code: 'stages', theirs: 'one' },
  'several-operations': { code: 'several-operations', count: 2 },
  'already-has': { code: 'already-has', condition: 'reflux' },
  'diabetes-only': { code: 'diabetes-only' },
  'no-diabetes-only': { code: 'no-diabetes-only' },
  group: { code: 'group', group: 'over-65' },
  pregnancy: { code: 'pregnancy' },
};

const missing: { readonly [K in MissingReason['code']]: Extract<MissingReason, { code: K }> } = {
  ...match,
  'no-record': { code: 'no-record' },
  'counted-in-part': { code: 'counted-in-part' },
  'done-otherwise': { code: 'done-otherwise' },
  'not-verified': { code: 'not-verified' },
  'other-time': { code: 'other-time' },
  'time-unclear': { code: 'time-unclear' },
  'not-convertible': { code: 'not-convertible' },
  contradicted: { code: 'contradicted' },
  'too-few-people': { code: 'too-few-people', n: 12 },
};

const setAside: { readonly [K in SetAsideReason['code']]: Extract<SetAsideReason, { code: K }> } = {
  ...match,
  'not-verified': { code: 'not-verified', seen: 'memory' },
  'same-people': { code: 'same-people', as: 'sleeve.leak.30d.a' },
  'other-time': { code: 'other-time', months: 6 },
  'time-unclear': { code: 'time-unclear' },
  'weaker-match': { code: 'weaker-match' },
  variant: { code: 'variant', variant: 'open surgery' },
  'other-dose': { code: 'other-dose', mg: [10, 15], per: 'week' },
  'dose-unstated': { code: 'dose-unstated' },
  'reference-weight': { code: 'reference-weight', reference: 'unstated' },
  'not-convertible': { code: 'not-convertible', metric: 'EWL' },
  'group-size-unknown': { code: 'group-size-unknown' },
  'too-few-people': { code: 'too-few-people', n: 12 },
  contradicted: { code: 'contradicted', by: 'sleeve.leak.30d.b' },
  'other-measure': { code: 'other-measure', kind: 'contrast' },
};

describe.each(['en', 'es'])('reasons in %s', (tag) => {
  let scene: Scene;
  beforeAll(async () => {
    scene = await sceneFor(tag);
  });

  it.each(Object.values(missing))('say why nothing is known: $code', (reason) => {
    expect(whyUnknown(scene, unknownCell(place, reason)).markup).toMatch(/\S \S.*[.]$/);
  });

  it.each(Object.values(match))('name the one difference: $code', (reason) => {
    expect(sayNear(scene, shareCell(place, [5, 1000], { match: 'near', reasons: [reason] }))?.markup).toMatch(
      /[.]$/,
    );
  });

  it.each(Object.values(setAside))('say why a record was set aside: $code', (reason) => {
    expect(saySetAside(scene, reason)).toMatch(/\S/);
  });
});

describe('reasons with numbers', () => {
  let scene: Scene;
  beforeAll(async () => {
    scene = await sceneFor('en');
  });

  it('say the limits that the studies had, and the person’s own', () => {
    const say = (reason: MissingReason): string =>
      whyUnknown(scene, unknownCell(place, reason)).markup.replaceAll('\u00a0', ' ');
    expect(say(match['bmi-outside'])).toBe(
      'for people like you. The studies we found were in people with a BMI of 35 or more. Yours is 27.',
    );
    expect(say({ code: 'bmi-outside', high: 40.5, yours: 62.1 })).toContain('41 or less. Yours is 62.');
    expect(say(match['age-outside'])).toContain('aged 18 to 60. You are 71.');
    expect(say(match.indication)).toContain('people who had another weight-loss operation before');
  });

  it('tell a study that ended too soon from one that measured at another time', () => {
    const five = { ...place, asked: fiveYears };
    const say = (longestMonths: number): string =>
      whyUnknown(scene, unknownCell(five, { code: 'other-time', longestMonths })).markup;
    const longest = scene.words.plain('missing.other-time-longest', { longest: '16\u00a0months' });
    expect(say(16)).toBe(`for people like you. ${longest}`);
    expect(say(264)).toContain('The studies measured it at another time.');
  });

  it('names no difference where the people are like this person', () => {
    expect(sayNear(scene, shareCell(place, [5, 1000]))).toBeNull();
  });
});

describe('an outcome that only an operation has', () => {
  const none = 'We found no study that counted this.';
  const earlier =
    'This choice cannot cause this. An operation you had before still could. We found no study that counted that.';

  it.each([
    { option: 'semaglutide', outcome: 'leak', asked: 'second-operation', words: earlier },
    { option: 'no-operation', outcome: 'leak', asked: 'after-removal', words: earlier },
    { option: 'sleeve', outcome: 'leak', asked: 'second-operation', words: none },
    { option: 'semaglutide', outcome: 'death', asked: 'second-operation', words: none },
    { option: 'semaglutide', outcome: 'leak', asked: 'first-operation', words: none },
  ] as const)('without a study, for $option: $outcome, asked for a $asked', async (row) => {
    const { option, outcome, asked, words } = row;
    const made = makeComparison(fiveOptions);
    const comparison = { ...made, person: { ...made.person, asked } };
    const scene = await sceneFor('en', { comparison, evidence: readShippedEvidence() });
    const cell = unknownCell({ option, outcome, asked: month }, { code: 'no-record' });
    expect(whyUnknown(scene, cell).markup).toBe(`for people like you. ${words}`);
  });

  it('has the reason that a study gives, where one was found', async () => {
    const made = makeComparison(fiveOptions);
    const comparison = { ...made, person: { ...made.person, asked: 'second-operation' as const } };
    const scene = await sceneFor('en', { comparison, evidence: readShippedEvidence() });
    const cell = unknownCell({ ...place, option: 'semaglutide' }, match['diabetes-only']);
    expect(whyUnknown(scene, cell).markup).toContain(
      'The studies we found were only in people with diabetes.',
    );
  });
});

describe('a reason that hides no figure when it is the only one', () => {
  const more = 'Another thing does not fit or is not stated, so we give no number.';
  const bmis = { high: 43.1, low: 27 } as const;
  const say = async (reason: MissingReason, bmi: number): Promise<string> => {
    const made = makeComparison(fiveOptions);
    const scene = await sceneFor('en', { comparison: { ...made, person: { ...made.person, bmi } } });
    return whyUnknown(scene, unknownCell(place, reason)).markup.replaceAll('\u00a0', ' ');
  };

  it.each([
    match['indication-unknown'],
    match['indication-mixed'],
    match['age-unknown'],
    match['removed-before'],
    match['several-operations'],
    match['bmi-mean-only'],
    match['bmi-unknown'],
  ])('is said together with that there is another: $code', async (reason) => {
    expect(await say(reason, bmis.high)).toMatch(new RegExp(`\\. ${more}$`));
  });

  it('is said alone where it is enough: a BMI not stated of people far from this one', async () => {
    expect(await say(match['bmi-unknown'], bmis.low)).toBe(
      'for people like you. The studies we found do not state the BMI of the people. Yours is 27, so we cannot tell if they were like you.',
    );
    const far = { code: 'bmi-mean-only', mean: 45.9, yours: 27 } as const;
    expect(await say(far, bmis.low)).not.toContain(more);
    expect(await say(match.indication, bmis.high)).not.toContain(more);
  });
});
