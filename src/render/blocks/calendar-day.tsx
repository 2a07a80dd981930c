import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import { daysInWeek } from '../../model/calendar.ts';
import type { CalendarDay } from '../../model/calendar.ts';
import { textWidth } from '../measure-text.ts';
import { leafPath } from '../../pictures/draw-path.ts';
import { gapStart, padding, palette, rowDirection } from '../theme.ts';
import type { Theme } from '../theme.ts';
import type { Semantics } from '../unit.ts';
import { Drawing, Words } from './primitives.tsx';

/** White before the words of a day, beside the line or, in the first column, at the edge. */
const START = 5;
const FIRST_START = 2;
const END = 2;
const TOP = 5;
const AFTER_DATE = 2;

/** The black leaf round the date of a day to come in: white within it, and how far it hangs before the words. */
const tag = { side: 5, above: 1, corner: 6, hang: 2 } as const;

interface DayCellProps {
  readonly theme: Theme;
  readonly column: number;
  readonly sem: Semantics;
  /** Given the width that words may have. */
  readonly children: (width: number) => ReactElement | null;
}

/** A cell of the calendar with its words in their place. */
export function DayCell({ theme, column, sem, children }: DayCellProps): ReactElement {
  const whole = theme.width / daysInWeek;
  const start = column === 0 ? FIRST_START : START;
  const width = whole - start - END;
  return (
    <View sem={sem} style={{ width: whole, ...padding(theme.direction, { start, end: END }) }}>
      {children(width)}
    </View>
  );
}

interface DateProps {
  readonly theme: Theme;
  readonly day: CalendarDay;
  readonly width: number;
}

/** A day to come in has its date in a black leaf; its baseline is that of the other dates. */
function DateTag({ theme, day, width }: DateProps): ReactElement {
  const { direction, type } = theme;
  const role = type.tableHead;
  const words = Math.min(Math.ceil(textWidth(day.label, role)) + 1, width);
  const size = { width: words + 2 * tag.side, height: role.lineHeight + 2 * tag.above };
  const path = leafPath({ width: size.width, direction }, { start: 0, top: 0, ...size }, tag.corner);
  return (
    <View style={{ width, flexDirection: rowDirection(direction) }}>
      <View style={{ ...size, marginTop: -tag.above, ...gapStart(direction, -tag.hang) }}>
        <View style={{ position: 'absolute', top: 0, left: 0 }}>
          <Drawing mark={{ ...size, strokes: [{ path, fill: palette.ink }] }} />
        </View>
        <View style={{ position: 'absolute', top: tag.above, left: tag.side }}>
          <Words
            theme={theme}
            text={day.label}
            role={role}
            width={words}
            color={palette.white}
            sem={{ tag: 'P' }}
          />
        </View>
      </View>
    </View>
  );
}

function Day({ theme, day, width }: DateProps): ReactElement {
  const { type } = theme;
  const role = day.comesIn ? { ...type.dayNote, weight: 600 as const } : type.dayNote;
  const after = day.comesIn ? AFTER_DATE - tag.above : AFTER_DATE;
  return (
    <View style={{ width, paddingTop: TOP, paddingBottom: AFTER_DATE }}>
      {day.comesIn ? (
        <DateTag theme={theme} day={day} width={width} />
      ) : (
        <Words theme={theme} text={day.label} role={type.tableHead} width={width} sem={{ tag: 'P' }} />
      )}
      {day.notes.map((note, index) => (
        <View key={index} style={{ marginTop: index === 0 ? after : 0 }}>
          <Words theme={theme} text={note} role={role} width={width} setting="balanced" sem={{ tag: 'P' }} />
        </View>
      ))}
    </View>
  );
}

interface CalendarDayProps {
  readonly theme: Theme;
  readonly column: number;
  /** Null outside the calendar: an empty cell. */
  readonly day: CalendarDay | null;
}

export function CalendarDayCell({ theme, column, day }: CalendarDayProps): ReactElement {
  return (
    <DayCell theme={theme} column={column} sem={{ tag: 'TD' }}>
      {(width) => (day === null ? null : <Day theme={theme} day={day} width={width} />)}
    </DayCell>
  );
}
