import type { Locale } from '../../src/model/locale.ts';
import type { ReviewScope } from '../../src/model/review-scope.ts';
import type { WordsReview } from '../../src/model/words-review.ts';

/** An entry of a ledger for the words of a language as they stand. */
export function reviewOf(
  locale: Pick<Locale, 'tag' | 'wordsDigest'>,
  scope: ReviewScope = 'all',
): WordsReview {
  return {
    language: locale.tag,
    scope,
    by: { name: 'M. Example', role: 'translator', qualification: 'certified for medical texts' },
    on: '2026-10-01',
    digest: locale.wordsDigest(scope),
  };
}
