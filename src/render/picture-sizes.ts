import type { Edition } from './edition.ts';
import { bodyRoom } from '../pictures/place-view.ts';
import type { BodyRoom } from '../pictures/place-view.ts';
import { rangeSizes, wideRange } from '../pictures/range.ts';
import type { RangeSizes } from '../pictures/range.ts';
import { largeLine, smallLine, wideLine } from '../pictures/weight-line.ts';
import type { LineSizes } from '../pictures/weight-line.ts';

/** How large the pictures of an edition are. */
export interface PictureSizes {
  readonly range: RangeSizes;
  /** People and ways back, as a multiple of their size in a strip. */
  readonly people: Readonly<Record<100 | 1000, number>>;
  readonly wayBack: number;
  /** A weight line alone in its row, and how several stand. */
  readonly line: LineSizes;
  readonly lines: { readonly sizes: LineSizes; readonly across: 1 | 2 };
  /** The drawing of a body, as a multiple of its own unit, and the room for labels at each side of it. */
  readonly body: BodyRoom;
}

const standard: PictureSizes = {
  range: rangeSizes,
  people: { 100: 1, 1000: 1 },
  wayBack: 1,
  line: largeLine,
  lines: { sizes: smallLine, across: 2 },
  body: bodyRoom,
};

const largePrint: PictureSizes = {
  range: wideRange,
  // So large that two have room on a page under their question.
  people: { 100: 1.4, 1000: 1.4 },
  wayBack: 1.2,
  line: wideLine,
  lines: { sizes: wideLine, across: 1 },
  body: { scale: 1.05, column: 160 },
};

/** Sizes of the pictures by edition. The sheet for clinicians has none. */
export const pictureSizes: { readonly [E in Edition['edition']]: PictureSizes } = {
  standard,
  clinician: standard,
  'large-print': largePrint,
};
