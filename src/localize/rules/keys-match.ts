import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { askedKey, fileOf } from '../words.ts';
import type { Entry, Words } from '../words.ts';
import { faultAt, faultOfAbsent } from './rule.ts';
import type { WordsRule } from './rule.ts';

export const keysMatch: WordsRule = {
  name: 'keys-match',
  description: 'every language has the words of the base language, and no others',
  check: ({ base, others }) => others.flatMap((words) => [...absent(words, base), ...surplus(words, base)]),
};

/** First entry of each key that code may ask for. */
function byAskedKey(words: Words): ReadonlyMap<string, Entry> {
  const entries = [...words.entries.values()].reverse();
  return new Map(entries.map((entry) => [askedKey(entry.key), entry]));
}

function absent(words: Words, base: Words): readonly Diagnostic[] {
  const has = byAskedKey(words);
  const files = new Set([...words.entries.keys()].map((key) => fileOf(words, key)));
  const missing = [...byAskedKey(base)].filter(([key]) => !has.has(key));
  const inFiles = missing.filter(([key]) => files.has(fileOf(words, key)));
  const wholeFiles = new Set(missing.map(([key]) => fileOf(words, key)).filter((file) => !files.has(file)));
  return [
    ...[...wholeFiles].map((file) => absentFile(file, words)),
    ...inFiles.map(([key, entry]) =>
      faultOfAbsent(words, key, {
        code: 'LOCALE_KEY_MISSING',
        message: `${words.tag} has no words for ${key}`,
        hint: 'Translate the text of the base language.',
        related: [{ message: `the text in ${base.tag}`, span: entry.span }],
      }),
    ),
  ];
}

function absentFile(file: string, words: Words): Diagnostic {
  return {
    code: 'LOCALE_KEY_MISSING',
    severity: 'error',
    message: `${words.tag} lacks this file`,
    hint: 'Translate the file of the base language.',
    span: { file, line: 1, column: 1 },
  };
}

function surplus(words: Words, base: Words): readonly Diagnostic[] {
  const known = byAskedKey(base);
  return [...byAskedKey(words)]
    .filter(([key]) => !known.has(key))
    .map(([key, entry]) =>
      faultAt(entry, {
        code: 'LOCALE_KEY_UNUSED',
        message: `${base.tag} has no ${key}`,
        hint: `Remove it, or add it to ${base.tag}.`,
      }),
    );
}
