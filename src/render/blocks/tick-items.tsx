import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { TickItem } from '../../model/care-blocks.ts';
import { firstBaseline, gapStart, palette, rowDirection } from '../theme.ts';
import type { Theme } from '../theme.ts';
import type { Unit } from '../unit.ts';
import { TickBox, boxGap, boxRoom } from './boxed-list.tsx';
import { BoxedWords, boxedWordsWidth } from './boxed-words.tsx';
import { ContinuedHead } from './continued-head.tsx';
import { widthOnLine } from './fit-words.ts';
import { Hairline, Paragraphs, Words, stripRole } from './primitives.tsx';
import type { OfType, Place } from './unit-parts.ts';
import { WritingLines } from './writing-lines.tsx';

const ABOVE = 7;
const BELOW = 7;
const SHRINK = 3;
const TO_BOXES = 5;
const GAP = 20;
/** Room for initials. */
const LINE = 80;
const BELOW_BASELINE = 3;

interface ItemProps {
  readonly theme: Theme;
  readonly item: TickItem;
  readonly width: number;
}

/** What is to be written, and the line for it: on its baseline, at the end of the row. */
function ShortLine({ theme, text }: { readonly theme: Theme; readonly text: string }): ReactElement {
  const { direction, type, scale } = theme;
  const words = Math.ceil(widthOnLine(text, type.cell)) + 1;
  const top = firstBaseline(type.cell) + BELOW_BASELINE;
  const line = { direction, start: 0, width: LINE * scale, top, thickness: 0.8, color: palette.ink };
  return (
    <View style={{ flexDirection: rowDirection(direction) }}>
      <View style={{ width: words }}>
        <Words theme={theme} text={text} role={type.cell} width={words} sem={{ tag: 'P' }} />
      </View>
      <View style={{ width: LINE * scale, height: type.cell.lineHeight, ...gapStart(direction, 8) }}>
        <Hairline {...line} />
      </View>
    </View>
  );
}

/** Boxes under the words; a line to write on beside them where there is room, else below. */
function Answers({ theme, item: { boxes, line }, width }: ItemProps): ReactElement | null {
  if (boxes.length === 0 && line === undefined) return null;
  const { direction, type, scale } = theme;
  const taken = boxedWordsWidth({ theme, words: boxes, lines: 1 });
  const needed = line === undefined ? 0 : widthOnLine(line, type.cell) + 8 + LINE * scale + GAP;
  const beside = taken + needed <= width;
  return (
    <View
      style={{
        flexDirection: beside ? rowDirection(direction) : 'column',
        width,
        marginTop: TO_BOXES * scale,
      }}
    >
      <BoxedWords theme={theme} words={boxes} lines={1} width={beside ? taken : width} />
      {line === undefined ? null : (
        <View style={beside ? gapStart(direction, GAP) : { marginTop: TO_BOXES * scale }}>
          <ShortLine theme={theme} text={line} />
        </View>
      )}
    </View>
  );
}

/** Words, or a line to write one's own on, then what is to be ticked or written. */
function Item({ theme, item, width }: ItemProps): ReactElement {
  return (
    <View style={{ width }}>
      {item.words.length === 0 ? (
        <WritingLines theme={{ ...theme, width }} indent={0} count={1} beside={false} close />
      ) : (
        <Paragraphs theme={theme} paragraphs={item.words} roleOf={stripRole} width={width} gap={0} />
      )}
      <Answers theme={theme} item={item} width={width} />
    </View>
  );
}

interface RowProps {
  readonly theme: Theme;
  readonly item: TickItem;
  readonly ruled: boolean;
}

function Row({ theme, item, ruled }: RowProps): ReactElement {
  const { direction, width, rules, scale } = theme;
  const own = item.box ? width - boxRoom(theme) : width;
  const white = { paddingTop: ruled ? ABOVE * scale : 0, paddingBottom: (BELOW - SHRINK) * scale };
  return (
    <View style={{ width, ...white }}>
      {ruled ? <Hairline direction={direction} start={0} width={width} thickness={rules.row} /> : null}
      <View sem={{ tag: 'LI' }} style={{ flexDirection: rowDirection(direction), width }}>
        {item.box ? <TickBox theme={theme} /> : null}
        <View
          sem={{ tag: 'LBody' }}
          style={{ width: own, ...gapStart(direction, item.box ? boxGap(theme) : 0) }}
        >
          <Item theme={theme} item={item} width={own} />
        </View>
      </View>
    </View>
  );
}

/** One unit an item; the heading stands again where the list goes on. */
export function tickItemUnits(block: OfType<'tick-items'>, place: Place): readonly Unit[] {
  const { theme, key } = place;
  const shrink = SHRINK * theme.scale;
  const repeated = place.title === undefined ? {} : { continuation: <ContinuedHead place={place} /> };
  const units = block.items.map((item, index): Unit => ({
    key: `${key}.item.${index}`,
    origin: item.origin,
    element: (
      <View sem={{ tag: 'L', id: `${key}.list`, numbering: 'None' }} style={{ width: theme.width }}>
        <Row theme={theme} item={item} ruled={index > 0} />
      </View>
    ),
    keepWithNext: false,
    divisible: true,
    ...(index === 0 ? { gapBefore: 0 } : { gapBefore: shrink, gapShrink: shrink }),
    ...repeated,
  }));
  return units.map((unit) => ({ ...unit, group: key }));
}
