import type { Calendar, CalendarDay } from '../model/calendar.ts';
import type { Inline, Paragraph, Strip, StripRow } from '../model/document.ts';
import { listComma } from '../model/list-marks.ts';
import { labelRuns } from '../model/text-piece.ts';

/** The days of a calendar on which something happens, changes or a stage begins, a row each. */
export function listDays(calendar: Calendar): Strip {
  const days = calendar.weeks.flat().filter((day) => day !== null);
  const rows = days.flatMap((day, index) => rowOf(calendar, day, days[index - 1]));
  return { type: 'strip', layout: 'text', rows, origin: calendar.origin };
}

function rowOf({ stages }: Calendar, day: CalendarDay, before: CalendarDay | undefined): readonly StripRow[] {
  const stage = day.stage === undefined || day.stage === before?.stage ? undefined : stages[day.stage];
  const words = [
    ...(day.events.length === 0 ? [] : [line(day, day.events.flatMap(eventRuns))]),
    ...(stage === undefined ? [] : [line(day, labelRuns(stage.dated))]),
  ];
  return words.length === 0 ? [] : [{ name: day.dated, words, origin: day.origin }];
}

/** What the person comes in for is bold. */
function eventRuns(
  { words, comesIn }: CalendarDay['events'][number],
  index: number,
  events: CalendarDay['events'],
): readonly Inline[] {
  const run: Inline = { type: 'text', value: words, ...(comesIn ? { bold: true } : {}) };
  const before = events[index - 1];
  return before === undefined ? [run] : [{ type: 'text', value: listComma(before.words) }, run];
}

function line({ origin }: CalendarDay, inlines: readonly Inline[]): Paragraph {
  return { type: 'paragraph', role: 'body', inlines, origin };
}
