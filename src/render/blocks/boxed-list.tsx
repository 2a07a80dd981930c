import { View } from '@react-pdf/renderer';
import type { ReactElement, ReactNode } from 'react';
import { drawTickBox } from '../../pictures/marks.ts';
import { firstBaseline, gapStart, rowDirection } from '../theme.ts';
import type { Theme, TypeRole } from '../theme.ts';
import { Drawing, Words } from './primitives.tsx';
import type { HeadingTag } from './unit-parts.ts';

const BOX = 15;
const BOX_GAP = 8;
const BETWEEN = 5;

/** White between a box and its words. */
export function boxGap({ scale }: Theme): number {
  return BOX_GAP * scale;
}

/** What a box takes from the width of an item's words. */
export function boxRoom({ scale }: Theme): number {
  return (BOX + BOX_GAP) * scale;
}

interface TickBoxProps {
  readonly theme: Theme;
  /** Type of the words; else that of running text. */
  readonly role?: TypeRole;
  /** White above the first line of the words, in points. */
  readonly drop?: number;
  /** Height of what holds the box, where it is not as high as it needs. */
  readonly height?: number;
}

/** A box to tick. Its middle is level with that of the capitals of the first line. */
export function TickBox({ theme, role = theme.type.body, drop = 0, height }: TickBoxProps): ReactElement {
  const size = BOX * theme.scale;
  const top = Math.max(0, drop + firstBaseline(role) - (0.69 * role.size) / 2 - size / 2);
  return (
    <View style={{ width: size, paddingTop: top, ...(height === undefined ? {} : { height }) }}>
      <Drawing mark={drawTickBox(size, theme.direction)} />
    </View>
  );
}

interface BoxedItemProps extends Omit<TickBoxProps, 'height'> {
  readonly width: number;
  readonly children: ReactElement;
}

/** A box to tick and what it stands for. */
export function BoxedItem({ width, children, ...box }: BoxedItemProps): ReactElement {
  const { direction } = box.theme;
  return (
    <View sem={{ tag: 'LI' }} style={{ flexDirection: rowDirection(direction), width }}>
      <TickBox {...box} />
      <View
        sem={{ tag: 'LBody' }}
        style={{ width: width - boxRoom(box.theme), ...gapStart(direction, boxGap(box.theme)) }}
      >
        {children}
      </View>
    </View>
  );
}

interface BoxedListProps {
  readonly theme: Theme;
  readonly heading: string;
  readonly tag: HeadingTag;
  /** One line of the list each. */
  readonly rows: readonly ReactNode[];
  /** White between two lines. */
  readonly between?: number;
}

/** A small heading and things to tick. */
export function BoxedList({ theme, heading, tag, rows, between = BETWEEN }: BoxedListProps): ReactElement {
  const { width, type, direction } = theme;
  return (
    <View style={{ width }}>
      <Words
        theme={theme}
        text={heading}
        role={type.smallHeading}
        width={width}
        setting="balanced"
        sem={{ tag }}
      />
      <View sem={{ tag: 'L', numbering: 'None' }} style={{ width, marginTop: 8 * theme.scale }}>
        {rows.map((row, index) => (
          <View
            key={index}
            style={{
              flexDirection: rowDirection(direction),
              marginTop: index === 0 ? 0 : between * theme.scale,
            }}
          >
            {row}
          </View>
        ))}
      </View>
    </View>
  );
}
