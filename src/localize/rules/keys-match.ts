import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { askedKey, countedKeys, fileOf } from '../words.ts';
import type { Entry, Words } from '../words.ts';
import { faultAt, faultOfAbsent } from './rule.ts';
import type { WordsRule } from './rule.ts';

export const keysMatch: WordsRule = {
  name: 'keys-match',
  description: 'every language has the words of the base language, and no others',
  check: ({ base, others }) =>
    others.flatMap((words) => {
      const counted = countedKeys([base, words]);
      const pair: Pair = { base, words, wanted: byAskedKey(base, counted), has: byAskedKey(words, counted) };
      return [...absent(pair), ...surplus(pair)];
    }),
};

/** First entry of each key that code may ask for. */
type AskedKeys = ReadonlyMap<string, Entry>;

interface Pair {
  readonly base: Words;
  readonly words: Words;
  readonly wanted: AskedKeys;
  readonly has: AskedKeys;
}

function byAskedKey(words: Words, counted: ReadonlySet<string>): AskedKeys {
  const lastFirst = [...words.entries.values()].reverse();
  return new Map(lastFirst.map((entry) => [askedKey(entry.key, counted), entry]));
}

function absent({ base, words, wanted, has }: Pair): readonly Diagnostic[] {
  const files = new Set([...words.entries.keys()].map((key) => fileOf(words, key)));
  const missing = [...wanted].filter(([key]) => !has.has(key));
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

function surplus({ base, wanted, has }: Pair): readonly Diagnostic[] {
  return [...has]
    .filter(([key]) => !wanted.has(key))
    .map(([key, entry]) =>
      faultAt(entry, {
        code: 'LOCALE_KEY_UNUSED',
        message: `${base.tag} has no ${key}`,
        hint: `Remove it, or add it to ${base.tag}.`,
      }),
    );
}
