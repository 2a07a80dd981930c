import { z } from 'zod';

import { documentKinds } from './codes.ts';
import type { DocumentKind } from './codes.ts';
import type { Locale } from './locale.ts';
import { ReviewScopeSchema } from './review-scope.ts';
import type { ReviewScope } from './review-scope.ts';
import { IsoDateSchema, LanguageSchema, nameSchema } from './scalars.ts';

/** An entry of the review ledger of a clinic. */
export const WordsReviewSchema = z
  .strictObject({
    language: LanguageSchema.describe('Which language'),
    scope: ReviewScopeSchema,
    by: z
      .strictObject({
        name: nameSchema(60).describe('Name'),
        role: nameSchema(60).describe('What this person does, for example translator'),
        qualification: nameSchema(120).describe('Why this person may judge a translation of medical words'),
      })
      .describe('Who read them against the English'),
    on: IsoDateSchema.describe('Date, year-month-day'),
    digest: z
      .string()
      .regex(/^[0-9a-f]{64}$/, 'expected the 64 digits that plainleaf languages sign prints')
      .describe('Of the words as they were read; plainleaf languages sign prints it'),
  })
  .describe('Who read the words of a language, and which');

export type WordsReview = z.infer<typeof WordsReviewSchema>;

/** Whether a qualified person has read words as they stand now. */
export type WordsState =
  | {
      readonly state: 'unreviewed';
      /** Documents whose words nobody has ever read; all, where nobody has read anything. */
      readonly documents: ReviewScope;
    }
  /** Somebody read them, and they or the English they come from have changed since. */
  | { readonly state: 'changed'; readonly reviews: readonly WordsReview[] }
  | { readonly state: 'reviewed'; readonly reviews: readonly WordsReview[] };

type Reading = Pick<Locale, 'tag' | 'wordsDigest'>;

/**
 * How the words of some documents (of all, if none is named) stand in a clinic's ledger: as good as those of the document
 * that stands worst.
 */
export function stateOfWords(
  locale: Reading,
  ledger: readonly WordsReview[],
  documents: readonly DocumentKind[],
): WordsState {
  const kinds = documents.length > 0 ? documents : documentKinds;
  const own = ledger.filter(({ language }) => language === locale.tag);
  const standing = own.filter(({ scope, digest }) => locale.wordsDigest(scope) === digest);
  const covers = (reviews: readonly WordsReview[], kind: DocumentKind): boolean =>
    reviews.some(({ scope }) => scope === 'all' || scope.includes(kind));
  const about = (reviews: readonly WordsReview[]): readonly WordsReview[] =>
    reviews.filter((review) => kinds.some((kind) => covers([review], kind)));
  if (kinds.every((kind) => covers(standing, kind))) return { state: 'reviewed', reviews: about(standing) };
  if (kinds.every((kind) => covers(own, kind)))
    return { state: 'changed', reviews: about(own.filter((review) => !standing.includes(review))) };
  return {
    state: 'unreviewed',
    documents: own.length === 0 ? 'all' : kinds.filter((kind) => !covers(own, kind)),
  };
}

/** A review of the words of a language that concerns some documents, and whether they are still as they were read. */
export interface JudgedReview {
  readonly review: WordsReview;
  readonly holds: boolean;
}

/** Every entry of a clinic's ledger on the words of some documents in a language, in the order of the ledger. */
export function judgeReviews(
  locale: Reading,
  ledger: readonly WordsReview[],
  documents: readonly DocumentKind[],
): readonly JudgedReview[] {
  return ledger
    .filter(({ language }) => language === locale.tag)
    .filter(({ scope }) => scope === 'all' || scope.some((kind) => documents.includes(kind)))
    .map((review) => ({ review, holds: locale.wordsDigest(review.scope) === review.digest }));
}

/** How the words of a packet stand: what they are now, and who has read them. */
export interface WordsStanding {
  /** sha256 over all words of the language that documents print, each with the text it comes from. */
  readonly digest: string;
  readonly state: WordsState['state'];
  readonly reviews: readonly JudgedReview[];
}
