import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import { drawTickBox } from '../../pictures/marks.ts';
import { firstBaseline, gapStart, rowDirection } from '../theme.ts';
import type { Theme } from '../theme.ts';
import { widthInLines } from './fit-words.ts';
import { Drawing, Words } from './primitives.tsx';

const BOX = 14;
const BOX_GAP = 6;
const BETWEEN = 16;

interface BoxedWordsProps {
  readonly theme: Theme;
  readonly words: readonly string[];
  /** Lines that the words of one box may take, where no word is longer than that allows. */
  readonly lines: number;
}

const MOST_LINES = 4;
/** White between boxes that stand one under another. */
const STACKED = 4;

function widthsOf({ theme, words, lines }: BoxedWordsProps): readonly number[] {
  return words.map((text) => Math.ceil(widthInLines(text, lines, theme.type.cell)) + 1);
}

/** Width of boxes to tick with their words, in a row. Points. */
export function boxedWordsWidth(props: BoxedWordsProps): number {
  const widths = widthsOf(props);
  const { scale } = props.theme;
  const between = BETWEEN * scale * Math.max(0, widths.length - 1);
  return widths.reduce((sum, width) => sum + (BOX + BOX_GAP) * scale + width, between);
}

/** As few lines as let the boxes stand in a row of this width; none where they cannot. */
function linesInRow({ theme, words, lines }: BoxedWordsProps, width: number): number | undefined {
  const most = theme.flow === 'stacked' ? 1 : MOST_LINES;
  const counts = Array.from({ length: most }, (_, index) => lines + index);
  return counts.find((count) => boxedWordsWidth({ theme, words, lines: count }) <= width);
}

/** Boxes to tick with their words: in a row, or one under another where a row has no room for them. */
export function BoxedWords({ width, ...props }: BoxedWordsProps & { readonly width: number }): ReactElement {
  const { theme, words } = props;
  const { direction, type, scale } = theme;
  const [size, boxGap] = [BOX * scale, BOX_GAP * scale];
  const lines = linesInRow(props, width);
  const row = lines !== undefined;
  const widths = row ? widthsOf({ ...props, lines }) : words.map(() => width - size - boxGap);
  const capitals = 0.69 * type.cell.size;
  const top = Math.max(0, firstBaseline(type.cell) - capitals / 2 - size / 2);
  return (
    <View
      sem={{ tag: 'L', numbering: 'None' }}
      style={{ flexDirection: row ? rowDirection(direction) : 'column' }}
    >
      {words.map((text, index) => (
        <View
          key={index}
          sem={{ tag: 'LI' }}
          style={{
            flexDirection: rowDirection(direction),
            ...(row
              ? gapStart(direction, index === 0 ? 0 : BETWEEN * scale)
              : { marginTop: index === 0 ? 0 : STACKED * scale }),
          }}
        >
          <View style={{ width: size, paddingTop: top }}>
            <Drawing mark={drawTickBox(size, direction)} />
          </View>
          <View sem={{ tag: 'LBody' }} style={{ width: widths[index] ?? 0, ...gapStart(direction, boxGap) }}>
            <Words
              theme={theme}
              text={text}
              role={type.cell}
              width={widths[index] ?? 0}
              setting="balanced"
              sem={{ tag: 'P' }}
            />
          </View>
        </View>
      ))}
    </View>
  );
}
