import type { WeightLine, WeightPoint } from '../model/document.ts';
import type { Stroke } from './marks.ts';
import { palette } from './palette.ts';
import type { Direction } from './palette.ts';
import type { Box, Field } from './draw-path.ts';
import { inset, leafPath, linePath, roundedPath } from './draw-path.ts';

/** Sizes of a weight line in points: alone over the whole width, or two in a row. */
export interface LineSizes {
  readonly width: number;
  readonly height: number;
  readonly plotStart: number;
  readonly plotWidth: number;
  readonly plotHeight: number;
  readonly corner: number;
  /** Where the labels of today and of the time after stand: beside the plot, or in it where that has to be small. */
  readonly labels: 'beside' | 'inside';
  /** Whether labels in the plot lie on a plate, so that no line of the grid runs through them. */
  readonly plates: boolean;
  /** Greatest width of those labels. */
  readonly labelWidth: number;
  /** Room in the plot above the highest value: a label stands there when labels are inside. */
  readonly headroom: number;
  /** Room in the plot below the lowest value, for its label. */
  readonly footroom: number;
  readonly mark: number;
  readonly stroke: number;
}

export const largeLine: LineSizes = {
  width: 492,
  height: 176,
  plotStart: 44,
  plotWidth: 374,
  plotHeight: 154,
  corner: 14,
  labels: 'beside',
  plates: false,
  labelWidth: 66,
  headroom: 9,
  footroom: 20,
  mark: 9,
  stroke: 2.4,
};

export const smallLine: LineSizes = {
  width: 234,
  height: 134,
  plotStart: 32,
  plotWidth: 202,
  plotHeight: 114,
  corner: 14,
  labels: 'inside',
  plates: false,
  labelWidth: 84,
  headroom: 20,
  footroom: 20,
  mark: 7,
  stroke: 2,
};

/** Over the whole width of a page in large print. */
export const wideLine: LineSizes = {
  width: 522,
  height: 150,
  plotStart: 60,
  plotWidth: 462,
  plotHeight: 122,
  corner: 16,
  labels: 'inside',
  plates: true,
  labelWidth: 190,
  headroom: 28,
  footroom: 28,
  mark: 11,
  stroke: 3,
};

/** Room inside the plot after the last time. */
const AFTER_LAST_TIME = 6;
const MARK_HALO = 1.3;
const NEAR_TODAY = 5;

type Scale = Pick<WeightLine, 'min' | 'max' | 'timeTicks' | 'points'>;

function lastMonth(line: Scale): number {
  const ticks = line.timeTicks.map((tick) => tick.at);
  return Math.max(1, ...ticks, ...line.points.map((at) => at.months));
}

/** Months after the start → offset from the start edge; true to length. */
export function placeMonth(line: Scale, sizes: LineSizes, months: number): number {
  return sizes.plotStart + (months / lastMonth(line)) * (sizes.plotWidth - AFTER_LAST_TIME);
}

/** Kilograms → distance from the top of the plot. */
export function placeWeight(line: Scale, sizes: LineSizes, kilograms: number): number {
  const span = line.max - line.min;
  const share = span > 0 ? (line.max - kilograms) / span : 0.5;
  const room = sizes.plotHeight - sizes.headroom - sizes.footroom;
  return sizes.headroom + Math.min(Math.max(share, 0), 1) * room;
}

type Spot = readonly [number, number];

interface BandPoint {
  readonly months: number;
  readonly low: number;
  readonly high: number;
}

/** Neighbouring times that all have a spread; a time without one cuts the band, for nothing is known there. */
function bandRuns(line: WeightLine): readonly (readonly BandPoint[])[] {
  const start: BandPoint = { months: 0, low: line.today.at, high: line.today.at };
  const runs: BandPoint[][] = [[start]];
  for (const at of line.points) {
    if (at.low === undefined || at.high === undefined) runs.push([]);
    else runs.at(-1)?.push({ months: at.months, low: at.low, high: at.high });
  }
  return runs.filter((run) => run.length > 1);
}

function drawBand(line: WeightLine, sizes: LineSizes, field: Field): string {
  const spot = (months: number, value: number): Spot => [
    placeMonth(line, sizes, months),
    placeWeight(line, sizes, value),
  ];
  return bandRuns(line)
    .map((run) => {
      const upper = run.map((at) => spot(at.months, at.high));
      const lower = run.map((at) => spot(at.months, at.low)).reverse();
      return `${linePath(field, [...upper, ...lower])}Z`;
    })
    .join('');
}

function markAt([x, y]: Spot, size: number): Box {
  return { start: x - size / 2, top: y - size / 2, width: size, height: size };
}

export interface LineDrawing {
  readonly plot: string;
  readonly grid: string;
  readonly today: string;
  readonly band: string;
  readonly line: string;
  readonly after: string;
  readonly halos: string;
  readonly marks: string;
}

/** Where the measured values stand, the start (today) first. */
export function measuredSpots(line: WeightLine, sizes: LineSizes): readonly Spot[] {
  const start: Pick<WeightPoint, 'months' | 'at'> = { months: 0, at: line.today.at };
  return [start, ...line.points].map(({ months, at }) => [
    placeMonth(line, sizes, months),
    placeWeight(line, sizes, at),
  ]);
}

/** Paths of a weight line. Nothing solid lies past the last measured time. */
export function drawWeightLine(line: WeightLine, sizes: LineSizes, direction: Direction): LineDrawing {
  const field: Field = { width: sizes.width, direction };
  const spots = measuredSpots(line, sizes);
  const end = sizes.plotStart + sizes.plotWidth;
  const todayTop = placeWeight(line, sizes, line.today.at);
  const plot: Box = { start: sizes.plotStart, top: 0, width: sizes.plotWidth, height: sizes.plotHeight };
  const gridTops = line.valueTicks.map((tick) => placeWeight(line, sizes, tick.at));
  const [lastX, lastY] = spots.at(-1) ?? [sizes.plotStart, todayTop];
  const dashTo = end - AFTER_LAST_TIME;
  const dashed = line.unknownAfter !== undefined && line.points.length > 0 && dashTo - lastX > sizes.mark;
  return {
    plot: roundedPath(field, plot, { startTop: sizes.corner, endBottom: sizes.corner }),
    grid: gridTops
      .filter((top) => Math.abs(top - todayTop) >= NEAR_TODAY)
      .map((top) =>
        linePath(field, [
          [sizes.plotStart, top],
          [end, top],
        ]),
      )
      .join(''),
    today: linePath(field, [
      [sizes.plotStart, todayTop],
      [end, todayTop],
    ]),
    band: drawBand(line, sizes, field),
    line: spots.length > 1 ? linePath(field, spots) : '',
    after: dashed
      ? linePath(field, [
          [lastX + sizes.mark / 2 + 2, lastY],
          [dashTo, lastY],
        ])
      : '',
    halos: spots
      .map((spot) => leafPath(field, inset(markAt(spot, sizes.mark), -MARK_HALO), sizes.mark / 2))
      .join(''),
    marks: spots.map((spot) => leafPath(field, markAt(spot, sizes.mark), sizes.mark / 2)).join(''),
  };
}

/** What is painted of a weight line, the lowest first. */
export function strokesOfLine(line: WeightLine, sizes: LineSizes, direction: Direction): readonly Stroke[] {
  const drawn = drawWeightLine(line, sizes, direction);
  return [
    { path: drawn.plot, fill: palette.pale },
    { path: drawn.band, fill: palette.light },
    { path: drawn.grid, stroke: palette.grid, strokeWidth: 0.6 },
    { path: drawn.today, stroke: palette.ink, strokeWidth: 1.5 },
    { path: drawn.after, stroke: palette.ink, strokeWidth: 1.2, dash: '3 3' },
    { path: drawn.line, stroke: palette.ink, strokeWidth: sizes.stroke },
    { path: drawn.halos, fill: palette.pale },
    { path: drawn.marks, fill: palette.ink },
  ];
}
