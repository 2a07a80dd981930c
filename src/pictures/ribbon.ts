import type { RibbonPattern } from '../model/calendar.ts';
import type { Direction } from './palette.ts';
import { palette } from './palette.ts';
import type { Box, Field } from './draw-path.ts';
import { boxPath, inset, linePath } from './draw-path.ts';
import { hatchPath } from './hatch.ts';
import type { Mark, Stroke } from './marks.ts';

/** Points. Dots are as long as they are thick. */
export const ribbonSizes = {
  height: 18,
  outline: 0.5,
  /** The line at which a stage begins. */
  begin: 2,
  dots: { size: 1.5, pitch: 6 },
  lines: { thickness: 0.7, pitch: 4 },
  slant: { thickness: 1, pitch: 5 },
} as const;

export interface RibbonShape {
  readonly pattern: RibbonPattern;
  readonly width: number;
  readonly begins: boolean;
  /** Height of the ribbon unless it is a sample in a key. */
  readonly height?: number;
}

/** Level lines over the whole box, `pitch` apart, as many as leave the same white above and below. */
function levels(field: Field, { start, top, width, height }: Box, pitch: number): string {
  const count = Math.floor(height / pitch);
  const first = top + (height - (count - 1) * pitch) / 2;
  return Array.from({ length: count }, (_, index) => {
    const y = first + index * pitch;
    return linePath(field, [
      [start, y],
      [start + width, y],
    ]);
  }).join('');
}

function patternStroke(pattern: RibbonPattern, field: Field, box: Box): Stroke {
  const { dots, lines, slant } = ribbonSizes;
  const stroke = palette.ink;
  switch (pattern) {
    case 'dots': {
      const inner = { ...box, start: box.start + dots.pitch / 2, width: box.width - dots.pitch / 2 };
      const dash = `${dots.size} ${dots.pitch - dots.size}`;
      return { path: levels(field, inner, dots.pitch), stroke, strokeWidth: dots.size, dash };
    }
    case 'lines':
      return { path: levels(field, box, lines.pitch), stroke, strokeWidth: lines.thickness };
    case 'slant':
      return { path: hatchPath(field, box, slant.pitch), stroke, strokeWidth: slant.thickness };
    case 'light':
      return { path: boxPath(field, box), fill: palette.light };
    case 'mid':
      return { path: boxPath(field, box), fill: palette.mid };
  }
}

/**
 * What to eat on some days in a row: a pattern for each stage, told apart without any colour. The line at its foot is
 * that of the row it stands in.
 */
export function drawRibbon(shape: RibbonShape, direction: Direction): Mark {
  const { outline } = ribbonSizes;
  const { width, height = ribbonSizes.height } = shape;
  const field: Field = { width, direction };
  const whole = { start: 0, top: 0, width, height };
  const box = inset(whole, outline / 2);
  const edges = linePath(field, [
    [box.start, height],
    [box.start, box.top],
    [box.start + box.width, box.top],
    [box.start + box.width, height],
  ]);
  return {
    width,
    height,
    strokes: [
      { path: boxPath(field, whole), fill: palette.white },
      patternStroke(shape.pattern, field, whole),
      { path: edges, stroke: palette.ink, strokeWidth: outline },
      ...(shape.begins ? [beginning(field, height)] : []),
    ],
  };
}

/** The line at which a stage begins, by itself. */
export function drawBeginning(width: number, direction: Direction): Mark {
  const { height } = ribbonSizes;
  return { width, height, strokes: [beginning({ width, direction }, height)] };
}

function beginning(field: Field, height: number): Stroke {
  const { begin } = ribbonSizes;
  const path = linePath(field, [
    [begin / 2, 0],
    [begin / 2, height],
  ]);
  return { path, stroke: palette.ink, strokeWidth: begin };
}
