import { describe, expect, it } from 'vitest';

import type { MortalityScore } from '../../../src/model/mortality-score.ts';
import { withoutRecords } from '../../helpers/caution-pairs.ts';
import { compareWell, makeEvidence, readShippedEvidence } from '../../helpers/compare-inputs.ts';
import type { CaseChanges } from '../../helpers/compare-inputs.ts';

const evidence = withoutRecords(readShippedEvidence());

function scoreOf(changes: CaseChanges = {}): MortalityScore | null {
  return compareWell(evidence, changes).mortalityScore;
}

describe('the mortality score of 2007', () => {
  it('cannot be told where what the case does not say could change the class', () => {
    // 45 years: one point, and a filter or hypoventilation would be a second.
    expect(scoreOf()).toMatchObject({
      factors: { 'age-45-or-more': 'yes', 'clot-risk': 'not-told', male: 'no', hypertension: 'no' },
      points: { low: 1, high: 2 },
      classes: { low: 'A', high: 'B' },
    });
  });

  it('is told where what the case does not say changes no class', () => {
    expect(scoreOf({ patient: { born: '1990-01-01' } })).toMatchObject({
      points: { low: 0, high: 1 },
      classes: { low: 'A', high: 'A' },
    });
    expect(scoreOf({ health: { conditions: ['previous-clot'] } })).toMatchObject({
      factors: { 'clot-risk': 'yes' },
      points: { low: 2, high: 2 },
      classes: { low: 'B', high: 'B' },
    });
  });

  it('does not take a sex that is not stated for either', () => {
    const score = scoreOf({
      patient: { sex: 'not-stated' },
      health: { conditions: ['previous-clot', 'high-blood-pressure'] },
    });
    expect(score).toMatchObject({
      factors: { male: 'not-told' },
      points: { low: 3, high: 4 },
      classes: { low: 'B', high: 'C' },
    });
  });

  it('does not take tablets for blood pressure for high blood pressure', () => {
    const health = { medicines: ['blood-pressure-medicine'] };
    expect(scoreOf({ health })?.factors.hypertension).toBe('not-told');
    expect(
      scoreOf({ health: { ...health, conditions: ['high-blood-pressure'] } })?.factors.hypertension,
    ).toBe('yes');
    expect(scoreOf({ health: { medicines: ['metformin'] } })?.factors.hypertension).toBe('no');
  });

  it('is of the bypass it was made for, never of another option', () => {
    expect(scoreOf({ decision: { options: ['sleeve', 'bypass', 'semaglutide'] } })?.options).toEqual([
      'bypass',
    ]);
    const others = [
      'sleeve',
      'band',
      'plication',
      'endoscopic-sleeve',
      'balloon',
      'semaglutide',
      'lifestyle',
    ];
    expect(scoreOf({ decision: { options: [...others, 'no-operation'] } })).toBeNull();
  });

  it('is not of people whom it was not made in', () => {
    const earlier = (status: string): object => ({ earlier_operations: [{ operation: 'sleeve', status }] });
    const second = { health: { ...earlier('in-place') }, decision: { asked: 'second-operation' } };
    expect(scoreOf(second)).toBeNull();
    expect(scoreOf({ health: { ...earlier('converted') } })).toBeNull();
    expect(scoreOf({ patient: { born: '2008-11-26' } })).toBeNull();
    expect(scoreOf({ patient: { born: '2008-11-25' } })).not.toBeNull();
    expect(scoreOf({ health: { pregnancy: { now: true } } })).toBeNull();
  });

  it('names its studies, that which made it first, and how few people its highest class held', () => {
    expect(scoreOf()).toMatchObject({
      highestClass: { low: 65, high: 346 },
      studies: [
        'osmrs-derivation-2007',
        'osmrs-validation-2007',
        'canada-osmrs-2009',
        'osmrs-review-2012',
        'osmrs-spain-2017',
      ],
    });
  });

  it('is silent where the evidence holds none of its studies', () => {
    expect(compareWell(makeEvidence([])).mortalityScore).toBeNull();
  });
});
