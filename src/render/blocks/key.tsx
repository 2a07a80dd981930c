import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { PictureKey } from '../../model/document.ts';
import { drawKeyMark } from '../../pictures/marks.ts';
import { columns, gapStart, rowDirection } from '../theme.ts';
import type { Theme } from '../theme.ts';
import type { Unit } from '../unit.ts';
import { widthInLines } from './fit-words.ts';
import { Drawing, Hairline, Words } from './primitives.tsx';
import { singleUnit } from './unit-parts.ts';
import type { OfType, Place } from './unit-parts.ts';

type Item = PictureKey['items'][number];

const MARK_GAP = 8;
/** White between two samples: less where the words need it. */
const GAP = 24;
const LEAST_GAP = 12;
const MOST_LINES = 4;
/** Words wider than this are long. */
const LONG = 80;
const PADDING = 9;
/** More samples than this go on a second row. */
const MOST_IN_ROW = 3;

/** A row is never longer than three samples, and rows are as equal as can be. */
function keyRows(items: readonly Item[]): readonly (readonly Item[])[] {
  const rows = Math.ceil(items.length / MOST_IN_ROW);
  const each = Math.ceil(items.length / Math.max(rows, 1));
  return Array.from({ length: rows }, (_, row) => items.slice(row * each, (row + 1) * each));
}

/**
 * Widths of the words of a row: one line each where there is room. Where there is not, the long ones take a line more
 * together, so that the row looks even; short ones only if they must.
 */
export function wordWidths(items: readonly Item[], theme: Theme): readonly number[] {
  const marks = items.reduce(
    (sum, item) => sum + drawKeyMark(item.mark, theme.direction).width + MARK_GAP,
    0,
  );
  const room = columns.field - marks - LEAST_GAP * (items.length - 1);
  const set = items.map(({ words }) => ({ words, width: widthInLines(words, 1, theme.type.cell) }));
  const fits = (): boolean => set.reduce((sum, { width }) => sum + width, 0) <= room;
  for (let lines = 2; lines <= MOST_LINES && !fits(); lines += 1) {
    for (const item of [...set].sort((a, b) => b.width - a.width)) {
      if (item.width > LONG || !fits()) item.width = widthInLines(item.words, lines, theme.type.cell);
    }
  }
  return set.map(({ width }) => width);
}

interface KeyItemProps {
  readonly theme: Theme;
  readonly item: Item;
  readonly width: number;
  readonly gap: number;
}

function KeyItem({ theme, item, width, gap }: KeyItemProps): ReactElement {
  const { direction } = theme;
  return (
    <View sem={{ tag: 'LI' }} style={{ flexDirection: rowDirection(direction), ...gapStart(direction, gap) }}>
      <Drawing mark={drawKeyMark(item.mark, theme.direction)} />
      <View sem={{ tag: 'LBody' }} style={{ width, ...gapStart(theme.direction, MARK_GAP) }}>
        <Words
          theme={theme}
          text={item.words}
          role={theme.type.cell}
          width={width}
          setting="balanced"
          sem={{ tag: 'P' }}
        />
      </View>
    </View>
  );
}

interface KeyRowProps {
  readonly theme: Theme;
  readonly items: readonly Item[];
  readonly top: number;
}

function KeyRow({ theme, items, top }: KeyRowProps): ReactElement {
  const { direction } = theme;
  const widths = wordWidths(items, theme);
  const taken = items.reduce(
    (sum, item, index) => sum + drawKeyMark(item.mark, direction).width + MARK_GAP + (widths[index] ?? 0),
    0,
  );
  const gap = Math.min(GAP, Math.max(0, columns.field - taken) / Math.max(1, items.length - 1));
  return (
    <View style={{ flexDirection: rowDirection(direction), marginTop: top }}>
      {items.map((item, index) => (
        <KeyItem
          key={index}
          theme={theme}
          item={item}
          width={widths[index] ?? 0}
          gap={index === 0 ? 0 : gap}
        />
      ))}
    </View>
  );
}

/** How to read the pictures: samples with words, under a line, in the columns of the strips. */
export function keyUnits(block: OfType<'key'>, place: Place): readonly Unit[] {
  const { theme } = place;
  const { direction, width } = theme;
  const element = (
    <View style={{ width, paddingTop: PADDING }}>
      <Hairline direction={direction} start={0} width={width} thickness={theme.rules.row} />
      <View style={{ flexDirection: rowDirection(direction) }}>
        <Words
          theme={theme}
          text={block.heading}
          role={theme.type.name}
          width={columns.name}
          setting="balanced"
          sem={{ tag: 'P' }}
        />
        <View
          sem={{ tag: 'L', numbering: 'None' }}
          style={{ width: columns.field, ...gapStart(direction, columns.nameGap) }}
        >
          {keyRows(block.items).map((row, index) => (
            <KeyRow key={index} theme={theme} items={row} top={index === 0 ? 0 : 6} />
          ))}
        </View>
      </View>
    </View>
  );
  return singleUnit(block, place, element);
}
