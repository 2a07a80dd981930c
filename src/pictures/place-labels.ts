import type { Box } from './draw-path.ts';

/** A label wanted at a place along a line, with its length along that line. */
export interface WantedLabel {
  readonly centre: number;
  readonly length: number;
}

export interface LabelRoom {
  readonly low: number;
  readonly high: number;
  /** Least white between two labels. */
  readonly gap: number;
}

/**
 * Starts of labels centred on their places, moved apart where they would touch. Later labels keep their place and
 * push the earlier ones back, until the room ends; then the first ones push forward. In the order given.
 */
export function spreadLabels(wanted: readonly WantedLabel[], room: LabelRoom): readonly number[] {
  const order = wanted.map((label, index) => ({ ...label, index })).sort((a, b) => a.centre - b.centre);
  const starts = wanted.map(({ centre, length }) => centre - length / 2);
  let limit = room.high;
  for (const { index, length } of [...order].reverse()) {
    const start = Math.min(starts[index] ?? 0, limit - length);
    starts[index] = start;
    limit = start - room.gap;
  }
  let least = room.low;
  for (const { index, length } of order) {
    const start = Math.max(starts[index] ?? 0, least);
    starts[index] = start;
    least = start + length + room.gap;
  }
  return starts;
}

type Spot = readonly [number, number];

interface Size {
  readonly width: number;
  readonly height: number;
}

/** Distance of a value from its mark. */
const AWAY = 6;

/** Places around a mark, the best liked first. */
function candidates([x, y]: Spot, size: Size): readonly Box[] {
  const { width, height } = size;
  const above = y - AWAY - height;
  const below = y + AWAY;
  const spots: readonly Spot[] = [
    [x - width / 2, above],
    [x - width / 2, below],
    [x + AWAY, below - 2],
    [x + AWAY, above + 2],
    [x - width - AWAY, below - 2],
    [x - width / 2, below + height - 3],
    [x - width / 2, above - height + 3],
    [x + AWAY, below + height - 5],
  ];
  return spots.map(([start, top]) => ({ start, top, width, height }));
}

function overlap(a: Box, b: Box): number {
  const across = Math.min(a.start + a.width, b.start + b.width) - Math.max(a.start, b.start);
  const down = Math.min(a.top + a.height, b.top + b.height) - Math.max(a.top, b.top);
  return across > 0 && down > 0 ? across * down : 0;
}

/** How much of a box lies outside the plot. */
function outside(box: Box, plot: Box): number {
  return box.width * box.height - overlap(box, plot);
}

/** Area of a box that a line runs through, roughly: boxes of 2 set along each piece. */
function crossed(box: Box, line: readonly Spot[]): number {
  let area = 0;
  line.slice(1).forEach(([x2, y2], index) => {
    const [x1, y1] = line[index] ?? [x2, y2];
    const steps = Math.max(1, Math.ceil(Math.hypot(x2 - x1, y2 - y1) / 2));
    for (let step = 0; step <= steps; step += 1) {
      const along = step / steps;
      const x = x1 + (x2 - x1) * along;
      const y = y1 + (y2 - y1) * along;
      area += overlap(box, { start: x - 1, top: y - 1, width: 2, height: 2 });
    }
  });
  return area;
}

/** A value nearer to another mark than to its own would be read as that mark's. */
function misleads(box: Box, own: Spot, marks: readonly Spot[]): boolean {
  const middle: Spot = [box.start + box.width / 2, box.top + box.height / 2];
  const away = ([x, y]: Spot): number => Math.hypot(x - middle[0], y - middle[1]);
  return marks.some((mark) => mark !== own && away(mark) < away(own) + 1);
}

/** The first of some boxes that covers least of what is taken and of the line, and lies most inside the plot. */
export function leastTouching(
  boxes: readonly Box[],
  taken: readonly Box[],
  { plot, line }: Pick<LabelScene, 'plot' | 'line'>,
): Box | undefined {
  const priced = boxes.map((box) => {
    const touched = taken.reduce((sum, other) => sum + overlap(box, other), 0);
    return { box, price: touched + crossed(box, line) + 2 * outside(box, plot) };
  });
  const least = Math.min(...priced.map(({ price }) => price));
  return priced.find(({ price }) => price <= least + 0.01)?.box;
}

export interface LabelScene {
  readonly plot: Box;
  readonly line: readonly Spot[];
  /** Boxes that must stay free, for example the line of today. */
  readonly taken: readonly Box[];
}

/** Places the value of each spot beside its mark so that values, marks and lines stay clear of each other. */
export function placeValues(
  spots: readonly Spot[],
  sizes: readonly Size[],
  scene: LabelScene,
): readonly Box[] {
  const marks = spots.map(([x, y]): Box => ({ start: x - 5, top: y - 5, width: 10, height: 10 }));
  const placed: Box[] = [];
  spots.forEach((spot, index) => {
    const size = sizes[index] ?? { width: 0, height: 0 };
    const busy = [...placed, ...marks, ...scene.taken];
    const priced = candidates(spot, size).map((box, rank) => {
      const touched = busy.reduce((sum, other) => sum + overlap(box, other), 0);
      const doubt = misleads(box, spot, spots) ? 200 : 0;
      const price = 4 * touched + 8 * outside(box, scene.plot) + 3 * crossed(box, scene.line) + doubt + rank;
      return { box, price };
    });
    const [first, ...rest] = priced;
    if (first === undefined) return;
    placed.push(rest.reduce((best, next) => (next.price < best.price ? next : best), first).box);
  });
  return placed;
}
