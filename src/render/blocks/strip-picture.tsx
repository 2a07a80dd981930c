import { Svg } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { Axis, Picture } from '../../model/document.ts';
import { drawStripPicture } from '../../pictures/strip-picture.ts';
import { pictureSizes } from '../picture-sizes.ts';
import type { Theme } from '../theme.ts';
import { Drawing } from './primitives.tsx';

export interface StripPictureProps {
  readonly picture: Picture;
  readonly axis: Axis | undefined;
  readonly theme: Theme;
}

/** One picture of a strip with its text alternative; where nothing can be drawn its room is kept. */
export function StripPicture({ picture, axis, theme }: StripPictureProps): ReactElement {
  const { direction } = theme;
  const mark = drawStripPicture(picture, axis, { direction, sizes: pictureSizes[theme.edition].range });
  if (mark.strokes.length === 0) return <Svg width={mark.width} height={mark.height} />;
  return <Drawing mark={mark} alt={picture.alt} scale={scaleOf(picture, theme)} />;
}

/** Bars are drawn in their size; what else there is, in that of a strip, is enlarged. */
function scaleOf(picture: Picture, { edition }: Theme): number {
  const { people, wayBack } = pictureSizes[edition];
  if (picture.type === 'way-back') return wayBack;
  return picture.type === 'range' || picture.of === 'range' ? 1 : people[picture.of];
}

/** Width that a picture is painted in, in points. */
export function pictureWidth(picture: Picture, theme: Theme): number {
  const field = { direction: theme.direction, sizes: pictureSizes[theme.edition].range };
  return drawStripPicture(picture, undefined, field).width * scaleOf(picture, theme);
}

/** Offset of a picture from the start and the top of its cell: people have 6 at the sides, a bar fills the column. */
export function pictureInset(picture: Picture): { readonly side: number; readonly onAxis: boolean } {
  const onAxis = picture.type === 'range' || (picture.type === 'unknown' && picture.of === 'range');
  if (onAxis || picture.type === 'way-back') return { side: 0, onAxis };
  return { side: 6, onAxis };
}
