import { finding } from '../reading.ts';
import type { Rule } from '../reading.ts';

/** Every sentence of the tree is there, and every fixed part of every page. Cautions and figures have rules of their own. */
export const statementsPresent: Rule = ({ documents }) =>
  documents.flatMap(({ tree, lost, absentFurniture }) => [
    ...lost
      .filter(
        ({ text, elsewhere, missingFigures }) =>
          !elsewhere && missingFigures.length === 0 && text.duty !== 'caution',
      )
      .filter(({ text }) => text.duty !== 'phone')
      .map(({ text, page }) => finding('VERIFY_STATEMENT_ABSENT', { tree, page, at: text.origin })),
    ...absentFurniture
      .filter(({ part }) => part !== 'page-number')
      .map(({ part, page }) => finding('VERIFY_STATEMENT_ABSENT', { tree, page, at: part })),
  ]);
