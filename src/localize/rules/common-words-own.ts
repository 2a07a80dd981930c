import { allOf, faultOfAbsent } from './rule.ts';
import type { WordsRule } from './rule.ts';

export const commonWordsOwn: WordsRule = {
  name: 'common-words-own',
  description: 'the words by which a language is recognised belong to no other language here',
  check: (languages) =>
    allOf(languages).flatMap((words) => {
      const others = allOf(languages).filter(({ tag }) => tag !== words.tag);
      const shared = words.settings.common_words.filter((word) =>
        others.some(({ settings }) => settings.common_words.includes(word)),
      );
      return shared.map((word) =>
        faultOfAbsent(words, 'locale', {
          code: 'LOCALE_WORDING',
          message: `the common word "${word}" is one of another language too`,
          hint: 'Choose a frequent word that only this language has.',
        }),
      );
    }),
};
