import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { WarningFrame } from '../../model/care-blocks.ts';
import { spaceBetween } from '../../model/wide-marks.ts';
import { Lines } from '../text.tsx';
import { alignStart } from '../theme.ts';
import type { Unit } from '../unit.ts';
import { SingleItem } from './frame-items.tsx';
import { SIDE } from './frame-rows.ts';
import { LeafFrame } from './leaf-frame.tsx';
import type { Place } from './unit-parts.ts';

const TOP = 9;

export interface LongFrameProps {
  readonly place: Place;
  readonly frame: WarningFrame;
  /** Prefix of the keys of its units. */
  readonly id: string;
  readonly head: ReactElement;
  readonly corner: number;
  readonly line: number;
  /** White between the head and the first item, and under the last. */
  readonly room: { readonly top: number; readonly bottom: number };
}

/** The heading again, where a page goes on with a frame; screen readers pass over it. */
function FrameContinued({ place, frame, corner, line }: LongFrameProps): ReactElement {
  const { theme, continued } = place;
  const { direction, width, space } = theme;
  const role = theme.type.frameHead;
  return (
    <View
      artifact
      style={{ width, paddingHorizontal: SIDE, paddingTop: TOP, paddingBottom: space.betweenSigns }}
    >
      <LeafFrame direction={direction} width={width} corner={corner} line={line} first last={false} />
      <Lines
        runs={[
          { text: frame.heading + spaceBetween(frame.heading, continued), weight: role.weight },
          { text: continued, weight: 400 },
        ]}
        size={role.size}
        lineHeight={role.lineHeight}
        width={width - 2 * SIDE}
        setting="balanced"
        align={alignStart(direction)}
        direction={direction}
      />
    </View>
  );
}

function FrameItem({
  props,
  index,
}: {
  readonly props: LongFrameProps;
  readonly index: number;
}): ReactElement {
  const { place, frame, id, corner, line, room } = props;
  const { direction, width } = place.theme;
  const last = index === frame.items.length - 1;
  const padding = {
    paddingHorizontal: SIDE,
    paddingTop: index === 0 ? room.top : place.theme.space.betweenSigns,
    paddingBottom: last ? room.bottom : 0,
  };
  return (
    <View style={{ width }}>
      {index === 0 ? props.head : null}
      <View style={{ width, ...padding }}>
        <View sem={{ tag: 'L', id: `${id}.items`, numbering: 'Disc' }} style={{ width: width - 2 * SIDE }}>
          <SingleItem theme={place.theme} items={frame.items} index={index} width={width - 2 * SIDE} />
        </View>
      </View>
      <LeafFrame
        direction={direction}
        width={width}
        corner={corner}
        line={line}
        first={index === 0}
        last={last}
      />
    </View>
  );
}

/**
 * A frame with more signs than a page may hold: each is a unit of its own. Where it breaks, the frame stays open, and
 * its heading stands again above what goes on.
 */
export function longFrameUnits(props: LongFrameProps): readonly Unit[] {
  const { frame, id } = props;
  const continuation = <FrameContinued {...props} />;
  return frame.items.map((_, index) => ({
    key: `${id}.${index}`,
    origin: frame.origin,
    element: <FrameItem props={props} index={index} />,
    gapBefore: 0,
    // Nobody looks for one sign alone under its heading, or on the next page.
    keepWithNext: frame.items.length > 1 && (index === 0 || index === frame.items.length - 2),
    group: id,
    ...(index === 0 ? {} : { continuation }),
  }));
}
