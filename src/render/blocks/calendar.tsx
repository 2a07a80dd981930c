import { Path, Svg, View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import { daysInWeek, stagesWithoutLabel } from '../../model/calendar.ts';
import type { Calendar } from '../../model/calendar.ts';
import { acrossField } from '../../pictures/draw-path.ts';
import { palette, rowDirection } from '../theme.ts';
import type { Theme } from '../theme.ts';
import type { Unit } from '../unit.ts';
import { CalendarDayCell, DayCell } from './calendar-day.tsx';
import { StageKey, WeekRibbon } from './calendar-ribbon.tsx';
import { ContinuedHead } from './continued-head.tsx';
import { Hairline, Words } from './primitives.tsx';
import { groupRows } from './unit-parts.ts';
import type { OfType, Place } from './unit-parts.ts';

/** A row of 77 with its ribbon of 18; a day with more to say makes it higher. */
const WEEK = 59;
const HEAD_BELOW = 3;
const KEY_GAP = 8;

interface CalendarProps {
  readonly theme: Theme;
  readonly calendar: Calendar;
}

function WeekdayHeads({ theme, calendar }: CalendarProps): ReactElement {
  return (
    <View style={{ width: theme.width, paddingBottom: HEAD_BELOW }}>
      <View sem={{ tag: 'TR' }} style={{ flexDirection: rowDirection(theme.direction) }}>
        {calendar.weekdays.map((label, column) => (
          <DayCell key={column} theme={theme} column={column} sem={{ tag: 'TH', scope: 'Column' }}>
            {(width) => (
              <Words
                theme={theme}
                text={label}
                role={theme.type.tableHead}
                width={width}
                sem={{ tag: 'P' }}
              />
            )}
          </DayCell>
        ))}
      </View>
    </View>
  );
}

/** Lines between the days, as high as the row. */
function DayLines({ theme }: { readonly theme: Theme }): ReactElement {
  const { width, direction, rules } = theme;
  const lines = Array.from({ length: daysInWeek - 1 }, (_, index) => {
    const x = acrossField({ width, direction }, ((index + 1) * width) / daysInWeek);
    return `M${x} 0L${x} 100`;
  });
  return (
    <View style={{ position: 'absolute', top: 0, bottom: 0, left: 0, width }}>
      <Svg width={width} height="100%" viewBox={`0 0 ${width} 100`} preserveAspectRatio="none">
        <Path d={lines.join('')} stroke={palette.line} strokeWidth={rules.row} />
      </Svg>
    </View>
  );
}

interface WeekProps extends CalendarProps {
  readonly week: number;
  /** Prefix of the ids of structure. */
  readonly id: string;
}

function Week({ theme, calendar, week, id }: WeekProps): ReactElement {
  const { width, direction, rules } = theme;
  const line = { direction, start: 0, width, thickness: rules.row };
  return (
    <View style={{ width }}>
      <DayLines theme={theme} />
      <Hairline {...line} />
      <View sem={{ tag: 'Table', id: `${id}.table` }} style={{ width }}>
        <View sem={{ tag: 'TR' }} style={{ flexDirection: rowDirection(direction), minHeight: WEEK }}>
          {(calendar.weeks[week] ?? []).map((day, column) => (
            <CalendarDayCell key={column} theme={theme} column={column} day={day} />
          ))}
        </View>
      </View>
      {calendar.stages.length === 0 ? null : (
        <WeekRibbon theme={theme} calendar={calendar} week={week} id={`${id}.stages`} />
      )}
      <View style={{ position: 'absolute', bottom: 0, left: 0, width, height: 0 }}>
        <Hairline {...line} />
      </View>
    </View>
  );
}

/** One unit a week; the weekdays stand again where it goes on. Stages whose name has no room are named above. */
export function calendarUnits(block: OfType<'calendar'>, place: Place): readonly Unit[] {
  const { theme, key } = place;
  const props: CalendarProps = { theme, calendar: block };
  const heads = <WeekdayHeads {...props} />;
  const base = { gapBefore: 0, keepWithNext: false, origin: block.origin };
  const head: Unit = {
    ...base,
    key: `${key}.head`,
    element: (
      <View sem={{ tag: 'Table', id: `${key}.table` }} style={{ width: theme.width }}>
        {heads}
      </View>
    ),
    keepWithNext: true,
    group: key,
  };
  const continuation = <ContinuedHead place={place}>{heads}</ContinuedHead>;
  const weeks = block.weeks.map((_, week): Unit => ({
    ...base,
    key: `${key}.week.${week}`,
    element: <Week {...props} week={week} id={key} />,
    continuation,
  }));
  const unnamed = stagesWithoutLabel(block);
  const names: readonly Unit[] =
    unnamed.length === 0
      ? []
      : [
          {
            ...base,
            key: `${key}.names`,
            element: <StageKey theme={theme} stages={unnamed} />,
            keepWithNext: true,
            group: key,
          },
        ];
  return [...names, names.length === 0 ? head : { ...head, gapBefore: KEY_GAP }, ...groupRows(weeks, key)];
}
