import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planPages, unitsTooHigh } from '../../src/render/plan-pages.ts';
import type { PlannedPage, PlanUnit } from '../../src/render/plan-pages.ts';

const body = 650;
const fits = (height: number) => height <= body + 0.01;

interface Drawn {
  readonly height: number;
  readonly gapBefore: number;
  readonly gapShrink: number;
  readonly keepWithNext: boolean;
  readonly startsPage: boolean;
  readonly continuationHeight: number;
  readonly joinsGroup: boolean;
}

const drawn = fc.record({
  height: fc.integer({ min: 10, max: 500 }),
  gapBefore: fc.integer({ min: 8, max: 30 }),
  gapShrink: fc.integer({ min: 0, max: 8 }),
  keepWithNext: fc.integer({ min: 0, max: 4 }).map((n) => n === 0),
  startsPage: fc.integer({ min: 0, max: 9 }).map((n) => n === 0),
  continuationHeight: fc.constantFrom(0, 0, 60),
  joinsGroup: fc.boolean(),
});

/** Groups are runs of units: a unit either joins that of the unit before it or begins one of its own. */
function toUnits(list: readonly Drawn[]): readonly PlanUnit[] {
  let group = 0;
  return list.map(({ joinsGroup, ...unit }, index) => {
    if (!joinsGroup || unit.startsPage) group = index;
    return { ...unit, group: String(group) };
  });
}

const documents = (maxLength: number) => fc.array(drawn, { minLength: 1, maxLength }).map(toUnits);

function at<T>(list: readonly T[], index: number): T {
  const value = list[index];
  if (value === undefined) throw new Error(`nothing at ${index}`);
  return value;
}

/** First unit of every page. */
function startsOf(pages: readonly PlannedPage[]): readonly number[] {
  return pages.map(({ placements }) => at(placements, 0).unit);
}

/** Height of the units from start to end when they begin a page, gaps shrunk as far as allowed. */
function leastHeight(units: readonly PlanUnit[], start: number, end: number): number {
  const inner = units
    .slice(start + 1, end)
    .reduce((sum, unit) => sum + unit.height + unit.gapBefore - (unit.gapShrink ?? 0), 0);
  return at(units, start).continuationHeight + at(units, start).height + inner;
}

/** From the first to behind the last unit of the group that a unit belongs to. */
function groupAround(units: readonly PlanUnit[], index: number): { start: number; end: number } {
  let start = index;
  let end = index + 1;
  while (start > 0 && at(units, start - 1).group === at(units, index).group) start -= 1;
  while (end < units.length && at(units, end).group === at(units, index).group) end += 1;
  return { start, end };
}

function groupFits(units: readonly PlanUnit[], index: number): boolean {
  const { start, end } = groupAround(units, index);
  return fits(leastHeight(units, start, end) - at(units, start).continuationHeight);
}

/**
 * The rules as the design states them, most important first: broken keeps, split groups, pages under half, white.
 * Gaps closed up all the way count as much as a tenth of a page of white.
 */
function faults(units: readonly PlanUnit[], starts: readonly number[]): readonly number[] {
  const sum = [0, 0, 0, 0];
  starts.forEach((start, page) => {
    const own = [...brokenRules(units, start), ...emptiness(units, start, starts[page + 1] ?? units.length)];
    own.forEach((value, kind) => {
      sum[kind] = at(sum, kind) + value;
    });
  });
  return sum;
}

/** Broken keeps and split groups at the break before a unit. */
function brokenRules(units: readonly PlanUnit[], start: number): readonly [number, number] {
  const first = at(units, start);
  if (start === 0 || first.startsPage === true) return [0, 0];
  const before = at(units, start - 1);
  return [before.keepWithNext ? 1 : 0, before.group === first.group && groupFits(units, start) ? 1 : 0];
}

/** Whether a page is under half full, and its white. */
function emptiness(units: readonly PlanUnit[], start: number, end: number): readonly [number, number] {
  const natural = units
    .slice(start + 1, end)
    .reduce((sum, unit) => sum + unit.gapBefore + unit.height, leastHeight(units, start, start + 1));
  const room = units.slice(start + 1, end).reduce((sum, unit) => sum + (unit.gapShrink ?? 0), 0);
  const closed = natural > body && room > 0 ? (0.1 * (natural - body)) / room : 0;
  const free = end === units.length || at(units, end).startsPage === true;
  const left = free ? 0 : Math.max(0, body - natural) / body;
  return [left > 0.5 ? 1 : 0, left ** 2 + closed ** 2];
}

function compare(a: readonly number[], b: readonly number[]): number {
  const index = a.findIndex((value, place) => Math.abs(value - at(b, place)) > 1e-9);
  return index === -1 ? 0 : at(a, index) - at(b, index);
}

/** Every way to divide the units into pages that hold them and honour forced breaks. */
function everyPlan(units: readonly PlanUnit[], start = 0): readonly (readonly number[])[] {
  if (start === units.length) return [[]];
  const plans: (readonly number[])[] = [];
  for (let end = start + 1; end <= units.length; end += 1) {
    if (end - 1 > start && (at(units, end - 1).startsPage === true || !fits(leastHeight(units, start, end))))
      break;
    plans.push(...everyPlan(units, end).map((rest) => [start, ...rest]));
  }
  return plans;
}

describe('the page plan', () => {
  it('places every unit once and in order', () => {
    fc.assert(
      fc.property(documents(60), (units) => {
        const placed = planPages(units, body).flatMap(({ placements }) => placements.map(({ unit }) => unit));
        expect(placed).toEqual(units.map((_, index) => index));
      }),
    );
  });

  it('lets nothing stand below the body, above it, or on another unit', () => {
    fc.assert(
      fc.property(documents(60), (units) => {
        for (const { placements, continues } of planPages(units, body)) {
          let bottom = continues === undefined ? 0 : at(units, continues).continuationHeight;
          placements.forEach(({ unit, top }, index) => {
            const { gapBefore, gapShrink = 0, height } = at(units, unit);
            const gap = top - bottom;
            expect(gap).toBeGreaterThanOrEqual(index === 0 ? 0 : gapBefore - gapShrink - 0.01);
            expect(gap).toBeLessThanOrEqual(index === 0 ? 0 : gapBefore + 0.01);
            bottom = top + height;
          });
          expect(fits(bottom)).toBe(true);
        }
      }),
    );
  });

  it('begins a page where it must, and repeats a head only where a page begins', () => {
    fc.assert(
      fc.property(documents(60), (units) => {
        const pages = planPages(units, body);
        const starts = startsOf(pages);
        const forced = units.flatMap(({ startsPage }, index) => (startsPage === true ? [index] : []));
        expect(starts).toEqual(expect.arrayContaining(forced));
        for (const { placements, continues } of pages) {
          const first = at(placements, 0).unit;
          expect(continues).toBe(at(units, first).continuationHeight > 0 ? first : undefined);
        }
      }),
    );
  });

  it('breaks a keep or splits a group that fits a page only where no page could hold what is bound together', () => {
    fc.assert(
      fc.property(documents(40), (units) => {
        for (const start of startsOf(planPages(units, body)).slice(1)) {
          if (at(units, start).startsPage === true) continue;
          const split = at(units, start - 1).group === at(units, start).group && groupFits(units, start);
          if (!at(units, start - 1).keepWithNext && !split) continue;
          expect(fits(boundHeight(units, start))).toBe(false);
        }
      }),
    );
  });

  it('is the best of all plans, for documents small enough to try every one', () => {
    fc.assert(
      fc.property(documents(11), (units) => {
        const own = faults(units, startsOf(planPages(units, body)));
        for (const plan of everyPlan(units)) expect(compare(own, faults(units, plan))).toBeLessThanOrEqual(0);
      }),
      { numRuns: 60 },
    );
  });

  it('leaves no more white than filling page after page would, when only white is at stake', () => {
    const plain = fc.array(fc.integer({ min: 10, max: 300 }), { minLength: 1, maxLength: 80 });
    fc.assert(
      fc.property(plain, (list) => {
        const units = list.map((height) => ({
          height,
          gapBefore: 20,
          keepWithNext: false,
          continuationHeight: 0,
        }));
        const greedy: number[] = [0];
        units.forEach((_, index) => {
          if (!fits(leastHeight(units, greedy.at(-1) ?? 0, index + 1))) greedy.push(index);
        });
        const own = faults(units, startsOf(planPages(units, body)));
        expect(at(own, 3)).toBeLessThanOrEqual(at(faults(units, greedy), 3) + 1e-9);
      }),
    );
  });

  it('names exactly the units that no page can hold', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 1300 })), (list) => {
        const units = list.map((height) => ({
          height,
          gapBefore: 0,
          keepWithNext: false,
          continuationHeight: 60,
        }));
        const high = list.flatMap((height, index) => (height + 60 > body ? [index] : []));
        expect(unitsTooHigh(units, body)).toEqual(high);
      }),
    );
  });
});

/** Height of everything tied to the break before `start` by keeps and by groups that fit, on both sides of it. */
function boundHeight(units: readonly PlanUnit[], start: number): number {
  const tied = (index: number) =>
    at(units, index - 1).keepWithNext ||
    (at(units, index - 1).group === at(units, index).group && groupFits(units, index));
  let first = start;
  let last = start;
  while (first > 0 && at(units, first).startsPage !== true && tied(first)) first -= 1;
  while (last + 1 < units.length && at(units, last + 1).startsPage !== true && tied(last + 1)) last += 1;
  return leastHeight(units, first, last + 1);
}
