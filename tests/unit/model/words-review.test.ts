import { describe, expect, it } from 'vitest';

import { isInScope } from '../../../src/model/review-scope.ts';
import type { ReviewScope } from '../../../src/model/review-scope.ts';
import { judgeReviews, stateOfWords } from '../../../src/model/words-review.ts';
import { reviewOf } from '../../helpers/words-review.ts';

const digestFor = (now: string) => (scope: ReviewScope) => `${now} ${JSON.stringify(scope)}`;
const spanish = { tag: 'es', wordsDigest: digestFor('now') };
const before = { tag: 'es', wordsDigest: digestFor('before') };

describe('the words of a language', () => {
  it('are unreviewed as long as the ledger has nothing on them', () => {
    expect(stateOfWords(spanish, [], ['comparison'])).toEqual({
      state: 'unreviewed',
      documents: 'all',
    });
    const arabic = { ...spanish, tag: 'ar' };
    expect(stateOfWords(spanish, [reviewOf(arabic)], ['comparison']).state).toBe('unreviewed');
  });

  it('are reviewed where somebody read them as they are', () => {
    const review = reviewOf(spanish);
    expect(stateOfWords(spanish, [review], ['comparison', 'consent'])).toEqual({
      state: 'reviewed',
      reviews: [review],
    });
  });

  it('are changed where they were read as they were before', () => {
    const review = reviewOf(before);
    expect(stateOfWords(spanish, [review], ['comparison'])).toEqual({ state: 'changed', reviews: [review] });
  });

  it('may be read document by document, by several people', () => {
    const ledger = [reviewOf(spanish, ['comparison', 'sources']), reviewOf(spanish, ['questions'])];
    expect(stateOfWords(spanish, ledger, ['comparison', 'questions']).state).toBe('reviewed');
    expect(stateOfWords(spanish, ledger, ['comparison', 'consent']).state).toBe('unreviewed');
    expect(stateOfWords(spanish, ledger, ['sources'])).toEqual({ state: 'reviewed', reviews: [ledger[0]] });
  });

  it('are read again after a change: a newer entry stands beside the one that it replaces', () => {
    const ledger = [reviewOf(before), reviewOf(spanish, ['comparison'])];
    expect(stateOfWords(spanish, ledger, ['comparison']).state).toBe('reviewed');
    expect(stateOfWords(spanish, ledger, ['comparison', 'consent'])).toEqual({
      state: 'changed',
      reviews: [ledger[0]],
    });
  });

  it('must be read for every document where nothing says for which', () => {
    expect(stateOfWords(spanish, [reviewOf(spanish, ['comparison'])], []).state).toBe('unreviewed');
    expect(stateOfWords(spanish, [reviewOf(spanish)], []).state).toBe('reviewed');
  });
});

describe('a scope', () => {
  it('holds the words of its documents and those that all share', () => {
    expect(isInScope('consent.title', 'all')).toBe(true);
    expect(isInScope('consent.title', ['comparison'])).toBe(false);
    expect(isInScope('comparison.title', ['consent'])).toBe(true);
    expect(isInScope('common.furniture.page', ['vitamins'])).toBe(true);
    expect(isInScope('operation.title', ['consent'])).toBe(true);
    expect(isInScope('vitamins.title', ['consent'])).toBe(false);
  });
});

describe('the reviews of a language', () => {
  it('are those that concern the documents, each with whether it still holds', () => {
    const ledger = [
      reviewOf(before),
      reviewOf(spanish, ['consent', 'questions']),
      reviewOf(spanish, ['vitamins']),
      reviewOf({ ...spanish, tag: 'ar' }),
    ];
    expect(judgeReviews(spanish, ledger, ['comparison', 'consent'])).toEqual([
      { review: ledger[0], holds: false },
      { review: ledger[1], holds: true },
    ]);
  });
});
