import { finding } from '../reading.ts';
import type { Rule } from '../reading.ts';

/** Nothing is printed that neither the tree nor the furniture of the page accounts for. */
export const nothingUnexpected: Rule = ({ documents }) =>
  documents.flatMap(({ tree, leftovers }) =>
    leftovers.map(({ page, letters }) =>
      finding('VERIFY_UNEXPECTED_TEXT', {
        tree,
        page,
        detail: letters === 1 ? '1 letter' : `${letters} letters`,
      }),
    ),
  );
