import { dirname, join } from 'node:path';

import { readSource } from '../batch/index.ts';
import type { Result } from '../diagnostics/diagnostic.ts';
import { success } from '../diagnostics/diagnostic.ts';
import { listLocalTexts, readClinic } from '../input/index.ts';
import type { LocalTextPlace } from '../input/index.ts';
import { readReviewRecord } from '../localize/index.ts';
import type { Languages } from '../localize/index.ts';
import { documentKinds } from '../model/codes.ts';
import type { KnownCodes } from '../model/known-codes.ts';
import type { ReviewRecord } from '../model/review-record.ts';
import { isInScope } from '../model/review-scope.ts';
import type { ReviewScope } from '../model/review-scope.ts';
import type { WordsReview } from '../model/words-review.ts';
import type { Call, Context } from './context.ts';

/** A call of plainleaf languages with what every work needs. */
export interface LanguagesCall {
  readonly call: Call;
  readonly context: Context;
  readonly languages: Languages;
  readonly ledger: Ledger;
  /** What stands after the name of the work: a language or a file. */
  readonly subject: string;
}

/** The ledger of a clinic profile, what was written down beside it when each review was signed, and its own words. */
export interface Ledger {
  readonly reviews: readonly WordsReview[];
  /** By digest. */
  readonly records: ReadonlyMap<string, ReviewRecord>;
  /** Words of the clinic's own, each with the languages in which the profile has them. */
  readonly texts: readonly LocalTextPlace[];
}

interface ClinicFile {
  readonly file: string;
  readonly known: KnownCodes;
  /** ISO day. */
  readonly today: string;
}

/** Folder beside a clinic profile in which the records of its reviews are kept. */
export const reviewsFolder = (clinicFile: string): string => join(dirname(clinicFile), 'reviews');

/** Name of the file that says what one review read. */
export const recordName = ({ language, digest }: Pick<WordsReview, 'language' | 'digest'>): string =>
  `${language}-${digest.slice(0, 12)}.yaml`;

/** Reads the ledger of a clinic profile. A record that is gone or does not fit its digest is left out. */
export async function openLedger({ workspace }: Context, clinic: ClinicFile): Promise<Result<Ledger>> {
  const source = await readSource(workspace, clinic.file);
  if (!source.ok) return source;
  const profile = readClinic(source.value.text, clinic.file, { ...clinic.known, today: clinic.today });
  if (!profile.ok) return profile;
  const reviews = profile.value.reviewed;
  const records = new Map<string, ReviewRecord>();
  for (const review of reviews) {
    const path = join(reviewsFolder(clinic.file), recordName(review));
    if (!(await workspace.exists(path))) continue;
    const record = readReviewRecord(await workspace.readText(path));
    if (record?.digest === review.digest) records.set(review.digest, record);
  }
  return success({ reviews, records, texts: listLocalTexts(source.value) });
}

/** Digests of the texts of a scope as they stand now. */
export function digestsInScope(
  languages: Languages,
  tag: string,
  scope: ReviewScope,
): ReadonlyMap<string, string> {
  return new Map([...languages.digestsOf(tag)].filter(([key]) => isInScope(key, scope)));
}

/** The documents named after --documents; all words without it; undefined where one is not a document. */
export function scopeOf(named: string | undefined): ReviewScope | undefined {
  if (named === undefined) return 'all';
  const kinds = named.split(',').map((kind) => documentKinds.find((known) => known === kind.trim()));
  return kinds.every((kind) => kind !== undefined) ? kinds : undefined;
}
