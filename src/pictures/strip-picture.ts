import type { Axis, Picture } from '../model/document.ts';
import { drawUnknown } from './marks.ts';
import type { Mark, Stroke } from './marks.ts';
import { palette } from './palette.ts';
import type { Direction } from './palette.ts';
import { drawPeople, gridOf } from './people.ts';
import type { PeoplePicture } from './people.ts';
import { drawRange, rangeSizes, unknownRangeBox } from './range.ts';
import type { RangeField } from './range.ts';
import { drawWayBack, wayBackSizes } from './way-back.ts';

type Of<T extends Picture['type']> = Extract<Picture, { readonly type: T }>;

const UNKNOWN_CORNER = 8;

/** What is painted of marks of people, the lowest first. */
export function strokesOfPeople(
  drawn: Pick<PeoplePicture, 'had' | 'not' | 'hollow' | 'hollowStroke'>,
): readonly Stroke[] {
  return [
    { path: drawn.not, fill: palette.light },
    { path: drawn.hollow, fill: palette.white, stroke: palette.ink, strokeWidth: drawn.hollowStroke },
    { path: drawn.had, fill: palette.ink },
  ];
}

function peopleMark(picture: Of<'people'>, direction: Direction): Mark {
  const drawn = drawPeople(picture, direction);
  return { width: drawn.width, height: drawn.height, strokes: strokesOfPeople(drawn) };
}

function rangeMark(picture: Of<'range'>, axis: Axis, field: RangeField): Mark {
  const bar = drawRange(picture, axis, field);
  const { change, whisker, today } = field.sizes;
  const strokes: readonly Stroke[] = [
    { path: bar.change, stroke: palette.ink, strokeWidth: change },
    { path: bar.band, fill: palette.mid, stroke: palette.ink, strokeWidth: 0.5 },
    { path: bar.today, stroke: palette.ink, strokeWidth: today },
    { path: bar.whisker, stroke: palette.ink, strokeWidth: whisker },
    { path: bar.halo, fill: palette.pale },
    { path: bar.average, fill: palette.ink },
  ];
  return { width: bar.width, height: bar.height, strokes };
}

/** Not known: the same room as the picture it stands for. */
function unknownMark(picture: Of<'unknown'>, axis: Axis | undefined, field: RangeField): Mark {
  const { width, height } = picture.of === 'range' ? field.sizes : gridOf(picture.of);
  const whole = { start: 0, top: 0, width, height };
  const onAxis = picture.of === 'range' && axis !== undefined;
  const box = onAxis ? unknownRangeBox(axis, field.sizes) : whole;
  const stroke = drawUnknown({ field: width, box, corner: UNKNOWN_CORNER }, field.direction);
  return { width, height, strokes: [stroke] };
}

function wayBackMark(picture: Of<'way-back'>, direction: Direction): Mark {
  const drawn = drawWayBack(picture.possible, direction);
  const { stroke, dash, dashStroke } = wayBackSizes;
  const strokes: readonly Stroke[] = [
    { path: drawn.solid, stroke: palette.ink, strokeWidth: stroke },
    { path: drawn.dashed, stroke: palette.ink, strokeWidth: dashStroke, dash },
    { path: drawn.unknown, fill: palette.white, stroke: palette.ink, strokeWidth: 0.6, dash: '3 3' },
  ];
  return { width: drawn.width, height: drawn.height, strokes };
}

/**
 * A picture of a strip; a bar in the sizes given, else in those of a strip's column. A range bar needs its axis; without
 * one nothing can be placed and an empty drawing keeps the room.
 */
export function drawStripPicture(picture: Picture, axis: Axis | undefined, on: Direction | RangeField): Mark {
  const field = typeof on === 'string' ? { direction: on, sizes: rangeSizes } : on;
  const { width, height } = field.sizes;
  switch (picture.type) {
    case 'people':
      return peopleMark(picture, field.direction);
    case 'range':
      return axis === undefined ? { width, height, strokes: [] } : rangeMark(picture, axis, field);
    case 'unknown':
      return unknownMark(picture, axis, field);
    case 'way-back':
      return wayBackMark(picture, field.direction);
  }
}
