import { parse, stringify } from 'yaml';

import { ReviewRecordSchema } from '../model/review-record.ts';
import type { ReviewRecord } from '../model/review-record.ts';
import type { WordsReview } from '../model/words-review.ts';
import { digestOfScope } from './words-digest.ts';

/** The record of a review; undefined where it is none, or was changed by hand and does not fit its digest. */
export function readReviewRecord(text: string): ReviewRecord | undefined {
  const read = ReviewRecordSchema.safeParse(parseSafely(text));
  if (!read.success) return undefined;
  const digest = digestOfScope(new Map(Object.entries(read.data.words)), 'all');
  return digest === read.data.digest ? read.data : undefined;
}

function parseSafely(text: string): unknown {
  try {
    return parse(text);
  } catch {
    return undefined;
  }
}

/** What was read, as a file beside the clinic profile. */
export function writeReviewRecord(record: ReviewRecord): string {
  const head = '# What was read, text by text; written by plainleaf languages sign. Keep it as it is.';
  return `${head}\n${stringify(record)}`;
}

/** An entry for `reviewed` of a clinic profile. */
export function writeReviewEntry(review: WordsReview): string {
  return stringify({ reviewed: [review] }).trimEnd();
}
