import bidiFactory from 'bidi-js';
import type { Bidi } from 'bidi-js';
import type { Direction } from '../theme.ts';

// Its types describe a module of the other kind, in which the factory would be one level deeper.
const bidi = (bidiFactory as unknown as () => Bidi)();

const isolate = { leftToRight: '\u2066', byFirstLetter: '\u2068', close: '\u2069' } as const;

/**
 * What is read as one number from left to right: a phone number, a range, a date in digits, a share in percent, a number
 * with a Latin unit tied to it. Without this its parts change places after Arabic letters: "555-0142" becomes "0142-555"
 * (UAX #9, W2 and W4).
 */
const number =
  /(?:\+|\(\p{Nd}+\)\u00a0?)?\p{Nd}(?:[\p{Nd}\u00a0.,:/+–-]*\p{Nd})?(?:\u00a0?[%°])?(?:\u00a0[\p{Script=Latin}/]+)?/gu;

/**
 * Latin words with the numbers and marks among them, as in a name, an id, an address, a unit after its number: one phrase
 * from left to right. It begins with a letter or with a number that belongs to the first word, and ends with a letter, a
 * digit or a sign that belongs to one, so that the date before a colon and the full stop of an Arabic sentence stay outside.
 * What follows in brackets is a phrase of its own.
 */
const latinStretch = /[\p{Script=Latin}\p{Nd}\p{Mn}\u0020-\u007e\u00a0°·–—’“”‘≤≥±×µ²³]+/gu;
const phraseStart = /(?:(?:[≤≥][\u00a0 ]?)?\p{Nd}[\p{Nd}.,–-]*[\u00a0 ]?°?)?\p{Script=Latin}/u;
const phraseEnd = /^.*[\p{Script=Latin}\p{Nd}\p{Mn}%°²³]/u;

/** Part of a line: from and up to but without which of its characters. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/**
 * Embedding level of every character of a line, by the Unicode bidirectional algorithm (UAX #9): even from left to right,
 * odd from right to left. Numbers and Latin phrases are isolated, and so are the parts given (words of another language), each
 * with the direction of its own first letter. A line is taken for itself, without what stands before it.
 */
export function levelsOf(
  line: string,
  direction: Direction,
  isolated: readonly Span[] = [],
): readonly number[] {
  const phrases = latinPhrases(line);
  const alone = [...line.matchAll(number)]
    .map(({ 0: found, index }) => ({ start: index, end: index + found.length }))
    .filter(({ start }) => !phrases.some((phrase) => phrase.start <= start && start < phrase.end));
  const numbers = [...phrases, ...alone];
  const outer = isolated.map((span) => ({ ...span, open: isolate.byFirstLetter }));
  const inner = numbers.map((span) => ({ ...span, open: isolate.leftToRight }));
  const marked: string[] = [];
  const places: number[] = [];
  for (let at = 0; at <= line.length; at += 1) {
    for (const { end } of [...inner, ...outer]) if (end === at) marked.push(isolate.close);
    for (const { start, open } of [...outer, ...inner]) if (start === at) marked.push(open);
    places.push(marked.length);
    marked.push(line.charAt(at));
  }
  const { levels } = bidi.getEmbeddingLevels(marked.join(''), direction);
  return places.slice(0, line.length).map((place) => levels[place] ?? 0);
}

function latinPhrases(line: string): readonly Span[] {
  return [...line.matchAll(latinStretch)].flatMap(({ 0: stretch, index: at }) => {
    let start = at;
    return stretch.split(/(?= \()/).flatMap((part) => {
      const from = start + part.search(phraseStart);
      const length = phraseEnd.exec(part.slice(from - start))?.[0].length ?? 0;
      const phrase = { start: from, end: from + length };
      start += part.length;
      return phraseStart.test(part) ? [phrase] : [];
    });
  });
}

/** Items in the order in which they stand from left to right (UAX #9, L2). `levels` has one level for each. */
export function visualOrder<Item extends { readonly level: number }>(
  items: readonly Item[],
): readonly Item[] {
  const ordered = [...items];
  const highest = Math.max(0, ...items.map(({ level }) => level));
  for (let level = highest; level > 0; level -= 1) {
    let start = 0;
    while (start < ordered.length) {
      if ((ordered[start]?.level ?? 0) < level) {
        start += 1;
        continue;
      }
      let end = start;
      while (end < ordered.length && (ordered[end]?.level ?? 0) >= level) end += 1;
      ordered.splice(start, end - start, ...ordered.slice(start, end).reverse());
      start = end;
    }
  }
  return ordered;
}
