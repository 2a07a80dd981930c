/** A unit as the planner sees it: heights in points and rules, nothing of what is in it. See unit.ts. */
export interface PlanUnit {
  readonly height: number;
  readonly gapBefore: number;
  readonly gapShrink?: number;
  readonly keepWithNext: boolean;
  /** The first or last row but one: rows of a strip stand at least two on a page, unless that leaves one nearly empty. */
  readonly keepsRow?: boolean;
  readonly startsPage?: boolean;
  readonly group?: string;
  /** True of one unit is true of its group. */
  readonly divisible?: boolean;
  /** Height of what is repeated above the unit when a page begins with it; 0 for nothing. */
  readonly continuationHeight: number;
}

export interface Placement {
  readonly unit: number;
  /** Points from the top of the body. */
  readonly top: number;
}

export interface PlannedPage {
  readonly placements: readonly Placement[];
  /** The unit whose continuation stands at the top of the body. */
  readonly continues?: number;
}

/**
 * Prices of what should not be. The first six are each far above all of the next kind together, so that the plan is
 * best first in kept rules, then in pages that are not nearly empty, in rows not alone, in whole groups, in a last page
 * that is not short, in pages at least half full. Then the number of pages counts, and white, most of all that of a page
 * hardly over half full; and that a group which no page can hold, or which may be divided, breaks as seldom as it may,
 * and not above room for its next unit.
 */
const prices = {
  brokenKeep: 1e9,
  nearlyEmpty: 1e7,
  loneRow: 1e6,
  brokenGroup: 1e5,
  shortLast: 1e4,
  underHalf: 1e3,
  page: 1,
  white: 2,
  hardlyHalf: 0.3,
  earlyBreak: 1,
  insideGroup: 0.1,
  shrink: 0.02,
};

/** Sums of heights are compared with this tolerance, in points. */
const tolerance = 0.01;

/** Units of the document that no page can hold, with their continuation. */
export function unitsTooHigh(units: readonly PlanUnit[], bodyHeight: number): readonly number[] {
  return units.flatMap((unit, index) =>
    unit.height + unit.continuationHeight > bodyHeight + tolerance ? [index] : [],
  );
}

/**
 * Which unit stands on which page and where, over the whole document at once: the least sum of squared white of all
 * pages but those before a forced break and the last, which only must not be nearly empty. Pure; no page library.
 * Every unit is placed once, in order. A group that fits a page is kept whole, a unit is kept with the next one, and a
 * gap at the top of a page is dropped. A rule gives way only where the page cannot hold what it binds together.
 */
export function planPages(units: readonly PlanUnit[], bodyHeight: number): readonly PlannedPage[] {
  const starts = bestStarts(units, bodyHeight);
  return starts.map((start, page) =>
    placeUnits(units, { start, end: starts[page + 1] ?? units.length }, bodyHeight),
  );
}

interface Span {
  readonly start: number;
  readonly end: number;
}

interface Extent {
  /** With all gaps at their full height. */
  readonly natural: number;
  /** By how much the gaps may shrink. */
  readonly shrink: number;
}

function extendBy(extent: Extent | undefined, unit: PlanUnit): Extent {
  if (extent === undefined) return { natural: unit.continuationHeight + unit.height, shrink: 0 };
  return {
    natural: extent.natural + unit.gapBefore + unit.height,
    shrink: extent.shrink + (unit.gapShrink ?? 0),
  };
}

/** First units of the pages of the cheapest plan: the cheapest way to every break, page by page. */
function bestStarts(units: readonly PlanUnit[], bodyHeight: number): readonly number[] {
  const breaks = breakPrices(units, bodyHeight);
  const best: { cost: number; from: number }[] = [{ cost: 0, from: 0 }];
  units.forEach((_, start) => {
    const before = best[start]?.cost ?? Number.POSITIVE_INFINITY;
    for (const { end, price } of pagesFrom(units, start, bodyHeight)) {
      const cost = before + price + (breaks[end] ?? 0);
      if (cost < (best[end]?.cost ?? Number.POSITIVE_INFINITY)) best[end] = { cost, from: start };
    }
  });
  const starts: number[] = [];
  for (let end = units.length; end > 0; end = starts[0] ?? 0) starts.unshift(best[end]?.from ?? 0);
  return starts;
}

/** Every page that may begin with unit `start`: where it ends and what it costs by itself. */
function pagesFrom(
  units: readonly PlanUnit[],
  start: number,
  bodyHeight: number,
): readonly { end: number; price: number }[] {
  const pages: { end: number; price: number }[] = [];
  let extent: Extent | undefined;
  for (let end = start + 1; end <= units.length; end += 1) {
    const unit = units[end - 1];
    if (unit === undefined || (end - 1 > start && unit.startsPage === true)) break;
    extent = extendBy(extent, unit);
    if (end - 1 > start && !holds(bodyHeight, extent)) break;
    const next = units[end];
    const free = next === undefined || next.startsPage === true;
    const early = !free && isSameGroup(unit, next) && holds(bodyHeight, extendBy(extent, next));
    pages.push({ end, price: pagePrice(extent, bodyHeight, { free, early }) });
  }
  return pages;
}

function holds(bodyHeight: number, { natural, shrink }: Extent): boolean {
  return natural - shrink <= bodyHeight + tolerance;
}

function isSameGroup(unit: PlanUnit, next: PlanUnit): boolean {
  return unit.group !== undefined && unit.group === next.group;
}

interface PageEnd {
  /** Some white below is nobody's choice, because the document ends or a break is asked for. */
  readonly free: boolean;
  /** It ends within a group, above room for the next unit. */
  readonly early: boolean;
}

function pagePrice({ natural, shrink }: Extent, bodyHeight: number, { free, early }: PageEnd): number {
  const white = Math.max(0, bodyHeight - natural) / bodyHeight;
  const shrunk = shrink === 0 ? 0 : Math.max(0, natural - bodyHeight) / shrink;
  const unfilled = prices.white * white ** 2 + (early ? prices.earlyBreak * white : 0) + emptiness(white);
  return (free ? shortness(white) : unfilled) + prices.shrink * shrunk ** 2 + prices.page;
}

/** A page that is hardly begun looks like a mistake; one under half full merely looks unplanned. */
function emptiness(white: number): number {
  if (white > 0.65) return prices.nearlyEmpty;
  if (white > 0.5) return prices.underHalf;
  return white > 0.45 ? prices.hardlyHalf : 0;
}

/**
 * A last page may be short, but it should hold more than a few lines, and what fits a page is not split to fill it.
 * Heights count the white inside a panel too: so the limit is a little under the three quarters that a reader sees.
 */
function shortness(white: number): number {
  if (white > 0.72) return prices.nearlyEmpty;
  return white > 0.65 ? prices.shortLast : 0;
}

/** What it costs to begin a page with each unit. */
function breakPrices(units: readonly PlanUnit[], bodyHeight: number): readonly number[] {
  const whole = groupsThatFit(units, bodyHeight);
  return units.map((unit, index) => {
    const previous = units[index - 1];
    if (previous === undefined || unit.startsPage === true) return 0;
    const inside = isSameGroup(previous, unit);
    const split = unit.group !== undefined && whole.has(unit.group) ? prices.brokenGroup : prices.insideGroup;
    return keptPrice(previous) + (inside ? split : 0);
  });
}

function keptPrice({ keepWithNext, keepsRow }: PlanUnit): number {
  if (keepWithNext) return prices.brokenKeep;
  return keepsRow === true ? prices.loneRow : 0;
}

function groupsThatFit(units: readonly PlanUnit[], bodyHeight: number): ReadonlySet<string> {
  const extents = new Map<string, Extent>();
  const divisible = new Set<string>();
  for (const unit of units) {
    if (unit.group === undefined) continue;
    if (unit.divisible === true) divisible.add(unit.group);
    const known = extents.get(unit.group);
    extents.set(unit.group, extendBy(known, known === undefined ? { ...unit, continuationHeight: 0 } : unit));
  }
  const fit = [...extents].filter(([group, extent]) => !divisible.has(group) && holds(bodyHeight, extent));
  return new Set(fit.map(([group]) => group));
}

function placeUnits(units: readonly PlanUnit[], { start, end }: Span, bodyHeight: number): PlannedPage {
  const onPage = units.slice(start, end);
  const extent = onPage.reduce<Extent | undefined>(extendBy, undefined) ?? { natural: 0, shrink: 0 };
  const shrunk =
    extent.shrink === 0 ? 0 : Math.min(1, Math.max(0, extent.natural - bodyHeight) / extent.shrink);
  const continuation = onPage[0]?.continuationHeight ?? 0;
  let bottom = continuation;
  const placements = onPage.map((unit, index) => {
    const top = bottom + (index === 0 ? 0 : unit.gapBefore - (unit.gapShrink ?? 0) * shrunk);
    bottom = top + unit.height;
    return { unit: start + index, top };
  });
  return { placements, ...(continuation > 0 ? { continues: start } : {}) };
}
