import type { Picture } from '../model/document.ts';
import type { Direction } from './palette.ts';
import type { Field } from './draw-path.ts';
import { inset, leafPath, linePath } from './draw-path.ts';

export type WayBackPicture = Extract<Picture, { readonly type: 'way-back' }>;

export const wayBackSizes = {
  width: 52,
  height: 26,
  stroke: 1.8,
  dashStroke: 1.2,
  dash: '3 2',
  outward: 6,
  backward: 18.5,
  edge: 1.5,
  headLength: 5,
  headHalf: 4,
  unknownCorner: 8,
} as const;

export interface WayBack {
  readonly width: number;
  readonly height: number;
  readonly solid: string;
  /** The part of the way back that is not open to everyone. */
  readonly dashed: string;
  /** Drawn alone when nobody knows. */
  readonly unknown: string;
}

interface Arrow {
  readonly from: number;
  readonly to: number;
  readonly top: number;
}

function arrowPath(field: Field, arrow: Arrow): string {
  const { headLength, headHalf, stroke } = wayBackSizes;
  const turn = arrow.to > arrow.from ? 1 : -1;
  const tip = arrow.to - turn * stroke * 0.7;
  const barb = tip - turn * headLength;
  const shaft = linePath(field, [
    [arrow.from, arrow.top],
    [tip, arrow.top],
  ]);
  const head: readonly (readonly [number, number])[] = [
    [barb, arrow.top - headHalf],
    [tip, arrow.top],
    [barb, arrow.top + headHalf],
  ];
  return shaft + linePath(field, head);
}

/** There and back: the upper arrow goes out; below it, how far the way back is open. */
export function drawWayBack(possible: WayBackPicture['possible'], direction: Direction): WayBack {
  const { width, height, outward, backward, edge, stroke } = wayBackSizes;
  const field: Field = { width, direction };
  const start = edge;
  const end = width - edge;
  const base = { width, height, dashed: '', unknown: '' };
  const out = arrowPath(field, { from: start, to: end, top: outward });
  const middle = width / 2;
  switch (possible) {
    case 'yes':
      return { ...base, solid: out + arrowPath(field, { from: end, to: start, top: backward }) };
    case 'partly': {
      const back = arrowPath(field, { from: end, to: middle, top: backward });
      return {
        ...base,
        solid: out + back,
        dashed: linePath(field, [
          [middle - 3, backward],
          [start + 2, backward],
        ]),
      };
    }
    case 'no': {
      const bar = end - stroke / 2;
      const stopped = arrowPath(field, { from: start, to: bar - stroke / 2, top: outward });
      return {
        ...base,
        solid:
          stopped +
          linePath(field, [
            [bar, 0.5],
            [bar, height - 1.5],
          ]),
      };
    }
    case 'not-known': {
      const box = inset({ start: 0, top: 0, width, height }, 0.5);
      return { ...base, solid: '', unknown: leafPath(field, box, wayBackSizes.unknownCorner) };
    }
  }
}
