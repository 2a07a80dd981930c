const units = 'kg|lb|cm|mg|m|kg/m²';

/**
 * Puts no-break spaces between a number and its unit, and between a range word and the number after it, so that a
 * line never ends in "93" or in "180 to". A variable counts as a number.
 */
export function tieNumbers(text: string, rangeWord: string): string {
  const unit = new RegExp(`(\\d|\\}\\}) (?=(?:${units})(?![\\p{L}\\d]))`, 'gu');
  const range = new RegExp(`(\\d|\\}\\}) ${rangeWord} (?=\\d|\\{\\{)`, 'gu');
  return text.replace(unit, '$1\u00A0').replace(range, `$1 ${rangeWord}\u00A0`);
}
