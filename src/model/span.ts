import { addDays, addMonths } from './calendar-day.ts';

/** A length of time as the clinic wrote it, for example 2 weeks. */
export interface Span {
  readonly count: number;
  readonly unit: SpanUnit;
}

export const spanUnits = ['day', 'week', 'month', 'year'] as const;
export type SpanUnit = (typeof spanUnits)[number];

/** The longest that is not taken for a slip of the pen. */
export const longestSpan: Readonly<Record<SpanUnit, number>> = { day: 1000, week: 260, month: 120, year: 50 };

const spanForm = /^([1-9]\d{0,3}) (day|week|month|year)s?$/;

/** A span in the written form, of whatever length; undefined in another form. */
export function readSpanForm(text: string): Span | undefined {
  const match = spanForm.exec(text);
  const unit = spanUnits.find((one) => one === match?.[2]);
  return match === null || unit === undefined ? undefined : { count: Number(match[1]), unit };
}

/** A span in the written form and within bounds: 1 day to 50 years. */
export function parseSpan(text: string): Span | undefined {
  const span = readSpanForm(text);
  return span !== undefined && span.count <= longestSpan[span.unit] ? span : undefined;
}

/** The day (ISO) that lies `times` spans after another; months and years end on the last day of a shorter month. */
export function addSpan(iso: string, { count, unit }: Span, times = 1): string {
  const total = count * times;
  switch (unit) {
    case 'day':
      return addDays(iso, total);
    case 'week':
      return addDays(iso, total * 7);
    case 'month':
      return addMonths(iso, total);
    case 'year':
      return addMonths(iso, total * 12);
  }
}
