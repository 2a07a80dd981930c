import { InternalError } from '../diagnostics/diagnostic.ts';
import { addDays, weekdays } from '../model/calendar-day.ts';
import type { Formatter } from '../model/locale.ts';
import type { OwnNames } from '../model/own-names.ts';
import { printable, tie } from './printable.ts';

type DateWriter = Pick<
  Formatter,
  'date' | 'weekdayDate' | 'monthDay' | 'shortDay' | 'shortDate' | 'weekday' | 'monthYear'
>;

/** Dates by the rules of a Unicode locale, in Western digits and the Gregorian calendar. */
export function writeDates(format: string): DateWriter {
  const write = (iso: string, parts: Intl.DateTimeFormatOptions): string =>
    printable(new Intl.DateTimeFormat(format, { ...westernCalendar, ...parts }).format(dayAt(iso)));
  const first = firstDays.get(new Intl.Locale(format).language) ?? '1';
  const day = (iso: string, parts: Intl.DateTimeFormatOptions, tied = tieDate): string =>
    withFirst(tied(write(wholeDay(iso), { day: 'numeric', ...parts })), first);
  const month = ({ year, month }: DateParts): string =>
    month === undefined ? year : tieDate(write(`${year}-${month}-01`, { year: 'numeric', month: 'long' }));
  return {
    date: (iso) => {
      const parts = readDate(iso);
      return parts.day === undefined ? month(parts) : day(iso, { year: 'numeric', month: 'long' });
    },
    weekdayDate: (iso) => {
      const date = { month: 'long', year: 'numeric' } as const;
      // The day of the week may stand on the line before.
      return day(iso, { weekday: 'long', ...date }).replace(/(?<=[,،])\u00a0/u, ' ');
    },
    monthDay: (iso) => day(iso, { month: 'long' }),
    shortDay: (iso) => day(iso, { month: 'short' }),
    shortDate: (iso) => day(iso, { month: 'short', year: 'numeric' }, tieDay),
    weekday: (name) => write(addDays(someMonday, weekdays.indexOf(name)), { weekday: 'short' }),
    monthYear: (iso) => month(readDate(iso)),
  };
}

/** Dates in the names and the order that `locale.yaml` gives, for a language that Unicode does not know. */
export function writeOwnDates(own: OwnNames): DateWriter {
  const untied = (iso: string, pattern: string, months: readonly string[]): string => {
    const at = dayAt(wholeDay(iso));
    return fill(pattern, {
      day: String(at.getUTCDate()),
      month: months[at.getUTCMonth()] ?? '',
      year: String(at.getUTCFullYear()),
    });
  };
  const first = own.first_day ?? '1';
  const write = (iso: string, pattern: string, months: readonly string[]): string =>
    withFirst(tieDate(untied(iso, pattern, months)), first);
  const weekdayOf = (iso: string): string => own.weekdays[(dayAt(iso).getUTCDay() + 6) % 7] ?? '';
  const month = ({ year, month }: DateParts): string =>
    month === undefined
      ? year
      : tieDate(
          fill(own.month_year, { year, month: own.months[dayAt(`${year}-${month}-01`).getUTCMonth()] ?? '' }),
        );
  return {
    date: (iso) => {
      const parts = readDate(iso);
      return parts.day === undefined ? month(parts) : write(iso, own.date, own.months);
    },
    weekdayDate: (iso) => {
      const date = write(iso, own.date, own.months);
      return fill(own.weekday_date, { weekday: weekdayOf(iso), date });
    },
    monthDay: (iso) => write(iso, own.month_day, own.months),
    shortDay: (iso) => write(iso, own.month_day, own.short_months),
    shortDate: (iso) => withFirst(tieDay(untied(iso, own.date, own.short_months)), first),
    weekday: (name) => own.short_weekdays[weekdays.indexOf(name)] ?? name,
    monthYear: (iso) => month(readDate(iso)),
  };
}

function fill(pattern: string, parts: Readonly<Record<string, string>>): string {
  return pattern.replace(/\{\{(\w+)\}\}/g, (_, name: string) => parts[name] ?? '');
}

/** The first of a month, where the language writes it as an ordinal; Unicode's patterns do not. */
const firstDays: ReadonlyMap<string, string> = new Map([
  ['fr', '1er'],
  ['pt', '1º'],
]);

const someMonday = '2024-01-01';
const westernCalendar = { timeZone: 'UTC', numberingSystem: 'latn', calendar: 'gregory' } as const;

interface DateParts {
  readonly year: string;
  readonly month: string | undefined;
  readonly day: string | undefined;
}

/** `iso` is year-month-day, year-month or year; what it does not say is not printed. Days are those of UTC. */
function readDate(iso: string): DateParts {
  const match = /^(\d{4})(?:-(\d{2})(?:-(\d{2}))?)?$/.exec(iso);
  if (match === null) throw new InternalError('a date to be printed is not year-month-day');
  const [, year = '', month, day] = match;
  return { year, month, day };
}

function wholeDay(iso: string): string {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(iso)) throw new InternalError('a day to be printed is not year-month-day');
  return iso;
}

function dayAt(iso: string): Date {
  const when = new Date(`${iso}T00:00:00Z`);
  // A day past the end of its month would be taken for one of the next.
  if (Number.isNaN(when.getTime()) || !when.toISOString().startsWith(iso))
    throw new InternalError('a date to be printed does not exist');
  return when;
}

/** A tied date with the first of a month as the language writes it. */
function withFirst(date: string, first: string): string {
  return date.replace(/(?<!\d)1(?=\u00a0\p{L})/u, first);
}

/** A date stands on one line, but in Korean, where it may be parted at any of its spaces. */
function tieDate(text: string): string {
  return /\p{Script=Hangul}/u.test(text) ? text : text.replaceAll(' ', tie);
}

/** Heads of narrow columns hold a date in lines: its day stays with what stands next to it. */
function tieDay(text: string): string {
  if (/\p{Script=Hangul}/u.test(text)) return text;
  return text
    .replace(/(?<!\d)(\d{1,2}) (?=\p{L})|(?<=\p{L}) (?=\d{1,2}(?!\d))/gu, `$1${tie}`)
    .replace(/(?<=\d{4}) (?=\p{L}\.)/gu, tie);
}
