import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { Locale } from '../../model/locale.ts';
import { foldText } from '../normalize-text.ts';
import { foreignTexts } from '../expected-texts.ts';
import type { DocumentReading } from '../read-document.ts';
import { finding } from '../reading.ts';
import type { Reading, Rule } from '../reading.ts';

/** Under this many words a document says too little for its common words to tell the language. */
const wordsToJudge = 50;

/** The file says which language it is in, and its words are of that language. */
export const language: Rule = (reading) => [
  ...declaredLanguage(reading),
  ...reading.documents.flatMap((document) => vote(document, reading)),
];

function declaredLanguage({ file, packet, locale, documents }: Reading): Diagnostic[] {
  const wanted = packet.language;
  const said = [file.language, locale.tag, ...documents.map(({ tree }) => tree.language)];
  const wrong = said.filter((tag) => tag?.toLowerCase() !== wanted.toLowerCase());
  return wrong.length === 0
    ? []
    : [finding('VERIFY_LANGUAGE', { detail: `not marked as ${wanted} throughout` })];
}

/** Counts words that only one language has. Passages marked as foreign (titles of studies) have no vote. */
function vote({ tree, pages }: DocumentReading, { locale, otherLocales }: Reading): Diagnostic[] {
  const words = countWords(pages.map((page) => page.text).join(' '));
  for (const [word, count] of countWords(foreignTexts(tree).join(' '))) {
    words.set(word, (words.get(word) ?? 0) - count);
  }
  const total = [...words.values()].reduce((sum, count) => sum + count, 0);
  if (total < wordsToJudge) return [];
  const own = votes(words, locale);
  const ahead = otherLocales.filter((other) => votes(words, other) >= own);
  if (own > 0 && ahead.length === 0) return [];
  const counts = [locale, ...ahead].map((each) => `${votes(words, each)} words only in ${each.tag}`);
  const detail = counts.join(', ');
  return [finding('VERIFY_LANGUAGE', { tree, detail })];
}

function votes(words: ReadonlyMap<string, number>, locale: Locale): number {
  return locale.commonWords.reduce((sum, word) => sum + Math.max(0, words.get(word.toLowerCase()) ?? 0), 0);
}

function countWords(text: string): Map<string, number> {
  const counts = new Map<string, number>();
  for (const word of foldText(text)
    .toLowerCase()
    .match(/\p{L}+/gu) ?? [])
    counts.set(word, (counts.get(word) ?? 0) + 1);
  return counts;
}
