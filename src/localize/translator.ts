import { createInstance } from 'i18next';

import { WordsError } from '../diagnostics/words-error.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Formatter, TextVariable, Translator } from '../model/locale.ts';
import { tieNumbers } from './tie-numbers.ts';
import { fileOf, pluralForms, pluralLocale } from './words.ts';
import type { Words } from './words.ts';

type Variables = Readonly<Record<string, TextVariable>>;

/**
 * The words of one language. i18next answers a missing key with the key and a missing variable with nothing; here
 * its handlers throw a WordsError instead, so that no gap reaches a page.
 */
export function makeTranslator(words: Words, formatter: Formatter): Translator {
  const language = createInstance();
  const resources = Object.fromEntries(
    [...words.entries.values()].map(({ key, text }) => [key, tieNumbers(text, words.settings)]),
  );
  // By this i18next chooses among plural forms.
  const plurals = pluralLocale(words);
  void language.init({
    lng: plurals,
    fallbackLng: false,
    load: 'currentOnly',
    initAsync: false,
    resources: { [plurals]: { translation: resources } },
    keySeparator: false,
    nsSeparator: false,
    returnNull: false,
    returnEmptyString: false,
    parseMissingKeyHandler: (key: string, _fallback?: string, asked?: { readonly count?: unknown }) => {
      throw new WordsError(missingWords(words, key, typeof asked?.count === 'number'));
    },
    interpolation: {
      // Off would let markup in; on, with values handed over as they are, the escape decides by their kind.
      escapeValue: true,
      useRawValueToEscape: true,
      escape: (value: unknown) => written(value as TextVariable, formatter),
      skipOnVariables: true,
    },
  });
  const text = (key: string, variables: Variables = {}): string => {
    const count = variables['count'];
    return language.t(key, {
      // Variables go in by `replace`, so that none of their names can act as an option of i18next.
      replace: variables,
      nest: false,
      ...(typeof count === 'number' && { count }),
      missingInterpolationHandler: (_text: string, match: readonly string[]) => {
        throw new WordsError(missingVariable(words, key, match[1] ?? ''));
      },
    });
  };
  return { text, has: (key) => words.entries.has(key) || words.entries.has(`${key}_other`) };
}

function written(value: TextVariable, formatter: Formatter): string {
  if (typeof value === 'number') return formatter.number(value);
  return typeof value === 'string' ? escapeText(value) : value.markup;
}

const references: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&apos;',
};

function escapeText(text: string): string {
  return text.replace(/[&<>"']/g, (character) => references[character] ?? character);
}

function missingWords(words: Words, key: string, counted: boolean): Diagnostic {
  const forms = pluralForms(words, key);
  const place = { path: key, severity: 'error' } as const;
  const [first] = forms.values();
  if (first === undefined) {
    const message = `the language ${words.tag} has no words for ${key}`;
    return { ...place, code: 'LOCALE_KEY_MISSING', message, hint: `Add ${key} to ${fileOf(words, key)}.` };
  }
  const { span } = first;
  if (!counted) {
    const message = `${key} has plural forms and was asked for without a count`;
    return { ...place, span, code: 'LOCALE_VARIABLE_MISSING', message, hint: 'Pass a number as count.' };
  }
  const message = `the language ${words.tag} lacks the plural form of ${key} for this count`;
  const hint = `Add it; the forms there are: ${[...forms.keys()].join(', ')}.`;
  return { ...place, span, code: 'LOCALE_PLURAL_MISSING', message, hint };
}

function missingVariable(words: Words, key: string, name: string): Diagnostic {
  const [form] = pluralForms(words, key).values();
  const span = (words.entries.get(key) ?? form)?.span;
  return {
    code: 'LOCALE_VARIABLE_MISSING',
    severity: 'error',
    message: `${key} needs a value for {{${name}}}`,
    hint: `Pass ${name}, or take it out of the text.`,
    path: key,
    ...(span && { span }),
  };
}
