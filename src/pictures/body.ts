import type { DrawnLayer, DrawnLook, DrawnOutline, DrawnView } from '../model/drawing.ts';
import { palette } from './palette.ts';
import { leafPath, short } from './draw-path.ts';
import type { Field } from './draw-path.ts';
import type { Stroke } from './marks.ts';
import { endOfPath, walkPath } from './walk-path.ts';
import type { Step } from './walk-path.ts';

/** Lines in points. A wall lies outside its path, so that tubes and pouches keep their width inside. */
const lines = {
  way: 1.5,
  bypassed: 0.8,
  removed: 1,
  cut: 2.4,
  join: 1.2,
  fold: 0.8,
  stitches: 1.1,
  thread: 0.9,
  device: 1.3,
  tubing: 1.3,
} as const satisfies Record<DrawnLook, number>;

const DASH = '3 2.4';
/** Strokes across a line: how far apart, and half their length. */
const across = {
  join: { start: 0.6, step: 2.9, half: 3 },
  stitches: { start: 2, step: 6.4, half: 3.6 },
} as const;
const TUBING_HALO = 1.2;
const food = { size: 4.2, start: 5, step: 11, arrow: 4.6, beforeArrow: 7 } as const;

/** What is painted, the lowest first. The body is never turned over: a stomach lies on the same side in every language. */
export function drawBody(view: DrawnView): readonly Stroke[] {
  return [...view.layers.flatMap(drawLayer), ...(view.food === undefined ? [] : drawFood(view.food))];
}

type Outlines = readonly DrawnOutline[];

const painted: Readonly<Record<DrawnLook, (outlines: Outlines) => readonly Stroke[]>> = {
  way: (outlines) => walls(outlines, { line: lines.way, fill: palette.pale }),
  bypassed: (outlines) => walls(outlines, { line: lines.bypassed, fill: palette.white }),
  removed: (outlines) => outlines.map(({ path }) => ({ ...inked(path, lines.removed), dash: DASH })),
  cut: (outlines) => outlines.map(({ path }) => inked(path, lines.cut)),
  join: (outlines) => crossed(outlines, 'join'),
  fold: (outlines) => outlines.map(({ path }) => inked(path, lines.fold)),
  stitches: (outlines) => crossed(outlines, 'stitches'),
  thread: (outlines) => outlines.map(({ path }) => inked(path, lines.thread)),
  device: (outlines) => outlines.flatMap(drawDevice),
  tubing: (outlines) =>
    outlines.flatMap(({ path }) => [
      { path, stroke: palette.white, strokeWidth: lines.tubing + 2 * TUBING_HALO },
      inked(path, lines.tubing),
    ]),
};

function drawLayer({ look, outlines }: DrawnLayer): readonly Stroke[] {
  return painted[look](outlines);
}

function inked(path: string, strokeWidth: number): Stroke {
  return { path, stroke: palette.ink, strokeWidth };
}

/** All walls first and then all insides, so that outlines of one layer open into each other. */
function walls(
  outlines: Outlines,
  { line, fill }: { readonly line: number; readonly fill: string },
): readonly Stroke[] {
  return [
    ...outlines.map(({ path, width = 0 }) => inked(path, width + 2 * line)),
    ...outlines.map(({ path, width }) =>
      width === undefined ? { path, fill } : { path, stroke: fill, strokeWidth: width },
    ),
  ];
}

function drawDevice({ path, width }: DrawnOutline): readonly Stroke[] {
  if (width === undefined) return [{ ...inked(path, lines.device), fill: palette.white }];
  return [inked(path, width + 2 * lines.device), { path, stroke: palette.mid, strokeWidth: width }];
}

function crossed(outlines: Outlines, look: keyof typeof across): readonly Stroke[] {
  const { half, ...steps } = across[look];
  const strokes = outlines
    .flatMap(({ path }) => walkPath(path, steps))
    .map(({ x, y, turn }) => {
      const [dx, dy] = [-Math.sin(turn) * half, Math.cos(turn) * half];
      return `M${short(x - dx)} ${short(y - dy)}L${short(x + dx)} ${short(y + dy)}`;
    });
  return [inked(strokes.join(''), lines[look])];
}

const upright: Field = { width: 0, direction: 'ltr' };

/** Small leaves along the way of food, and where it goes on. */
function drawFood(path: string): readonly Stroke[] {
  const { size, arrow, beforeArrow, ...steps } = food;
  const end = endOfPath(path);
  const leaves = walkPath(path, steps)
    .filter(({ x, y }) => Math.hypot(x - end.x, y - end.y) > beforeArrow)
    .map(({ x, y }) =>
      leafPath(upright, { start: x - size / 2, top: y - size / 2, width: size, height: size }, size / 2),
    );
  return [
    { path: leaves.join(''), fill: palette.leaf },
    { path: arrowHead(end, arrow), fill: palette.ink },
  ];
}

/** How far the other two corners of an arrow head lie from its direction. */
const BARB = 2.4;

function arrowHead({ x, y, turn }: Step, size: number): string {
  const corner = (angle: number): string =>
    `${short(x + Math.cos(turn + angle) * size)} ${short(y + Math.sin(turn + angle) * size)}`;
  return `M${corner(0)}L${corner(BARB)}L${corner(-BARB)}Z`;
}
