import { Path, Svg, View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import { HANDLE, point } from '../pictures/draw-path.ts';
import type { Field } from '../pictures/draw-path.ts';
import { fromStart, palette } from '../theme.ts';
import type { Direction } from '../theme.ts';

export interface LeafFrameProps {
  readonly direction: Direction;
  readonly width: number;
  readonly corner: number;
  /** Whether the box is the first and the last piece of what is framed: a frame may run over several units. */
  readonly first: boolean;
  readonly last: boolean;
}

const LINE = 1;
/** The drawing is larger than the box on all sides: at its very edge a stroke would be cut thin. */
const SPARE = 1;
const EDGE = SPARE + LINE / 2;

/** Top of the frame without its sides: the start corner round, the end corner square. */
function topPath(field: Field, corner: number): string {
  const to = field.width - SPARE;
  const rest = corner * (1 - HANDLE);
  const at = (offset: number, top: number): string => point(field, offset, top);
  const bend = `${at(EDGE, EDGE + rest)} ${at(EDGE + rest, EDGE)} ${at(EDGE + corner, EDGE)}`;
  return `M${at(EDGE, EDGE + corner)}C${bend}L${at(to, EDGE)}`;
}

/** Foot of the frame without its sides: the start corner square, the end corner round. */
function footPath(field: Field, corner: number): string {
  const to = field.width - EDGE;
  const bottom = corner;
  const rest = corner * (1 - HANDLE);
  const at = (offset: number, top: number): string => point(field, offset, top);
  const bend = `${at(to - rest, bottom)} ${at(to, bottom - rest)} ${at(to, bottom - corner)}`;
  return `M${at(SPARE, bottom)}L${at(to - corner, bottom)}C${bend}`;
}

interface SideProps {
  readonly direction: Direction;
  /** Offset of the stroke's middle from the start edge of the framed box. */
  readonly at: number;
  readonly top: number;
  readonly bottom: number;
}

/** An upright line as high as its box, whatever that is. */
function Side({ direction, at, top, bottom }: SideProps): ReactElement {
  const width = 2 * EDGE;
  return (
    <View style={{ position: 'absolute', top, bottom, width, ...fromStart(direction, at - EDGE) }}>
      <Svg width={width} height="100%" viewBox={`0 0 ${width} 100`} preserveAspectRatio="none">
        <Path d={`M${EDGE} 0L${EDGE} 100`} stroke={palette.ink} strokeWidth={LINE} />
      </Svg>
    </View>
  );
}

/**
 * The line round a call-out or panel, as an absolutely placed child of the box it frames. Strokes rather than borders,
 * which come out uneven; sides are drawn to the height of the box and reach into the piece above.
 */
export function LeafFrame({ direction, width, corner, first, last }: LeafFrameProps): ReactElement {
  const field: Field = { width: width + 2 * SPARE, direction };
  const stroke = { stroke: palette.ink, strokeWidth: LINE };
  const wide = { position: 'absolute', left: -SPARE } as const;
  const half = LINE / 2;
  return (
    <View style={{ position: 'absolute', top: 0, bottom: 0, left: 0, width }}>
      {first ? (
        <Svg style={{ ...wide, top: -SPARE }} width={field.width} height={corner + EDGE}>
          <Path d={topPath(field, corner)} {...stroke} />
        </Svg>
      ) : null}
      <Side direction={direction} at={half} top={first ? corner + half : -half} bottom={0} />
      <Side
        direction={direction}
        at={width - half}
        top={first ? 0 : -half}
        bottom={last ? corner + half : 0}
      />
      {last ? (
        <Svg style={{ ...wide, bottom: -SPARE }} width={field.width} height={corner + EDGE}>
          <Path d={footPath(field, corner)} {...stroke} />
        </Svg>
      ) : null}
    </View>
  );
}
