import type { ReactElement } from 'react';
import { daysInWeek, ribbonPieces, saidOfStage, stagesWithoutLabel } from '../../model/calendar.ts';
import type { Calendar, CalendarDay, RibbonPiece, SaidOfStage } from '../../model/calendar.ts';
import type { Mark } from '../../pictures/marks.ts';
import { drawBeginning, drawRibbon, ribbonSizes } from '../../pictures/ribbon.ts';
import { MarkPicture, StrokeOf } from '../picture.tsx';
import type { OfType, Place } from '../place.ts';
import { LabelWords } from '../words.tsx';
import { ColumnHeads, TableOf } from './table-parts.tsx';
import { Words } from '../whole-words.tsx';

interface CalendarProps {
  readonly calendar: Calendar;
  readonly place: Place;
}

/** A day that says no more than its number: a narrow page leaves it out. */
function isQuiet({ label, notes, comesIn }: CalendarDay): boolean {
  return notes.length === 0 && !comesIn && /^\d+$/.test(label);
}

/** Days of a week that a narrow page shows: those that say something, else the first, so that the week has its date. */
function shownDays(days: Calendar['weeks'][number]): ReadonlySet<CalendarDay> {
  const there = days.filter((day) => day !== null);
  const telling = there.filter((day) => !isQuiet(day));
  return new Set(telling.length > 0 ? telling : there.slice(0, 1));
}

interface DayProps {
  readonly day: CalendarDay | null;
  readonly weekday: string;
  readonly quiet: boolean;
}

function Day({ day, weekday, quiet }: DayProps): ReactElement {
  if (day === null) return <td role="cell" className="quiet" />;
  const looks = [quiet ? 'quiet' : '', day.comesIn ? 'comes-in' : ''].filter((look) => look !== '');
  return (
    <td role="cell" data-label={weekday} {...(looks.length === 0 ? {} : { className: looks.join(' ') })}>
      <p className="date">
        <Words text={day.label} />
      </p>
      {day.notes.map((note, index) => (
        <p key={index} className="note">
          <Words text={note} />
        </p>
      ))}
    </td>
  );
}

const SAMPLE = { width: 40, height: 14 } as const;
/** Width of a day in the drawing of a ribbon; the page shows it as wide as its days are. */
const DAY = 70;

interface DrawnProps {
  readonly mark: Mark;
  readonly said: SaidOfStage | undefined;
  readonly place: Place;
}

/** A part of the ribbon; without words it is passed over. */
function Drawn({ mark: { width, strokes }, said, place }: DrawnProps): ReactElement {
  const id = place.nextId();
  const align = place.tree.direction === 'rtl' ? 'xMaxYMid' : 'xMinYMid';
  const named =
    said === undefined
      ? ({ 'aria-hidden': true } as const)
      : ({ role: 'img', 'aria-labelledby': id, lang: said.language } as const);
  return (
    <svg
      viewBox={`0 0 ${String(width)} ${String(ribbonSizes.height)}`}
      preserveAspectRatio={`${align} slice`}
      focusable="false"
      {...named}
    >
      {said === undefined ? null : <title id={id}>{said.text}</title>}
      {strokes.map((stroke, index) => (
        <StrokeOf key={index} stroke={stroke} />
      ))}
    </svg>
  );
}

/**
 * Pattern and, where there is room, the label on a white plate. It is said once, with its dates, where it begins: dates in
 * another language than the name are said by the line at which it begins.
 */
function Piece({ piece, place }: { readonly piece: RibbonPiece; readonly place: Place }): ReactElement {
  const { stage, labelled, days } = piece;
  const width = days * DAY;
  const { direction } = place.tree;
  const [first, ...others] = piece.begins ? saidOfStage(stage) : [];
  const begins = piece.begins && others.length === 0;
  return (
    <td role="cell" colSpan={days} className={`piece days-${String(days)}`}>
      <Drawn
        mark={drawRibbon({ pattern: stage.pattern, width, begins }, direction)}
        said={first}
        place={place}
      />
      {others.map((said, index) => (
        <Drawn key={index} mark={drawBeginning(width, direction)} said={said} place={place} />
      ))}
      {labelled ? (
        <span aria-hidden="true">
          <LabelWords label={stage.label} place={place} />
        </span>
      ) : null}
    </td>
  );
}

/** The ribbon at the foot of a week, with free cells where a day has no stage. */
function Ribbon({ calendar, week, place }: CalendarProps & { readonly week: number }): ReactElement | null {
  const pieces = ribbonPieces(calendar, week);
  if (pieces.length === 0) return null;
  const starts = pieces.map(({ column }) => column);
  const ends = [0, ...pieces.map(({ column, days }) => column + days)];
  const gap = (index: number): number => (starts[index] ?? daysInWeek) - (ends[index] ?? daysInWeek);
  const free = (index: number): ReactElement | null =>
    gap(index) > 0 ? (
      <td
        key={`free ${String(index)}`}
        role="cell"
        colSpan={gap(index)}
        className={`days-${String(gap(index))}`}
      />
    ) : null;
  return (
    <tr role="row" className="ribbon">
      {pieces.flatMap((piece, index) => [free(index), <Piece key={index} piece={piece} place={place} />])}
      {free(pieces.length)}
    </tr>
  );
}

/** Stages too short for their label anywhere, each with a sample of its ribbon and its dates. */
function StageKey({ calendar, place }: CalendarProps): ReactElement | null {
  const stages = stagesWithoutLabel(calendar);
  if (stages.length === 0) return null;
  return (
    <ul role="list" className="stage-key">
      {stages.map(({ pattern, dated }, index) => (
        <li key={index}>
          <MarkPicture mark={drawRibbon({ pattern, begins: false, ...SAMPLE }, place.tree.direction)} />
          <p>
            <LabelWords label={dated} place={place} />
          </p>
        </li>
      ))}
    </ul>
  );
}

/** Weeks of days with what to eat at the foot of each. A narrow page lists the days on which something happens. */
export function calendarBlock(calendar: OfType<'calendar'>, place: Place): ReactElement {
  const shown = new Set(calendar.weeks.flatMap((days) => [...shownDays(days)]));
  const isShown = (day: CalendarDay | null): boolean => day !== null && shown.has(day);
  return (
    <div className="calendar-box">
      <StageKey calendar={calendar} place={place} />
      <TableOf caption={place.title} className="calendar">
        <ColumnHeads labels={calendar.weekdays} />
        {calendar.weeks.map((days, week) => (
          <tbody key={week} role="rowgroup">
            <tr role="row" className="week">
              {days.map((day, column) => (
                <Day key={column} day={day} weekday={calendar.weekdays[column] ?? ''} quiet={!isShown(day)} />
              ))}
            </tr>
            <Ribbon calendar={calendar} week={week} place={place} />
          </tbody>
        ))}
      </TableOf>
    </div>
  );
}
