import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { countedKeys, pluralForms, pluralLocale } from '../words.ts';
import type { Entry, Words } from '../words.ts';
import { allOf, faultAt, faultOfAbsent } from './rule.ts';
import type { WordsRule } from './rule.ts';

export const pluralFormsComplete: WordsRule = {
  name: 'plural-forms-complete',
  description: 'a counted text has exactly the plural forms of its language',
  check: (languages) => {
    const counted = countedKeys(allOf(languages));
    return allOf(languages).flatMap((words) => {
      const unknown = unknownPlurals(words);
      return unknown.length > 0 ? unknown : [...counted].flatMap((key) => checkForms(words, key));
    });
  },
};

/** Without this the forms of the machine's own language would be asked for. */
function unknownPlurals(words: Words): readonly Diagnostic[] {
  if (Intl.PluralRules.supportedLocalesOf([pluralLocale(words)]).length > 0) return [];
  return [
    faultOfAbsent(words, 'locale', {
      code: 'LOCALE_INVALID',
      message: `the plural forms of ${words.tag} are not known`,
      hint: 'Name in locale.yaml, as plurals, a language whose forms it shares, for example en.',
    }),
  ];
}

function checkForms(words: Words, key: string): readonly Diagnostic[] {
  const needed = new Intl.PluralRules(pluralLocale(words)).resolvedOptions().pluralCategories;
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
