/** Ends of an axis, in the unit of the data. */
export interface AxisEnds {
  readonly min: number;
  readonly max: number;
}

/** How many units of a scale one unit of the data is: 1 for kilograms, about 2.2 for pounds. */
export type UnitsPerDatum = number;

const steps = [1, 2, 5, 10, 20, 25, 30, 40, 50, 60, 80, 100, 120, 150, 200];
const fewest = 5;
const most = 6;
/** Smallest room that an axis shows, so that a difference of a kilogram does not look large. */
const leastSpan = 20;

/**
 * Ends that hold all values with a little room, widened until every scale has 5 or 6 round numbers. All rows of a
 * strip share them, so that one glance down the column compares.
 */
export function chooseEnds(values: readonly number[], scales: readonly UnitsPerDatum[]): AxisEnds {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const span = Math.max(high - low, leastSpan);
  const middle = (low + high) / 2;
  const candidates = Array.from({ length: 40 }, (_, index) => {
    const half = (span / 2) * (1.06 + index * 0.01);
    return { min: Math.max(0, Math.floor(middle - half)), max: Math.ceil(middle + half) };
  });
  const good = candidates.find((ends) => scales.every((scale) => countFits(chooseTicks(ends, scale).length)));
  return good ?? candidates[0] ?? { min: low, max: high };
}

/** Round numbers of a scale within the ends, lowest first: 5 or 6 where a step gives them, else the nearest to that. */
export function chooseTicks(ends: AxisEnds, scale: UnitsPerDatum): readonly number[] {
  const options = steps.map((step) => multiples(ends.min * scale, ends.max * scale, step));
  return options.reduce(
    (best, next) => (distance(next.length) < distance(best.length) ? next : best),
    options[0] ?? [],
  );
}

function multiples(from: number, to: number, step: number): readonly number[] {
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => (first + index) * step);
}

function countFits(count: number): boolean {
  return count >= fewest && count <= most;
}

function distance(count: number): number {
  return countFits(count) ? 0 : count < fewest ? fewest - count : count - most;
}
