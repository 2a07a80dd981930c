import { describe, expect, it } from 'vitest';
import { inset, leafPath, roundedPath, short } from '../../../src/pictures/draw-path.ts';
import { drawBullet, drawKeyMark, drawTickBox, drawUnknown } from '../../../src/pictures/marks.ts';
import { boundsOf, subpaths } from '../../helpers/path-points.ts';

const ltr = { width: 100, direction: 'ltr' } as const;
const rtl = { width: 100, direction: 'rtl' } as const;
const box = { start: 10, top: 20, width: 40, height: 30 };

/** Whether a path passes through the corner of its box. */
function hasCorner(path: string, corner: readonly [number, number]): boolean {
  return subpaths(path)
    .flat()
    .some(([x, y]) => Math.hypot(x - corner[0], y - corner[1]) < 0.01);
}

describe('the leaf', () => {
  it('has start-top and end-bottom round, the other two corners square', () => {
    const path = leafPath(ltr, box, 8);
    expect(hasCorner(path, [10, 20])).toBe(false);
    expect(hasCorner(path, [50, 50])).toBe(false);
    expect(hasCorner(path, [50, 20])).toBe(true);
    expect(hasCorner(path, [10, 50])).toBe(true);
  });

  it('is the mirror image in right to left', () => {
    const path = leafPath(rtl, box, 8);
    expect(hasCorner(path, [50, 20])).toBe(true);
    expect(hasCorner(path, [90, 20])).toBe(false);
    expect(boundsOf(subpaths(path).flat())).toEqual({ left: 50, top: 20, right: 90, bottom: 50 });
  });

  it('never has corners larger than half of it', () => {
    expect(boundsOf(subpaths(leafPath(ltr, box, 99)).flat())).toEqual({
      left: 10,
      top: 20,
      right: 50,
      bottom: 50,
    });
  });

  it('can have any of its corners round', () => {
    const path = roundedPath(ltr, box, { endTop: 5, startBottom: 5 });
    expect(hasCorner(path, [10, 20])).toBe(true);
    expect(hasCorner(path, [50, 20])).toBe(false);
    expect(hasCorner(path, [10, 50])).toBe(false);
  });
});

describe('numbers in paths', () => {
  it('have at most two decimals and no minus before zero', () => {
    expect(short(1.23456)).toBe('1.23');
    expect(short(-0.001)).toBe('0');
    expect(short(7)).toBe('7');
  });
});

describe('small marks', () => {
  const marks = ['had', 'not', 'may', 'spread', 'average', 'change', 'uncertainty', 'today'] as const;

  it.each(marks)('the sample of %s stays within its size, strokes included', (name) => {
    for (const direction of ['ltr', 'rtl'] as const) {
      const mark = drawKeyMark(name, direction);
      for (const { path, strokeWidth = 0, stroke } of mark.strokes) {
        const bounds = boundsOf(subpaths(path).flat());
        const half = stroke === undefined ? 0 : strokeWidth / 2;
        expect(bounds.left).toBeGreaterThanOrEqual(half > 0.8 ? 0 : half - 0.01);
        expect(bounds.right).toBeLessThanOrEqual(mark.width - (half > 0.8 ? 0 : half) + 0.01);
        expect(bounds.bottom).toBeLessThanOrEqual(mark.height + 0.01);
      }
    }
  });

  it('shows a person 24 high', () => {
    const { top, bottom } = boundsOf(subpaths(drawKeyMark('had', 'ltr').strokes[0]?.path ?? '').flat());
    expect(bottom - top).toBeCloseTo(24, 1);
  });

  it('draws bullets, boxes and unknown leaves in the size asked for', () => {
    expect(boundsOf(subpaths(drawBullet(6, 'ltr').strokes[0]?.path ?? '').flat())).toEqual({
      left: 0,
      top: 0,
      right: 6,
      bottom: 6,
    });
    expect(drawTickBox(17, 'ltr')).toMatchObject({ width: 17, height: 17 });
    const unknown = drawUnknown({ field: 100, box, corner: 8 }, 'ltr');
    expect(boundsOf(subpaths(unknown.path).flat())).toEqual({
      left: 10.3,
      top: 20.3,
      right: 49.7,
      bottom: 49.7,
    });
    expect(unknown.dash).toBe('3 3');
    expect(inset(box, 1)).toEqual({ start: 11, top: 21, width: 38, height: 28 });
  });
});
