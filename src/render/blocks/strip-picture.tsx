import { Svg } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { Axis, Picture } from '../../model/document.ts';
import { drawStripPicture } from '../../pictures/strip-picture.ts';
import type { Direction } from '../theme.ts';
import { Drawing } from './primitives.tsx';

export interface StripPictureProps {
  readonly picture: Picture;
  readonly axis: Axis | undefined;
  readonly direction: Direction;
}

/** One picture of a strip with its text alternative; where nothing can be drawn its room is kept. */
export function StripPicture({ picture, axis, direction }: StripPictureProps): ReactElement {
  const mark = drawStripPicture(picture, axis, direction);
  if (mark.strokes.length === 0) return <Svg width={mark.width} height={mark.height} />;
  return <Drawing mark={mark} alt={picture.alt} />;
}

/** Offset of a picture from the start and the top of its cell: people have 6 at the sides, a bar fills the column. */
export function pictureInset(picture: Picture): { readonly side: number; readonly onAxis: boolean } {
  const onAxis = picture.type === 'range' || (picture.type === 'unknown' && picture.of === 'range');
  if (onAxis || picture.type === 'way-back') return { side: 0, onAxis };
  return { side: 6, onAxis };
}
