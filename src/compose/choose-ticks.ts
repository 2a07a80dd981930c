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
/** Guards against a tick lost to the last place of a division. */
const tiny = 1e-9;

/** Room at the lower and upper end, as parts of the span; the least room in all comes first. */
const margins = Array.from({ length: 25 * 25 }, (_, index) => ({
  low: 0.03 + 0.02 * (index % 25),
  high: 0.03 + 0.02 * Math.floor(index / 25),
})).sort((a, b) => a.low + a.high - (b.low + b.high));

/**
 * Ends that hold all values with a little room, widened until every scale has 5 or 6 round numbers. All rows of a
 * strip share them, so that one glance down the column compares.
 */
export function chooseEnds(values: readonly number[], scales: readonly UnitsPerDatum[]): AxisEnds {
  const [lowest, highest] = [Math.min(...values), Math.max(...values)];
  const span = Math.max(highest - lowest, leastSpan);
  const middle = (lowest + highest) / 2;
  const candidates = margins.map(({ low, high }) => ({
    min: Math.max(0, middle - span * (0.5 + low)),
    max: middle + span * (0.5 + high),
  }));
  const good = candidates.find((ends) => scales.every((scale) => distance(countOf(ends, scale)) === 0));
  return good ?? candidates[0] ?? { min: lowest, max: highest };
}

/** Round numbers of a scale within the ends, lowest first: 5 or 6 where a step gives them, else the nearest to that. */
export function chooseTicks(ends: AxisEnds, scale: UnitsPerDatum): readonly number[] {
  const step = stepOf(ends, scale);
  const first = firstMultiple(ends, scale, step);
  return Array.from({ length: countMultiples(ends, scale, step) }, (_, index) => (first + index) * step);
}

function stepOf(ends: AxisEnds, scale: UnitsPerDatum): number {
  const nearness = (step: number): number => distance(countMultiples(ends, scale, step));
  return steps.reduce((best, next) => (nearness(next) < nearness(best) ? next : best));
}

function countOf(ends: AxisEnds, scale: UnitsPerDatum): number {
  return countMultiples(ends, scale, stepOf(ends, scale));
}

function firstMultiple({ min }: AxisEnds, scale: UnitsPerDatum, step: number): number {
  return Math.ceil((min * scale) / step - tiny);
}

function countMultiples(ends: AxisEnds, scale: UnitsPerDatum, step: number): number {
  const last = Math.floor((ends.max * scale) / step + tiny);
  return Math.max(0, last - firstMultiple(ends, scale, step) + 1);
}

function distance(count: number): number {
  if (count >= fewest && count <= most) return 0;
  return count < fewest ? fewest - count : count - most;
}
