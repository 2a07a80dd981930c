import { describe, expect, it } from 'vitest';
import { planPages, unitsTooHigh } from '../../../src/render/plan-pages.ts';
import type { PlanUnit } from '../../../src/render/plan-unit.ts';

const body = 650;

function unit(height: number, rules: Partial<PlanUnit> = {}): PlanUnit {
  return { height, gapBefore: 0, keepWithNext: false, continuationHeight: 0, ...rules };
}

/** Units of each page, and the top of each. */
function plan(units: readonly PlanUnit[]) {
  return planPages(units, body).map(({ placements }) =>
    placements.map(({ unit: index, top }) => [index, top]),
  );
}

describe('planPages', () => {
  it('leaves a row alone only where a page would else be nearly empty', () => {
    const rows = (height: number) => [
      unit(100, { keepWithNext: true }),
      unit(height, { group: 'rows', keepsRow: true }),
      unit(height, { group: 'rows', keepsRow: true }),
      unit(height, { group: 'rows' }),
    ];
    const pagesOf = (units: readonly PlanUnit[]) => plan(units).map((page) => page.map(([index]) => index));
    // 100 + 3 x 200 is over the page, and no row is left alone: the head stands on a page of its own, and is 100 high.
    expect(pagesOf([unit(90), ...rows(200)])).toEqual([
      [0, 1, 2],
      [3, 4],
    ]);
    // With 350 before them, that page is not nearly empty, so all rows stand together on the next.
    expect(pagesOf([unit(350), ...rows(180)])).toEqual([[0], [1, 2, 3, 4]]);
  });

  it('leaves no notes alone on a page, also on one that may be short, but where a page would else be nearly empty', () => {
    const note = unit(150, { group: 'rows', explains: true, keepWithNext: true });
    const notes = [note, { ...note, keepWithNext: false }];
    const rows = (height: number): readonly PlanUnit[] =>
      Array.from({ length: 3 }, () => unit(height, { group: 'rows' }));
    const pagesOf = (units: readonly PlanUnit[]): readonly number[] => plan(units).map((page) => page.length);
    expect(pagesOf([...rows(200), ...notes])).toEqual([2, 3]);
    expect(pagesOf([...rows(200), ...notes, unit(600, { startsPage: true })])).toEqual([2, 3, 1]);
    // What stands after them is no note: they are not alone.
    expect(pagesOf([...rows(200), ...notes, unit(300)])).toEqual([3, 3]);
    expect(pagesOf([...rows(200), ...notes.map((one) => ({ ...one, explains: false }))])).toEqual([3, 2]);
    // Without the last row, the page before holds 200 of 650.
    expect(pagesOf([unit(200), unit(400), ...notes])).toEqual([2, 2]);
  });

  it('takes the last row over to its notes rather than leave them on the page after, if that leaves none nearly empty', () => {
    const note = unit(60, { explains: true });
    const pagesOf = (next: number): readonly number[] =>
      plan([unit(280), unit(180), unit(150), note, unit(next)]).map((page) => page.length);
    // 610 | 460 would leave less white than 460 | 610.
    expect(pagesOf(400)).toEqual([2, 3]);
    // 450 has no room after 150 and 60.
    expect(pagesOf(450)).toEqual([3, 2]);
  });

  it('drops the gap at the top of a page', () => {
    expect(plan([unit(600), unit(200, { gapBefore: 30 }), unit(100, { gapBefore: 30 })])).toEqual([
      [[0, 0]],
      [
        [1, 0],
        [2, 230],
      ],
    ]);
  });

  it('looks over the whole document: a fuller first page is not bought with an emptier second', () => {
    // Page after page it would be 600 | 340 | 400, with 50 and 310 white; 400 | 540 | 400 leaves 250 and 110.
    const units = [unit(400), unit(200), unit(340), unit(400)];
    expect(plan(units).map((page) => page.map(([index]) => index))).toEqual([[0], [1, 2], [3]]);
  });

  it('leaves no page under half full where another plan avoids it, though that leaves more white', () => {
    // 325 and 299 are kept together, but no page holds them. 246 | 461 | 299 has the least white, its first page under half.
    const head = { continuationHeight: 60 };
    const units = [
      unit(186, head),
      unit(10, { ...head, gapBefore: 11, keepWithNext: true }),
      unit(49, { gapBefore: 9 }),
      unit(325, { gapBefore: 8, keepWithNext: true }),
      unit(299, { gapBefore: 27 }),
    ];
    expect(plan(units).map((page) => page.length)).toEqual([3, 1, 1]);
  });

  it('splits a group that fits rather than leave a page nearly empty, but not one that is merely under half full', () => {
    const group = (first: number): readonly PlanUnit[] => [
      unit(first),
      ...Array.from({ length: 5 }, () => unit(120, { group: 'a' })),
    ];
    // 35 in a hundred of 650 are 227.5 points.
    expect(plan(group(227)).map((page) => page.length)).toEqual([4, 2]);
    expect(plan(group(228)).map((page) => page.length)).toEqual([1, 5]);
  });

  it('leaves a page nearly empty rather than part what is kept together', () => {
    const bound = [unit(200), unit(300, { keepWithNext: true }), unit(300, { keepWithNext: true }), unit(50)];
    expect(plan(bound).map((page) => page.length)).toEqual([1, 3]);
  });

  it('leaves a page under half full rather than split a group that fits', () => {
    // 240, 3 rows | 2 rows, 3 rows | 2 rows would fill both pages before the last.
    const rows = (group: string): readonly PlanUnit[] =>
      Array.from({ length: 5 }, () => unit(120, { group }));
    expect(plan([unit(240), ...rows('a'), ...rows('b')]).map((page) => page.length)).toEqual([1, 5, 5]);
  });

  it('rather takes a page less than fills pages more evenly', () => {
    const units = [
      unit(400),
      unit(160, { group: 'a' }),
      unit(100, { group: 'a' }),
      unit(250, { group: 'b', continuationHeight: 110 }),
      unit(200, { group: 'b' }),
      unit(100, { group: 'b' }),
    ];
    // No plan keeps both groups: 400 | 510 | 410 splits the other, on a page more.
    expect(plan(units).map((page) => page.length)).toEqual([2, 4]);
  });

  it('divides a group above room for all the rest of it only to spare a page well under half full', () => {
    const rows = Array.from({ length: 3 }, () => unit(100, { group: 'a', divisible: true }));
    const pagesOf = (height: number): readonly number[] =>
      plan([unit(250), ...rows, unit(height), unit(500)]).map((page) => page.length);
    // 47 in a hundred, and 40.
    expect(pagesOf(305)).toEqual([4, 1, 1]);
    expect(pagesOf(260)).toEqual([3, 2, 1]);
  });

  it('does not part what stands under one question above room for all of it either', () => {
    const pagesOf = (topics: readonly [string, string]): readonly number[] => {
      const [first, second] = topics.map((topic) => unit(150, { topic }));
      const units = [unit(250), first, second, unit(305), unit(500)].filter((one) => one !== undefined);
      return plan(units).map((page) => page.length);
    };
    // 400 | 455 | 500 has no page under half, and 550 | 305 | 500 one of 47 in a hundred.
    expect(pagesOf(['a', 'b'])).toEqual([2, 2, 1]);
    expect(pagesOf(['a', 'a'])).toEqual([3, 1, 1]);
  });

  it('leaves white under half a page where what follows has no room, rather than where it has', () => {
    // 310 | 600 would leave less white than 610 | 300.
    const rows = Array.from({ length: 3 }, () => unit(100, { group: 'a', divisible: true }));
    const pagesOf = (first: number): readonly number[] =>
      plan([unit(first), ...rows, unit(300), unit(500)]).map((page) => page.length);
    expect(pagesOf(310)).toEqual([4, 1, 1]);
    // 50.3 in a hundred still count as under half, 52.3 do not.
    expect([pagesOf(327), pagesOf(340)]).toEqual([
      [4, 1, 1],
      [1, 4, 1],
    ]);
  });

  it('leaves white over a quarter of a page rather where what follows has no room than where it has', () => {
    // The next two have no room after 600 of 650. 380 and 580 would leave less white than 600 and 360.
    const rows = (divisible: boolean): readonly PlanUnit[] =>
      [220, 200, 160].map((height) => unit(height, { group: 'a', ...(divisible ? { divisible } : {}) }));
    const pagesOf = (divisible: boolean): readonly number[] =>
      plan([unit(380), ...rows(divisible), unit(600), unit(600)]).map((page) => page.length);
    expect(pagesOf(true)).toEqual([2, 2, 1, 1]);
    // What is kept whole has no room after 380.
    expect(pagesOf(false)).toEqual([1, 3, 1, 1]);
  });

  it('divides a group that may be divided to keep pages half full, but not just to fill them alike', () => {
    const points = (height: number, divisible: boolean): readonly PlanUnit[] =>
      Array.from({ length: 4 }, () => unit(height, { group: 'a', ...(divisible ? { divisible } : {}) }));
    // 280 and the group are 600; 440 and then 520 would be more alike.
    const alike = [unit(280), ...points(80, true), unit(360)];
    expect(plan(alike).map((page) => page.length)).toEqual([5, 1]);
    const filled = (divisible: boolean): readonly number[] =>
      plan([unit(250), ...points(120, divisible), unit(360)]).map((page) => page.length);
    expect([filled(true), filled(false)]).toEqual([
      [4, 2],
      [1, 4, 1],
    ]);
  });

  it('divides a group that no page can hold as seldom as it may', () => {
    // 380 | 390 | 330 leaves less white, but divides the group twice.
    const group = { group: 'a' };
    const units = [unit(360), unit(20, group), unit(390, group), unit(330, group)];
    expect(plan(units).map((page) => page.length)).toEqual([1, 2, 1]);
  });

  it('does not divide a group above room for its next unit, but to keep a page from being hardly half full', () => {
    const rows = (height: number): readonly PlanUnit[] =>
      Array.from({ length: 4 }, () => unit(height, { group: 'a', divisible: true }));
    const pagesOf = (units: readonly PlanUnit[]): readonly number[] => plan(units).map((page) => page.length);
    // 510 | 620 | 640 would leave no more white than 615 | 515 | 640.
    expect(pagesOf([unit(300), ...rows(105), unit(410), unit(640)])).toEqual([4, 2, 1]);
    // Of 610 | 340 | 640 the second page is hardly over half full; so it is 490 | 460 | 640.
    expect(pagesOf([unit(250), ...rows(120), unit(220), unit(640)])).toEqual([3, 3, 1]);
  });

  it('divides a group above room for its next unit to keep a page from being white over more than a third', () => {
    const rows = Array.from({ length: 4 }, () => unit(105, { group: 'a', divisible: true }));
    const pagesOf = (last: number): readonly number[] =>
      plan([unit(300), ...rows, unit(last), unit(640)]).map((page) => page.length);
    // Of 615 | 405 | 640 the second page is 38 in a hundred white; of 615 | 435 | 640 it is 33.
    expect([pagesOf(300), pagesOf(330)]).toEqual([
      [3, 3, 1],
      [4, 2, 1],
    ]);
  });

  it('rather leaves a little white than closes gaps up all the way', () => {
    const gap = { gapBefore: 10, gapShrink: 8 };
    expect(plan([unit(600), unit(48, gap), unit(300)]).map((page) => page.length)).toEqual([1, 2]);
    expect(plan([unit(500), unit(148, gap), unit(300)]).map((page) => page.length)).toEqual([2, 1]);
  });

  it('keeps a heading with what follows it', () => {
    expect(plan([unit(560), unit(60, { keepWithNext: true }), unit(300)]).map((page) => page.length)).toEqual(
      [1, 2],
    );
  });

  it('moves a group that fits a page as a whole, and divides one that does not, with its head repeated', () => {
    const row = (group: string) => unit(120, { group, continuationHeight: 50 });
    const whole = [unit(300), row('a'), row('a'), row('a')];
    expect(planPages(whole, body).map(({ placements, continues }) => [placements.length, continues])).toEqual(
      [
        [1, undefined],
        [3, 1],
      ],
    );
    const long = Array.from({ length: 7 }, () => row('a'));
    const pages = planPages([unit(60, { group: 'a', keepWithNext: true }), ...long], body);
    expect(pages.map(({ placements, continues }) => [placements.length, continues])).toEqual([
      [5, undefined],
      [3, 5],
    ]);
    expect(pages[1]?.placements[0]?.top).toBe(50);
  });

  it('closes gaps up, all alike, when that wins a place on the page', () => {
    const gap = { gapBefore: 30, gapShrink: 8 };
    expect(plan([unit(200), unit(200, gap), unit(200, gap)])).toEqual([
      [
        [0, 0],
        [1, 225],
        [2, 450],
      ],
    ]);
    expect(plan([unit(200), unit(200, gap), unit(207, gap)])).toHaveLength(2);
  });

  it('begins a page where it is asked to, whatever is kept together', () => {
    expect(plan([unit(50, { keepWithNext: true }), unit(50, { startsPage: true })])).toEqual([
      [[0, 0]],
      [[1, 0]],
    ]);
  });

  it('lets a rule give way only where the page cannot hold what it binds', () => {
    const bound = Array.from({ length: 4 }, () => unit(200, { keepWithNext: true }));
    expect(plan(bound).map((page) => page.length)).toEqual([2, 2]);
  });

  it('leaves a last page short rather than split a group that fits, but not nearly empty', () => {
    const group = [unit(140, { group: 'a' }), unit(140, { group: 'a' }), unit(140, { group: 'a' })];
    expect(plan([unit(200), ...group, unit(190)]).map((page) => page.length)).toEqual([4, 1]);
    expect(plan([unit(200), ...group, unit(150)]).map((page) => page.length)).toEqual([3, 2]);
  });

  it('takes units over to the last page rather than leave it nearly empty, and no more than it must', () => {
    expect(plan([unit(200), unit(200), unit(200), unit(100)]).map((page) => page.length)).toEqual([2, 2]);
    expect(plan([unit(200), unit(200), unit(200), unit(250)]).map((page) => page.length)).toEqual([3, 1]);
  });

  it('gives no page for nothing, and names what no page can hold', () => {
    expect(planPages([], body)).toEqual([]);
    expect(unitsTooHigh([unit(650), unit(651), unit(620, { continuationHeight: 40 })], body)).toEqual([1, 2]);
  });
});
