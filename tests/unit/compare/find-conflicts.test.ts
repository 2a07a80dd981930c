import { describe, expect, it } from 'vitest';

import { findConflicts } from '../../../src/compare/find-conflicts.ts';
import type { CautionConflict, CautionHit } from '../../../src/model/comparison.ts';
import { comparePerson, withoutRecords } from '../../helpers/caution-pairs.ts';
import { compareWell, makeClinic, readShippedEvidence } from '../../helpers/compare-inputs.ts';

function hit(id: string, changes: Partial<CautionHit> = {}): CautionHit {
  return {
    id,
    options: ['sleeve'],
    effect: 'extra-risk',
    strength: 'moderate',
    basis: 'page',
    triggers: [`condition:${id}`],
    ...changes,
  };
}

/** From the sleeve to the bypass. */
const pull = hit('pull', { favours: ['bypass'] });
const back = hit('back', { options: ['bypass'] });

function against(...hits: readonly CautionHit[]): readonly string[] {
  return findConflicts(hits).flatMap((conflict) => conflict.against);
}

describe('cautions that pull in different directions', () => {
  it('are one that holds up an option and those that warn of it, in their order', () => {
    const other = hit('other', { options: ['bypass', 'band'], effect: 'contra-indicated' });
    expect(findConflicts([other, pull, back])).toEqual([
      { caution: 'pull', to: 'bypass', from: ['sleeve'], against: ['other', 'back'] },
    ]);
  });

  it('are none where nothing warns of the option held up, or nothing holds one up', () => {
    expect(findConflicts([pull, hit('other', { options: ['band'] })])).toEqual([]);
    expect(findConflicts([hit('plain'), back])).toEqual([]);
  });

  it('are none where the warning is of the other option as well', () => {
    expect(against(pull, hit('both', { options: ['sleeve', 'bypass'] }))).toEqual([]);
  });

  it('are not two rows on one cause, which together say how the options compare', () => {
    expect(against(pull, { ...back, triggers: pull.triggers })).toEqual([]);
  });

  it('are told once where each points to the option of the other', () => {
    const two = [pull, { ...back, favours: ['sleeve'] }];
    expect(findConflicts(two)).toEqual([
      { caution: 'pull', to: 'bypass', from: ['sleeve'], against: ['back'] },
    ]);
  });

  it('are told of each option that is held up', () => {
    const wide = hit('pull', { favours: ['bypass', 'band'] });
    const found = findConflicts([wide, back, hit('ring', { options: ['band'] })]);
    expect(found.map(({ to, against: others }) => [to, others])).toEqual([
      ['bypass', ['back']],
      ['band', ['ring']],
    ]);
  });

  it('leave out an option that one row both touches and holds up', () => {
    const wide = hit('pull', { options: ['sleeve', 'bypass', 'band'], favours: ['bypass'] });
    expect(findConflicts([wide, back])[0]?.from).toEqual(['band', 'sleeve']);
    expect(findConflicts([hit('pull', { options: ['bypass'], favours: ['bypass'] }), back])).toEqual([]);
  });

  it('are none where the clinic struck one of them, or one stands on usual practice', () => {
    expect(against(pull, { ...back, clinic: 'struck' })).toEqual([]);
    expect(against({ ...pull, clinic: 'struck' }, back)).toEqual([]);
    expect(against(pull, { ...back, clinic: 'confirmed' })).toEqual(['back']);
    expect(against(pull, { ...back, basis: 'practice' })).toEqual([]);
    expect(against({ ...pull, basis: 'practice' }, back)).toEqual([]);
  });

  it('count what is only to be checked where its cause asks for no check of the other option', () => {
    const check = { ...back, effect: 'needs-check' } as const;
    const same = hit('same', { triggers: check.triggers, effect: 'needs-check' });
    expect(against(pull, check)).toEqual(['back']);
    expect(against(pull, check, same)).toEqual([]);
    expect(against(pull, check, { ...same, basis: 'practice' })).toEqual([]);
    expect(against(pull, check, { ...same, clinic: 'struck' })).toEqual(['back']);
    expect(against(pull, { ...check, favours: ['sleeve'] }, same)).toEqual(['back']);
    expect(against(pull, back, same)).toEqual(['back']);
  });
});

/** What a row says in words of the options it holds up: the data may hold up no others. */
const heldUp: readonly (readonly [rule: string, option: string, words: RegExp])[] = [
  [
    'reflux-sleeve',
    'bypass',
    /more people had reflux .* with a sleeve than with a bypass, .* a bypass treated reflux better/,
  ],
  ['immune-medicine-switch', 'sleeve', /those with a sleeve had the fewest problems/],
  ['weakened-immunity-switch', 'sleeve', /those with a sleeve had the fewest problems/],
  [
    'inflammatory-bowel-disease-bypass',
    'sleeve',
    /45.6% had problems after a bypass and 21.6% after a sleeve/,
  ],
  ['cirrhosis-surgery', 'sleeve', /Reviews favour the sleeve/],
  ['b12-deficiency-bypass', 'sleeve', /found more often with a bypass than with a sleeve/],
  ['pregnancy-small-baby-bypass', 'band', /more common after a bypass .* With a band they were not/],
];

describe('options that the cautions of the evidence hold up', () => {
  const { cautions } = readShippedEvidence();

  it('are those that stand here with the words that do it, and no others', () => {
    const data = cautions.flatMap(({ id, favours = [] }) => favours.map((option) => `${id} ${option}`));
    expect(data.sort()).toEqual(heldUp.map(([rule, option]) => `${rule} ${option}`).sort());
  });

  it.each(heldUp)('%s holds up %s in its own words', (rule, _, words) => {
    expect(cautions.find(({ id }) => id === rule)?.statement).toMatch(words);
  });
});

describe('conflicts in a case', () => {
  const two = ['sleeve', 'bypass', 'no-operation'];
  const found = (health: object, options = two): readonly CautionConflict[] =>
    comparePerson({ health: { ...health } }, options).conflicts;

  it('are reflux against painkillers, smoking and Crohn, which is told once', () => {
    const health = {
      conditions: ['reflux', 'inflammatory-bowel-disease'],
      medicines: ['anti-inflammatory'],
      smoking: 'current',
    };
    expect(found(health)).toEqual([
      {
        caution: 'reflux-sleeve',
        to: 'bypass',
        from: ['sleeve'],
        against: ['anti-inflammatory-bypass', 'smoking-bypass', 'inflammatory-bowel-disease-bypass'],
      },
      {
        caution: 'inflammatory-bowel-disease-bypass',
        to: 'sleeve',
        from: ['bypass'],
        against: ['smoking-sleeve'],
      },
    ]);
  });

  it('are there for severe reflux as for reflux', () => {
    const health = { conditions: ['severe-reflux'], medicines: ['anti-inflammatory'] };
    expect(found(health)).toEqual([
      {
        caution: 'severe-reflux-sleeve',
        to: 'bypass',
        from: ['sleeve'],
        against: ['anti-inflammatory-bypass'],
      },
    ]);
  });

  it('are a liver that points to the sleeve and reflux that points away from it', () => {
    const conflicts = found({ conditions: ['cirrhosis', 'reflux'] });
    expect(conflicts).toEqual([
      { caution: 'cirrhosis-surgery', to: 'sleeve', from: ['bypass'], against: ['reflux-sleeve'] },
    ]);
  });

  it('are none without the option held up, with one cause alone, or with none at all', () => {
    const health = { conditions: ['reflux'], medicines: ['anti-inflammatory'] };
    expect(found(health, ['sleeve', 'band'])).toEqual([]);
    expect(found({ conditions: ['reflux'] })).toEqual([]);
    expect(found({ conditions: ['inflammatory-bowel-disease'] })).toEqual([]);
    expect(found({})).toEqual([]);
  });

  it('end when the clinic strikes the caution that points, and milder reflux points only while it is not struck', () => {
    const health = { conditions: ['severe-reflux'], medicines: ['anti-inflammatory'] };
    const count = (cautions: object): number =>
      compareWell(withoutRecords(readShippedEvidence()), { health }, makeClinic({ cautions })).conflicts
        .length;
    expect(count({})).toBe(1);
    expect(count({ 'anti-inflammatory-bypass': 'struck' })).toBe(0);
    expect(count({ 'reflux-sleeve': 'struck' })).toBe(0);
    expect(count({ 'severe-reflux-sleeve': 'struck' })).toBe(1);
  });
});
