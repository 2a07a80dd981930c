import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { PictureKey } from '../../model/document.ts';
import { textWidth } from '../measure-text.ts';
import { drawKeyMark } from '../pictures/marks.ts';
import { columns, gapStart, rowDirection } from '../theme.ts';
import type { Theme } from '../theme.ts';
import type { Unit } from '../unit.ts';
import { Drawing, Hairline, Words } from './primitives.tsx';
import { singleUnit } from './unit-parts.ts';
import type { OfType, Place } from './unit-parts.ts';

type Item = PictureKey['items'][number];

const MARK_GAP = 8;
const ITEM_GAP = 14;
const PADDING = 9;
/** More samples than this go on a second row. */
const MOST_IN_ROW = 3;

/** A row is never longer than three samples, and rows are as equal as can be. */
function keyRows(items: readonly Item[]): readonly (readonly Item[])[] {
  const rows = Math.ceil(items.length / MOST_IN_ROW);
  const each = Math.ceil(items.length / Math.max(rows, 1));
  return Array.from({ length: rows }, (_, row) => items.slice(row * each, (row + 1) * each));
}

function longestWord(words: string, theme: Theme): number {
  const { size, weight } = theme.type.cell;
  return Math.max(0, ...words.split(' ').map((word) => textWidth(word, { size, weight })));
}

/**
 * Widths of the words of a row: room is given by the length of the text, so that all take about as many lines, and
 * never less than the longest word.
 */
export function wordWidths(items: readonly Item[], theme: Theme): readonly number[] {
  const { size, weight } = theme.type.cell;
  const marks = items.reduce(
    (sum, item) => sum + drawKeyMark(item.mark, theme.direction).width + MARK_GAP,
    0,
  );
  const room = columns.field - marks - ITEM_GAP * (items.length - 1);
  const least = items.map((item) => longestWord(item.words, theme) + 1);
  const spare = Math.max(0, room - least.reduce((sum, width) => sum + width, 0));
  const lengths = items.map((item) => textWidth(item.words, { size, weight }));
  const wanted = lengths.map((length, index) => Math.max(0, length / 2 - (least[index] ?? 0)) + 1);
  const total = wanted.reduce((sum, width) => sum + width, 0);
  return least.map((width, index) => width + (spare * (wanted[index] ?? 0)) / total);
}

function KeyItem({ theme, item, width }: { theme: Theme; item: Item; width: number }): ReactElement {
  return (
    <View sem={{ tag: 'LI' }} style={{ flexDirection: rowDirection(theme.direction) }}>
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
            <View
              key={index}
              style={{
                flexDirection: rowDirection(direction),
                justifyContent: 'space-between',
                marginTop: index === 0 ? 0 : 6,
              }}
            >
              {row.map((item, at) => (
                <KeyItem key={at} theme={theme} item={item} width={wordWidths(row, theme)[at] ?? 0} />
              ))}
            </View>
          ))}
        </View>
      </View>
    </View>
  );
  return singleUnit(block, place, element);
}
