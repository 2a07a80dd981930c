import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { askedKey, pluralOf, variablesOf } from '../words.ts';
import type { Entry, Words } from '../words.ts';
import { faultAt } from './rule.ts';
import type { WordsRule } from './rule.ts';

export const variablesMatch: WordsRule = {
  name: 'variables-match',
  description: 'a text has the same variables in every language and plural form',
  check: ({ base, others }) => {
    const wanted = variablesByKey(base);
    return [base, ...others].flatMap((words) =>
      [...words.entries.values()].flatMap((entry) => difference(entry, wanted.get(askedKey(entry.key)))),
    );
  },
};

/** Variables of all forms of a text together. */
function variablesByKey(words: Words): ReadonlyMap<string, ReadonlySet<string>> {
  const found = new Map<string, ReadonlySet<string>>();
  for (const { key, text } of words.entries.values()) {
    const asked = askedKey(key);
    found.set(asked, new Set([...(found.get(asked) ?? []), ...variablesOf(text)]));
  }
  return found;
}

function difference(entry: Entry, wanted: ReadonlySet<string> | undefined): readonly Diagnostic[] {
  if (wanted === undefined) return [];
  const has = new Set(variablesOf(entry.text));
  const missing = [...wanted].filter((name) => !has.has(name) && !mayBeWords(entry, name));
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

/** "a day" says its count in words. */
function mayBeWords(entry: Entry, name: string): boolean {
  return name === 'count' && ['zero', 'one', 'two'].includes(pluralOf(entry.key)?.category ?? '');
}

function listed(names: readonly string[]): string {
  return names.map((name) => `{{${name}}}`).join(', ');
}
