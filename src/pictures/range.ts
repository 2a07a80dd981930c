import type { Axis, Picture } from '../model/document.ts';
import type { Direction } from './palette.ts';
import { pictureColumn } from './palette.ts';
import type { Box, Field } from './draw-path.ts';
import { boxPath, leafPath, linePath } from './draw-path.ts';

export type RangePicture = Extract<Picture, { readonly type: 'range' }>;

/** Sizes of the range bar in points. The plot leaves the same room free at each side of its column. */
export interface RangeSizes {
  readonly width: number;
  readonly plotStart: number;
  readonly plotWidth: number;
  readonly height: number;
  readonly bandHeight: number;
  readonly bandCorner: number;
  readonly average: number;
  readonly halo: number;
  readonly whisker: number;
  readonly cap: number;
  readonly change: number;
  readonly today: number;
  /** Room kept between the not-known leaf and the line of today. */
  readonly beforeToday: number;
  /** A grid line nearer than this to today would read as part of it. */
  readonly nearToday: number;
}

/** In the picture column of a strip. */
export const rangeSizes: RangeSizes = {
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
  beforeToday: 7,
  nearToday: 5,
};

/** Over the whole width of a page in large print. */
export const wideRange: RangeSizes = {
  width: 522,
  plotStart: 24,
  plotWidth: 474,
  height: 42,
  bandHeight: 22,
  bandCorner: 12,
  average: 7,
  halo: 2.2,
  whisker: 3,
  cap: 14,
  change: 1.8,
  today: 2,
  beforeToday: 10,
  nearToday: 8,
};

/** Kilograms → distance from the start edge of the picture column. Values off the axis are held at its ends. */
export function placeOnAxis(
  axis: Pick<Axis, 'min' | 'max'>,
  kilograms: number,
  { plotStart, plotWidth }: RangeSizes = rangeSizes,
): number {
  const span = axis.max - axis.min;
  const share = span > 0 ? (kilograms - axis.min) / span : 0.5;
  return plotStart + Math.min(Math.max(share, 0), 1) * plotWidth;
}

/** Grid lines of an axis, without those that would crowd the line of today. */
export function gridOffsets(axis: Axis, sizes: RangeSizes = rangeSizes): readonly number[] {
  const today = placeOnAxis(axis, axis.today.at, sizes);
  const offsets = axis.top.ticks.map((tick) => placeOnAxis(axis, tick.at, sizes));
  return offsets.filter((offset) => Math.abs(offset - today) >= sizes.nearToday);
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

function whiskerPath(field: Field, [low, high]: readonly [number, number], sizes: RangeSizes): string {
  const middle = sizes.height / 2;
  const cap = sizes.cap / 2;
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

export interface RangeField {
  readonly sizes: RangeSizes;
  readonly direction: Direction;
}

/** Paths of one bar, in the coordinates of the picture column. */
export function drawRange(picture: RangePicture, axis: Axis, { sizes, direction }: RangeField): RangeBar {
  const field: Field = { width: sizes.width, direction };
  const { height, bandHeight, average: thick, halo } = sizes;
  const at = placeOnAxis(axis, picture.average, sizes);
  const today = placeOnAxis(axis, axis.today.at, sizes);
  const known = picture.low !== undefined && picture.high !== undefined;
  const low = placeOnAxis(axis, picture.low ?? picture.average, sizes);
  const high = placeOnAxis(axis, picture.high ?? picture.average, sizes);
  const band: Box = { start: low, top: (height - bandHeight) / 2, width: high - low, height: bandHeight };
  const bar: Box = { start: at - thick / 2, top: 0, width: thick, height };
  return {
    width: sizes.width,
    height,
    change: linePath(field, [
      [at, height / 2],
      [today, height / 2],
    ]),
    band: known && picture.meaning === 'spread' ? leafPath(field, band, sizes.bandCorner) : '',
    whisker: known && picture.meaning === 'uncertainty' ? whiskerPath(field, [low, high], sizes) : '',
    today: linePath(field, [
      [today, 0],
      [today, height],
    ]),
    halo: boxPath(field, { ...bar, start: bar.start - halo, width: thick + 2 * halo }),
    average: boxPath(field, bar),
  };
}

/** The leaf that stands where a bar would be: from the start of the plot to just before today. */
export function unknownRangeBox(axis: Axis, sizes: RangeSizes): Box {
  const { plotStart, plotWidth, height, bandHeight, beforeToday } = sizes;
  const room = placeOnAxis(axis, axis.today.at, sizes) - beforeToday - plotStart;
  const width = room >= plotWidth / 3 ? room : plotWidth;
  return { start: plotStart, top: (height - bandHeight) / 2, width, height: bandHeight };
}
