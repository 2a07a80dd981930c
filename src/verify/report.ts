import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { VerificationReport } from '../model/packet.ts';
import type { DocumentReading } from './read-document.ts';
import { phonesOn } from './rules/phones-on-every-page.ts';

/** What was found wrong, and how much was looked for and found. */
export function reportOn(
  findings: readonly Diagnostic[],
  pages: number,
  documents: readonly DocumentReading[],
): VerificationReport {
  const texts = documents.flatMap((document) => document.texts);
  const lost = new Set(documents.flatMap((document) => document.lost.map(({ text }) => text)));
  const found = texts.filter((text) => !lost.has(text));
  return {
    passed: findings.length === 0,
    findings,
    pages,
    figures: found.reduce((sum, text) => sum + text.figures.length, 0),
    statements: found.length,
    cautions: found.filter(({ duty }) => duty === 'caution').length,
    phones: documents
      .flatMap(({ tree, pages: own }) => own.flatMap(({ text }) => phonesOn(text, tree)))
      .filter(Boolean).length,
  };
}
