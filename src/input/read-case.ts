import type { Result } from '../diagnostics/diagnostic.ts';
import { CaseSchema } from '../model/case.ts';
import type { Case } from '../model/case.ts';
import type { ReadContext } from './read-context.ts';
import { readFile } from './read-file.ts';
import type { FileKind } from './read-file.ts';
import { checkDecision } from './rules/check-decision.ts';
import { checkDuplicates } from './rules/check-duplicates.ts';
import { checkHistory } from './rules/check-history.ts';
import { checkPerson } from './rules/check-person.ts';
import { checkWords } from './rules/check-words.ts';

export const caseKind: FileKind<Case> = {
  schema: CaseSchema,
  rules: [checkDuplicates, checkDecision, checkHistory, checkPerson, checkWords],
  mistaken: (value) =>
    Object.hasOwn(value, 'clinic') && Object.hasOwn(value, 'surgeons') && !Object.hasOwn(value, 'patient')
      ? {
          code: 'CASE_TYPE_MISMATCH',
          path: ['clinic'],
          at: 'key',
          message: 'this is a clinic profile, not a case',
          hint: 'Give it as the clinic profile.',
        }
      : undefined,
};

/**
 * Reads a case: YAML, format, codes and rules across fields. On failure the diagnostics hold everything that is wrong,
 * each with file, line and column, sorted by position; on success the warnings may be such as keep a packet a draft.
 * Ages and past dates are checked when `context.today` is given. Never throws.
 */
export function readCase(text: string, file: string, context: ReadContext): Result<Case> {
  return readFile({ text, file }, caseKind, context);
}
