/** A unit as the planner sees it: heights in points and rules, nothing of what is in it. See unit.ts. */
export interface PlanUnit {
  readonly height: number;
  readonly gapBefore: number;
  readonly gapShrink?: number;
  readonly keepWithNext: boolean;
  /** The first or last row but one: rows of a strip stand at least two on a page, unless that leaves one nearly empty. */
  readonly keepsRow?: boolean;
  /** A note on what stands before it: a page should hold more than such. */
  readonly explains?: boolean;
  readonly startsPage?: boolean;
  readonly group?: string;
  readonly topic?: string;
  /** True of one unit is true of its group. */
  readonly divisible?: boolean;
  /** Height of what is repeated above the unit when a page begins with it; 0 for nothing. */
  readonly continuationHeight: number;
}

/** Sums of heights are compared with this tolerance, in points. */
export const tolerance = 0.01;

export interface Extent {
  /** With all gaps at their full height. */
  readonly natural: number;
  /** By how much the gaps may shrink. */
  readonly shrink: number;
}

export function extendBy(extent: Extent | undefined, unit: PlanUnit): Extent {
  if (extent === undefined) return { natural: unit.continuationHeight + unit.height, shrink: 0 };
  return {
    natural: extent.natural + unit.gapBefore + unit.height,
    shrink: extent.shrink + (unit.gapShrink ?? 0),
  };
}

export function holds(bodyHeight: number, { natural, shrink }: Extent): boolean {
  return natural - shrink <= bodyHeight + tolerance;
}

export function isSameGroup(unit: PlanUnit | undefined, next: PlanUnit | undefined): boolean {
  return unit?.group !== undefined && unit.group === next?.group;
}

export function isSameTopic(unit: PlanUnit | undefined, next: PlanUnit | undefined): boolean {
  return unit?.topic !== undefined && unit.topic === next?.topic;
}
