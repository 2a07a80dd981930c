import { listWords } from '../describe-value.ts';
import type { Finding } from '../finding.ts';
import { fieldsOfRole } from '../read-fields.ts';
import { isPlainMap } from '../walk-schema.ts';
import type { Rule } from './rule.ts';

/** Free words that a packet would need in a language they are not written in. */
export const checkWords: Rule = (read, { languages: known }) => {
  const languages = read
    .texts(['languages'])
    .map(({ value }) => value)
    .filter((language) => known.includes(language));
  return fieldsOfRole(read.fields, 'local-text').flatMap(({ path, value }) =>
    findMissing({ path, value, languages }),
  );
};

interface Asked {
  readonly path: Finding['path'];
  readonly value: unknown;
  readonly languages: readonly string[];
}

export function findMissing({ path, value, languages }: Asked): Finding[] {
  if (!isPlainMap(value)) return [];
  const missing = languages.filter((language) => !Object.hasOwn(value, language));
  if (missing.length === 0) return [];
  const message = `these words are not there in ${listWords(missing)}: that packet stays a draft`;
  const hint = `Add ${listWords(missing.map((language) => `${language}: "…"`))}.`;
  return [{ code: 'CASE_DRAFT_ONLY', severity: 'warning', path, message, hint }];
}
