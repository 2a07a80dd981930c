import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PeopleCounts } from '../../../src/pictures/people.ts';
import { drawPeople, drawPeopleGroups, gridOf, markStates, placeMark } from '../../../src/pictures/people.ts';
import { boundsOf, subpaths } from '../../helpers/path-points.ts';

const counts = fc
  .record({
    of: fc.constantFrom(100 as const, 1000 as const),
    share: fc.double({ min: 0, max: 1, noNaN: true }),
    may: fc.nat(300),
    half: fc.boolean(),
  })
  .map(({ of, share, may, half }): PeopleCounts => ({ of, filled: Math.floor(share * of), may, half }));

/** A person is a head and a body, a small leaf is one shape. */
const shapesOf = (of: 100 | 1000) => (of === 100 ? 2 : 1);

const count = (states: readonly string[], state: string) => states.filter((other) => other === state).length;

describe('people out of 100 and out of 1,000', () => {
  it('draws exactly as many people as the picture is out of, whatever the counts', () => {
    fc.assert(
      fc.property(counts, (data) => {
        const drawn = drawPeople(data, 'ltr');
        const halves = count(markStates(data), 'half');
        const marks = (path: string) => subpaths(path).length / shapesOf(data.of);
        // The triangle of a half mark is one more filled shape.
        const filled = (subpaths(drawn.had).length - halves) / shapesOf(data.of);
        expect(filled).toBe(data.filled);
        expect(filled + marks(drawn.hollow) + marks(drawn.not)).toBe(data.of);
      }),
      { numRuns: 60 },
    );
  });

  it('shows as many hollow marks as may happen, within what is left', () => {
    const states = markStates({ of: 1000, filled: 0, may: 18, half: false });
    expect(count(states, 'may')).toBe(18);
    expect(count(states, 'not')).toBe(982);
    expect(count(markStates({ of: 100, filled: 95, may: 40, half: false }), 'may')).toBe(5);
  });

  it('half fills one mark for fewer than one, and never one more than there are people', () => {
    const states = markStates({ of: 1000, filled: 0, may: 0, half: true });
    expect(states[0]).toBe('half');
    expect(count(states, 'not')).toBe(999);
    expect(count(markStates({ of: 100, filled: 100, may: 0, half: true }), 'had')).toBe(100);
  });

  it('fills from one corner: had, then may, then not, in the order of the places', () => {
    fc.assert(
      fc.property(counts, (data) => {
        const rank = { had: 0, half: 1, may: 2, not: 3 };
        const ranks = markStates(data).map((state) => rank[state]);
        expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
      }),
      { numRuns: 60 },
    );
  });

  it('fills group by group, and each group row by row', () => {
    const hundred = gridOf(100);
    expect(placeMark(hundred, 0)).toMatchObject({ start: 0, top: 0 });
    expect(placeMark(hundred, 5)).toMatchObject({ start: 0, top: 11.64 });
    expect(placeMark(hundred, 10).start).toBeCloseTo(5 * 6.32 + 5.5);
    expect(placeMark(hundred, 10).top).toBe(0);
    expect(placeMark(hundred, 50).start).toBe(0);
    expect(placeMark(hundred, 50).top).toBeCloseTo(2 * 11.64 + 4);
    expect(placeMark(gridOf(1000), 100).start).toBeCloseTo(10 * 3.28 + 4);
  });

  it.each([100, 1000] as const)('stays within its measured size, out of %i', (of) => {
    for (const direction of ['ltr', 'rtl'] as const) {
      const drawn = drawPeople({ of, filled: 1, may: 3, half: true }, direction);
      const points = [drawn.had, drawn.not, drawn.hollow].flatMap((path) => subpaths(path).flat());
      const bounds = boundsOf(points);
      expect(bounds.left).toBeGreaterThanOrEqual(-0.01);
      expect(bounds.top).toBeGreaterThanOrEqual(-0.01);
      expect(bounds.right).toBeLessThanOrEqual(drawn.width + 0.01);
      expect(bounds.bottom).toBeLessThanOrEqual(drawn.height + 0.01);
    }
  });

  it('keeps marks apart', () => {
    for (const of of [100, 1000] as const) {
      const boxes = Array.from({ length: of }, (_, index) => placeMark(gridOf(of), index));
      const places = new Set(boxes.map(({ start, top }) => `${start.toFixed(2)} ${top.toFixed(2)}`));
      expect(places.size).toBe(of);
      expect(gridOf(of).pitchAcross).toBeGreaterThan(gridOf(of).markWidth);
      expect(gridOf(of).pitchDown).toBeGreaterThan(gridOf(of).markHeight);
    }
  });

  it('is turned over for right to left: filling begins at the right', () => {
    const first = (direction: 'ltr' | 'rtl') =>
      boundsOf(subpaths(drawPeople({ of: 1000, filled: 1, may: 0, half: false }, direction).had).flat());
    expect(first('ltr').left).toBeCloseTo(0);
    expect(first('rtl').right).toBeCloseTo(180);
    expect(first('rtl').right - first('rtl').left).toBeCloseTo(first('ltr').right - first('ltr').left);
  });

  it.each(['ltr', 'rtl'] as const)('draws the same by groups as at once, read %s', (direction) => {
    fc.assert(
      fc.property(counts, (data) => {
        const whole = drawPeople(data, direction);
        const groups = drawPeopleGroups(data, direction);
        expect(groups).toHaveLength(10);
        for (const kind of ['had', 'not', 'hollow'] as const) {
          const boxes = groups.flatMap(({ left, top, marks }) =>
            subpaths(marks[kind])
              .map(boundsOf)
              .map((box) => [box.left + left, box.top + top]),
          );
          const expected = subpaths(whole[kind])
            .map(boundsOf)
            .map((box) => [box.left, box.top]);
          expect(boxes).toHaveLength(expected.length);
          boxes.forEach(([x = 0, y = 0], index) => {
            expect(x).toBeCloseTo(expected[index]?.[0] ?? Number.NaN, 1);
            expect(y).toBeCloseTo(expected[index]?.[1] ?? Number.NaN, 1);
          });
        }
      }),
      { numRuns: 30 },
    );
  });

  it('says of a group whether all its marks are alike', () => {
    const groups = drawPeopleGroups({ of: 1000, filled: 240, may: 0, half: false }, 'ltr');
    expect(groups.map(({ alike }) => alike)).toEqual([
      'had',
      'had',
      undefined,
      ...Array.from({ length: 7 }, () => 'not'),
    ]);
  });
});
