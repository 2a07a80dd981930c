import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { WarningFrame } from '../../../model/care-blocks.ts';
import { continuedHeading } from '../../../model/tree-text.ts';
import { gapStart, palette, rowDirection } from '../../theme.ts';
import type { Theme, TypeRole } from '../../theme.ts';
import type { Unit } from '../../unit.ts';
import { widthOnLine } from '../fit-words.ts';
import { SingleItem } from '../frame-items.tsx';
import { SIDE } from '../frame-rows.ts';
import { tied } from '../frame-phones.tsx';
import { LeafFrame } from '../leaf-frame.tsx';
import { Words } from '../primitives.tsx';
import { CORNER, FrameHead, headGround, lines } from '../warning-frames.tsx';
import type { HeadingTag, OfType, Place } from '../unit-parts.ts';

/** Close, so that a page holds all signs of a frame wherever it can. */
const BODY_TOP = 9;
const BETWEEN = 3;
const BODY_BOTTOM = 11;
/** Over and under a heading that stands again, and between it and the number. */
const CONTINUED = 9;
const HEAD_GAP = 16;

interface PieceProps {
  readonly theme: Theme;
  readonly frame: WarningFrame;
  readonly first: boolean;
  readonly last: boolean;
  readonly children: ReactElement;
}

/** One piece of a frame with its part of the line round it. */
function Piece({ theme, frame, first, last, children }: PieceProps): ReactElement {
  const { width, direction } = theme;
  return (
    <View style={{ width }}>
      {children}
      <LeafFrame
        direction={direction}
        width={width}
        corner={CORNER}
        line={lines[frame.urgency]}
        first={first}
        last={last}
      />
    </View>
  );
}

interface RepeatedNumber {
  readonly number: string;
  /** Points. */
  readonly room: number;
}

/** The numbers to call that have room beside the heading on its line; the first in any case. */
function repeatedNumbers({ phones }: WarningFrame, rest: number, role: TypeRole): readonly RepeatedNumber[] {
  const numbers = phones.map(({ number }) => {
    const whole = tied(number);
    return { number: whole, room: Math.ceil(widthOnLine(whole, role)) + 1 };
  });
  return numbers.filter((_, index) => index === 0 || roomOf(numbers.slice(0, index + 1)) <= rest);
}

/** Numbers beside a heading, each with the white before it. */
function roomOf(numbers: readonly RepeatedNumber[]): number {
  return numbers.reduce((sum, { room }) => sum + HEAD_GAP + room, 0);
}

/**
 * The heading again with the numbers to call, where a page goes on with a frame: black where the frame's own is. Screen
 * readers pass over it.
 */
function Continued({ place, frame }: { readonly place: Place; readonly frame: WarningFrame }): ReactElement {
  const { theme, continued } = place;
  const { width, direction, type } = theme;
  const role = type.smallHeading;
  const color = frame.urgency === 'now' ? palette.white : palette.ink;
  const heading = continuedHeading(frame.heading, continued);
  const inner = width - 2 * SIDE;
  const numbers = repeatedNumbers(frame, inner - Math.ceil(widthOnLine(heading, role)) - 1, role);
  const text = { theme, role, color } as const;
  const ground = { paddingHorizontal: SIDE, paddingVertical: CONTINUED, ...headGround(frame, direction) };
  return (
    <View artifact style={{ width }}>
      <Piece theme={theme} frame={frame} first last={false}>
        <View style={{ width, flexDirection: rowDirection(direction), ...ground }}>
          <Words {...text} text={heading} width={inner - roomOf(numbers)} setting="balanced" />
          {numbers.map(({ number, room }, index) => (
            <View key={index} style={{ width: room, ...gapStart(direction, HEAD_GAP) }}>
              <Words {...text} text={number} width={room} />
            </View>
          ))}
        </View>
      </Piece>
    </View>
  );
}

interface FrameProps {
  readonly frame: WarningFrame;
  readonly place: Place;
  readonly key: string;
  readonly tag: HeadingTag;
}

/**
 * The head, then each sign: a frame that has no room on a page is divided between signs, and its line stays open there.
 * So is one that could stand whole on the next page: else what cannot wait would leave its own page, to fill that.
 */
function frameUnits({ frame, place, key, tag }: FrameProps): readonly Unit[] {
  const { theme } = place;
  const { items, origin } = frame;
  const inner = theme.width - 2 * SIDE;
  const head: Unit = {
    key: `${key}.head`,
    origin,
    element: (
      <Piece theme={theme} frame={frame} first last={items.length === 0}>
        <FrameHead theme={theme} frame={frame} tag={tag} />
      </Piece>
    ),
    gapBefore: 0,
    keepWithNext: items.length > 0,
  };
  const continuation = <Continued place={place} frame={frame} />;
  const signs = items.map((item, index): Unit => {
    const last = index === items.length - 1;
    const white = { paddingTop: index === 0 ? BODY_TOP : BETWEEN, paddingBottom: last ? BODY_BOTTOM : 0 };
    return {
      key: `${key}.item.${index}`,
      origin: item.origin,
      element: (
        <Piece theme={theme} frame={frame} first={false} last={last}>
          <View style={{ width: theme.width, paddingHorizontal: SIDE, ...white }}>
            <View sem={{ tag: 'L', id: `${key}.list`, numbering: 'Disc' }} style={{ width: inner }}>
              <SingleItem theme={theme} items={items} index={index} width={inner} />
            </View>
          </View>
        </Piece>
      ),
      gapBefore: 0,
      // Nobody looks for one sign alone on the next page.
      keepWithNext: index === items.length - 2,
      continuation,
    };
  });
  // Nothing that cannot wait shares pages with what can wait for a visit: so that stays whole.
  const divisible = frame.urgency === 'visit' ? {} : { divisible: true };
  return [head, ...signs].map((unit) => ({ ...unit, group: key, ...divisible }));
}

/** Signs of one degree of urgency after another, one sign a line. */
export function stackedWarningUnits(block: OfType<'warning-frames'>, place: Place): readonly Unit[] {
  const { theme } = place;
  const { betweenFrames, frameShrink } = theme.space;
  const tag = place.headingTag(place.title === undefined ? 2 : 3);
  return block.frames.flatMap((frame, index) => {
    const [head, ...signs] = frameUnits({ frame, place, key: `${place.key}.frame.${index}`, tag });
    if (head === undefined || index === 0) return head === undefined ? [] : [head, ...signs];
    return [{ ...head, gapBefore: betweenFrames, gapShrink: frameShrink }, ...signs];
  });
}
