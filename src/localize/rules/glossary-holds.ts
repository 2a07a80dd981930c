import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { Words } from '../words.ts';
import { allOf, faultOfAbsent, patientTexts } from './rule.ts';
import type { WordsRule } from './rule.ts';

export const glossaryHolds: WordsRule = {
  name: 'glossary-holds',
  description: 'every language explains the same medical words, each in a way that its pages really have',
  check: ({ base, others }) => [
    ...others.flatMap((words) => [...lacking(base, words), ...unasked(base, words)]),
    ...allOf({ base, others }).flatMap(unsaid),
  ],
};

function lacking(base: Words, words: Words): readonly Diagnostic[] {
  return missingFrom(words, base).map((id) =>
    faultOfAbsent(words, 'glossary', {
      code: 'LOCALE_KEY_MISSING',
      message: `the glossary of ${words.tag} lacks ${id}`,
      hint: 'Write the word in all its forms, and how a page explains it.',
    }),
  );
}

function unasked(base: Words, words: Words): readonly Diagnostic[] {
  return missingFrom(base, words).map((id) =>
    faultOfAbsent(words, 'glossary', {
      code: 'LOCALE_KEY_UNUSED',
      message: `the glossary of ${base.tag} has no ${id}`,
      hint: 'Remove it, or add it to the base language.',
    }),
  );
}

function missingFrom(words: Words, model: Words): readonly string[] {
  const known = new Set(words.glossary.map(({ id }) => id));
  return model.glossary.map(({ id }) => id).filter((id) => !known.has(id));
}

/** Ways to explain a word that no text of the language has any more. */
function unsaid(words: Words): readonly Diagnostic[] {
  const texts = patientTexts(words).map(({ text }) => text.toLowerCase());
  return words.glossary.flatMap(({ id, explained }) =>
    explained
      .filter((said) => !texts.some((text) => text.includes(said.toLowerCase())))
      .map((said) =>
        faultOfAbsent(words, 'glossary', {
          code: 'LOCALE_WORDING',
          message: `no text explains ${id} with "${said}"`,
          hint: 'Write the explanation as a text has it, or remove it.',
        }),
      ),
  );
}
