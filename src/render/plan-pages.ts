import { breakPrices, priceOfPage } from './page-prices.ts';
import { extendBy, holds, tolerance } from './plan-unit.ts';
import type { Extent, PlanUnit } from './plan-unit.ts';

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
    pages.push({ end, price: priceOfPage(units, { start, end, extent }, bodyHeight) });
  }
  return pages;
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
