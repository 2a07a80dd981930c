import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { WarningFrame } from '../../../model/care-blocks.ts';
import { continuedHeading } from '../../../model/tree-text.ts';
import { alignStart } from '../../theme.ts';
import { Lines } from '../../text.tsx';
import type { Theme } from '../../theme.ts';
import type { Unit } from '../../unit.ts';
import { SIDE, SingleItem } from '../frame-items.tsx';
import { LeafFrame } from '../leaf-frame.tsx';
import { CORNER, FrameHead, lines } from '../warning-frames.tsx';
import { groupRows } from '../unit-parts.ts';
import type { HeadingTag, OfType, Place } from '../unit-parts.ts';

const BODY_TOP = 12;
const BETWEEN = 10;
const BODY_BOTTOM = 16;

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

/** The heading again, where a page goes on with a frame; screen readers pass over it. */
function Continued({ place, frame }: { readonly place: Place; readonly frame: WarningFrame }): ReactElement {
  const { theme, continued } = place;
  const { width, direction, type } = theme;
  const role = type.smallHeading;
  const text = continuedHeading(frame.heading, continued);
  return (
    <View artifact style={{ width }}>
      <Piece theme={theme} frame={frame} first last={false}>
        <View style={{ width, paddingHorizontal: SIDE, paddingTop: BODY_TOP, paddingBottom: BETWEEN }}>
          <Lines
            runs={[{ text, weight: role.weight }]}
            size={role.size}
            lineHeight={role.lineHeight}
            width={width - 2 * SIDE}
            setting="balanced"
            align={alignStart(direction)}
            direction={direction}
          />
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

/** The head, then each sign: a frame higher than a page is divided between signs, and its line stays open there. */
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
    divisible: true,
    group: key,
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
              <SingleItem theme={theme} items={[item]} index={0} width={inner} />
            </View>
          </View>
        </Piece>
      ),
      gapBefore: 0,
      keepWithNext: false,
      divisible: true,
      continuation,
    };
  });
  return [head, ...groupRows(signs, key)];
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
