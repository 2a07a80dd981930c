import { circlePath, short } from './draw-path.ts';
import type { Stroke } from './marks.ts';
import { palette } from './palette.ts';

const LEADER = 0.6;
const DOT = 1.5;

/** From the words of a label to what they name; x from the left edge. */
export type Leader = readonly [from: readonly [number, number], to: readonly [number, number]];

/** Lines from labels to what they name, each with a dot at its end. */
export function drawLeaders(lines: readonly Leader[], width: number): readonly Stroke[] {
  const path = lines
    .map(([[x1, y1], [x2, y2]]) => `M${short(x1)} ${short(y1)}L${short(x2)} ${short(y2)}`)
    .join('');
  const dots = lines.map(([, end]) => circlePath({ width, direction: 'ltr' }, end, DOT)).join('');
  return [
    { path, stroke: palette.ink, strokeWidth: LEADER },
    { path: dots, fill: palette.ink },
  ];
}
