import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import { drawTickBox } from '../pictures/marks.ts';
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

function widthsOf({ theme, words, lines }: BoxedWordsProps): readonly number[] {
  return words.map((text) => Math.ceil(widthInLines(text, lines, theme.type.cell)) + 1);
}

/** Width of boxes to tick with their words, in a row. Points. */
export function boxedWordsWidth(props: BoxedWordsProps): number {
  const widths = widthsOf(props);
  const between = BETWEEN * Math.max(0, widths.length - 1);
  return widths.reduce((sum, width) => sum + BOX + BOX_GAP + width, between);
}

/** Boxes to tick with their words, in a row. */
export function BoxedWords(props: BoxedWordsProps): ReactElement {
  const { theme, words } = props;
  const { direction, type } = theme;
  const widths = widthsOf(props);
  const capitals = 0.69 * type.cell.size;
  const top = Math.max(0, firstBaseline(type.cell) - capitals / 2 - BOX / 2);
  return (
    <View sem={{ tag: 'L', numbering: 'None' }} style={{ flexDirection: rowDirection(direction) }}>
      {words.map((text, index) => (
        <View
          key={index}
          sem={{ tag: 'LI' }}
          style={{
            flexDirection: rowDirection(direction),
            ...gapStart(direction, index === 0 ? 0 : BETWEEN),
          }}
        >
          <View style={{ width: BOX, paddingTop: top }}>
            <Drawing mark={drawTickBox(BOX, direction)} />
          </View>
          <View sem={{ tag: 'LBody' }} style={{ width: widths[index] ?? 0, ...gapStart(direction, BOX_GAP) }}>
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
