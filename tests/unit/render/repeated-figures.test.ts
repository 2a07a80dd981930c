import { describe, expect, it } from 'vitest';
import { drawRow, readRows } from '../../../src/render/repeated-figures.ts';
import { RowStamps } from '../../../src/render/stamp-rows.ts';

const leaf = 'c0 -1 1 -2 2 -2l2 0l0 2c0 1 -1 2 -2 2l-2 0l0 -2';

/** Marks at [x, y], as pictures write them. */
function marks(places: readonly (readonly [number, number])[], shape = leaf): string {
  return places.map(([x, y]) => `M${x} ${y}${shape}z`).join('');
}

describe('readRows', () => {
  it('finds rows of like figures at equal distances', () => {
    const grid = [0, 1, 2].flatMap((row) => [0, 1, 2, 3].map((column) => [3.28 * column, 4 * row] as const));
    const rows = readRows(marks(grid.map(([x, y]) => [Math.round(x * 1000) / 1000, y] as const)));
    expect(rows?.map(({ x, y, stepX, stepY, count }) => ({ x, y, stepX, stepY, count }))).toEqual([
      { x: 0, y: 0, stepX: 3.28, stepY: 0, count: 4 },
      { x: 0, y: 4, stepX: 3.28, stepY: 0, count: 4 },
      { x: 0, y: 8, stepX: 3.28, stepY: 0, count: 4 },
    ]);
  });

  it('begins a row anew where the shape changes', () => {
    expect(readRows(marks([[0, 0]]) + marks([[4, 0]], 'l1 0l0 1'))?.map(({ count }) => count)).toEqual([
      1, 1,
    ]);
  });

  it.each(['', 'M0 0L1 1Z', 'M0 0l1 1', 'M0 0l1 1zL2 2', 'm0 0l1 1z', 'M0 0h1z'])(
    'has no rows for other data: %j',
    (data) => {
      expect(readRows(data)).toBeUndefined();
    },
  );
});

describe('drawRow', () => {
  it('writes each figure at its place, in absolute points, with the box around all', () => {
    const row = { shape: 'l2 0c0 1 -1 2 -2 2', stepX: 10, stepY: -1, count: 2 };
    expect(drawRow(row)).toEqual({
      path: ['0 0 m', '2 0 l', '2 1 1 2 0 2 c', 'h', '10 -1 m', '12 -1 l', '12 0 11 1 10 1 c', 'h'].join(
        '\n',
      ),
      box: [0, -1, 12, 2],
    });
  });
});

describe('RowStamps', () => {
  it('stores a row once for each way to paint it, and puts every use in its place', () => {
    const stored: { data: Readonly<Record<string, unknown>>; content: string }[] = [];
    const pad = {
      page: { xobjects: {} },
      ref: (data: Readonly<Record<string, unknown>>) => ({
        end: (content: string) => stored.push({ data, content }),
      }),
    };
    const stamps = new RowStamps(pad);
    const rows =
      readRows(
        marks([
          [1, 2],
          [5, 2],
          [1, 6],
          [5, 6],
        ]),
      ) ?? [];
    expect(stamps.use(rows, 'f')).toBe('q\n1 0 0 1 1 2 cm /Row1 Do\n1 0 0 1 0 4 cm /Row1 Do\nQ');
    stamps.use(rows, 'f');
    stamps.use(rows, 'S');
    expect(stored.map(({ content }) => content.slice(-3))).toEqual(['h\nf', 'h\nS']);
    expect(stored[0]?.data).toMatchObject({ Type: 'XObject', Subtype: 'Form', BBox: [-2, -4, 10, 4] });
    expect(Object.keys(pad.page.xobjects)).toEqual(['Row1', 'Row2']);
  });
});
