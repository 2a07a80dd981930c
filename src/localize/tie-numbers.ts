import { escapePattern } from '../model/word-forms.ts';
import type { LocaleSettings } from '../model/locale-settings.ts';
import { beforeRangeWord } from './printable.ts';

const unitsOfTexts = ['kg', 'lb', 'cm', 'mg', 'm', 'kg/m²', '°F', '°C'];
/** Groups of digits, marks that French sets apart from the word before them, and its quotation marks. */
const setApart = /(?<=\d) (?=\d{3}(?!\d))|(?<=\S) (?=[:;?!»%](?![\p{L}\p{Nd}]))|(?<=«) /gu;

/**
 * Puts no-break spaces between a number and its unit, between a range word and the number after it, and wherever a
 * language sets a mark apart from its word, so that a line never ends in "93" or "180 to" and never begins with a mark. A
 * variable counts as a number.
 */
export function tieNumbers(
  text: string,
  { units, range_word: rangeWord }: Pick<LocaleSettings, 'units' | 'range_word'>,
): string {
  const own = [units.kilogram, units.pound].map((pattern) => pattern.replace('{{n}}', '').trim());
  const names = [...new Set([...unitsOfTexts, ...own])].map(escapePattern);
  const unit = new RegExp(`(\\d|\\}\\}) (?=(?:${names.join('|')})(?![\\p{L}\\d]))`, 'gu');
  const range = new RegExp(`(\\d|\\}\\}) ${escapePattern(rangeWord)} (?=\\d|\\{\\{)`, 'gu');
  return text
    .replace(unit, '$1\u00A0')
    .replace(range, `$1${beforeRangeWord(rangeWord)}${rangeWord}\u00A0`)
    .replace(setApart, '\u00A0');
}
