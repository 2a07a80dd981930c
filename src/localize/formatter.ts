import { InternalError } from '../diagnostics/diagnostic.ts';
import type { Formatter, WeightUnits } from '../model/locale.ts';
import type { LocaleSettings } from '../model/locale-settings.ts';
import { hasDecimalComma } from '../model/list-marks.ts';
import { kilogramsPerPound } from '../model/quantity.ts';
import { spaceBetween } from '../model/wide-marks.ts';
import { beforeRangeWord, printable, tie } from './printable.ts';
import { writeDates, writeOwnDates } from './write-dates.ts';

/** Numbers, dates and lists as readers of a language write them, always in Western digits. */
export function makeFormatter(settings: LocaleSettings): Formatter {
  const { format, nor_word: norWord, own_names: own, range_word: rangeWord, semicolon, units } = settings;
  const writers = new Map<number | undefined, Intl.NumberFormat>();
  const before = beforeRangeWord(rangeWord);
  const range = (low: string, high: string): string =>
    isChinese.test(rangeWord) ? `${low}${rangeWord}${high}` : `${low}${before}${rangeWord}${tie}${high}`;
  const number = (value: number, decimals?: number): string => {
    if (!Number.isFinite(value)) throw new InternalError('a number to be printed is not finite');
    const known = writers.get(decimals) ?? numberWriter(format, decimals);
    writers.set(decimals, known);
    return printable(known.format(value));
  };
  const inUnits = (wanted: WeightUnits, write: (perUnit: number) => string): string => {
    const metric = withUnit(units.kilogram, write(1));
    const customary = withUnit(units.pound, write(kilogramsPerPound));
    const both = isChinese.test(units.kilogram)
      ? `${customary}（${metric}）`
      : `${customary}${spaceBetween(customary, '(')}(${metric})`;
    return { metric, us: customary, both }[wanted];
  };
  return {
    number,
    range,
    ...(own === null ? writeDates(format) : writeOwnDates(own)),
    list: (items, join) => {
      const mark = hasDecimalComma(items, number(0.5).charAt(1)) ? semicolon.replace(' ', tie) : ',';
      if (join === 'nor' && norWord !== undefined) return joinOwn(` ${norWord} `, items, mark);
      const kind = join === 'and' ? 'and' : 'or';
      return own === null
        ? joinList(format, items, { join: kind, mark })
        : joinOwn(own.list[kind], items, mark);
    },
    languageName: (tag) =>
      own?.languages[tag] ??
      inSentence(format, new Intl.DisplayNames(format, { type: 'language' }).of(tag) ?? tag),
    weight: (kg, wanted) => inUnits(wanted, (perUnit) => number(kg / perUnit, 0)),
    weightRange: (low, high, wanted) =>
      inUnits(wanted, (perUnit) => range(number(low / perUnit, 0), number(high / perUnit, 0))),
  };
}

/** Vietnamese writes "tiếng Anh" within a sentence; Unicode gives the form of a list. */
function inSentence(format: string, name: string): string {
  return format === 'vi' ? name.charAt(0).toLowerCase() + name.slice(1) : name;
}

/** Written without spaces. */
const isChinese = /\p{Script=Han}/u;

/** A number in the pattern of its unit; a space between the two does not break. */
function withUnit(pattern: string, number: string): string {
  return pattern.replaceAll(' ', tie).replace('{{n}}', number);
}

/** "corazón e hígado": Unicode's list says so before "hi", not before "hí". */
const beforeAccentedI = / y (?=h?í)/u;

/** `mark` in place of each comma between the items, where theirs show decimals. */
function joinList(
  format: string,
  items: readonly string[],
  { join, mark }: { readonly join: 'and' | 'or'; readonly mark: string },
): string {
  const type = join === 'and' ? 'conjunction' : 'disjunction';
  const parts = new Intl.ListFormat(format, { type, style: 'long' }).formatToParts(items);
  const joined = parts
    .map((part) => (part.type === 'literal' ? part.value.replace(/^,/, mark) : part.value))
    .join('');
  return printable(format.startsWith('es') ? joined.replace(beforeAccentedI, ' e ') : joined);
}

function joinOwn(word: string, items: readonly string[], mark: string): string {
  const last = items.slice(-1);
  return items.length < 2 ? last.join('') : [items.slice(0, -1).join(`${mark} `), ...last].join(word);
}

function numberWriter(format: string, decimals: number | undefined): Intl.NumberFormat {
  return new Intl.NumberFormat(format, {
    numberingSystem: 'latn',
    minimumFractionDigits: decimals ?? 0,
    maximumFractionDigits: decimals ?? 2,
    // Else what rounds to zero from below prints as -0.
    signDisplay: 'negative',
  });
}
