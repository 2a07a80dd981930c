import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { askedKey, countedKeys, pluralOf, variablesOf } from '../words.ts';
import type { Entry, Words } from '../words.ts';
import { allOf, faultAt } from './rule.ts';
import type { WordsRule } from './rule.ts';

export const variablesMatch: WordsRule = {
  name: 'variables-match',
  description: 'a text has the same variables in every language and plural form',
  check: (languages) => {
    const counted = countedKeys(allOf(languages));
    const wanted = variablesByKey(languages.base, counted);
    return allOf(languages).flatMap(({ entries }) =>
      [...entries.values()].flatMap((entry) => {
        const category = pluralOf(entry.key, counted)?.category;
        return difference(entry, category, wanted.get(askedKey(entry.key, counted)));
      }),
    );
  },
};

/** Variables of all forms of a text together. */
function variablesByKey(
  words: Words,
  counted: ReadonlySet<string>,
): ReadonlyMap<string, ReadonlySet<string>> {
  const found = new Map<string, ReadonlySet<string>>();
  for (const { key, text } of words.entries.values()) {
    const asked = askedKey(key, counted);
    found.set(asked, new Set([...(found.get(asked) ?? []), ...variablesOf(text)]));
  }
  return found;
}

function difference(
  entry: Entry,
  category: string | undefined,
  wanted: ReadonlySet<string> | undefined,
): readonly Diagnostic[] {
  if (wanted === undefined) return [];
  const has = new Set(variablesOf(entry.text));
  // "a day" says its count in words.
  const inWords = (name: string): boolean =>
    name === 'count' && ['zero', 'one', 'two'].includes(category ?? '');
  const missing = [...wanted].filter((name) => !has.has(name) && !inWords(name));
  const unknown = [...has].filter((name) => !wanted.has(name));
  if (missing.length + unknown.length === 0) return [];
  const parts = [
    ...(missing.length > 0 ? [`lacks ${listed(missing)}`] : []),
    ...(unknown.length > 0 ? [`has ${listed(unknown)}, which nobody gives it`] : []),
  ];
  return [
    faultAt(entry, {
      code: 'LOCALE_VARIABLE_MISSING',
      message: `${entry.key} ${parts.join(' and ')}`,
      hint: 'Use the variables of the base language.',
    }),
  ];
}

function listed(names: readonly string[]): string {
  return names.map((name) => `{{${name}}}`).join(', ');
}
