import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { DocumentTree } from '../model/document.ts';
import type { DocumentReading } from '../model/reading-level.ts';
import { expectedText } from '../model/tree-text.ts';
import { scoreTexts } from './score-texts.ts';

/** References to publications hold titles that others wrote, and addresses. */
const reference = /doi\.org|PubMed|\w\.(?:com|org|gov|edu|net)\//u;
const endsAsSentence = /[.!?:]["”»)]?$/u;

/**
 * How hard the running text of a document is: whole sentences, not names, numbers, cells of tables and references. Where
 * there is none, as on a page of signs, each line counts as a sentence.
 */
export function readDocument({ kind, title, language, ...tree }: DocumentTree): DocumentReading {
  const texts = expectedText({ kind, title, language, ...tree })
    .filter(({ kind: textKind, text }) => textKind === 'paragraph' && !reference.test(text))
    .map(({ text }) => text.trim());
  const results = scoreTexts(
    texts.filter((text) => endsAsSentence.test(text)),
    language,
  );
  return { kind, title, results: results.length > 0 ? results : scoreTexts(texts, language) };
}

/** A warning for each formula by which a patient's document is harder than it should be. */
export function tooHard(reading: DocumentReading): readonly Diagnostic[] {
  return reading.results
    .filter(({ passes }) => !passes)
    .map(({ formula, score, limit }) => ({
      code: 'READING_LEVEL',
      severity: 'warning',
      message: `${reading.kind} is harder to read than it should be: ${score.toFixed(1)} by ${formula}, the limit is ${String(limit)}`,
      hint: 'Use shorter words and sentences, in the locale or in what the clinic wrote itself.',
    }));
}
