import { InternalError } from '../diagnostics/diagnostic.ts';
import type { Formatter, WeightUnits } from '../model/locale.ts';
import type { LocaleSettings } from '../model/locale-settings.ts';
import { kilogramsPerPound } from '../model/quantity.ts';

const tie = '\u00A0';

/** Numbers, dates and lists as readers of a language write them, always in Western digits. */
export function makeFormatter({ format, range_word: rangeWord }: LocaleSettings): Formatter {
  const writers = new Map<number | undefined, Intl.NumberFormat>();
  const range = (low: string, high: string): string => `${low} ${rangeWord}${tie}${high}`;
  const number = (value: number, decimals?: number): string => {
    if (!Number.isFinite(value)) throw new InternalError('a number to be printed is not finite');
    const known = writers.get(decimals) ?? numberWriter(format, decimals);
    writers.set(decimals, known);
    return printable(known.format(value));
  };
  const inUnits = (units: WeightUnits, write: (perUnit: number) => string): string => {
    const metric = `${write(1)}${tie}kg`;
    const customary = `${write(kilogramsPerPound)}${tie}lb`;
    return { metric, us: customary, both: `${customary} (${metric})` }[units];
  };
  return {
    number,
    range,
    date: (iso) => writeDate(format, iso, 'long'),
    monthYear: (iso) => writeDate(format, iso, 'month'),
    list: (items, join) => {
      const type = join === 'and' ? 'conjunction' : 'disjunction';
      return printable(new Intl.ListFormat(format, { type, style: 'long' }).format(items));
    },
    languageName: (tag) => new Intl.DisplayNames(format, { type: 'language' }).of(tag) ?? tag,
    weight: (kg, units) => inUnits(units, (perUnit) => number(kg / perUnit, 0)),
    weightRange: (low, high, units) =>
      inUnits(units, (perUnit) => range(number(low / perUnit, 0), number(high / perUnit, 0))),
  };
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

/** The typeface has no narrow no-break space (U+202F), which some languages put between groups of digits. */
function printable(text: string): string {
  return text.replace(/[\u202F\u2009]/g, tie);
}

/** `iso` is year-month-day, year-month or year; what it does not say is not printed. Days are those of UTC. */
function writeDate(format: string, iso: string, style: 'long' | 'month'): string {
  const match = /^(\d{4})(?:-(\d{2})(?:-(\d{2}))?)?$/.exec(iso);
  if (match === null) throw new InternalError('a date to be printed is not year-month-day');
  const [, year = '', month, day] = match;
  if (month === undefined) return year;
  const parts = {
    year: 'numeric',
    month: 'long',
    timeZone: 'UTC',
    numberingSystem: 'latn',
    calendar: 'gregory',
  } as const;
  const when = new Date(`${year}-${month}-${day ?? '01'}T00:00:00Z`);
  if (Number.isNaN(when.getTime())) throw new InternalError('a date to be printed does not exist');
  const whole = style === 'long' && day !== undefined;
  const written = new Intl.DateTimeFormat(format, { ...parts, ...(whole && { day: 'numeric' }) });
  const text = printable(written.format(when));
  // The day stays with what stands next to it.
  return whole ? text.replace(/^(\d+) (?=\S)|(?<=^\p{L}+) (?=\d)/u, `$1${tie}`) : text;
}
