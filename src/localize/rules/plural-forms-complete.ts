import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { countedKeys, pluralForms } from '../words.ts';
import type { Entry, Words } from '../words.ts';
import { allOf, faultAt } from './rule.ts';
import type { WordsRule } from './rule.ts';

export const pluralFormsComplete: WordsRule = {
  name: 'plural-forms-complete',
  description: 'a counted text has exactly the plural forms of its language',
  check: (languages) => {
    const counted = countedKeys(allOf(languages));
    return allOf(languages).flatMap((words) => [...counted].flatMap((key) => checkForms(words, key)));
  },
};

function checkForms(words: Words, key: string): readonly Diagnostic[] {
  const needed = new Intl.PluralRules(words.tag).resolvedOptions().pluralCategories;
  const forms = pluralForms(words, key);
  const single = words.entries.get(key);
  const place = single ?? [...forms.values()][0];
  // Absent in every form: the rule keys-match says so.
  if (place === undefined) return [];
  const missing = needed.filter((category) => !forms.has(category));
  const idle = [...forms].filter(([category]) => !needed.some((one) => one === category));
  return [
    ...(missing.length > 0 ? [missingForms(place, key, missing)] : []),
    ...(single !== undefined && forms.size > 0 ? [unused(single)] : []),
    ...idle.map(([, entry]) => unused(entry)),
  ];
}

function missingForms(place: Entry, key: string, missing: readonly string[]): Diagnostic {
  return faultAt(place, {
    code: 'LOCALE_PLURAL_MISSING',
    message: `${key} lacks ${missing.map((category) => `_${category}`).join(', ')}`,
    hint: 'Write every plural form of this language.',
  });
}

function unused(entry: Entry): Diagnostic {
  return faultAt(entry, {
    code: 'LOCALE_KEY_UNUSED',
    message: `${entry.key} is never used: the language has other plural forms`,
    hint: 'Remove it.',
  });
}
