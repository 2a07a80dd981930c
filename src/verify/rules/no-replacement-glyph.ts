import { finding } from '../reading.ts';
import type { Rule } from '../reading.ts';

/** What a reader hands back for a glyph that stands for no character: U+FFFD, NUL, or a private use code point. */
const replacement = /[\0\ufffd\p{Co}]/gu;

/** Every printed glyph comes back as a character. */
export const noReplacementGlyph: Rule = ({ documents }) =>
  documents.flatMap(({ tree, pages }) =>
    pages
      .map((page) => ({ number: page.number, count: page.text.match(replacement)?.length ?? 0 }))
      .filter(({ count }) => count > 0)
      .map(({ number, count }) =>
        finding('VERIFY_GLYPH', { tree, page: number, detail: `${count} of them` }),
      ),
  );
