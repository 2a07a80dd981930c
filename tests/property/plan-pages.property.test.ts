import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planPages, unitsTooHigh } from '../../src/render/plan-pages.ts';
import type { PlannedPage } from '../../src/render/plan-pages.ts';
import type { PlanUnit } from '../../src/render/plan-unit.ts';

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
  readonly joinsTopic: boolean;
}

const drawn = fc.record({
  height: fc.integer({ min: 10, max: 500 }),
  gapBefore: fc.integer({ min: 8, max: 30 }),
  gapShrink: fc.integer({ min: 0, max: 8 }),
  keepWithNext: fc.integer({ min: 0, max: 4 }).map((n) => n === 0),
  startsPage: fc.integer({ min: 0, max: 9 }).map((n) => n === 0),
  continuationHeight: fc.constantFrom(0, 0, 60),
  joinsGroup: fc.boolean(),
  joinsTopic: fc.boolean(),
});

/** Groups and topics are runs of units: a unit either joins that of the unit before it or begins one of its own. */
function toUnits(list: readonly Drawn[]): readonly PlanUnit[] {
  let group = 0;
  let topic = 0;
  return list.map(({ joinsGroup, joinsTopic, ...unit }, index) => {
    if (!joinsGroup || unit.startsPage) group = index;
    if (!joinsTopic || unit.startsPage) topic = index;
    return { ...unit, group: String(group), topic: String(topic) };
  });
}

const documents = (maxLength: number) => fc.array(drawn, { minLength: 1, maxLength }).map(toUnits);

/**
 * Documents all of whose units repeat a head of the same height. Only there does it hold of each rule by itself that a
 * page gives way: what stands lower on a page may else not fit one that it begins, because its own head is higher.
 */
const evenDocuments = (maxLength: number) =>
  fc
    .tuple(documents(maxLength), fc.constantFrom(0, 60))
    .map(([units, continuationHeight]) => units.map((unit) => ({ ...unit, continuationHeight })));

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

/** Behind the last unit of the topic that a unit belongs to. */
function topicEnd(units: readonly PlanUnit[], index: number): number {
  const next = units.findIndex((unit, other) => other > index && unit.topic !== at(units, index).topic);
  return next === -1 ? units.length : next;
}

function groupFits(units: readonly PlanUnit[], index: number): boolean {
  const { start, end } = groupAround(units, index);
  return fits(leastHeight(units, start, end) - at(units, start).continuationHeight);
}

/**
 * The rules as the design states them, most important first: broken keeps, pages nearly empty, split groups, a short
 * last page; then what is weighed together. The last page, or one before a forced break, is nearly empty under 28 % and
 * short under 35 %. A page under half full weighs 20 pages, 6 for each hundredth under half, and 100 if what follows
 * had room on it (that from a hundredth above half); a group or topic divided above room for all the rest of it weighs
 * 45. White weighs twice its square, and half that of a page all white is a page of its own; what is over a quarter of
 * a page above room for what follows weighs twice itself besides, and what is over a third five times itself. One
 * hardly over half full weighs three tenths of a page more, a break inside a group that no page can hold a tenth, and
 * above room for the next unit the white besides; gaps closed up all the way a fiftieth.
 */
function faults(units: readonly PlanUnit[], starts: readonly number[]): readonly number[] {
  const sum = [0, 0, 0, 0, 0];
  starts.forEach((start, page) => {
    const end = starts[page + 1] ?? units.length;
    const { keeps, groups, inside } = rulesBroken(units, start);
    const { free, white, closed } = fillOf(units, start, end);
    const weighed = weigh({ free, white, closed }, endOf(units, start, end)) + 0.1 * inside;
    const empty = white > (free ? 0.72 : 0.65);
    const short = free && white > 0.65 && !empty;
    const own = [keeps, Number(empty), groups, Number(short), weighed];
    own.forEach((value, kind) => {
      sum[kind] = at(sum, kind) + value;
    });
  });
  return sum;
}

function weigh({ free, white, closed }: Fill, { early, needless, room }: PageEnd): number {
  const kept = 1 + 2 * closed ** 2;
  if (free) return kept;
  const broken = (early ? white : 0) + (needless ? 45 : 0);
  const seen = (room ? 2 * Math.max(0, white - 0.25) : 0) + 5 * Math.max(0, white - 1 / 3);
  return kept + 2 * white ** 2 + seen + broken + weighLow(white, room);
}

/** What a page weighs more because it is hardly half full, or under; one nearly empty is counted elsewhere. */
function weighLow(white: number, room: boolean): number {
  if (white <= 0.45 || white > 0.65) return 0;
  const wasted = room && white > 0.49 ? 100 : 0;
  return wasted + (white > 0.5 ? 20 + 600 * (white - 0.5) : 0.3);
}

interface PageEnd {
  /** It ends within a group though it has room for the next unit of it. */
  readonly early: boolean;
  /** It ends within a group or a topic though it has room for all the rest of it. */
  readonly needless: boolean;
  /** It had room for what follows, with all that is bound to it. */
  readonly room: boolean;
}

function endOf(units: readonly PlanUnit[], start: number, end: number): PageEnd {
  if (end === units.length) return { early: false, needless: false, room: false };
  const { group, topic } = at(units, end);
  const inside = group !== undefined && at(units, end - 1).group === group;
  const within = topic !== undefined && at(units, end - 1).topic === topic;
  const hasRoom = (until: number): boolean => fits(leastHeight(units, start, until));
  let bound = end + 1;
  while (bound < units.length && goesOn(units, bound)) bound += 1;
  return {
    early: inside && hasRoom(end + 1),
    needless: (inside && hasRoom(groupAround(units, end).end)) || (within && hasRoom(topicEnd(units, end))),
    room: hasRoom(bound),
  };
}

/** Whether a unit may not be parted from the one before it. */
function goesOn(units: readonly PlanUnit[], index: number): boolean {
  const { keepWithNext, group } = at(units, index - 1);
  if (at(units, index).startsPage === true) return false;
  return keepWithNext || (group !== undefined && group === at(units, index).group);
}

interface Broken {
  readonly keeps: number;
  /** Groups split that fit a page. */
  readonly groups: number;
  /** Groups divided that no page can hold. */
  readonly inside: number;
}

/** What the break before a unit breaks. */
function rulesBroken(units: readonly PlanUnit[], start: number): Broken {
  const first = at(units, start);
  if (start === 0 || first.startsPage === true) return { keeps: 0, groups: 0, inside: 0 };
  const before = at(units, start - 1);
  const splits = before.group !== undefined && before.group === first.group;
  const fit = splits && groupFits(units, start);
  return { keeps: before.keepWithNext ? 1 : 0, groups: fit ? 1 : 0, inside: splits && !fit ? 1 : 0 };
}

interface Fill {
  /** White of a page, as a part of the body. */
  readonly white: number;
  /** Whether some of it is nobody's choice: the document ends, or a break is asked for. */
  readonly free: boolean;
  /** A tenth of how far gaps are closed up. */
  readonly closed: number;
}

function fillOf(units: readonly PlanUnit[], start: number, end: number): Fill {
  const natural = units
    .slice(start + 1, end)
    .reduce((sum, unit) => sum + unit.gapBefore + unit.height, leastHeight(units, start, start + 1));
  const room = units.slice(start + 1, end).reduce((sum, unit) => sum + (unit.gapShrink ?? 0), 0);
  const closed = natural > body && room > 0 ? (0.1 * (natural - body)) / room : 0;
  const free = end === units.length || at(units, end).startsPage === true;
  const white = Math.max(0, body - natural) / body;
  return { white, free, closed };
}

/** The planner adds white to a thousand millions for a broken keep, so the places of a double end here. */
const tooSmall = 1e-5;

function compare(a: readonly number[], b: readonly number[]): number {
  const index = a.findIndex((value, place) => Math.abs(value - at(b, place)) > tooSmall);
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

  it('breaks a keep only where no page could hold what keeps bind together', () => {
    let broken = 0;
    fc.assert(
      fc.property(evenDocuments(40), (units) => {
        for (const start of startsOf(planPages(units, body))) {
          if (rulesBroken(units, start).keeps === 0) continue;
          const { first, last } = boundAround(units, start, keptAbove);
          expect(fits(leastHeight(units, first, last + 1))).toBe(false);
          broken += 1;
        }
      }),
    );
    expect(broken).toBeGreaterThan(0);
  });

  it('splits a group that fits a page only where no page could hold what is bound, or to spare a page nearly empty', () => {
    let spared = 0;
    fc.assert(
      fc.property(evenDocuments(40), (units) => {
        const starts = startsOf(planPages(units, body));
        for (const start of starts) {
          if (rulesBroken(units, start).groups === 0) continue;
          const { first, last } = boundAround(units, start, tiedAbove);
          if (!fits(leastHeight(units, first, last + 1))) continue;
          const outside = starts.filter((other) => other < first || other > last + 1);
          const whole = [...outside, first, ...(last + 1 < units.length ? [last + 1] : [])];
          const sorted = whole.sort((a, b) => a - b);
          expect(at(faults(units, sorted), 1)).toBeGreaterThan(at(faults(units, starts), 1));
          spared += 1;
        }
      }),
      { numRuns: 1500 },
    );
    expect(spared).toBeGreaterThan(0);
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

  it('takes no page more and leaves no more white than filling page after page would, when only that is at stake', () => {
    // Two of these fit any page, so there are at most 15 pages: too few for evener white to be worth another page.
    // The last is high enough for a page of its own not to be nearly empty.
    const plain = fc.array(fc.integer({ min: 10, max: 300 }), { maxLength: 29 });
    fc.assert(
      fc.property(plain, fc.integer({ min: 230, max: 300 }), (list, last) => {
        const units = [...list, last].map((height) => ({
          height,
          gapBefore: 20,
          keepWithNext: false,
          continuationHeight: 0,
        }));
        const greedy: number[] = [0];
        units.forEach((_, index) => {
          if (!fits(leastHeight(units, greedy.at(-1) ?? 0, index + 1))) greedy.push(index);
        });
        const starts = startsOf(planPages(units, body));
        expect(starts).toHaveLength(greedy.length);
        const own = faults(units, starts);
        expect(own.slice(0, 4)).toEqual([0, 0, 0, 0]);
        expect(at(own, 4)).toBeLessThanOrEqual(at(faults(units, greedy), 4) + 1e-9);
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

type Ties = (units: readonly PlanUnit[], index: number) => boolean;

const keptAbove: Ties = (units, index) => at(units, index - 1).keepWithNext;
const tiedAbove: Ties = (units, index) => {
  const inGroup = at(units, index - 1).group === at(units, index).group && groupFits(units, index);
  return keptAbove(units, index) || inGroup;
};

/** First and last unit of all that is tied, on both sides, to the break before `start`. */
function boundAround(
  units: readonly PlanUnit[],
  start: number,
  ties: Ties,
): { readonly first: number; readonly last: number } {
  const tied = (index: number): boolean => at(units, index).startsPage !== true && ties(units, index);
  let first = start;
  let last = start;
  while (first > 0 && tied(first)) first -= 1;
  while (last + 1 < units.length && tied(last + 1)) last += 1;
  return { first, last };
}
