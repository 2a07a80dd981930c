import { z } from 'zod';

const phrases = z.array(z.string().min(1)).min(1);

/** What `glossary.yaml` of a language says: medical words that pages may use, by an id that is the same in all languages. */
export const GlossarySchema = z
  .record(
    z.string().regex(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/, 'expected small letters, digits and hyphens'),
    z.strictObject({
      words: phrases.describe('The word in every form that a page may print'),
      explained: phrases.describe('Each way in which a page says what it means'),
    }),
  )
  .describe('Medical words that patient pages may use, each explained where a reader meets it first');

/** A medical word that a page may use once it has said what it means. */
export interface GlossaryTerm {
  /** The same in every language: `reflux`. */
  readonly id: string;
  /** Every form that a page may print. */
  readonly words: readonly string[];
  /** Each way in which a page may explain it. */
  readonly explained: readonly string[];
}
