import { splitChineseWords } from '../model/split-chinese.ts';
import { leansOnNext, staysWithNext } from '../model/tie-words.ts';

/** Part of a text, and whether a line should never end within it. */
export interface TextPart {
  readonly text: string;
  readonly whole: boolean;
}

/**
 * Letters of the longest part that is kept whole: the narrowest column of a small phone has room for it. What is longer
 * ends lines where the browser finds a place.
 */
export const longestWhole = 15;

/** A word with a hyphen, a dash or a stroke inside, after which a browser would end a line: "peut-être", "2–4", "mg/dL". */
const joined = /[\p{L}\p{Nd}][-\u2010\u2013/](?=[\p{L}\p{Nd}])/u;

/** Chinese has no spaces: what stands between two of them is a sentence. */
const chinese = /\p{Script=Han}/u;
/**
 * What is kept whole within it, as on the printed pages: a number with what it counts or with the word that it numbers, a
 * unit with a stroke, the mark of a footnote with its word, and the name of a weekday.
 */
const chineseWholes =
  /((?:研究|注)\p{Nd}+|\p{Nd}[\p{Nd}.,]*\u00a0?(?:[公个]?\p{Script=Han}|\p{Script=Latin}{1,3}\/\p{Script=Latin}+[²³]?)|\p{Script=Han}[*†‡]|星期[一二三四五六日])/u;

function isShort(text: string): boolean {
  return Array.from(text).length <= longestWhole;
}

function isWhole(text: string): boolean {
  return isShort(text) && (text.includes(' ') || joined.test(text));
}

/** Letters of the longest Chinese word that a heading keeps whole: they are as wide as high, and large. */
const longestChinese = 8;

/**
 * A heading in parts: besides its short phrases no Chinese word is parted, which would be read twice. The words are those
 * of the printed pages. Pure.
 */
export function splitHeading(text: string): readonly TextPart[] {
  if (!chinese.test(text)) return splitWholePhrases(text);
  return text.split(/( )/).flatMap((part) => splitChineseWords(part).map(asWhole));
}

function asWhole(text: string): TextPart {
  const letters = Array.from(text).length;
  return { text, whole: letters > 1 && (chinese.test(text) ? letters <= longestChinese : isWhole(text)) };
}

/** Words that share a line, by the rule of the printed pages, as far as they are short together. */
function phrasesOf(text: string): readonly string[] {
  const phrases: string[] = [];
  let before = '';
  for (const word of text.split(' ')) {
    const last = phrases.at(-1);
    const longer = `${last ?? ''} ${word}`;
    if (last !== undefined && staysWithNext(before, word) && isShort(longer))
      phrases[phrases.length - 1] = longer;
    else phrases.push(word);
    before = word;
  }
  return leaned(phrases);
}

/** The same with a lone number kept to the lone word that it makes sense with: "of 1,000", "note 1". */
function leaned(phrases: readonly string[]): readonly string[] {
  return phrases.reduce<readonly string[]>((all, phrase) => {
    const last = all.at(-1);
    const longer = `${last ?? ''} ${phrase}`;
    if (last === undefined || !leansOnNext(last, phrase)) return [...all, phrase];
    const alone = !last.includes(' ') && !phrase.includes(' ');
    return alone && isShort(longer) ? [...all.slice(0, -1), longer] : [...all, phrase];
  }, []);
}

/**
 * A text in parts: short phrases that a line should not part, and what stands between them. All parts after one another
 * are the text, letter by letter. Pure.
 */
export function splitWholePhrases(text: string): readonly TextPart[] {
  const parts: TextPart[] = [];
  phrasesOf(text).forEach((phrase, index) => {
    const space = index === 0 ? '' : ' ';
    const last = parts.at(-1);
    if (chinese.test(phrase)) parts.push(...partOf(space), ...chineseParts(phrase));
    else if (isWhole(phrase)) parts.push(...partOf(space), { text: phrase, whole: true });
    else if (last?.whole === false)
      parts[parts.length - 1] = { text: last.text + space + phrase, whole: false };
    else parts.push(...partOf(space + phrase));
  });
  return parts;
}

/** Every second piece of a text parted by a pattern is what the pattern found. */
function chineseParts(sentence: string): readonly TextPart[] {
  return sentence
    .split(chineseWholes)
    .map((text, index) => ({ text, whole: index % 2 === 1 && isShort(text) }))
    .filter(({ text }) => text !== '');
}

function partOf(text: string): readonly TextPart[] {
  return text === '' ? [] : [{ text, whole: false }];
}
