import { addDays, daysBetween, weekdayOf, weekdays } from '../../model/calendar-day.ts';
import { daysInWeek, ribbonPatterns } from '../../model/calendar.ts';
import type { Calendar, CalendarDay, CalendarStage } from '../../model/calendar.ts';
import { plainContent, requiredLabel } from './build-inlines.ts';
import type { MarkupElement } from './element.ts';
import { childrenNamed, choiceOf, flagOf, refuse, requiredText } from './read-attributes.ts';

const mostWeeks = 8;
const mostNotes = 2;

interface Span {
  readonly from: string;
  readonly to: string;
}

/**
 * Lays days out in weeks that begin with `first-weekday` (monday to sunday), and finds the stage of each. Days come in
 * order, none left out; stages do not overlap, and may reach beyond the days.
 */
export function buildCalendar(element: MarkupElement): Calendar {
  const heads = childrenNamed(element, 'weekday').map((head) => requiredText(head, 'label'));
  if (heads.length !== daysInWeek) refuse(element, '<calendar> takes seven <weekday>');
  const dates = readDates(element);
  const spans = childrenNamed(element, 'stage').map(readSpan);
  checkStages(element, spans, dates);
  const days = childrenNamed(element, 'day').map((day) => buildDay(day, spans));
  const first = weekdays.indexOf(choiceOf(element, 'first-weekday', weekdays));
  const start = weekdays.indexOf(weekdayOf(dates[0] ?? ''));
  const weeks = inWeeks(days, (start - first + daysInWeek) % daysInWeek);
  if (weeks.length > mostWeeks) refuse(element, `<calendar> reaches over more than ${mostWeeks} weeks`);
  return {
    type: 'calendar',
    weekdays: heads,
    weeks,
    stages: childrenNamed(element, 'stage').map(buildStage),
    listed: requiredText(element, 'listed'),
    origin: element.origin,
  };
}

/** The days, with as many empty ones before and after them as make the weeks whole. */
function inWeeks(days: readonly CalendarDay[], before: number): Calendar['weeks'] {
  const count = Math.ceil((before + days.length) / daysInWeek);
  return Array.from({ length: count }, (_, week) =>
    Array.from({ length: daysInWeek }, (_, column) => days[week * daysInWeek + column - before] ?? null),
  );
}

function readDates(element: MarkupElement): readonly string[] {
  const days = childrenNamed(element, 'day');
  if (days.length === 0) refuse(element, '<calendar> has no <day>');
  const dates = days.map((day) => dateOf(day, 'date'));
  days.forEach((day, index) => {
    const before = dates[index - 1];
    if (before !== undefined && dates[index] !== addDays(before, 1))
      refuse(day, 'a <day> is not the one after the <day> before it');
  });
  return dates;
}

function dateOf(element: MarkupElement, name: string): string {
  const date = requiredText(element, name);
  if (!/^\d{4}-\d{2}-\d{2}$/.test(date) || addDays(date, 0) !== date)
    refuse(element, `${name} of <${element.name}> is not a date (2026-12-31)`);
  return date;
}

function readSpan(element: MarkupElement): Span {
  const span = { from: dateOf(element, 'from'), to: dateOf(element, 'to') };
  if (daysBetween(span.from, span.to) < 0) refuse(element, 'a <stage> ends before it begins');
  return span;
}

function checkStages(element: MarkupElement, spans: readonly Span[], dates: readonly string[]): void {
  const [first = '', last = ''] = [dates[0], dates.at(-1)];
  childrenNamed(element, 'stage').forEach((stage, index, stages) => {
    const span = spans[index];
    const before = spans[index - 1];
    if (span === undefined) return;
    if (daysBetween(span.from, last) < 0 || daysBetween(first, span.to) < 0)
      refuse(stage, 'a <stage> has no day in its <calendar>');
    if (before === undefined) return;
    if (daysBetween(before.to, span.from) <= 0)
      refuse(stage, 'a <stage> begins before the one before it has ended');
    if (stage.attributes['pattern'] === stages[index - 1]?.attributes['pattern'])
      refuse(stage, 'a <stage> has the pattern of the one before it');
  });
}

function buildStage(element: MarkupElement): CalendarStage {
  return {
    pattern: choiceOf(element, 'pattern', ribbonPatterns),
    label: requiredLabel(element, 'label'),
    dated: requiredLabel(element, 'dated'),
    origin: element.origin,
  };
}

function buildDay(element: MarkupElement, spans: readonly Span[]): CalendarDay {
  const notes = childrenNamed(element, 'note').map(plainContent);
  if (notes.length > mostNotes) refuse(element, `a <day> has more than ${mostNotes} <note>`);
  const date = dateOf(element, 'date');
  const stage = spans.findIndex(({ from, to }) => daysBetween(from, date) >= 0 && daysBetween(date, to) >= 0);
  return {
    label: requiredText(element, 'label'),
    dated: requiredText(element, 'dated'),
    comesIn: flagOf(element, 'comes-in'),
    notes,
    events: childrenNamed(element, 'event').map((event) => ({
      words: plainContent(event),
      comesIn: flagOf(event, 'comes-in'),
    })),
    ...(stage === -1 ? {} : { stage }),
    origin: element.origin,
  };
}
