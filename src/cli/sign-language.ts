import { join } from 'node:path';

import { exitCodes } from '../diagnostics/codes.ts';
import { digestOfScope, writeReviewEntry, writeReviewRecord } from '../localize/index.ts';
import { WordsReviewSchema } from '../model/words-review.ts';
import { countOf } from './align-columns.ts';
import { textOption } from './context.ts';
import { dayOf } from './day-of.ts';
import { digestsInScope, recordName, reviewsFolder, scopeOf } from './languages-desk.ts';
import type { LanguagesCall } from './languages-desk.ts';

/**
 * Writes down beside the clinic profile what somebody has read, text by text, and prints the entry for its ledger. The
 * profile itself is the clinic's to change.
 */
export async function signLanguage({
  call,
  context,
  languages,
  subject: tag,
}: LanguagesCall): Promise<number> {
  const { terminal, workspace } = context;
  const clinic = textOption(call, 'clinic');
  const scope = scopeOf(textOption(call, 'documents'));
  const by = {
    name: textOption(call, 'name'),
    role: textOption(call, 'role'),
    qualification: textOption(call, 'qualification'),
  };
  if (clinic === undefined || scope === undefined || !languages.names.has(tag)) return usage(context);
  const words = digestsInScope(languages, tag, scope);
  const digest = digestOfScope(words, 'all');
  const review = WordsReviewSchema.safeParse({ language: tag, scope, by, on: dayOf(call, context), digest });
  if (!review.success) return usage(context);
  const file = join(reviewsFolder(clinic), recordName(review.data));
  await workspace.write(file, writeReviewRecord({ ...review.data, words: Object.fromEntries(words) }));
  terminal.out(`${countOf(words.size, 'text')} written down in ${file}. For ${clinic}:`);
  terminal.out('');
  terminal.out(writeReviewEntry(review.data));
  return 0;
}

function usage({ terminal }: LanguagesCall['context']): number {
  terminal.err(
    'plainleaf: sign takes a language that is there, --clinic FILE, and --name, --role and --qualification of the reader',
  );
  return exitCodes.usage;
}
