import type { NodeBase } from './paragraph.ts';

/**
 * What is seen at a glance: `way` food passes through it; `bypassed` it stays, and no food passes; `removed` it is taken
 * out; `cut` an edge that was cut and closed; `join` a new join; `fold` and `stitches` folds and what holds them;
 * `thread` a thread inside; `device` and `tubing` something put in.
 */
export const drawnLooks = [
  'way',
  'bypassed',
  'removed',
  'cut',
  'join',
  'fold',
  'stitches',
  'thread',
  'device',
  'tubing',
] as const;
export type DrawnLook = (typeof drawnLooks)[number];

/** Width that every drawing of the body has, in its own unit; painted one unit to a point. */
export const drawnWidth = 144;

/** Absolute moves, lines, curves and closings alone, as in SVG: `M 84 0 C 84 14 84 26 85 42`. */
export const drawnPathPattern = /^M(?: -?\d+(?:\.\d+)?){2}(?: [LC](?: -?\d+(?:\.\d+)?)+)*(?: Z)?$/;

/** x from the left edge, y from the top, as seen by someone who faces the person: never turned over. */
export interface DrawnOutline {
  readonly path: string;
  /** Of a tube whose middle the path is. Without it the path is the edge itself. */
  readonly width?: number;
}

/** Outlines of one layer run into each other; a later layer lies over an earlier one. */
export interface DrawnLayer {
  readonly look: DrawnLook;
  readonly outlines: readonly DrawnOutline[];
}

/** Words beside the drawing, with a line to what they name. */
export interface DrawnLabel {
  readonly text: string;
  readonly side: 'left' | 'right';
  readonly x: number;
  readonly y: number;
}

/** The body at one time. */
export interface DrawnView extends NodeBase {
  readonly heading: string;
  readonly alt: string;
  readonly height: number;
  readonly layers: readonly DrawnLayer[];
  /** The way that food takes, along this path. */
  readonly food?: string;
  readonly labels: readonly DrawnLabel[];
}

/** A part of the body, mostly before and after, side by side. */
export interface Drawing extends NodeBase {
  readonly type: 'drawing';
  readonly views: readonly DrawnView[];
}
