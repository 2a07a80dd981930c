import { extendBy, holds, isSameGroup, isSameTopic } from './plan-unit.ts';
import type { Extent, PlanUnit } from './plan-unit.ts';

/**
 * Prices of what should not be. The first five are each far above all of the next kind together, so that the plan is
 * best first in kept rules, then in pages that are not nearly empty, in rows and notes not alone, in whole groups, in a
 * last page that is not short. Then pages under half full are weighed together with groups divided above room for all the rest of
 * them: the emptier the page the worse, and worst if what follows had room on it. Only then the number of pages counts,
 * that notes stand with the last row of what they explain, and white: most of all what is over a third of a page, where it
 * begins to look like a mistake, then that of a page hardly over half full, then what is over a quarter of a page above room
 * for what follows, since a reader sees no reason for it; and that a group which no page can hold, or which may be divided,
 * breaks as seldom as it may, and not above room for its next unit.
 */
const prices = {
  brokenKeep: 1e9,
  nearlyEmpty: 1e7,
  loneRow: 1e6,
  brokenGroup: 1e5,
  shortLast: 1e4,
  needlessWhite: 100,
  needlessBreak: 45,
  underHalf: 20,
  whiteUnderHalf: 600,
  partedNotes: 2,
  page: 1,
  white: 2,
  whiteOverThird: 5,
  whiteAboveRoom: 2,
  hardlyHalf: 0.3,
  earlyBreak: 1,
  insideGroup: 0.1,
  shrink: 0.02,
};

/** Units of a document from one page break to the next. */
export interface PageSpan {
  /** The first unit. */
  readonly start: number;
  /** The unit that begins the next page, or the number of units. */
  readonly end: number;
  readonly extent: Extent;
}

/** What a page costs by itself, without the break that it begins with. */
export function priceOfPage(units: readonly PlanUnit[], page: PageSpan, bodyHeight: number): number {
  const { natural, shrink } = page.extent;
  const white = Math.max(0, bodyHeight - natural) / bodyHeight;
  const shrunk = shrink === 0 ? 0 : Math.max(0, natural - bodyHeight) / shrink;
  const next = units[page.end];
  const isFree = next === undefined || next.startsPage === true;
  const filled = isFree ? shortness(white) : priceOfWhite(white, endOf(units, page, bodyHeight));
  return filled + loneNotes(units, page) + prices.shrink * shrunk ** 2 + prices.page;
}

/** Notes on a page by themselves have nothing there that they explain: it is as if a row stood alone. */
function loneNotes(units: readonly PlanUnit[], { start, end }: PageSpan): number {
  const isNote = (unit: PlanUnit | undefined): boolean => unit?.explains === true;
  return isNote(units[start]) && units.slice(start, end).every(isNote) ? prices.loneRow : 0;
}

/** How a page ends whose white below is somebody's choice. */
interface PageEnd {
  /** What follows had room on it, with all that may not be parted from it. */
  readonly room: boolean;
  /** It ends within a group, above room for the next unit. */
  readonly early: boolean;
  /** It ends within a group or a topic, above room for all the rest of it. */
  readonly needless: boolean;
}

function endOf(units: readonly PlanUnit[], { end, extent }: PageSpan, bodyHeight: number): PageEnd {
  const hasRoom = (isTied: Tie): boolean => holds(bodyHeight, withTied(units, { end, extent }, isTied));
  const inside = isSameGroup(units[end - 1], units[end]);
  return {
    room: hasRoom(isBound),
    early: inside && hasRoom(() => false),
    needless: [isSameGroup, isSameTopic].some(
      (isTied) => isTied(units[end - 1], units[end]) && hasRoom(isTied),
    ),
  };
}

type Tie = (unit: PlanUnit, next: PlanUnit) => boolean;

/** A page that would go on from unit `end` with that and all units tied to it, up to a forced break. */
function withTied(units: readonly PlanUnit[], { end, extent }: Omit<PageSpan, 'start'>, isTied: Tie): Extent {
  const last = units.findIndex((unit, index) => {
    const next = units[index + 1];
    return index >= end && (next === undefined || next.startsPage === true || !isTied(unit, next));
  });
  return units.slice(end, last + 1).reduce<Extent>(extendBy, extent);
}

function isBound(unit: PlanUnit, next: PlanUnit): boolean {
  return unit.keepWithNext || unit.keepsRow === true || (unit.divisible !== true && isSameGroup(unit, next));
}

function priceOfWhite(white: number, { room, early, needless }: PageEnd): number {
  const broken = (early ? prices.earlyBreak * white : 0) + (needless ? prices.needlessBreak : 0);
  const wasted = room ? prices.whiteAboveRoom * Math.max(0, white - 0.25) : 0;
  const seen = prices.white * white ** 2 + prices.whiteOverThird * Math.max(0, white - 1 / 3);
  return seen + wasted + broken + emptiness(white, room);
}

/**
 * A page that is hardly begun looks like a mistake; one under half full merely looks unplanned. Heights count the white
 * inside a block too: so one that had room counts as under half from a hundredth above it.
 */
function emptiness(white: number, room: boolean): number {
  if (white > 0.65) return prices.nearlyEmpty;
  if (white <= 0.45) return 0;
  const low = prices.underHalf + prices.whiteUnderHalf * (white - 0.5);
  return (white > 0.5 ? low : prices.hardlyHalf) + (room && white > 0.49 ? prices.needlessWhite : 0);
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
export function breakPrices(units: readonly PlanUnit[], bodyHeight: number): readonly number[] {
  const whole = groupsThatFit(units, bodyHeight);
  return units.map((unit, index) => {
    const previous = units[index - 1];
    if (previous === undefined || unit.startsPage === true) return 0;
    const inside = isSameGroup(previous, unit);
    const split = unit.group !== undefined && whole.has(unit.group) ? prices.brokenGroup : prices.insideGroup;
    const notes = unit.explains === true && previous.explains !== true ? prices.partedNotes : 0;
    return keptPrice(previous) + notes + (inside ? split : 0);
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
