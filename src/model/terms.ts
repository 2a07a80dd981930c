import { z } from 'zod';

const forms = z
  .array(z.string().regex(/^\*?[^*]+\*?$/, 'expected * only at the beginning or the end'))
  .min(1);

/** What `terms.yaml` of a language says: how it translates each word of the trade, by an id that all languages share. */
export const TermsSchema = z
  .record(
    z.string().regex(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/, 'expected small letters, digits and hyphens'),
    z.union([
      forms,
      z.strictObject({
        words: forms.describe('The word in every form that a text may have; * stands for any letters'),
        except: z
          .array(z.string().min(1))
          .describe('Keys of texts that mean something else, or say it without the word'),
      }),
    ]),
  )
  .describe('Words of the trade, each translated in one way');

/** A word of the trade in one language. */
export interface Term {
  readonly id: string;
  readonly words: readonly string[];
  /** Keys of texts that need not have it. */
  readonly except: readonly string[];
}

export function termsOf(read: z.infer<typeof TermsSchema>): readonly Term[] {
  return Object.entries(read).map(([id, term]) =>
    Array.isArray(term) ? { id, words: term, except: [] } : { id, ...term },
  );
}
