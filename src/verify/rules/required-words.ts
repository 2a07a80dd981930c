import { plainWords } from '../../model/plain-words.ts';
import { comparisonFor } from '../normalize-text.ts';
import { finding } from '../reading.ts';
import type { Rule } from '../reading.ts';

/** What a kind of document must say in every case stands there in this language's words, whatever its template did. */
export const requiredWords: Rule = ({ documents, required, locale }) =>
  documents.flatMap(({ tree, pages }, index) => {
    const compact = comparisonFor(tree);
    const printed = compact(pages.map((page) => page.text).join(' '));
    return (required[index] ?? [])
      .filter((key) => !printed.includes(compact(plainWords(locale.translator.text(key)))))
      .map((key) => finding('VERIFY_STATEMENT_ABSENT', { tree, at: key }));
  });
