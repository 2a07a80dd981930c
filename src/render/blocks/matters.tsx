import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { Paragraph } from '../../model/document.ts';
import { palette } from '../theme.ts';
import type { Theme } from '../theme.ts';
import type { Unit } from '../unit.ts';
import { Hairline, Words, stripRole } from './primitives.tsx';
import { BoxCell, TickRow, tickTableUnits } from './tick-table.tsx';
import type { TickColumn } from './tick-table.tsx';
import type { OfType, Place } from './unit-parts.ts';

const COLUMN = 62;
const BOX = 17;
const ROW = 32;
const BLANK_ROW = 34;
/** The writing line of a blank row, from its top. */
const WRITING_LINE = 27;
const AFTER_STATEMENT = 16;

interface RowProps {
  readonly theme: Theme;
  readonly columns: readonly string[];
  readonly statement?: Paragraph;
  readonly lined: boolean;
}

/** A statement, or a line to write one's own on, and a box for each answer. */
function Row({ theme, columns, statement, lined }: RowProps): ReactElement {
  const first = theme.width - COLUMN * columns.length;
  const text = first - AFTER_STATEMENT;
  const line = { direction: theme.direction, start: 0, thickness: theme.rules.row, color: palette.ink };
  return (
    <View style={{ width: theme.width }}>
      {statement === undefined ? <Hairline {...line} top={WRITING_LINE} width={text - 8} /> : null}
      <TickRow theme={theme} lined={lined} least={statement === undefined ? BLANK_ROW : ROW}>
        <View sem={{ tag: 'TH', scope: 'Row' }} style={{ width: first, paddingVertical: 7 }}>
          {statement === undefined ? null : (
            <Words
              theme={theme}
              text={statement.inlines}
              role={stripRole(theme, statement.role)}
              width={first}
              measure={text}
              sem={{ tag: 'P' }}
            />
          )}
        </View>
        {columns.map((_, index) => (
          <BoxCell key={index} theme={theme} width={COLUMN} size={BOX} />
        ))}
      </TickRow>
    </View>
  );
}

/**
 * What matters to me: statements by boxes, then blank rows for the reader's own. Those say nothing by themselves: so a
 * page does not begin with them, but with the statement before.
 */
export function mattersUnits(block: OfType<'matters'>, place: Place): readonly Unit[] {
  const { theme, key } = place;
  const columns: readonly TickColumn[] = [
    { label: '', width: theme.width - COLUMN * block.columns.length, align: 'start' },
    ...block.columns.map((label) => ({ label, width: COLUMN, align: 'center' }) as const),
  ];
  const blanks = Array.from({ length: block.blanks }, () => undefined);
  const rows = [...block.statements, ...blanks].map((statement, index) => ({
    origin: statement?.origin ?? block.origin,
    element: (
      <Row
        theme={theme}
        columns={block.columns}
        lined={index > 0}
        {...(statement === undefined ? {} : { statement })}
      />
    ),
  }));
  const last = `${key}.row.${block.statements.length - 1}`;
  const units = tickTableUnits({ origin: block.origin, columns, rows }, place);
  return block.blanks === 0
    ? units
    : units.map((unit) => (unit.key === last ? { ...unit, keepsRow: true } : unit));
}
