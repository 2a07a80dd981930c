import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { placeValues, spreadLabels } from '../../../src/pictures/place-labels.ts';

describe('labels along an axis', () => {
  const room = { low: 0, high: 200, gap: 4 };

  it('leaves labels centred where they do not touch', () => {
    const wanted = [40, 80, 120].map((centre) => ({ centre, length: 20 }));
    expect(spreadLabels(wanted, room)).toEqual([30, 70, 110]);
  });

  it('moves the earlier label back where two would touch', () => {
    const wanted = [
      { centre: 40, length: 30 },
      { centre: 50, length: 6 },
    ];
    expect(spreadLabels(wanted, room)).toEqual([13, 47]);
  });

  it('never lets labels touch and keeps them in the room, when there is room for all, in any order', () => {
    const label = fc.record({
      centre: fc.double({ min: 0, max: 200, noNaN: true }),
      length: fc.integer({ min: 1, max: 24 }),
    });
    fc.assert(
      fc.property(fc.array(label, { maxLength: 7 }), (wanted) => {
        const starts = spreadLabels(wanted, room);
        const boxes = wanted
          .map(({ length }, index) => ({ start: starts[index] ?? NaN, length }))
          .sort((a, b) => a.start - b.start);
        boxes.forEach(({ start, length }, index) => {
          expect(start).toBeGreaterThanOrEqual(-0.001);
          const limit = boxes[index + 1]?.start ?? 204;
          expect(start + length).toBeLessThanOrEqual(limit - 4 + 0.001);
        });
      }),
    );
  });
});

describe('values beside their marks', () => {
  const plot = { start: 32, top: 0, width: 134, height: 102 };
  const size = { width: 24, height: 15 };

  function overlap(a: typeof plot, b: typeof plot): boolean {
    const across = Math.min(a.start + a.width, b.start + b.width) - Math.max(a.start, b.start);
    const down = Math.min(a.top + a.height, b.top + b.height) - Math.max(a.top, b.top);
    return across > 0.5 && down > 0.5;
  }

  it('puts a lone value above its mark', () => {
    const [box] = placeValues([[100, 60]], [size], { plot, line: [], taken: [] });
    expect(box).toMatchObject({ start: 88, top: 39 });
  });

  it('keeps two values of near times apart, each nearer to its own mark', () => {
    const spots = [
      [44.8, 70],
      [57.6, 72],
    ] as const;
    const line = [[32, 20], ...spots] as const;
    const boxes = placeValues(spots, [size, size], { plot, line, taken: [] });
    const [first, second] = boxes;
    if (first === undefined || second === undefined) throw new Error('two values are placed');
    expect(overlap(first, second)).toBe(false);
    boxes.forEach((box, index) => {
      const away = spots.map(([x, y]) => Math.hypot(box.start + 12 - x, box.top + 7.5 - y));
      expect(away.indexOf(Math.min(...away))).toBe(index);
    });
  });

  it('never sets one value over another, for times as far apart as the data are', () => {
    const heights = fc.array(fc.integer({ min: 25, max: 80 }), { minLength: 2, maxLength: 4 });
    fc.assert(
      fc.property(heights, (tops) => {
        const months = [12, 24, 60, 120];
        const spots = tops.map((top, index): readonly [number, number] => [
          32 + ((months[index] ?? 0) / 120) * 128,
          top,
        ]);
        const boxes = placeValues(
          spots,
          spots.map(() => size),
          { plot, line: [[32, 20], ...spots], taken: [] },
        );
        boxes.forEach((box, index) => {
          for (const other of boxes.slice(index + 1)) expect(overlap(box, other)).toBe(false);
        });
      }),
    );
  });
});
