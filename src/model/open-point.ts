import type { ReviewScope } from './review-scope.ts';
import type { WordsReview } from './words-review.ts';

/** A text that case or clinic wrote, and that is not there in the language of the packet. */
export interface UnwrittenText {
  readonly in: 'case' | 'clinic';
  /** Keys and places of lists, for example ['protocol', 'stay', 'sleeve']. */
  readonly path: readonly (string | number)[];
}

/** What stands between a packet and a final one. */
export type OpenPoint =
  | {
      readonly code: 'words';
      /** Documents of the packet whose words nobody has ever read; all, where nobody has read anything. */
      readonly documents: ReviewScope;
    }
  | {
      readonly code: 'words_changed';
      /** Reviews that no longer hold. */
      readonly reviews: readonly WordsReview[];
    }
  | { readonly code: 'profile' | 'past_review' }
  | { readonly code: 'study_form'; readonly option: string }
  | { readonly code: 'free_text'; readonly count: number; readonly texts: readonly UnwrittenText[] }
  | {
      readonly code: 'practice' | 'citations' | 'aftercare' | 'past_reading';
      /** How many of them. */
      readonly count: number;
    };
