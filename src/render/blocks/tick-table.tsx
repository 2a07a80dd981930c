import { View } from '@react-pdf/renderer';
import type { ReactElement, ReactNode } from 'react';
import { splitYear } from '../../model/split-chinese.ts';
import { drawTickBox } from '../../pictures/marks.ts';
import { padding, palette, rowDirection } from '../theme.ts';
import type { Theme } from '../theme.ts';
import type { Unit } from '../unit.ts';
import { ContinuedHead } from './continued-head.tsx';
import { widestWord } from './fit-words.ts';
import { Drawing, Hairline, Words } from './primitives.tsx';
import { groupRows } from './unit-parts.ts';
import type { Place } from './unit-parts.ts';

/** A column of a table to fill in by hand. */
export interface TickColumn {
  /** Empty for a column without a head. */
  readonly label: string;
  /** Points, with the white at its edges. */
  readonly width: number;
  readonly start?: number;
  readonly end?: number;
  readonly align: 'start' | 'center';
}

/** As narrow as asked, wider only where a word of the head, or a part of a date, would not fit between the white at its edges. */
export function columnWidth(label: string, theme: Theme, of: { least: number; white: number }): number {
  const widest = Math.max(0, ...splitYear(label).map((part) => widestWord(part, theme.type.tableHead)));
  return Math.max(of.least, Math.ceil(widest) + 1 + of.white);
}

export function TickHead({
  theme,
  columns,
}: {
  readonly theme: Theme;
  readonly columns: readonly TickColumn[];
}): ReactElement {
  const { direction, width, rules, type } = theme;
  return (
    <View style={{ width, paddingBottom: 6 }}>
      <View sem={{ tag: 'TR' }} style={{ flexDirection: rowDirection(direction), alignItems: 'flex-end' }}>
        {columns.map(({ label, width: whole, start = 0, end = 0, align }, index) => (
          <View
            key={index}
            sem={label === '' ? { tag: 'TD' } : { tag: 'TH', scope: 'Column' }}
            style={{ width: whole, ...padding(direction, { start, end }) }}
          >
            {label === '' ? null : (
              <Words
                theme={theme}
                text={label}
                role={type.tableHead}
                width={whole - start - end}
                setting="balanced"
                align={align}
                sem={{ tag: 'P' }}
              />
            )}
          </View>
        ))}
      </View>
      <View style={{ position: 'absolute', bottom: 0, left: 0, width, height: 0 }}>
        <Hairline
          direction={direction}
          start={0}
          width={width}
          thickness={rules.tableHead}
          color={palette.ink}
        />
      </View>
    </View>
  );
}

interface TickRowProps {
  readonly theme: Theme;
  readonly lined: boolean;
  readonly least: number;
  readonly children: ReactNode;
}

/** A row whose cells stand level with each other, at least so high that there is room for a pen. */
export function TickRow({ theme, lined, least, children }: TickRowProps): ReactElement {
  const { direction, width, rules } = theme;
  return (
    <View style={{ width, minHeight: least }}>
      {lined ? <Hairline direction={direction} start={0} width={width} thickness={rules.row} /> : null}
      <View
        sem={{ tag: 'TR' }}
        style={{ flexDirection: rowDirection(direction), alignItems: 'center', flexGrow: 1 }}
      >
        {children}
      </View>
    </View>
  );
}

interface BoxCellProps {
  readonly theme: Theme;
  readonly width: number;
  readonly size: number;
  readonly align?: 'start' | 'center';
  /** Whether there is anything to tick; else the cell is empty. */
  readonly due?: boolean;
}

export function BoxCell({ theme, width, size, align = 'center', due = true }: BoxCellProps): ReactElement {
  const edge = theme.direction === 'rtl' ? 'flex-end' : 'flex-start';
  return (
    <View sem={{ tag: 'TD' }} style={{ width, alignItems: align === 'center' ? 'center' : edge }}>
      {due ? <Drawing mark={drawTickBox(size, theme.direction)} /> : null}
    </View>
  );
}

export interface TickTable {
  readonly origin: string;
  readonly columns: readonly TickColumn[];
  readonly rows: readonly { readonly origin: string; readonly element: ReactElement }[];
}

/** A table of more lines may be divided; a shorter one stays whole. */
const MOST_WHOLE = 3;

/**
 * One unit for the head, one a row; heading and head stand again where the table goes on. No head where all are empty.
 * Each line is ticked by itself and none is compared with another: so a long table may be divided for fuller pages.
 */
export function tickTableUnits(table: TickTable, place: Place): readonly Unit[] {
  const { theme, key } = place;
  const id = `${key}.table`;
  const inTable = (element: ReactElement): ReactElement => (
    <View sem={{ tag: 'Table', id }} style={{ width: theme.width }}>
      {element}
    </View>
  );
  const headed = table.columns.some(({ label }) => label !== '');
  const head = <TickHead theme={theme} columns={table.columns} />;
  const titled = place.title === undefined ? undefined : <ContinuedHead place={place} />;
  const continuation = headed ? <ContinuedHead place={place}>{head}</ContinuedHead> : titled;
  const divisible = table.rows.length > MOST_WHOLE ? { divisible: true } : {};
  const base = { gapBefore: 0, keepWithNext: false, ...divisible };
  const rows = table.rows.map(({ origin, element }, index): Unit => ({
    ...base,
    key: `${key}.row.${index}`,
    origin,
    element: inTable(element),
    ...(continuation === undefined ? {} : { continuation }),
  }));
  const grouped = groupRows(rows, key);
  if (!headed || rows.length === 0) return grouped;
  const first: Unit = {
    ...base,
    key: `${key}.head`,
    origin: table.origin,
    element: inTable(head),
    keepWithNext: true,
    group: key,
  };
  return [first, ...grouped];
}
