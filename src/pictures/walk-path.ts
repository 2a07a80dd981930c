type Spot = readonly [number, number];

/** A place on a path, and the way the path goes there, in radians: 0 to the right, a quarter turn downwards. */
export interface Step {
  readonly x: number;
  readonly y: number;
  readonly turn: number;
}

/** Straight pieces that a curve is followed in: finer than any printer at the sizes that are drawn. */
const PIECES = 32;

/** Points along a path of absolute moves, lines and curves (see `drawnPathPattern`), close enough to be joined by lines. */
function tracePath(path: string): readonly Spot[] {
  const points: Spot[] = [];
  for (const [, command = '', numbers = ''] of path.matchAll(/([MLC])([^MLCZ]*)/g)) {
    const spots = inPairs(numbers.trim().split(' ').map(Number));
    if (command !== 'C') points.push(...spots);
    else
      for (let index = 0; index + 2 < spots.length; index += 3)
        points.push(...curve(points.at(-1), spots.slice(index, index + 3)));
  }
  return points;
}

function inPairs(numbers: readonly number[]): readonly Spot[] {
  return Array.from({ length: Math.floor(numbers.length / 2) }, (_, index) => [
    numbers[2 * index] ?? 0,
    numbers[2 * index + 1] ?? 0,
  ]);
}

/** A cubic Bézier curve without its first point. */
function curve(from: Spot = [0, 0], [a = from, b = from, to = from]: readonly Spot[]): readonly Spot[] {
  return Array.from({ length: PIECES }, (_, index): Spot => {
    const t = (index + 1) / PIECES;
    const s = 1 - t;
    const at = (axis: 0 | 1): number =>
      s ** 3 * from[axis] + 3 * s * s * t * a[axis] + 3 * s * t * t * b[axis] + t ** 3 * to[axis];
    return [at(0), at(1)];
  });
}

/** Places on a path at equal distances along it, the first `start` after its beginning; none beyond its end. */
export function walkPath(path: string, { start, step }: { start: number; step: number }): readonly Step[] {
  const points = tracePath(path);
  const steps: Step[] = [];
  let walked = 0;
  points.slice(1).forEach(([x2, y2], index) => {
    const [x1, y1] = points[index] ?? [x2, y2];
    const length = Math.hypot(x2 - x1, y2 - y1);
    const turn = Math.atan2(y2 - y1, x2 - x1);
    for (let next = start + steps.length * step; length > 0 && next <= walked + length; next += step) {
      const share = (next - walked) / length;
      steps.push({ x: x1 + (x2 - x1) * share, y: y1 + (y2 - y1) * share, turn });
    }
    walked += length;
  });
  return steps;
}

/** The last place on a path. */
export function endOfPath(path: string): Step {
  const points = tracePath(path);
  const [x, y] = points.at(-1) ?? [0, 0];
  const [fromX, fromY] = points.at(-2) ?? [x, y];
  return { x, y, turn: Math.atan2(y - fromY, x - fromX) };
}
