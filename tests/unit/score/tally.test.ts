import { describe, expect, it } from 'vitest';

import { clearCommunicationPass } from '../../../src/model/document-score.ts';
import type { CriterionOutcome } from '../../../src/model/document-score.ts';
import { tally } from '../../../src/score/tally.ts';

/** So many of each outcome. */
function items(counts: Partial<Record<CriterionOutcome, number>>) {
  return Object.entries(counts).flatMap(([outcome, count]) =>
    Array.from({ length: count }, () => ({ outcome: outcome as CriterionOutcome })),
  );
}

describe('the percentage of a set', () => {
  it('leaves out what does not apply: 14 of 16, not of 17, are 87.5', () => {
    const score = tally(items({ met: 14, 'not-met': 2, 'not-applicable': 1 }));
    expect(score).toEqual({ met: 14, applicable: 16, person: 0, percent: 87.5 });
    expect(score.percent).not.toBeCloseTo(82.4, 1);
  });

  it('is 83.3 for 5 of 6 actions, a seventh not applying', () => {
    expect(tally(items({ met: 5, 'not-met': 1, 'not-applicable': 1 })).percent).toBeCloseTo(83.3, 1);
  });

  it.each([
    { lost: 2, of: 20, percent: 90, passes: true },
    { lost: 3, of: 20, percent: 85, passes: false },
    { lost: 2, of: 17, percent: 88.2, passes: false },
  ])('is $percent with $lost of $of lost', ({ lost, of, percent, passes }) => {
    const score = tally(items({ met: of - lost, 'not-met': lost, 'not-applicable': 20 - of }));
    expect(score.percent).toBeCloseTo(percent, 1);
    expect((score.percent ?? 0) >= clearCommunicationPass).toBe(passes);
  });

  it('counts nothing as met that a person, a clinic or a study has yet to bring', () => {
    const score = tally(items({ met: 1, person: 1, clinic: 1, organisation: 1, study: 1 }));
    expect(score).toEqual({ met: 1, applicable: 5, person: 1, percent: 20 });
  });

  it('is none where nothing applies', () => {
    expect(tally(items({ 'not-applicable': 6 })).percent).toBeNull();
  });
});
