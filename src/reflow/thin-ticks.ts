import type { Tick, WeightLine } from '../model/document.ts';

/** Values that an axis has room for beside a line in large print, each level with its own line of the grid. */
const MOST_VALUES = 3;

/** A weight line with every second value of its axis where it has more than there is room for. */
export function thinTicks(line: WeightLine): WeightLine {
  return { ...line, valueTicks: everySecond(line.valueTicks) };
}

function everySecond(ticks: readonly Tick[]): readonly Tick[] {
  return ticks.length > MOST_VALUES ? everySecond(ticks.filter((_, index) => index % 2 === 0)) : ticks;
}
