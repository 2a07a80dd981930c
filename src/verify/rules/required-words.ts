import { plainWords } from '../../model/plain-words.ts';
import { compactText } from '../normalize-text.ts';
import { finding } from '../reading.ts';
import type { Rule } from '../reading.ts';

/** What a kind of document must say in every case stands there in this language's words, whatever its template did. */
export const requiredWords: Rule = ({ documents, required, locale }) =>
  documents.flatMap(({ tree, pages }, index) => {
    const printed = compactText(pages.map((page) => page.text).join(' '));
    return (required[index] ?? [])
      .filter((key) => !printed.includes(compactText(plainWords(locale.translator.text(key)))))
      .map((key) => finding('VERIFY_STATEMENT_ABSENT', { tree, at: key }));
  });
