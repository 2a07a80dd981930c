import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { TalkTable } from '../../model/care-blocks.ts';
import { gapStart, palette } from '../theme.ts';
import type { Theme } from '../theme.ts';
import type { Unit } from '../unit.ts';
import { Hairline, Paragraphs, proseRole } from './primitives.tsx';
import { BoxCell, TickRow, columnWidth, tickTableUnits } from './tick-table.tsx';
import type { TickColumn } from './tick-table.tsx';
import type { OfType, Place } from './unit-parts.ts';

const BOX = 16;
const BOX_COLUMN = 60;
/** The line for initials and the white before it. */
const INITIALS = 66;
const INITIALS_GAP = 12;
const ROW = 30;
const PADDING = 5;
const AFTER_STATEMENT = 12;
/** White between the paragraphs of a point; of many, more, so that each is seen to be one. */
const BETWEEN_LINES = 2;
const BETWEEN_MANY = 5;
const MANY = 3;
/** Room for a pen above the line for initials, in a row of one line. */
const PEN = 24;
const LINE_FROM_TOP = 20;

function columnsOf({ columns }: TalkTable, theme: Theme): readonly TickColumn[] {
  const box = columnWidth(columns.box, theme, { least: BOX_COLUMN, white: 0 });
  const line = columnWidth(columns.line, theme, { least: INITIALS + INITIALS_GAP, white: INITIALS_GAP });
  return [
    { label: '', width: theme.width - box - line, align: 'start' },
    { label: columns.box, width: box, align: 'center' },
    { label: columns.line, width: line, start: INITIALS_GAP, align: 'start' },
  ];
}

interface RowProps {
  readonly theme: Theme;
  readonly columns: readonly TickColumn[];
  readonly statement: TalkTable['statements'][number];
  readonly lined: boolean;
}

function Row({ theme, columns, statement, lined }: RowProps): ReactElement {
  const { direction } = theme;
  const [first = 0, box = 0, line = 0] = columns.map(({ width }) => width);
  return (
    <TickRow theme={theme} lined={lined} least={ROW}>
      <View sem={{ tag: 'TH', scope: 'Row' }} style={{ width: first, paddingVertical: PADDING }}>
        <Paragraphs
          theme={theme}
          paragraphs={statement}
          roleOf={proseRole}
          width={first}
          measure={first - AFTER_STATEMENT}
          gap={statement.length < MANY ? BETWEEN_LINES : BETWEEN_MANY}
        />
      </View>
      <BoxCell theme={theme} width={box} size={BOX} />
      <View
        sem={{ tag: 'TD' }}
        style={{ width: line - INITIALS_GAP, height: PEN, ...gapStart(direction, INITIALS_GAP) }}
      >
        <Hairline
          direction={direction}
          start={0}
          width={line - INITIALS_GAP}
          top={LINE_FROM_TOP}
          thickness={0.6}
          color={palette.ink}
        />
      </View>
    </TickRow>
  );
}

/** What was talked about, point by point: explained, and initialled by the one who heard it. */
export function talkUnits(block: OfType<'talk'>, place: Place): readonly Unit[] {
  const { theme } = place;
  const columns = columnsOf(block, theme);
  const rows = block.statements.map((statement, index) => ({
    origin: statement[0]?.origin ?? block.origin,
    element: <Row theme={theme} columns={columns} statement={statement} lined={index > 0} />,
  }));
  return tickTableUnits({ origin: block.origin, columns, rows }, place);
}
