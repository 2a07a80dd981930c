import { readFileSync, readdirSync } from 'node:fs';
import { parse, parseDocument, stringify, visit } from 'yaml';

/**
 * Invented languages made from the English words, for tests: `accented` is a third longer, with marks over its letters;
 * `mirrored` is written in Arabic letters from right to left. Whoever can still read English on its pages has found words
 * that stand in the program.
 */
export type PseudoKind = 'accented' | 'mirrored';

/** Tags of ISO 639-2 that are kept for private use, with the script of the letters. */
export const pseudoTags = { accented: 'qps-Latn', mirrored: 'qps-Arab' } as const;

const bare = 'aeiouycnszAEIOUYCNSZ';
const accented = Array.from('åéîöûýçñšžÅÉÎÖÛÝÇÑŠŽ');

const latin = 'abcdefghijklmnopqrstuvwxyz';
const arabic = Array.from('ابتثجحخدذرزسشصضطظعغفقكلمنه');

function accentWord(word: string): string {
  const marked = Array.from(word, (letter) => accented[bare.indexOf(letter)] ?? letter).join('');
  if (marked === word) return `${word}ö`;
  return word.length < 3 ? marked : marked + marked.slice(-Math.ceil(word.length / 3)).toLowerCase();
}

/** Without the vowels inside: Arabic leaves the short ones out too, and its words would be far too wide with them. */
function mirrorWord(word: string): string {
  const written = word.charAt(0) + word.slice(1).replace(/[aeiou]/gi, '');
  return Array.from(written, (letter) => arabic[latin.indexOf(letter.toLowerCase())] ?? letter).join('');
}

const marks: Readonly<Record<string, string>> = { ',': '،', ';': '؛', '?': '؟' };

/** A text with its variables and tags left as they are. */
export function pseudoText(text: string, kind: PseudoKind): string {
  return text
    .split(/(\{\{?[^}]*\}\}?|<[^>]*>|&[a-z]+;)/)
    .map((part, index) => {
      if (index % 2 === 1) return part;
      if (kind === 'accented') return part.replace(/[A-Za-z]+/g, accentWord);
      return part.replace(/[A-Za-z]+/g, mirrorWord).replace(/[,;?](?!\d)/g, (mark) => marks[mark] ?? mark);
    })
    .join('');
}

function pseudoWords(text: string, kind: PseudoKind): string {
  const document = parseDocument(text, { schema: 'failsafe' });
  visit(document, {
    Scalar(key, node) {
      if (key !== 'key' && typeof node.value === 'string') node.value = pseudoText(node.value, kind);
    },
  });
  return document.toString();
}

function pseudoSettings(text: string, kind: PseudoKind): string {
  const english = parse(text) as Record<string, unknown> & { common_words: string[]; reader_words: string[] };
  const write = (words: readonly string[]): string[] => words.map((word) => pseudoText(word, kind));
  return stringify({
    ...english,
    name: pseudoText('Pseudo', kind),
    direction: kind === 'mirrored' ? 'rtl' : 'ltr',
    plurals: 'en',
    range_word: pseudoText('to', kind),
    common_words: write(english.common_words),
    reader_words: write(english.reader_words),
    misleading: { never: [], only_with_count: [] },
    passive: null,
  });
}

/** The files of an invented language, by path, to be laid over the shipped ones. */
export function pseudoLocale(kind: PseudoKind): Readonly<Record<string, string>> {
  const folder = 'locales/en';
  return Object.fromEntries(
    readdirSync(folder).map((name) => {
      const text = readFileSync(`${folder}/${name}`, 'utf8');
      const made = name === 'locale.yaml' ? pseudoSettings(text, kind) : pseudoWords(text, kind);
      return [`locales/${pseudoTags[kind]}/${name}`, made];
    }),
  );
}
