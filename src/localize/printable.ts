/** Keeps two words on one line. */
export const tie = '\u00A0';

/** No typeface here has the narrow no-break space (U+202F) that some languages put between groups of digits. */
export function printable(text: string): string {
  return text.replace(/[\u202F\u2009]/g, tie);
}

/**
 * White between a number and the range word after it. A dash or a swung dash at the head of a line would be read as a
 * minus; a Hindi range word belongs to the number before it.
 */
export function beforeRangeWord(rangeWord: string): string {
  return /\p{L}/u.test(rangeWord) && !/\p{Script=Devanagari}/u.test(rangeWord) ? ' ' : tie;
}
