import type { PictureKey } from '../model/document.ts';
import type { Direction } from './palette.ts';
import { palette } from './palette.ts';
import type { Box, Field } from './draw-path.ts';
import { boxPath, inset, leafPath, linePath } from './draw-path.ts';
import { personPath } from './people.ts';

/** One stroke or fill of a small picture. */
export interface Stroke {
  readonly path: string;
  readonly fill?: string;
  readonly stroke?: string;
  readonly strokeWidth?: number;
  readonly dash?: string;
}

/** A small picture of fixed size. */
export interface Mark {
  readonly width: number;
  readonly height: number;
  readonly strokes: readonly Stroke[];
}

export type KeyMark = PictureKey['items'][number]['mark'];

const PERSON_HEIGHT = 24;
const PERSON_WIDTH = PERSON_HEIGHT / 1.95;
/** A stroke at the very edge of a drawing would be cut thin. */
const SPARE = 0.5;

function personMark(look: 'had' | 'not' | 'may', direction: Direction): Mark {
  const size = { width: PERSON_WIDTH + 2 * SPARE, height: PERSON_HEIGHT + 2 * SPARE };
  const field: Field = { width: size.width, direction };
  const box: Box = { start: SPARE, top: SPARE, width: PERSON_WIDTH, height: PERSON_HEIGHT };
  if (look === 'may') {
    const hollow = {
      path: personPath(field, box, 1),
      fill: palette.white,
      stroke: palette.ink,
      strokeWidth: 1,
    };
    return { ...size, strokes: [hollow] };
  }
  const fill = look === 'had' ? palette.ink : palette.light;
  return { ...size, strokes: [{ path: personPath(field, box), fill }] };
}

function spreadMark(direction: Direction): Mark {
  const field: Field = { width: 40, direction };
  const path = leafPath(field, inset({ start: 0, top: 0, width: 40, height: 18 }, 0.25), 8);
  return {
    width: 40,
    height: 18,
    strokes: [{ path, fill: palette.mid, stroke: palette.ink, strokeWidth: 0.5 }],
  };
}

function uncertaintyMark(direction: Direction): Mark {
  const field: Field = { width: 24, direction };
  const ends = [1, 23]
    .map((at) =>
      linePath(field, [
        [at, 5],
        [at, 13],
      ]),
    )
    .join('');
  const path =
    linePath(field, [
      [1, 9],
      [23, 9],
    ]) + ends;
  return { width: 24, height: 18, strokes: [{ path, stroke: palette.ink, strokeWidth: 2 }] };
}

/** As thin as beside the bars: no caps, so that nobody takes it for a range. */
function changeStroke(direction: Direction): Stroke {
  const path = linePath({ width: 24, direction }, [
    [0.6, 11],
    [23.4, 11],
  ]);
  return { path, stroke: palette.ink, strokeWidth: 1.2 };
}

/** The sample that stands before its words in a key. */
export function drawKeyMark(mark: KeyMark, direction: Direction): Mark {
  switch (mark) {
    case 'had':
    case 'not':
    case 'may':
      return personMark(mark, direction);
    case 'spread':
      return spreadMark(direction);
    case 'uncertainty':
      return uncertaintyMark(direction);
    case 'average': {
      const path = boxPath({ width: 4.4, direction }, { start: 0, top: 0, width: 4.4, height: 22 });
      return { width: 4.4, height: 22, strokes: [{ path, fill: palette.ink }] };
    }
    case 'change':
      return { width: 24, height: 22, strokes: [changeStroke(direction)] };
    case 'today': {
      const path = linePath({ width: 1.5, direction }, [
        [0.75, 0],
        [0.75, 22],
      ]);
      return { width: 1.5, height: 22, strokes: [{ path, stroke: palette.ink, strokeWidth: 1.5 }] };
    }
  }
}

/** A leaf bullet: 6 on patient pages. */
export function drawBullet(size: number, direction: Direction): Mark {
  const path = leafPath(
    { width: size, direction },
    { start: 0, top: 0, width: size, height: size },
    size / 2,
  );
  return { width: size, height: size, strokes: [{ path, fill: palette.leaf }] };
}

/** An empty leaf box to tick: 17 in the grid of what matters, 15 before a line of text. */
export function drawTickBox(size: number, direction: Direction): Mark {
  const line = 1.2;
  const path = leafPath(
    { width: size, direction },
    inset({ start: 0, top: 0, width: size, height: size }, line / 2),
    size / 3,
  );
  return {
    width: size,
    height: size,
    strokes: [{ path, fill: palette.white, stroke: palette.ink, strokeWidth: line }],
  };
}

export interface UnknownLeaf {
  readonly field: number;
  readonly box: Box;
  readonly corner: number;
}

/** Dashed leaf: not known. It has the size of the picture it stands for. */
export function drawUnknown(leaf: UnknownLeaf, direction: Direction): Stroke {
  const path = leafPath({ width: leaf.field, direction }, inset(leaf.box, 0.3), leaf.corner);
  return { path, fill: palette.white, stroke: palette.ink, strokeWidth: 0.6, dash: '3 3' };
}
