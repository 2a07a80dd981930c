import { finding } from '../reading.ts';
import type { Rule } from '../reading.ts';

/** Every caution is there in full: one that lost only its figure does not count. */
export const cautionsPresent: Rule = ({ documents }) =>
  documents.flatMap(({ tree, lost }) =>
    lost
      .filter(({ text, elsewhere }) => text.duty === 'caution' && !elsewhere)
      .map(({ text, page }) => finding('VERIFY_CAUTION_ABSENT', { tree, page, at: text.origin })),
  );
