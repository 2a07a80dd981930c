import { escapePattern } from '../model/word-forms.ts';
import type { LocaleSettings } from '../model/locale-settings.ts';

const unitsOfTexts = ['kg', 'lb', 'cm', 'mg', 'm', 'kg/m²'];

/**
 * Puts no-break spaces between a number and its unit, and between a range word and the number after it, so that a
 * line never ends in "93" or in "180 to". A variable counts as a number.
 */
export function tieNumbers(
  text: string,
  { units, range_word: rangeWord }: Pick<LocaleSettings, 'units' | 'range_word'>,
): string {
  const own = [units.kilogram, units.pound].map((pattern) => pattern.replace('{{n}}', '').trim());
  const names = [...new Set([...unitsOfTexts, ...own])].map(escapePattern);
  const unit = new RegExp(`(\\d|\\}\\}) (?=(?:${names.join('|')})(?![\\p{L}\\d]))`, 'gu');
  const range = new RegExp(`(\\d|\\}\\}) ${escapePattern(rangeWord)} (?=\\d|\\{\\{)`, 'gu');
  return text.replace(unit, '$1\u00A0').replace(range, `$1 ${rangeWord}\u00A0`);
}
