/** Days are ISO texts (year-month-day) of the Gregorian calendar, from year 1 to 9999. No clock, no time zone. */

export const weekdays = [
  'monday',
  'tuesday',
  'wednesday',
  'thursday',
  'friday',
  'saturday',
  'sunday',
] as const;
export type Weekday = (typeof weekdays)[number];

const monthLengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

interface Day {
  readonly year: number;
  /** 1 to 12. */
  readonly month: number;
  readonly day: number;
}

function readDay(iso: string): Day {
  const [year = 0, month = 1, day = 1] = iso.split('-').map(Number);
  return { year, month, day };
}

function writeDay({ year, month, day }: Day): string {
  return `${String(year).padStart(4, '0')}-${twoDigits(month)}-${twoDigits(day)}`;
}

function twoDigits(value: number): string {
  return String(value).padStart(2, '0');
}

export function isLeapYear(year: number): boolean {
  return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
}

/** Days of a month; `month` from 1 to 12. */
export function monthLength(year: number, month: number): number {
  return (monthLengths[month - 1] ?? 0) + (month === 2 && isLeapYear(year) ? 1 : 0);
}

const daysInFourCenturies = 146_097;
const daysFromMarchOfYear0To1970 = 719_468;

/** Days since 1970-01-01; before it negative. Years are taken to begin in March, so that the leap day comes last. */
function dayNumber(iso: string): number {
  const { year, month, day } = readDay(iso);
  const shifted = month > 2 ? year : year - 1;
  const era = Math.floor(shifted / 400);
  const yearOfEra = shifted - era * 400;
  const dayOfYear = Math.floor((153 * ((month + 9) % 12) + 2) / 5) + day - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * daysInFourCenturies + dayOfEra - daysFromMarchOfYear0To1970;
}

function dayOfNumber(number: number): string {
  const sinceMarch = number + daysFromMarchOfYear0To1970;
  const era = Math.floor(sinceMarch / daysInFourCenturies);
  const dayOfEra = sinceMarch - era * daysInFourCenturies;
  const leaps =
    -Math.floor(dayOfEra / 1460) +
    Math.floor(dayOfEra / 36_524) -
    Math.floor(dayOfEra / (daysInFourCenturies - 1));
  const yearOfEra = Math.floor((dayOfEra + leaps) / 365);
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const marchMonth = Math.floor((5 * dayOfYear + 2) / 153);
  const month = marchMonth < 10 ? marchMonth + 3 : marchMonth - 9;
  return writeDay({
    year: era * 400 + yearOfEra + (month <= 2 ? 1 : 0),
    month,
    day: dayOfYear - Math.floor((153 * marchMonth + 2) / 5) + 1,
  });
}

export function addDays(iso: string, days: number): string {
  return dayOfNumber(dayNumber(iso) + days);
}

/** How many days the second lies after the first. */
export function daysBetween(from: string, to: string): number {
  return dayNumber(to) - dayNumber(from);
}

/** The same day so many months later, or earlier if negative; the last day of a shorter month. */
export function addMonths(iso: string, months: number): string {
  const from = readDay(iso);
  const index = from.year * 12 + from.month - 1 + months;
  const [year, month] = [Math.floor(index / 12), (((index % 12) + 12) % 12) + 1];
  return writeDay({ year, month, day: Math.min(from.day, monthLength(year, month)) });
}

export function weekdayOf(iso: string): Weekday {
  // 1970-01-01 was a Thursday.
  const index = (((dayNumber(iso) + 3) % 7) + 7) % 7;
  return weekdays[index] ?? 'monday';
}
