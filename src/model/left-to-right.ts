import type { Inline } from './paragraph.ts';

/** Part of a text: from and up to but without which of its characters. */
export interface TextSpan {
  readonly start: number;
  readonly end: number;
}

/** Letters, digits and marks that are written from right to left. */
const rightToLeft = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufeff]/;

/** Whether a text is read from left to right as a whole: it has letters, and nothing in it is written the other way. */
export function isLeftToRight(text: string): boolean {
  return /\p{L}/u.test(text) && !rightToLeft.test(text);
}

/** Whether all letters of a text, if it has any, are written from right to left. */
function isRightToLeft(text: string): boolean {
  const letters = text.match(/\p{L}/gu) ?? [];
  return letters.length > 0 && letters.every((letter) => rightToLeft.test(letter));
}

/**
 * The direction of a paragraph that is in another language as a whole, if that is not the direction of the text around it:
 * it is set as its own readers are used to, from its own side of the page.
 */
export function ownDirection(inlines: readonly Inline[], around: 'ltr' | 'rtl'): 'ltr' | 'rtl' | undefined {
  if (!inlines.every((inline) => inline.type === 'text' && inline.language !== undefined)) return undefined;
  return turnedDirection(inlines.map(({ value }) => value).join(''), around);
}

/** The direction of words, such as the name of a language in itself, if that is not the direction around them. */
export function turnedDirection(text: string, around: 'ltr' | 'rtl'): 'ltr' | 'rtl' | undefined {
  if (around === 'rtl') return isLeftToRight(text) ? 'ltr' : undefined;
  return isRightToLeft(text) ? 'rtl' : undefined;
}

/**
 * What is read as one number from left to right: a phone number, a range, a date in digits, a share in percent, a number
 * with a sign before it or a Latin unit tied to it. Without this its parts change places after Arabic letters: "555-0142"
 * becomes "0142-555", and "≤ 30" is mirrored (UAX #9, W2 and W4). A sign by itself, as a legend explains it, is not mirrored
 * either: it is the same sign.
 */
const number =
  /[≤≥<>±≈](?![\u00a0 ]?\p{Nd})|(?:[≤≥<>±≈][\u00a0 ]?|(?<![^\s([«“])\u200e?[-\u2212])?(?:\+|\(\p{Nd}+\)\u00a0?)?\p{Nd}(?:[\p{Nd}\u00a0.,:/+–-]*\p{Nd})?(?:\u00a0?[%°])?(?:\u00a0[\p{Script=Latin}/]+)?/gu;

/**
 * Latin words with the numbers and marks among them, as in a name, an id, an address, a unit after its number: one phrase
 * from left to right. It begins with a letter or with a number that belongs to the first word, and ends with a letter, a
 * digit or a sign that belongs to one, so that the date before a colon and the full stop of an Arabic sentence stay outside.
 * Nor is a number before such a stop, or after one, its own: "study 42. pubmed", "class C. 4 points". What follows last in
 * brackets is a phrase of its own, also where the bracket closes only after Arabic words: it may be a remark of the sentence.
 */
const latinStretch = /[\p{Script=Latin}\p{Nd}\p{Mn}\u0020-\u007e\u00a0\u00ad\u200e°·–—’“”‘≤≥±×µ²³]+/gu;
const lastBrackets = /(?= \([^()]*(?:\)[^\p{L}\p{Nd}]*)?$)/u;
const phraseStart = /(?:(?:[≤≥][\u00a0 ]?)?\p{Nd}[\p{Nd}.,–-]*(?:(?<=\p{Nd})[\u00a0 ])?°?)?\p{Script=Latin}/u;
const phraseEnd = /^.*[\p{Script=Latin}\p{Nd}\p{Mn}%°²³]/su;
const nextSentence = /[.!?][\u00a0 ]+\p{Nd}[\p{Nd}.,–-]*%?$/u;

const brackets = [
  ['(', ')'],
  ['[', ']'],
  ['“', '”'],
] as const;

/**
 * Phrases and numbers within a text from right to left that are read from left to right, in order, none within another.
 * `marked` are parts that are known to be in another language: those that are read from left to right as a whole are
 * kept whole, with the full stops at their ends, and one phrase with what is Latin beside them.
 */
export function leftToRightSpans(text: string, marked: readonly TextSpan[] = []): readonly TextSpan[] {
  const whole = marked.filter(({ start, end }) => isLeftToRight(text.slice(start, end)));
  const others = marked.filter((span) => !whole.includes(span));
  const phrases = latinPhrases(text).filter((span) => !others.some((other) => isCut(other, span)));
  const words = joinOverlapping([...whole, ...phrases]);
  const numbers = [...text.matchAll(number)]
    .map(({ 0: found, index }) => ({ start: index, end: index + found.length }))
    .filter((span) => !words.some((phrase) => overlap(phrase, span)));
  return [...words, ...numbers].sort((a, b) => a.start - b.start);
}

function latinPhrases(text: string): readonly TextSpan[] {
  return [...text.matchAll(latinStretch)].flatMap(({ 0: stretch, index: at }) => {
    let start = at;
    return stretch.split(lastBrackets).flatMap((part) => {
      const from = start + part.search(phraseStart);
      const phrase = phraseEnd.exec(part.slice(from - start))?.[0] ?? '';
      const { length } = phrase.replace(nextSentence, '');
      start += part.length;
      return phraseStart.test(part) ? [withBrackets(text, { start: from, end: from + length })] : [];
    });
  });
}

/** A bracket of which the other one stands within the phrase belongs to it. */
function withBrackets(text: string, { start, end }: TextSpan): TextSpan {
  const phrase = text.slice(start, end);
  const count = (mark: string): number => phrase.split(mark).length - 1;
  for (const [open, close] of brackets) {
    const missing = count(close) - count(open);
    if (missing > 0 && text[start - 1] === open) return withBrackets(text, { start: start - 1, end });
    if (missing < 0 && text[end] === close) return withBrackets(text, { start, end: end + 1 });
  }
  return { start, end };
}

function overlap(one: TextSpan, other: TextSpan): boolean {
  return one.start < other.end && other.start < one.end;
}

/** Overlapping, and neither within the other. */
function isCut(one: TextSpan, other: TextSpan): boolean {
  const within = (a: TextSpan, b: TextSpan): boolean => b.start <= a.start && a.end <= b.end;
  return overlap(one, other) && !within(one, other) && !within(other, one);
}

function joinOverlapping(spans: readonly TextSpan[]): readonly TextSpan[] {
  const joined: TextSpan[] = [];
  for (const span of [...spans].sort((a, b) => a.start - b.start)) {
    const last = joined.at(-1);
    if (last !== undefined && overlap(last, span))
      joined[joined.length - 1] = { start: last.start, end: Math.max(last.end, span.end) };
    else joined.push(span);
  }
  return joined;
}
