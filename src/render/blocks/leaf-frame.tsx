import { Path, Svg, View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import { acrossField, HANDLE, point } from '../pictures/draw-path.ts';
import type { Field } from '../pictures/draw-path.ts';
import { palette } from '../theme.ts';
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

/** Top of the frame: the start corner round, the end corner square. */
function topPath(field: Field, corner: number): string {
  const from = LINE / 2;
  const to = field.width - LINE / 2;
  const rest = corner * (1 - HANDLE);
  const at = (offset: number, top: number): string => point(field, offset, top);
  return [
    `M${at(from, corner)}C${at(from, rest)} ${at(from + rest, from)} ${at(from + corner, from)}`,
    `L${at(to, from)}L${at(to, corner)}`,
  ].join('');
}

/** Foot of the frame: the start corner square, the end corner round. */
function footPath(field: Field, corner: number): string {
  const from = LINE / 2;
  const to = field.width - LINE / 2;
  const bottom = corner - LINE / 2;
  const rest = corner * (1 - HANDLE);
  const at = (offset: number, top: number): string => point(field, offset, top);
  return [
    `M${at(from, 0)}L${at(from, bottom)}L${at(to - corner, bottom)}`,
    `C${at(to - rest, bottom)} ${at(to, bottom - rest)} ${at(to, bottom - corner)}L${at(to, 0)}`,
  ].join('');
}

function sidePath(field: Field): string {
  const x = [LINE / 2, field.width - LINE / 2].map((offset) => acrossField(field, offset));
  return x.map((at) => `M${at} 0L${at} 100`).join('');
}

/**
 * The line round a call-out or panel, as an absolutely placed child of the box it frames. Strokes rather than borders,
 * which come out uneven; sides are drawn to the height of the box, whatever it is.
 */
export function LeafFrame({ direction, width, corner, first, last }: LeafFrameProps): ReactElement {
  const field: Field = { width, direction };
  const stroke = { stroke: palette.ink, strokeWidth: LINE };
  const sides = {
    position: 'absolute',
    left: 0,
    width,
    top: first ? corner : 0,
    bottom: last ? corner : 0,
  } as const;
  return (
    <View style={{ position: 'absolute', top: 0, bottom: 0, left: 0, width }}>
      {first ? (
        <Svg style={{ position: 'absolute', top: 0, left: 0 }} width={width} height={corner}>
          <Path d={topPath(field, corner)} {...stroke} />
        </Svg>
      ) : null}
      <View style={sides}>
        <Svg width={width} height="100%" viewBox={`0 0 ${width} 100`} preserveAspectRatio="none">
          <Path d={sidePath(field)} {...stroke} />
        </Svg>
      </View>
      {last ? (
        <Svg style={{ position: 'absolute', bottom: 0, left: 0 }} width={width} height={corner}>
          <Path d={footPath(field, corner)} {...stroke} />
        </Svg>
      ) : null}
    </View>
  );
}
