import { exitCodes } from '../diagnostics/codes.ts';
import { isInScope } from '../model/review-scope.ts';
import { writeXliff } from '../xliff/index.ts';
import { countOf } from './align-columns.ts';
import { textOption } from './context.ts';
import { scopeOf } from './languages-desk.ts';
import type { LanguagesCall } from './languages-desk.ts';
import { isReviewedIn } from './review-state.ts';

/** Writes the texts of a language, or those that nobody has read as they are, as an XLIFF file for a translator. */
export async function exportLanguage({
  call,
  context,
  languages,
  ledger,
  subject: tag,
}: LanguagesCall): Promise<number> {
  const { terminal, workspace } = context;
  const scope = scopeOf(textOption(call, 'documents'));
  if (scope === undefined || tag === languages.base) {
    terminal.err(
      `plainleaf: export takes a language other than ${languages.base}, and --documents names of documents`,
    );
    return exitCodes.usage;
  }
  const changedOnly = call.options.has('changed');
  const units = languages
    .unitsOf(tag, isReviewedIn(languages, ledger, tag))
    .filter(({ key, reviewed }) => isInScope(key, scope) && !(changedOnly && reviewed));
  const file = textOption(call, 'out') ?? `${tag}.xlf`;
  await workspace.write(file, writeXliff({ sourceLanguage: languages.base, language: tag, units }));
  terminal.out(`${countOf(units.length, 'text')} written to ${file}`);
  return 0;
}
