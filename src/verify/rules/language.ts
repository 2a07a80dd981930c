import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { Locale } from '../../model/locale.ts';
import { anywhere, wholeWords } from '../../model/word-forms.ts';
import { foldText } from '../normalize-text.ts';
import { foreignTexts } from '../expected-texts.ts';
import type { DocumentReading } from '../read-document.ts';
import { finding } from '../reading.ts';
import type { Reading, Rule } from '../reading.ts';

/** Under this many letters a document says too little for its common words to tell the language. */
const lettersToJudge = 250;
/** In any script stand the ids of records, names and addresses in Latin letters: on a clinician's sheet most. */
const latin = 'Latn';
const leastShare = 0.1;

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

/**
 * Its letters are those of the script of its language, Latin ones aside, and among the languages of that script it has most of the words
 * that only one of them has. Passages marked as foreign (titles of studies) have no vote.
 */
function vote({ tree, pages }: DocumentReading, { locale, otherLocales }: Reading): Diagnostic[] {
  const texts = [pages.map((page) => page.text), foreignTexts(tree)].map((each) => foldText(each.join(' ')));
  const count = (form: RegExp): number => {
    const [all = 0, foreign = 0] = texts.map((text) => (text.match(form) ?? []).length);
    return Math.max(0, all - foreign);
  };
  const total = count(/\p{L}/gu);
  if (total < lettersToJudge) return [];
  const script = scriptOf(locale.tag);
  const sharing = otherLocales.filter(({ tag }) => scriptOf(tag) === script);
  const others = otherLocales
    .map(({ tag }) => scriptOf(tag))
    .filter((each) => each !== script && each !== latin);
  const letters = (each: string): number => count(new RegExp(`\\p{Script=${each}}`, 'gu'));
  const own = letters(script);
  if (own < leastShare * total)
    return wrong(tree, `${String(own)} of ${String(total)} letters are ${script}`);
  const ahead = others.find((each) => letters(each) >= own);
  if (ahead !== undefined) return wrong(tree, `more letters are ${ahead} than ${script}`);
  const votes = (each: Locale): number => count(commonWordsOf(each));
  const rivals = sharing.filter((other) => votes(other) >= votes(locale));
  if (votes(locale) > 0 && rivals.length === 0) return [];
  const counts = [locale, ...rivals].map((each) => `${votes(each)} words only in ${each.tag}`);
  return wrong(tree, counts.join(', '));
}

function wrong(tree: DocumentReading['tree'], detail: string): Diagnostic[] {
  return [finding('VERIFY_LANGUAGE', { tree, detail })];
}

/** Where lines run from right to left a reader of the file gives back no space between words. */
function commonWordsOf({ commonWords, direction }: Locale): RegExp {
  return direction === 'rtl' ? anywhere(commonWords) : wholeWords(commonWords, 'gi');
}

/** Scripts of which several are one to a reader of letters. */
const lettersOfScript: Readonly<Record<string, string>> = { Hans: 'Han', Hant: 'Han', Kore: 'Hangul' };

/** The script in which a language is written, as Unicode names those of letters. */
function scriptOf(tag: string): string {
  const script = new Intl.Locale(tag).maximize().script ?? 'Latn';
  return lettersOfScript[script] ?? script;
}
