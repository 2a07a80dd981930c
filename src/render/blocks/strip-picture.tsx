import { Svg } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { Axis, Picture } from '../../model/document.ts';
import type { Stroke } from '../pictures/marks.ts';
import { drawUnknown } from '../pictures/marks.ts';
import { drawPeople, gridOf } from '../pictures/people.ts';
import { drawRange, rangeSizes, unknownRangeBox } from '../pictures/range.ts';
import { drawWayBack, wayBackSizes } from '../pictures/way-back.ts';
import { palette } from '../theme.ts';
import type { Direction } from '../theme.ts';
import { Drawing } from './primitives.tsx';

type Of<T extends Picture['type']> = Extract<Picture, { readonly type: T }>;

const UNKNOWN_CORNER = 8;

function PeoplePicture({
  picture,
  direction,
}: {
  picture: Of<'people'>;
  direction: Direction;
}): ReactElement {
  const drawn = drawPeople(picture, direction);
  const strokes: readonly Stroke[] = [
    { path: drawn.not, fill: palette.light },
    { path: drawn.hollow, fill: palette.white, stroke: palette.ink, strokeWidth: drawn.hollowStroke },
    { path: drawn.had, fill: palette.ink },
  ];
  return <Drawing mark={{ width: drawn.width, height: drawn.height, strokes }} alt={picture.alt} />;
}

interface RangeProps {
  readonly picture: Of<'range'>;
  readonly axis: Axis;
  readonly direction: Direction;
}

function RangePicture({ picture, axis, direction }: RangeProps): ReactElement {
  const bar = drawRange(picture, axis, direction);
  const { change, whisker, today } = rangeSizes;
  const strokes: readonly Stroke[] = [
    { path: bar.change, stroke: palette.ink, strokeWidth: change },
    { path: bar.band, fill: palette.mid, stroke: palette.ink, strokeWidth: 0.5 },
    { path: bar.today, stroke: palette.ink, strokeWidth: today },
    { path: bar.whisker, stroke: palette.ink, strokeWidth: whisker },
    { path: bar.halo, fill: palette.pale },
    { path: bar.average, fill: palette.ink },
  ];
  return <Drawing mark={{ width: bar.width, height: bar.height, strokes }} alt={picture.alt} />;
}

interface UnknownProps {
  readonly picture: Of<'unknown'>;
  readonly axis: Axis | undefined;
  readonly direction: Direction;
}

/** Not known: the same room as the picture it stands for. */
function UnknownPicture({ picture, axis, direction }: UnknownProps): ReactElement {
  const { width, height } = sizeOfUnknown(picture);
  const whole = { start: 0, top: 0, width, height };
  const box = picture.of === 'range' && axis !== undefined ? unknownRangeBox(axis) : whole;
  const stroke = drawUnknown({ field: width, box, corner: UNKNOWN_CORNER }, direction);
  return <Drawing mark={{ width, height, strokes: [stroke] }} alt={picture.alt} />;
}

function sizeOfUnknown(picture: Of<'unknown'>): { readonly width: number; readonly height: number } {
  return picture.of === 'range' ? rangeSizes : gridOf(picture.of);
}

function WayBackPicture({
  picture,
  direction,
}: {
  picture: Of<'way-back'>;
  direction: Direction;
}): ReactElement {
  const drawn = drawWayBack(picture.possible, direction);
  const { stroke, dash, dashStroke } = wayBackSizes;
  const strokes: readonly Stroke[] = [
    { path: drawn.solid, stroke: palette.ink, strokeWidth: stroke },
    { path: drawn.dashed, stroke: palette.ink, strokeWidth: dashStroke, dash },
    { path: drawn.unknown, fill: palette.white, stroke: palette.ink, strokeWidth: 0.6, dash: '3 3' },
  ];
  return <Drawing mark={{ width: drawn.width, height: drawn.height, strokes }} alt={picture.alt} />;
}

export interface StripPictureProps {
  readonly picture: Picture;
  readonly axis: Axis | undefined;
  readonly direction: Direction;
}

/** A range bar needs its axis; without one nothing can be placed and an empty drawing keeps the room. */
export function StripPicture({ picture, axis, direction }: StripPictureProps): ReactElement {
  switch (picture.type) {
    case 'people':
      return <PeoplePicture picture={picture} direction={direction} />;
    case 'range':
      return axis === undefined ? (
        <Svg width={rangeSizes.width} height={rangeSizes.height} />
      ) : (
        <RangePicture picture={picture} axis={axis} direction={direction} />
      );
    case 'unknown':
      return <UnknownPicture picture={picture} axis={axis} direction={direction} />;
    case 'way-back':
      return <WayBackPicture picture={picture} direction={direction} />;
  }
}

/** Offset of a picture from the start and the top of its cell: people have 6 at the sides, a bar fills the column. */
export function pictureInset(picture: Picture): { readonly side: number; readonly onAxis: boolean } {
  const onAxis = picture.type === 'range' || (picture.type === 'unknown' && picture.of === 'range');
  if (onAxis || picture.type === 'way-back') return { side: 0, onAxis };
  return { side: 6, onAxis };
}
