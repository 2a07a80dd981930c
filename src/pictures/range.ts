import type { Axis, Picture } from '../model/document.ts';
import type { Direction } from './palette.ts';
import { pictureColumn } from './palette.ts';
import type { Box, Field } from './draw-path.ts';
import { boxPath, leafPath, linePath } from './draw-path.ts';

export type RangePicture = Extract<Picture, { readonly type: 'range' }>;

/** Sizes of the range bar in points. The plot leaves 14 free at each side of the picture column. */
export const rangeSizes = {
  width: pictureColumn,
  plotStart: 14,
  plotWidth: 164,
  height: 30,
  bandHeight: 18,
  bandCorner: 8,
  average: 4.4,
  halo: 1.5,
  whisker: 2,
  cap: 8,
  change: 1.2,
  today: 1.5,
  /** Room kept between the not-known leaf and the line of today. */
  beforeToday: 7,
  /** A grid line nearer than this to today would read as part of it. */
  nearToday: 5,
} as const;

/** Kilograms → distance from the start edge of the picture column. Values off the axis are held at its ends. */
export function placeOnAxis(axis: Pick<Axis, 'min' | 'max'>, kilograms: number): number {
  const span = axis.max - axis.min;
  const share = span > 0 ? (kilograms - axis.min) / span : 0.5;
  return rangeSizes.plotStart + Math.min(Math.max(share, 0), 1) * rangeSizes.plotWidth;
}

/** Grid lines of an axis, without those that would crowd the line of today. */
export function gridOffsets(axis: Axis): readonly number[] {
  const today = placeOnAxis(axis, axis.today.at);
  const offsets = axis.top.ticks.map((tick) => placeOnAxis(axis, tick.at));
  return offsets.filter((offset) => Math.abs(offset - today) >= rangeSizes.nearToday);
}

export interface RangeBar {
  readonly width: number;
  readonly height: number;
  /** Thin line from the average to today. */
  readonly change: string;
  /** Where people end up; only from a spread of people. */
  readonly band: string;
  /** How sure the average is; only from an uncertainty. Never together with a band. */
  readonly whisker: string;
  /** The piece of the line of today that lies over the band. */
  readonly today: string;
  readonly halo: string;
  readonly average: string;
}

function whiskerPath(field: Field, low: number, high: number): string {
  const middle = rangeSizes.height / 2;
  const cap = rangeSizes.cap / 2;
  const ends = [low, high].map((at) =>
    linePath(field, [
      [at, middle - cap],
      [at, middle + cap],
    ]),
  );
  return (
    linePath(field, [
      [low, middle],
      [high, middle],
    ]) + ends.join('')
  );
}

/** Paths of one bar, in the coordinates of the picture column. */
export function drawRange(picture: RangePicture, axis: Axis, direction: Direction): RangeBar {
  const field: Field = { width: rangeSizes.width, direction };
  const { height, bandHeight, average: thick, halo } = rangeSizes;
  const at = placeOnAxis(axis, picture.average);
  const today = placeOnAxis(axis, axis.today.at);
  const known = picture.low !== undefined && picture.high !== undefined;
  const low = placeOnAxis(axis, picture.low ?? picture.average);
  const high = placeOnAxis(axis, picture.high ?? picture.average);
  const band: Box = { start: low, top: (height - bandHeight) / 2, width: high - low, height: bandHeight };
  const bar: Box = { start: at - thick / 2, top: 0, width: thick, height };
  return {
    width: rangeSizes.width,
    height,
    change: linePath(field, [
      [at, height / 2],
      [today, height / 2],
    ]),
    band: known && picture.meaning === 'spread' ? leafPath(field, band, rangeSizes.bandCorner) : '',
    whisker: known && picture.meaning === 'uncertainty' ? whiskerPath(field, low, high) : '',
    today: linePath(field, [
      [today, 0],
      [today, height],
    ]),
    halo: boxPath(field, { ...bar, start: bar.start - halo, width: thick + 2 * halo }),
    average: boxPath(field, bar),
  };
}

/** The leaf that stands where a bar would be: from the start of the plot to just before today. */
export function unknownRangeBox(axis: Axis): Box {
  const { plotStart, plotWidth, height, bandHeight, beforeToday } = rangeSizes;
  const room = placeOnAxis(axis, axis.today.at) - beforeToday - plotStart;
  const width = room >= plotWidth / 3 ? room : plotWidth;
  return { start: plotStart, top: (height - bandHeight) / 2, width, height: bandHeight };
}
