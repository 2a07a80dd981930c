import type { Direction } from './palette.ts';

/** How far along a quarter arc a cubic curve's handle reaches, as a share of the radius. */
export const HANDLE = 0.5523;

/** The field a picture is drawn in. Drawing code counts from the start edge; in right to left x is turned over. */
export interface Field {
  readonly width: number;
  readonly direction: Direction;
}

/** Offset from the start edge → x from the left edge. */
export function acrossField(field: Field, offset: number): number {
  return field.direction === 'rtl' ? field.width - offset : offset;
}

/** A box counted from the start and top edge. */
export interface Box {
  readonly start: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

export interface Corners {
  readonly startTop?: number;
  readonly endTop?: number;
  readonly endBottom?: number;
  readonly startBottom?: number;
}

/** Writes a number with at most two decimals: a hundredth of a point is finer than any printer. */
export function short(value: number): string {
  return String(Math.round(value * 100) / 100 + 0);
}

export function point(field: Field, offset: number, top: number): string {
  return `${short(acrossField(field, offset))} ${short(top)}`;
}

/** An open line through points given as [offset from start, top]. */
export function linePath(field: Field, points: readonly (readonly [number, number])[]): string {
  return points
    .map(([offset, top], index) => `${index === 0 ? 'M' : 'L'}${point(field, offset, top)}`)
    .join('');
}

export function boxPath(field: Field, box: Box): string {
  return roundedPath(field, box, {});
}

/** A rectangle whose corners may each be round. */
export function roundedPath(field: Field, box: Box, corners: Corners): string {
  const { start, top, width, height } = box;
  const end = start + width;
  const bottom = top + height;
  const st = corners.startTop ?? 0;
  const et = corners.endTop ?? 0;
  const eb = corners.endBottom ?? 0;
  const sb = corners.startBottom ?? 0;
  const at = (offset: number, y: number): string => point(field, offset, y);
  const rest = 1 - HANDLE;
  const bend = (a: string, b: string, c: string): string => `C${a} ${b} ${c}`;
  return [
    `M${at(start + st, top)}L${at(end - et, top)}`,
    et > 0 ? bend(at(end - et * rest, top), at(end, top + et * rest), at(end, top + et)) : '',
    `L${at(end, bottom - eb)}`,
    eb > 0 ? bend(at(end, bottom - eb * rest), at(end - eb * rest, bottom), at(end - eb, bottom)) : '',
    `L${at(start + sb, bottom)}`,
    sb > 0 ? bend(at(start + sb * rest, bottom), at(start, bottom - sb * rest), at(start, bottom - sb)) : '',
    `L${at(start, top + st)}`,
    st > 0 ? bend(at(start, top + st * rest), at(start + st * rest, top), at(start + st, top)) : '',
    'Z',
  ].join('');
}

/** The leaf: start-top and end-bottom corners round, the other two square. The one ornament of the pages. */
export function leafPath(field: Field, box: Box, corner: number): string {
  const most = Math.min(corner, box.width / 2, box.height / 2);
  return roundedPath(field, box, { startTop: most, endBottom: most });
}

/** A box made smaller on all sides, so that a stroke drawn on its edge stays inside. */
export function inset(box: Box, by: number): Box {
  return { start: box.start + by, top: box.top + by, width: box.width - 2 * by, height: box.height - 2 * by };
}

export function circlePath(field: Field, centre: readonly [number, number], radius: number): string {
  const [x, y] = centre;
  const r = radius;
  const box: Box = { start: x - r, top: y - r, width: 2 * r, height: 2 * r };
  return roundedPath(field, box, { startTop: r, endTop: r, endBottom: r, startBottom: r });
}
