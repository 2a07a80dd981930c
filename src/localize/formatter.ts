import { InternalError } from '../diagnostics/diagnostic.ts';
import { addDays, weekdays } from '../model/calendar-day.ts';
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
    weekdayDate: (iso) => writeDay(format, iso, { weekday: 'long', month: 'long', year: 'numeric' }),
    monthDay: (iso) => writeDay(format, iso, { month: 'long' }),
    shortDay: (iso) => writeDay(format, iso, { month: 'short' }),
    shortDate: (iso) => writeDay(format, iso, { month: 'short', year: 'numeric' }),
    weekday: (day) =>
      printable(
        new Intl.DateTimeFormat(format, { weekday: 'short', timeZone: 'UTC' }).format(
          dayAt(addDays(someMonday, weekdays.indexOf(day))),
        ),
      ),
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

const someMonday = '2024-01-01';

/** `iso` is year-month-day; the day of the month comes with whatever parts are asked for. */
function writeDay(format: string, iso: string, parts: Intl.DateTimeFormatOptions): string {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(iso)) throw new InternalError('a day to be printed is not year-month-day');
  const written = new Intl.DateTimeFormat(format, { ...westernCalendar, day: 'numeric', ...parts });
  return tieDay(printable(written.format(dayAt(iso))));
}

/** The day stays with what stands next to it. */
function tieDay(text: string): string {
  return text.replace(/(?<!\d)(\d{1,2}) (?=\p{L})|(?<=\p{L}) (?=\d{1,2}(?!\d))/gu, `$1${tie}`);
}

function dayAt(iso: string): Date {
  const when = new Date(`${iso}T00:00:00Z`);
  // A day past the end of its month would be taken for one of the next.
  if (Number.isNaN(when.getTime()) || !when.toISOString().startsWith(iso))
    throw new InternalError('a date to be printed does not exist');
  return when;
}

const westernCalendar = { timeZone: 'UTC', numberingSystem: 'latn', calendar: 'gregory' } as const;

/** `iso` is year-month-day, year-month or year; what it does not say is not printed. Days are those of UTC. */
function writeDate(format: string, iso: string, style: 'long' | 'month'): string {
  const match = /^(\d{4})(?:-(\d{2})(?:-(\d{2}))?)?$/.exec(iso);
  if (match === null) throw new InternalError('a date to be printed is not year-month-day');
  const [, year = '', month, day] = match;
  if (month === undefined) return year;
  const parts = { ...westernCalendar, year: 'numeric', month: 'long' } as const;
  const when = dayAt(`${year}-${month}-${day ?? '01'}`);
  const whole = style === 'long' && day !== undefined;
  const written = new Intl.DateTimeFormat(format, { ...parts, ...(whole && { day: 'numeric' }) });
  const text = printable(written.format(when));
  return whole ? tieDay(text) : text;
}
