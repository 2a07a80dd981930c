import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { Paragraph } from '../../model/document.ts';
import { drawTickBox } from '../pictures/marks.ts';
import { palette, rowDirection } from '../theme.ts';
import type { Theme } from '../theme.ts';
import type { Unit } from '../unit.ts';
import { ContinuedHead } from './continued-head.tsx';
import { Drawing, Hairline, Words, stripRole } from './primitives.tsx';
import { groupRows } from './unit-parts.ts';
import type { OfType, Place } from './unit-parts.ts';

const COLUMN = 62;
const BOX = 17;
const ROW = 32;
const BLANK_ROW = 34;
/** The writing line of a blank row, from its top. */
const WRITING_LINE = 27;
const AFTER_STATEMENT = 16;

interface GridShape {
  readonly theme: Theme;
  readonly columns: readonly string[];
}

function statementWidth({ theme, columns }: GridShape): number {
  return theme.width - COLUMN * columns.length;
}

function Head({ shape }: { readonly shape: GridShape }): ReactElement {
  const { theme, columns } = shape;
  const { direction, width, rules, type } = theme;
  return (
    <View style={{ width, paddingBottom: 6 }}>
      <View sem={{ tag: 'TR' }} style={{ flexDirection: rowDirection(direction), alignItems: 'flex-end' }}>
        <View sem={{ tag: 'TD' }} style={{ width: statementWidth(shape) }} />
        {columns.map((label, index) => (
          <View key={index} sem={{ tag: 'TH', scope: 'Column' }} style={{ width: COLUMN }}>
            <Words
              theme={theme}
              text={label}
              role={type.tableHead}
              width={COLUMN}
              setting="balanced"
              align="center"
              sem={{ tag: 'P' }}
            />
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

interface RowProps {
  readonly shape: GridShape;
  readonly statement?: Paragraph;
  readonly lined: boolean;
}

/** A statement, or a line to write one's own on, and a box for each answer. */
function Row({ shape, statement, lined }: RowProps): ReactElement {
  const { theme, columns } = shape;
  const { direction, width } = theme;
  const first = statementWidth(shape);
  const text = first - AFTER_STATEMENT;
  const line = { direction, start: 0, thickness: theme.rules.row };
  return (
    <View style={{ width, minHeight: statement === undefined ? BLANK_ROW : ROW }}>
      {lined ? <Hairline {...line} width={width} /> : null}
      {statement === undefined ? (
        <Hairline {...line} top={WRITING_LINE} width={text - 8} color={palette.ink} />
      ) : null}
      <View
        sem={{ tag: 'TR' }}
        style={{ flexDirection: rowDirection(direction), alignItems: 'center', flexGrow: 1 }}
      >
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
          <View key={index} sem={{ tag: 'TD' }} style={{ width: COLUMN, alignItems: 'center' }}>
            <Drawing mark={drawTickBox(BOX, direction)} />
          </View>
        ))}
      </View>
    </View>
  );
}

/** What matters to me: statements by boxes, then blank rows for the reader's own. */
export function mattersUnits(block: OfType<'matters'>, place: Place): readonly Unit[] {
  const { theme, key } = place;
  const shape: GridShape = { theme, columns: block.columns };
  const id = `${key}.table`;
  const inTable = (element: ReactElement): ReactElement => (
    <View sem={{ tag: 'Table', id }} style={{ width: theme.width }}>
      {element}
    </View>
  );
  const continuation = (
    <ContinuedHead place={place}>
      <Head shape={shape} />
    </ContinuedHead>
  );
  const base = { origin: block.origin, gapBefore: 0, keepWithNext: false };
  const blanks = Array.from({ length: block.blanks }, () => undefined);
  const rows = [...block.statements, ...blanks].map((statement, index): Unit => {
    const row = <Row shape={shape} lined={index > 0} {...(statement === undefined ? {} : { statement })} />;
    return { ...base, key: `${key}.row.${index}`, element: inTable(row), continuation };
  });
  const head: Unit = {
    ...base,
    key: `${key}.head`,
    element: inTable(<Head shape={shape} />),
    keepWithNext: true,
  };
  return [{ ...head, group: key }, ...groupRows(rows, key)];
}
