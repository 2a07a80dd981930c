import type { Box, Field } from './draw-path.ts';
import { linePath } from './draw-path.ts';

/** Lines at 45° across a box, `pitch` points apart along its foot; none reaches over the edges. */
export function hatchPath(field: Field, box: Box, pitch: number): string {
  const { start, top, width, height } = box;
  const lines: string[] = [];
  for (let foot = pitch - height; foot < width; foot += pitch) {
    const from = Math.max(0, foot);
    const to = Math.min(width, foot + height);
    const at = (offset: number): readonly [number, number] => [
      start + offset,
      top + height - (offset - foot),
    ];
    lines.push(linePath(field, [at(from), at(to)]));
  }
  return lines.join('');
}
