import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { countWords, sentencesIn } from '../../model/word-forms.ts';
import type { Entry, Words } from '../words.ts';
import { allOf, faultAt, patientTexts } from './rule.ts';
import type { WordsRule } from './rule.ts';

/** Counts as one word. */
const variable = /\{\{\w+\}\}/g;

export const sentencesShort: WordsRule = {
  name: 'sentences-short',
  description: 'a sentence for patients has no more words than the language allows (a warning)',
  check: (languages) =>
    allOf(languages).flatMap((words) => patientTexts(words).flatMap((entry) => long(entry, words))),
};

function long(entry: Entry, { settings }: Words): readonly Diagnostic[] {
  const longest = Math.max(...sentencesIn(entry.text.replace(variable, 'x')).map(countWords));
  if (longest <= settings.sentence_words) return [];
  return [
    faultAt(entry, {
      code: 'LOCALE_WORDING',
      severity: 'warning',
      message: `${entry.key} has a sentence of ${String(longest)} words`,
      hint: `Write sentences of ${String(settings.sentence_words)} words at most.`,
    }),
  ];
}
