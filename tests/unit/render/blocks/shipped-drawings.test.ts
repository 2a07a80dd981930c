import { beforeAll, describe, expect, it } from 'vitest';
import type { OperationPicture } from '../../../../src/compose/drawings/read-drawings.ts';
import { viewDrawing } from '../../../../src/compose/view/view-drawing.ts';
import { makeWords } from '../../../../src/compose/view/words.ts';
import { drawnWidth } from '../../../../src/model/drawing.ts';
import type { DrawnView } from '../../../../src/model/drawing.ts';
import { labelMeasure, measureIn } from '../../../../src/pictures/place-view.ts';
import type { PlacedLabel, PlacedView } from '../../../../src/pictures/place-view.ts';
import { placeInType } from '../../../../src/render/blocks/drawing-labels.ts';
import { loadFonts } from '../../../../src/render/fonts.ts';
import { walkPath } from '../../../../src/pictures/walk-path.ts';
import { pictureSizes } from '../../../../src/render/picture-sizes.ts';
import { themeOf } from '../../../../src/render/theme.ts';
import type { Theme } from '../../../../src/render/theme.ts';
import { realLocale, realTemplates } from '../../../helpers/compose-inputs.ts';
import { smallTree } from '../../../helpers/small-tree.ts';

const theme = themeOf(smallTree([]));
const largePrint = themeOf({ ...smallTree([]), edition: 'large-print' });
const pages = [
  ['en', 'standard', theme],
  ['es', 'standard', theme],
  ['en', 'large print', largePrint],
  ['es', 'large print', largePrint],
] as const;

beforeAll(async () => {
  await loadFonts();
});

interface Shown {
  readonly name: string;
  readonly view: DrawnView;
  readonly placed: PlacedView;
}

/** Both halves of every picture, in a language. */
async function shown(tag: string, on: Theme = theme): Promise<readonly (readonly Shown[])[]> {
  const words = makeWords(await realLocale(tag));
  const { drawings } = await realTemplates();
  return [...drawings].flatMap(([option, pictures]) =>
    pictures.map((picture) => halves(`${option} after ${picture.earlier}`, picture, { words, on })),
  );
}

function halves(
  name: string,
  picture: OperationPicture,
  { words, on }: { words: ReturnType<typeof makeWords>; on: Theme },
): readonly Shown[] {
  return viewDrawing(words, picture).views.map(({ heading, alt, labels }, index) => {
    const body = index === 0 ? picture.before : picture.after;
    const named = body.labels.map(({ side, x, y }, at) => ({ text: labels[at]?.words ?? '', side, x, y }));
    const view: DrawnView = { ...body, heading, alt, labels: named, origin: 'sample.hbs:1' };
    return { name: `${name}, ${heading}`, view, placed: placeInType(view, on) };
  });
}

function touch(one: PlacedLabel, other: PlacedLabel): boolean {
  return (
    one.left < other.left + other.width &&
    other.left < one.left + one.width &&
    one.top < other.top + other.height &&
    other.top < one.top + one.height
  );
}

type Point = readonly [number, number];

function side([a, b]: PlacedLabel['line'], [x, y]: Point): number {
  return Math.sign((b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0]));
}

function cross({ line: one }: PlacedLabel, { line: other }: PlacedLabel): boolean {
  return side(one, other[0]) !== side(one, other[1]) && side(other, one[0]) !== side(other, one[1]);
}

function pairs<T>(all: readonly T[]): readonly (readonly [T, T])[] {
  return all.flatMap((one, index) => all.slice(index + 1).map((other) => [one, other] as const));
}

describe('the drawings that are shipped', () => {
  it.each(pages)('have labels in %s, %s, that touch nothing and cross no other line', async (tag, _, on) => {
    const all = (await shown(tag, on)).flat();
    const drawn = drawnWidth * pictureSizes[on.edition].body.scale;
    expect(all.length).toBeGreaterThan(40);
    for (const { name, placed } of all) {
      const { labels, width, height, drawingLeft } = placed;
      const faults = pairs(labels).filter(([one, other]) => touch(one, other) || cross(one, other));
      expect([name, faults.map(([{ label }, other]) => [label.text, other.label.text])]).toEqual([name, []]);
      const strays = labels.filter(
        (one) =>
          one.left < 0 ||
          one.left + one.width > width + 1 ||
          one.top < 0 ||
          one.top + one.height > height ||
          (one.left + one.width > drawingLeft && one.left < drawingLeft + drawn),
      );
      expect([name, strays.map(({ label }) => label.text)]).toEqual([name, []]);
    }
  });

  it.each(pages)('have in %s, %s, no word that is wider than its column', async (tag, _, on) => {
    const wide = (await shown(tag, on))
      .flat()
      .flatMap(({ placed }) =>
        placed.labels.filter(({ width }) => width > measureIn(pictureSizes[on.edition].body) + 1),
      )
      .map(({ label }) => label.text);
    expect(wide).toEqual([]);
  });

  it('keep six points free between a label and the drawing', () => {
    expect(labelMeasure).toBe(62);
    expect(measureIn(pictureSizes['large-print'].body)).toBe(154);
  });

  it('fit the width of a page in large print', async () => {
    const widths = (await shown('es', largePrint)).flat().map(({ placed }) => placed.width);
    expect(Math.max(...widths)).toBeLessThanOrEqual(largePrint.width);
  });

  it('fit side by side on a page', async () => {
    for (const both of await shown('es')) {
      const width = both.reduce((sum, { placed }) => sum + placed.width, 0);
      expect([both[0]?.name, width <= theme.width]).toEqual([both[0]?.name, true]);
    }
  });

  it('stay within their frame, walls and arrow head included', async () => {
    for (const { name, view } of (await shown('en')).flat()) {
      const spots = [
        ...view.layers.flatMap(({ outlines }) =>
          outlines.flatMap(({ path, width = 0 }) =>
            walkPath(path, { start: 0, step: 1 }).map((at) => ({ ...at, room: width / 2 + 1.5 })),
          ),
        ),
        ...walkPath(view.food ?? '', { start: 0, step: 1 }).map((at) => ({ ...at, room: 4.6 })),
      ];
      // A tube may be cut off by the upper edge, where the body goes on.
      const out = spots.filter(
        ({ x, y, room }) =>
          x < room || x > drawnWidth - room || y < 0 || y > view.height - (room > 6 ? 1 : room),
      );
      expect([name, out]).toEqual([name, []]);
    }
  });

  it('let the way of food run inside what food passes through, all the way', async () => {
    for (const { name, view } of (await shown('en')).flat()) {
      const ways = view.layers.filter(({ look }) => look === 'way').flatMap(({ outlines }) => outlines);
      const tubes = ways.flatMap(({ path, width }) =>
        width === undefined
          ? []
          : walkPath(path, { start: 0, step: 1 }).map((at) => ({ ...at, reach: width / 2 - 1 })),
      );
      const bags = ways
        .filter(({ width }) => width === undefined)
        .map(({ path }) => walkPath(path, { start: 0, step: 0.5 }));
      const lost = walkPath(view.food ?? '', { start: 5, step: 11 })
        .slice(0, -1)
        .filter(
          ({ x, y }) =>
            !tubes.some((tube) => Math.hypot(tube.x - x, tube.y - y) <= tube.reach) &&
            !bags.some((edge) => isInside(edge, [x, y])),
        );
      expect([name, lost]).toEqual([name, []]);
    }
  });
});

/** By the crossings of a line to the right with the edge. */
function isInside(edge: readonly { readonly x: number; readonly y: number }[], [x, y]: Point): boolean {
  const crossings = edge.filter((at, index) => {
    const next = edge[(index + 1) % edge.length] ?? at;
    return at.y > y !== next.y > y && x < at.x + ((y - at.y) / (next.y - at.y)) * (next.x - at.x);
  });
  return crossings.length % 2 === 1;
}
