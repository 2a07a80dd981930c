import { z } from 'zod';

import { WordsReviewSchema } from './words-review.ts';

/** What somebody read, text by text: kept beside the clinic profile so that a later change can be named. */
export const ReviewRecordSchema = WordsReviewSchema.extend({
  words: z
    .record(z.string().min(1), z.string().regex(/^[0-9a-f]{32}$/))
    .describe('Digest of every text that was read, with its source'),
});

export type ReviewRecord = z.infer<typeof ReviewRecordSchema>;

/** What became of a text since it was read. */
export interface ChangedText {
  readonly key: string;
  /** The text itself, the one it was translated from, both, a text that is new, or one that is gone. */
  readonly change: 'text' | 'source' | 'both' | 'new' | 'gone';
}

/** Which of the texts of a record are other ones now. `now` are the digests of the same scope, by key. */
export function changedSince(
  { words }: Pick<ReviewRecord, 'words'>,
  now: ReadonlyMap<string, string>,
): readonly ChangedText[] {
  const gone = Object.keys(words).filter((key) => !now.has(key));
  const others = [...now].flatMap(([key, digest]): readonly ChangedText[] => {
    const before = words[key];
    if (before === undefined) return [{ key, change: 'new' }];
    const source = before.slice(0, 16) !== digest.slice(0, 16);
    const text = before.slice(16) !== digest.slice(16);
    if (source && text) return [{ key, change: 'both' }];
    return source || text ? [{ key, change: source ? 'source' : 'text' }] : [];
  });
  return [...others, ...gone.map((key) => ({ key, change: 'gone' as const }))];
}
