import { finding } from '../reading.ts';
import type { Rule } from '../reading.ts';

/** Texts stand in the order of the tree: a sentence under another choice's name is a wrong sentence. */
export const order: Rule = ({ documents }) =>
  documents.flatMap(({ tree, lost }) =>
    lost
      .filter(({ elsewhere }) => elsewhere)
      .map(({ text, page }) => finding('VERIFY_ORDER', { tree, page, at: text.origin })),
  );
