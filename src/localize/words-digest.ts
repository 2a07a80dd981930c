import { createHash } from 'node:crypto';

import { isInScope } from '../model/review-scope.ts';
import type { ReviewScope } from '../model/review-scope.ts';
import { sourcesIn } from './words.ts';
import type { Words } from './words.ts';

/** A text as a reviewer judges it: beside the one that it was translated from. */
interface WordPair {
  readonly key: string;
  readonly source: string;
  readonly text: string;
}

/** Every text that pages may print, with its source; what a locale prints by its settings is there too. Sorted by key. */
function wordPairs(words: Words, base: Words): readonly WordPair[] {
  const sourceOf = sourcesIn(base);
  const printed = printedSettings(base);
  return [...words.entries.values()]
    .map(({ key, text }) => ({ key, text, source: sourceOf(key)?.text ?? '' }))
    .concat([...printedSettings(words)].map(([key, text]) => ({ key, text, source: printed.get(key) ?? '' })))
    .sort((a, b) => (a.key < b.key ? -1 : 1));
}

/** What a language prints by its settings, as if each were a text. */
function printedSettings({ settings }: Words): ReadonlyMap<string, string> {
  const { own_names: names, range_word: range, units, format } = settings;
  const printed = {
    range_word: range,
    format,
    ...units,
    ...(names !== null && { names: JSON.stringify(names) }),
  };
  return new Map(Object.entries(printed).map(([key, text]) => [`locale.${key}`, text]));
}

/** Digest of every text with its source, by key. */
export function digestsOf(words: Words, base: Words): ReadonlyMap<string, string> {
  return new Map(wordPairs(words, base).map((pair) => [pair.key, digestOfPair(pair)]));
}

const hex = (content: string): string => createHash('sha256').update(content).digest('hex');

/** 16 hex digits for the source of a text, then 16 for the text. */
function digestOfPair({ source, text }: Omit<WordPair, 'key'>): string {
  return [source, text].map((each) => hex(each).slice(0, 16)).join('');
}

/** sha256 over the words of a scope, key by key, so that a list of their digests can be checked against it. */
export function digestOfScope(digests: ReadonlyMap<string, string>, scope: ReviewScope): string {
  const lines = [...digests]
    .filter(([key]) => isInScope(key, scope))
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, digest]) => `${key} ${digest}\n`);
  return hex(lines.join(''));
}
