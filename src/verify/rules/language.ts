import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { Locale } from '../../model/locale.ts';
import { countWords, wholeWords } from '../../model/word-forms.ts';
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
  const texts = [pages.map((page) => page.text), foreignTexts(tree)].map((each) => foldText(each.join(' ')));
  const [all = '', foreign = ''] = texts;
  const [length = 0, foreignLength = 0] = texts.map((text) => countWords(text.replace(/\d+/g, ' ')));
  if (length - foreignLength < wordsToJudge) return [];
  const votes = ({ commonWords }: Locale): number => {
    const common = wholeWords(commonWords, 'gi');
    const count = (text: string): number => (text.match(common) ?? []).length;
    return Math.max(0, count(all) - count(foreign));
  };
  const own = votes(locale);
  const ahead = otherLocales.filter((other) => votes(other) >= own);
  if (own > 0 && ahead.length === 0) return [];
  const counts = [locale, ...ahead].map((each) => `${votes(each)} words only in ${each.tag}`);
  const detail = counts.join(', ');
  return [finding('VERIFY_LANGUAGE', { tree, detail })];
}
