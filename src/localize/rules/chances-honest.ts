import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { wholeWords } from '../../model/word-forms.ts';
import type { Entry, Words } from '../words.ts';
import { allOf, faultAt, patientTexts } from './rule.ts';
import type { WordsRule } from './rule.ts';

export const chancesHonest: WordsRule = {
  name: 'chances-honest',
  description: 'a patient text says a chance as a count of people, never as 1 in x or in a word such as rare',
  check: (languages) => allOf(languages).flatMap(checkWords),
};

interface Phrase {
  readonly phrase: string;
  readonly form: RegExp;
}

function checkWords(words: Words): readonly Diagnostic[] {
  const { never, only_with_count: onlyWithCount } = words.settings.misleading;
  const [always, alone] = [never.map(compile), onlyWithCount.map(compile)];
  return patientTexts(words).flatMap((entry) => [
    ...find(entry, always),
    ...(/\d|\{\{/.test(entry.text) ? [] : find(entry, alone)),
  ]);
}

function find(entry: Entry, phrases: readonly Phrase[]): readonly Diagnostic[] {
  return phrases
    .filter(({ form }) => form.test(entry.text))
    .map(({ phrase }) =>
      faultAt(entry, {
        code: 'LOCALE_WORDING',
        message: `${entry.key} says a chance as "${phrase}"`,
        hint: 'Say how many out of how many, or how it compares in words.',
      }),
    );
}

/** A phrase as whole words in any case; # stands for a number or a variable. */
function compile(phrase: string): Phrase {
  const written = wholeWords([phrase]).source.replaceAll('#', String.raw`(?:\d+|\{\{\w+\}\})`);
  return { phrase, form: new RegExp(written, 'iu') };
}
