import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { Term } from '../../model/terms.ts';
import { anywhere, partOfWord, wholeWords } from '../../model/word-forms.ts';
import { sourcesIn, withoutVariables } from '../words.ts';
import type { Words } from '../words.ts';
import { faultAt, faultOfAbsent } from './rule.ts';
import type { WordsRule } from './rule.ts';

export const termsHold: WordsRule = {
  name: 'terms-hold',
  description: 'a word of the trade is translated in one way, in every text that has it',
  check: ({ base, others }) => others.flatMap((words) => [...lacking(base, words), ...unsaid(base, words)]),
};

function lacking(base: Words, words: Words): readonly Diagnostic[] {
  const known = new Set(words.terms.map(({ id }) => id));
  return base.terms
    .filter(({ id }) => !known.has(id))
    .map(({ id }) =>
      faultOfAbsent(words, 'terms', {
        code: 'LOCALE_KEY_MISSING',
        message: `the terms of ${words.tag} lack ${id}`,
        hint: 'Write how the language says it, in all its forms.',
      }),
    );
}

/** Texts whose source has a term and that have none of its forms. */
function unsaid(base: Words, words: Words): readonly Diagnostic[] {
  const sourceOf = sourcesIn(base);
  return base.terms.flatMap((term) => {
    const own = words.terms.find(({ id }) => id === term.id);
    if (own === undefined) return [];
    const asked = wholeWords(term.words, 'i');
    const said = formsOf(own);
    return [...words.entries.values()]
      .filter(
        ({ key, text }) =>
          !isExcepted(own, key) &&
          asked.test(withoutVariables(sourceOf(key)?.text ?? '')) &&
          !said.test(text),
      )
      .map((entry) =>
        faultAt(entry, {
          code: 'LOCALE_WORDING',
          message: `${entry.key} says ${term.id} in another way than the terms of ${words.tag}`,
          hint: `Write it as ${own.words.join(', ')}, or name the text under except in terms.yaml.`,
        }),
      );
  });
}

function isExcepted({ except }: Term, key: string): boolean {
  return except.some((each) => key === each || key.startsWith(`${each}_`));
}

/** * at an end of a form stands for any letters there. */
function formsOf({ words }: Term): RegExp {
  const patterns = words.map((form) => {
    const bare = form.replaceAll('*', '');
    if (!form.includes('*')) return wholeWords([bare]).source;
    const { source } = anywhere([bare]);
    const before = form.startsWith('*') ? '' : `(?<!${partOfWord})`;
    const after = form.endsWith('*') ? '' : `(?!${partOfWord})`;
    return before + source + after;
  });
  return new RegExp(patterns.join('|'), 'iu');
}
