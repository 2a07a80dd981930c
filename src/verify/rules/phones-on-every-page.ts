import type { DocumentTree } from '../../model/document.ts';
import { foldText, numberPattern } from '../normalize-text.ts';
import { finding } from '../reading.ts';
import type { Rule } from '../reading.ts';

/** Whoever holds a single page can call: every number is on every page, and wherever a paragraph gives one. */
export const phonesOnEveryPage: Rule = ({ documents }) =>
  documents.flatMap(({ tree, pages, lost }) => [
    ...pages.flatMap((page) =>
      phonesOn(page.text, tree)
        .map((present, index) => ({
          present,
          detail: `number ${index + 1} of ${tree.furniture.phones.length}`,
        }))
        .filter(({ present }) => !present)
        .map(({ detail }) => finding('VERIFY_PHONE_ABSENT', { tree, page: page.number, detail })),
    ),
    ...lost
      .filter(({ text, elsewhere }) => text.duty === 'phone' && !elsewhere)
      .map(({ text, page }) => finding('VERIFY_PHONE_ABSENT', { tree, page, at: text.origin })),
  ]);

/** For each phone number of the document, whether a page shows it. */
export function phonesOn(pageText: string, tree: DocumentTree): readonly boolean[] {
  const folded = foldText(pageText);
  return tree.furniture.phones.map((phone) => numberPattern(phone).test(folded));
}
