import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { finding } from '../reading.ts';
import type { Reading, Rule } from '../reading.ts';

/** The file has the pages that were made, each document counts its own from 1, and each page says so. */
export const pageNumbers: Rule = (reading) => [
  ...totals(reading),
  ...reading.documents.flatMap(({ tree, pages, absentFurniture }) => [
    ...pages
      .filter(({ page, pages: of }, index) => page !== index + 1 || of !== pages.length)
      .map(({ number }) => finding('VERIFY_PAGE_COUNT', { tree, page: number, detail: 'counted wrongly' })),
    ...absentFurniture
      .filter(({ part }) => part === 'page-number')
      .map(({ page }) =>
        finding('VERIFY_PAGE_COUNT', { tree, page, detail: 'page number not printed as it must be' }),
      ),
    ...(pages.length === 0 ? [finding('VERIFY_PAGE_COUNT', { tree, detail: 'no page' })] : []),
  ]),
];

function totals({ file, pagesMade }: Reading): Diagnostic[] {
  if (file.pages.length === pagesMade) return [];
  return [finding('VERIFY_PAGE_COUNT', { detail: `${file.pages.length} in the file, ${pagesMade} made` })];
}
