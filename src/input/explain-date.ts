import { isPartialDate, isRealDate } from '../model/scalars.ts';
import type { Explanation } from './explain-quantity.ts';

/** Why a date is refused. For a date of birth nothing of what was written is said again. */
export function explainDate(value: unknown, role: 'date' | 'birth-date' | 'partial-date'): Explanation {
  const form = role === 'partial-date' ? 'a year, year-month or year-month-day' : 'year-month-day';
  const sample = role === 'partial-date' ? '2019, 2019-03 or 2019-03-31' : '2026-12-31';
  const general = `Write ${form}, for example ${sample}.`;
  const code = 'CASE_BAD_DATE';
  if (typeof value !== 'string') return { code, message: `expected a date written ${form}`, hint: general };
  if (/^\d{4}-\d{2}(-\d{2})?$/.test(value))
    return { code, message: 'that date does not exist', hint: 'Check the day and the month.' };
  const meant = role === 'birth-date' ? undefined : correctDate(value, role);
  const hint = meant === undefined ? general : `Write ${meant}.`;
  return { code, message: `expected a date written ${form}`, hint };
}

/** The date that was meant, where only one reading is possible. */
function correctDate(text: string, role: 'date' | 'partial-date'): string | undefined {
  const [, year, ...rest] = /^(\d{4})[-/.](\d{1,2})(?:[-/.](\d{1,2}))?$/.exec(text) ?? [];
  const written = year === undefined ? dayAndMonth(text) : join([year, ...rest].filter(Boolean));
  if (written === undefined) return undefined;
  return (role === 'date' ? isRealDate(written) : isPartialDate(written)) ? written : undefined;
}

function dayAndMonth(text: string): string | undefined {
  const match = /^(\d{1,2})[-/. ](\d{1,2})[-/. ](\d{4})$/.exec(text);
  if (match === null) return undefined;
  const [first = '', second = '', year = ''] = match.slice(1);
  // 03/04/2026 is March or April, depending on the country; 31/12/2026 is clear.
  if (Number(first) > 12) return join([year, second, first]);
  return Number(second) > 12 ? join([year, first, second]) : undefined;
}

function join(parts: readonly string[]): string {
  return parts.map((part) => part.padStart(2, '0')).join('-');
}
