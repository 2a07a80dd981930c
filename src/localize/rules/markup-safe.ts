import { allOf, faultAt } from './rule.ts';
import type { WordsRule } from './rule.ts';

export const markupSafe: WordsRule = {
  name: 'markup-safe',
  description:
    'the only markup is <b>…</b>, closed and not nested; & and < are written as references; no odd spaces',
  check: (languages) =>
    allOf(languages).flatMap((words) =>
      [...words.entries.values()].flatMap((entry) => {
        const message = faultIn(entry.text);
        const hint = 'Use only <b>…</b>; write &amp; and &lt;; keep one plain space between words.';
        return message === undefined ? [] : [faultAt(entry, { code: 'LOCALE_MARKUP', message, hint })];
      }),
    ),
};

function faultIn(text: string): string | undefined {
  if (/<(?!\/?b>)/.test(text)) return 'a < that does not begin <b> or </b>';
  if (/&(?!(?:amp|lt|gt|quot|apos);)/.test(text))
    return 'an & that does not begin &amp;, &lt;, &gt;, &quot; or &apos;';
  const tags = (text.match(/<\/?b>/g) ?? []).join('');
  if (tags.replaceAll('<b></b>', '') !== '') return '<b> and </b> do not come in pairs';
  // Line feeds pull in another typeface; the typeface has no narrow spaces; ties are put in by the program.
  if (/[\p{Cc}\u00A0\u2000-\u200B\u202F\u2028\u2029]/u.test(text))
    return 'a line break or a space of an odd kind';
  return /^ | $| {2}/.test(text) ? 'a space too many' : undefined;
}
