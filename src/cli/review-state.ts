import type { FieldPlace } from '../input/index.ts';
import { digestOfScope } from '../localize/index.ts';
import type { Languages } from '../localize/index.ts';
import { changedSince } from '../model/review-record.ts';
import type { ChangedText } from '../model/review-record.ts';
import { isInScope } from '../model/review-scope.ts';
import type { WordsReview } from '../model/words-review.ts';
import { digestsInScope } from './languages-desk.ts';
import type { Ledger } from './languages-desk.ts';

export interface ReviewedScope {
  readonly review: WordsReview;
  readonly state: 'stands' | 'changed';
  /** Null where nothing was kept of what was read, so that nobody can say which texts changed. */
  readonly changed: readonly ChangedText[] | null;
}

export interface LanguageState {
  readonly tag: string;
  readonly name: string;
  readonly texts: number;
  readonly untranslated: number;
  readonly reviews: readonly ReviewedScope[];
  /** Texts that the clinic wrote, and where those stand that are not there in this language. */
  readonly clinic: { readonly texts: number; readonly unwritten: readonly FieldPlace[] };
}

/** How the words of a language stand: how many there are, who read them, and what changed since. */
export function stateOfLanguage(languages: Languages, ledger: Ledger, tag: string): LanguageState {
  const units = languages.unitsOf(tag, () => false);
  const reviews = ledger.reviews
    .filter(({ language }) => language === tag)
    .map((review): ReviewedScope => {
      const now = digestsInScope(languages, tag, review.scope);
      if (digestOfScope(now, 'all') === review.digest) return { review, state: 'stands', changed: [] };
      const record = ledger.records.get(review.digest);
      return { review, state: 'changed', changed: record === undefined ? null : changedSince(record, now) };
    });
  return {
    tag,
    name: languages.names.get(tag) ?? tag,
    texts: units.length,
    untranslated: units.filter(({ target }) => target === null).length,
    reviews,
    clinic: { texts: ledger.texts.length, unwritten: unwrittenIn(ledger, tag) },
  };
}

function unwrittenIn({ texts }: Ledger, tag: string): readonly FieldPlace[] {
  return texts
    .filter(({ languages }) => !languages.includes(tag))
    .map(({ file, line, field }) => ({ file, line, field }));
}

/** Whether somebody has read a text as it stands. */
export function isReviewedIn(languages: Languages, ledger: Ledger, tag: string): (key: string) => boolean {
  const { reviews } = stateOfLanguage(languages, ledger, tag);
  return (key) =>
    reviews.some(({ review, changed }) => {
      if (!isInScope(key, review.scope) || changed === null) return false;
      return changed.every((text) => text.key !== key);
    });
}
