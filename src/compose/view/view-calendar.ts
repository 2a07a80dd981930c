import type { AftercarePlan, DatedRule } from '../../model/aftercare-plan.ts';
import { addDays, weekdayOf, weekdays } from '../../model/calendar-day.ts';
import { daysInWeek, ribbonPatterns } from '../../model/calendar.ts';
import { planOf, sayPeriod, upperFirst, writtenAt } from './say-aftercare.ts';
import { chosenOption } from './scene.ts';
import type { Scene } from './scene.ts';
import { flag, group, list, markup, text } from './shape.ts';
import type { Viewed } from './shape.ts';
import { asMarkup } from './words.ts';

export const calendarShape = group({
  /** How to read it, as a calendar and where its days are listed. */
  intro: text,
  listed: text,
  firstWeekday: text,
  weekdays: list(text),
  stages: list(group({ pattern: text, label: markup, from: text, to: text, dated: markup })),
  days: list(
    group({
      date: text,
      label: text,
      dated: text,
      comesIn: flag,
      notes: list(text),
      events: list(group({ words: text, comesIn: flag })),
    }),
  ),
});
export type CalendarView = Viewed<typeof calendarShape>;

/** The day on which six weeks are over; the calendar goes on to the end of that week. */
const sixWeeks = 42;
const mostNotes = 2;
/** What happens at the clinic. */
const inPerson: ReadonlySet<string> = new Set(['operation', 'first_dose', 'in-person', 'blood_test']);

/** The first six weeks: what happens on each day, and the stage of eating; none where nothing does after day 0. */
export function viewCalendars(scene: Scene): readonly CalendarView[] {
  const calendar = viewCalendar(scene);
  const isEmpty =
    calendar.stages.length < 2 && calendar.days.slice(1).every(({ notes }) => notes.length === 0);
  return isEmpty ? [] : [calendar];
}

function viewCalendar(scene: Scene): CalendarView {
  const plan = planOf(scene);
  const first = weekdays.indexOf(scene.locale.firstWeekday);
  const over = weekdays.indexOf(weekdayOf(addDays(plan.date, sixWeeks)));
  const rest = daysInWeek - 1 - ((over - first + daysInWeek) % daysInWeek);
  const days = Array.from({ length: sixWeeks + 1 + rest }, (_, index) => addDays(plan.date, index));
  return {
    ...explained(scene, days),
    firstWeekday: scene.locale.firstWeekday,
    weekdays: Array.from({ length: daysInWeek }, (_, index) =>
      scene.format.weekday(weekdays[(first + index) % daysInWeek] ?? 'monday'),
    ),
    stages: stagesOf(scene, days.at(-1) ?? plan.date),
    days: days.map((date, index) => ({
      date,
      label:
        index === 0 || date.endsWith('-01') ? scene.format.shortDay(date) : String(Number(date.slice(8))),
      dated: upperFirst(scene.format.weekdayDate(date)),
      comesIn: comesIn(plan, date),
      ...wordsOf(scene, date),
    })),
  };
}

function comesIn({ date: dayZero, visits, tests }: AftercarePlan, date: string): boolean {
  const inPerson = visits.some((visit) => visit.date === date && visit.way === 'in-person');
  return date === dayZero || inPerson || tests.some(({ due }) => due.some((one) => one.date === date));
}

/** Stages that have a day before the calendar ends; a stage of what the clinic calls normal goes on after it. */
function stagesOf(scene: Scene, end: string): CalendarView['stages'] {
  return planOf(scene)
    .diet.filter(({ starts }) => starts <= end)
    .map(({ entry, starts, lastDay: last }, index) => {
      const { words } = scene;
      const name = words.free(writtenAt(scene, 'diet', entry).name);
      const period = sayPeriod(scene, starts, last);
      return {
        pattern: ribbonPatterns[index % ribbonPatterns.length] ?? 'dots',
        label: name,
        from: starts,
        to: last ?? end,
        dated: period === '' ? name : words.say('common.labelled', { label: name, text: asMarkup(period) }),
      };
    });
}

/** Visits first, then what changes on that day; the notes, where there is no room for all, say to see the lists. */
function wordsOf(scene: Scene, date: string): Pick<CalendarView['days'][number], 'notes' | 'events'> {
  const keys = keysOn(scene, date);
  const say = (key: string): string => sayShort(scene, key);
  const events = keys.map((key) => ({ words: say(key), comesIn: inPerson.has(key) }));
  return { notes: notesOf(keys).map(say), events };
}

function sayShort({ words }: Scene, key: string): string {
  return words.plain(`aftercare.short.${key}`);
}

function keysOn(scene: Scene, date: string): readonly string[] {
  return [...eventsOn(scene, date), ...changesOn(planOf(scene), date)];
}

function notesOf(keys: readonly string[]): readonly string[] {
  return keys.length > mostNotes ? [...keys.slice(0, mostNotes - 1), 'more'] : keys;
}

/** Only words that really stand there are explained: a calendar may have no room for lifting, or nothing new at all. */
function explained(scene: Scene, days: readonly string[]): Pick<CalendarView, 'intro' | 'listed'> {
  const { words } = scene;
  const changes = days.flatMap((date) => changesOn(planOf(scene), date));
  const notes = days.flatMap((date) => notesOf(keysOn(scene, date)));
  // Of several words for a change one stands for all.
  const marks = [changes.find((key) => notes.includes(key)), notes.find((key) => key === 'more')].flatMap(
    (key) => (key === undefined ? [] : [sayShort(scene, key)]),
  );
  const say = (name: string, ...shown: readonly string[]): string =>
    words.plain(`homecare.calendar.${name}`, { mark: shown[0] ?? '', more: shown[1] ?? '' });
  const [change] = changes;
  return {
    intro: say(['intro_none', 'intro_one', 'intro'][marks.length] ?? 'intro', ...marks),
    listed: change === undefined ? say('listed_none') : say('listed', sayShort(scene, change)),
  };
}

function eventsOn(scene: Scene, date: string): readonly string[] {
  const { date: dayZero, visits, tests } = planOf(scene);
  const { kind } = chosenOption(scene).column;
  const isTreated = kind === 'operation' || kind === 'endoscopic';
  return [
    ...(date === dayZero ? [isTreated ? 'operation' : 'first_dose'] : []),
    ...visits.filter((visit) => visit.date === date).map(({ way }) => way),
    ...(tests.some(({ due }) => due.some((one) => one.date === date)) ? ['blood_test'] : []),
  ];
}

/** Topics of which a rule begins or is over on that day, each once. */
function changesOn(
  { date: dayZero, activity, medicines, supplements }: AftercarePlan,
  date: string,
): readonly string[] {
  if (date === dayZero) return [];
  const turns = ({ starts, lastDay: last }: Pick<DatedRule, 'starts' | 'lastDay'>): boolean =>
    starts === date || (last !== null && addDays(last, 1) === date);
  return [
    ...new Set([
      ...activity.filter(turns).map(({ topic }) => topic as string),
      ...(medicines.some(turns) ? ['medicines'] : []),
      ...(supplements.some(turns) ? ['vitamins'] : []),
    ]),
  ];
}
