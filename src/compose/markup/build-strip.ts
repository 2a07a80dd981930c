import type { Axis, LineBoard, Picture, Strip, StripRow, Tick, WeightLine } from '../../model/document.ts';
import { buildParagraphs, idsIn, requiredLabel } from './build-inlines.ts';
import type { MarkupElement } from './element.ts';
import {
  childNamed,
  childrenNamed,
  choiceOf,
  numberOf,
  present,
  refuse,
  requiredNumber,
  requiredText,
  textOf,
} from './read-attributes.ts';

const pictures = ['people', 'range', 'unknown', 'way-back'];

export function buildStrip(element: MarkupElement): Strip {
  const axis = childNamed(element, 'axis');
  return present({
    type: 'strip' as const,
    layout: choiceOf(element, 'layout', ['range', 'people', 'way-back', 'text'] as const),
    axis: axis === undefined ? undefined : buildAxis(axis),
    rows: childrenNamed(element, 'row').map(buildRow),
    origin: element.origin,
  });
}

function buildRow(element: MarkupElement): StripRow {
  const picture = childNamed(element, ...pictures);
  return present({
    name: requiredLabel(element, 'name'),
    tag: textOf(element, 'tag'),
    picture: picture === undefined ? undefined : buildPicture(picture),
    words: buildParagraphs(childNamed(element, 'words')),
    origin: element.origin,
  });
}

function buildPicture(element: MarkupElement): Picture {
  const alt = requiredText(element, 'alt');
  switch (element.name) {
    case 'people':
      return { type: 'people', ...buildPeople(element), alt };
    case 'range':
      return present({
        type: 'range' as const,
        average: requiredNumber(element, 'average'),
        low: numberOf(element, 'low'),
        high: numberOf(element, 'high'),
        meaning: choiceOf(element, 'meaning', ['spread', 'uncertainty', 'none'] as const),
        alt,
      });
    case 'unknown':
      return { type: 'unknown', of: unknownOf(element), alt };
    default:
      return {
        type: 'way-back',
        possible: choiceOf(element, 'possible', ['yes', 'partly', 'no', 'not-known'] as const),
        alt,
      };
  }
}

function buildPeople(element: MarkupElement): { of: 100 | 1000; filled: number; may: number; half: boolean } {
  const of = choiceOf(element, 'of', ['100', '1000'] as const) === '100' ? 100 : 1000;
  const filled = requiredNumber(element, 'filled');
  const may = requiredNumber(element, 'may');
  const whole = Number.isInteger(filled) && Number.isInteger(may) && filled >= 0 && may >= 0;
  if (!whole || filled + may > of)
    refuse(element, '<people> has counts that do not fit its number of people');
  return { of, filled, may, half: choiceOf(element, 'half', ['true', 'false'] as const) === 'true' };
}

function unknownOf(element: MarkupElement): 100 | 1000 | 'range' {
  const of = choiceOf(element, 'of', ['100', '1000', 'range'] as const);
  return of === 'range' ? of : of === '100' ? 100 : 1000;
}

function buildAxis(element: MarkupElement): Axis {
  const [top, bottom, third] = childrenNamed(element, 'scale').map((scale) => ({
    unit: requiredText(scale, 'unit'),
    ticks: childrenNamed(scale, 'tick').map(buildTick),
  }));
  if (top === undefined || third !== undefined) refuse(element, '<axis> takes one or two <scale>');
  return present({
    min: requiredNumber(element, 'min'),
    max: requiredNumber(element, 'max'),
    today: { at: requiredNumber(element, 'today'), label: requiredText(element, 'label') },
    top,
    bottom,
  });
}

function buildTick(element: MarkupElement): Tick {
  return { at: requiredNumber(element, 'at'), label: requiredText(element, 'label') };
}

export function buildLineBoard(element: MarkupElement): LineBoard {
  const lines = childrenNamed(element, 'weight-line').map(buildWeightLine);
  return { type: 'line-board', lines, origin: element.origin };
}

function buildWeightLine(element: MarkupElement): WeightLine {
  const points = childrenNamed(element, 'point').map((point) =>
    present({
      months: requiredNumber(point, 'months'),
      at: requiredNumber(point, 'at'),
      label: requiredText(point, 'label'),
      cell: requiredText(point, 'cell'),
      records: idsIn(requiredText(point, 'records')),
      low: numberOf(point, 'low'),
      high: numberOf(point, 'high'),
    }),
  );
  return present({
    type: 'weight-line' as const,
    name: requiredText(element, 'name'),
    today: { at: requiredNumber(element, 'today'), label: requiredText(element, 'label') },
    points,
    min: requiredNumber(element, 'min'),
    max: requiredNumber(element, 'max'),
    timeTicks: childrenNamed(element, 'time-tick').map(buildTick),
    valueTicks: childrenNamed(element, 'value-tick').map(buildTick),
    unknownAfter: textOf(element, 'unknown-after'),
    alt: requiredText(element, 'alt'),
    origin: element.origin,
  });
}
