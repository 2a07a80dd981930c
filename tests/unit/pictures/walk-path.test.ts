import { describe, expect, it } from 'vitest';
import { endOfPath, walkPath } from '../../../src/pictures/walk-path.ts';

const rounded = (steps: ReturnType<typeof walkPath>): readonly (readonly number[])[] =>
  steps.map(({ x, y, turn }) => [x, y, turn].map((value) => Math.round(value * 1000) / 1000));

describe('places along a path', () => {
  it('lie at equal distances, round corners too, the first where it is asked for', () => {
    const quarter = Math.round((Math.PI / 2) * 1000) / 1000;
    expect(rounded(walkPath('M 0 0 L 10 0 L 10 10', { start: 2, step: 6 }))).toEqual([
      [2, 0, 0],
      [8, 0, 0],
      [10, 4, quarter],
      [10, 10, quarter],
    ]);
  });

  it('follow a curve: on a quarter of a circle all are one radius from its middle', () => {
    const places = walkPath('M 100 0 C 100 55.23 55.23 100 0 100', { start: 10, step: 20 });
    expect(places.length).toBe(8);
    for (const { x, y } of places) expect(Math.abs(Math.hypot(x, y) - 100)).toBeLessThan(0.05);
    // The curve goes down and to the left, ever more to the left.
    const turns = places.map(({ turn }) => turn);
    expect(turns).toEqual(turns.toSorted((a, b) => a - b));
  });

  it('are none beyond the end, and none on a path without length', () => {
    expect(walkPath('M 0 0 L 5 0', { start: 6, step: 1 })).toEqual([]);
    expect(walkPath('M 3 3 L 3 3', { start: 0, step: 1 })).toEqual([]);
  });

  it('go on over several curves of one path', () => {
    const straight = 'M 0 0 C 1 0 2 0 3 0 C 4 0 5 0 6 0 L 9 0';
    expect(rounded(walkPath(straight, { start: 1, step: 4 }))).toEqual([
      [1, 0, 0],
      [5, 0, 0],
      [9, 0, 0],
    ]);
  });

  it('end where the path ends, in its last direction', () => {
    const { x, y, turn } = endOfPath('M 0 0 L 0 10 L -10 10');
    expect([x, y, turn]).toEqual([-10, 10, Math.PI]);
  });
});
