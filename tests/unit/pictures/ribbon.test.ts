import { describe, expect, it } from 'vitest';
import { ribbonPatterns } from '../../../src/model/calendar.ts';
import { hatchPath } from '../../../src/pictures/hatch.ts';
import type { Stroke } from '../../../src/pictures/marks.ts';
import { drawRibbon } from '../../../src/pictures/ribbon.ts';
import { palette } from '../../../src/render/theme.ts';
import { boundsOf, subpaths } from '../../helpers/path-points.ts';

const size = { width: 300, height: 18 } as const;

/** The stroke or fill that tells the stage, after the white under it. */
function patternOf(pattern: (typeof ribbonPatterns)[number]): Stroke {
  const [, stroke] = drawRibbon({ pattern, width: size.width, begins: false }, 'ltr').strokes;
  if (stroke === undefined) throw new Error('no pattern');
  return stroke;
}

/** Relative luminance as ink: 0 for white, 1 for black (WCAG 2.2, glossary). */
function inkOf(hex: string): number {
  const channel = (start: number): number => {
    const value = parseInt(hex.slice(start, start + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return 1 - (0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5));
}

/** Share of the ribbon that is ink, as a printer in black and white lays it down. */
function coverage({ path, fill, stroke, strokeWidth = 0, dash }: Stroke): number {
  if (fill !== undefined) return inkOf(fill);
  if (stroke !== palette.ink) throw new Error('a pattern is drawn in ink');
  const length = subpaths(path).reduce((sum, [from = [0, 0], to = [0, 0]]) => {
    return sum + Math.hypot(to[0] - from[0], to[1] - from[1]);
  }, 0);
  const [on = 1, off = 0] = dash?.split(' ').map(Number) ?? [];
  return (length * strokeWidth * (on / (on + off))) / (size.width * size.height);
}

describe('the ribbon of diet stages', () => {
  it('goes from thin to solid as the food does, each stage plainly darker than the one before', () => {
    const ink = ribbonPatterns.map((pattern) => coverage(patternOf(pattern)));
    const steps = ink.slice(1).map((share, index) => share / (ink[index] ?? 1));
    expect(Math.min(...steps)).toBeGreaterThan(1.2);
    expect(ink[0]).toBeLessThan(0.08);
    expect(ink.at(-1)).toBeGreaterThan(0.6);
  });

  it('tells stages apart by drawing as well as by shade: dots, level lines, slanting lines, two greys', () => {
    const kinds = ribbonPatterns.map((pattern) => {
      const { path, fill, dash } = patternOf(pattern);
      const [from = [0, 0], to = [0, 0]] = subpaths(path)[1] ?? [];
      return fill ?? (dash !== undefined ? 'dots' : from[1] === to[1] ? 'level' : 'slanting');
    });
    expect(kinds).toEqual(['dots', 'level', 'slanting', palette.light, palette.mid]);
  });

  it.each(ribbonPatterns)('stays within its box and turns over in right to left: %s', (pattern) => {
    for (const begins of [true, false]) {
      const points = (direction: 'ltr' | 'rtl') =>
        drawRibbon({ pattern, width: size.width, begins }, direction).strokes.flatMap(({ path }) =>
          subpaths(path).flat(),
        );
      const bounds = boundsOf(points('ltr'));
      expect(Math.min(bounds.left, bounds.top)).toBeGreaterThanOrEqual(0);
      expect(bounds.right).toBeLessThanOrEqual(size.width);
      expect(bounds.bottom).toBeLessThanOrEqual(size.height);
      points('rtl').forEach(([x, y], index) => {
        const [there, level] = points('ltr')[index] ?? [0, 0];
        expect(x).toBeCloseTo(size.width - there, 1);
        expect(y).toBe(level);
      });
    }
  });

  it('marks with a thick line where a stage begins, and not where it goes on', () => {
    const thick = (begins: boolean) =>
      drawRibbon({ pattern: 'lines', width: 70, begins }, 'ltr').strokes.filter(
        ({ strokeWidth = 0 }) => strokeWidth > 1.5,
      );
    expect(thick(false)).toEqual([]);
    const [begin] = thick(true);
    expect(boundsOf(subpaths(begin?.path ?? '').flat())).toEqual({ left: 1, right: 1, top: 0, bottom: 18 });
  });
});

describe('hatching', () => {
  it.each([
    [270, 32],
    [20, 32],
    [5, 60],
  ])(
    'covers a box of %i by %i from corner to corner, at 45 degrees, and nothing outside it',
    (width, height) => {
      const lines = subpaths(hatchPath({ width, direction: 'ltr' }, { start: 0, top: 0, width, height }, 8));
      expect(lines.length).toBeGreaterThanOrEqual(Math.floor((width + height) / 8) - 1);
      for (const [from = [0, 0], to = [0, 0]] of lines) {
        expect(to[0] - from[0]).toBeCloseTo(from[1] - to[1], 1);
        expect(to[0] - from[0]).toBeGreaterThan(0);
      }
      const bounds = boundsOf(lines.flat());
      expect(Math.min(bounds.left, bounds.top)).toBeGreaterThanOrEqual(0);
      expect(bounds.right).toBeLessThanOrEqual(width);
      expect(bounds.bottom).toBeLessThanOrEqual(height);
    },
  );
});
