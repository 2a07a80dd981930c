import { Path, Svg, View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import { HANDLE, point } from '../../pictures/draw-path.ts';
import type { Field } from '../../pictures/draw-path.ts';
import { fromStart, palette } from '../theme.ts';
import type { Direction } from '../theme.ts';

export interface LeafFrameProps {
  readonly direction: Direction;
  readonly width: number;
  readonly corner: number;
  /** Whether the box is the first and the last piece of what is framed: a frame may run over several units. */
  readonly first: boolean;
  readonly last: boolean;
  /** Thickness of the line in points; 1 unless given. The frame of warning signs is thicker the sooner to call. */
  readonly line?: number;
}

const LINE = 1;
/** The drawing is larger than the box on all sides: at its very edge a stroke would be cut thin. */
const SPARE = 1;
/** Sides reach this far into the corners: where two strokes only touch, a printer shows a seam. */
const OVERLAP = 0.3;

interface Corner {
  readonly corner: number;
  /** Middle of the stroke from the edge of the drawing. */
  readonly edge: number;
}

/** Top of the frame without its sides: the start corner round, the end corner square. */
function topPath(field: Field, { corner, edge }: Corner): string {
  const to = field.width - SPARE;
  const rest = corner * (1 - HANDLE);
  const at = (offset: number, top: number): string => point(field, offset, top);
  const bend = `${at(edge, edge + rest)} ${at(edge + rest, edge)} ${at(edge + corner, edge)}`;
  return `M${at(edge, edge + corner)}C${bend}L${at(to, edge)}`;
}

/** Foot of the frame without its sides: the start corner square, the end corner round. */
function footPath(field: Field, { corner, edge }: Corner): string {
  const to = field.width - edge;
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
  readonly line: number;
}

/** An upright line as high as its box, whatever that is. */
function Side({ direction, at, top, bottom, line }: SideProps): ReactElement {
  const middle = SPARE + line / 2;
  const width = 2 * middle;
  return (
    <View style={{ position: 'absolute', top, bottom, width, ...fromStart(direction, at - middle) }}>
      <Svg width={width} height="100%" viewBox={`0 0 ${width} 100`} preserveAspectRatio="none">
        <Path d={`M${middle} 0L${middle} 100`} stroke={palette.ink} strokeWidth={line} />
      </Svg>
    </View>
  );
}

/**
 * The line round a call-out or panel, as an absolutely placed child of the box it frames. Strokes rather than borders,
 * which come out uneven; sides are drawn to the height of the box and reach into the piece above.
 */
export function LeafFrame(props: LeafFrameProps): ReactElement {
  const { direction, width, corner, first, last, line = LINE } = props;
  const field: Field = { width: width + 2 * SPARE, direction };
  const stroke = { stroke: palette.ink, strokeWidth: line };
  const wide = { position: 'absolute', left: -SPARE } as const;
  const half = line / 2;
  const place: Corner = { corner, edge: SPARE + half };
  const height = corner + place.edge;
  const inCorner = corner + half - OVERLAP;
  return (
    <View style={{ position: 'absolute', top: 0, bottom: 0, left: 0, width }}>
      {first ? (
        <Svg style={{ ...wide, top: -SPARE }} width={field.width} height={height}>
          <Path d={topPath(field, place)} {...stroke} />
        </Svg>
      ) : null}
      <Side direction={direction} at={half} top={first ? inCorner : -half} bottom={0} line={line} />
      <Side
        direction={direction}
        at={width - half}
        top={first ? 0 : -half}
        bottom={last ? inCorner : 0}
        line={line}
      />
      {last ? (
        <Svg style={{ ...wide, bottom: -SPARE }} width={field.width} height={height}>
          <Path d={footPath(field, place)} {...stroke} />
        </Svg>
      ) : null}
    </View>
  );
}
