import type { Axis, Strip, StripRow, WeightLine } from './document.ts';
import { figurePiece, optional, piece, textsOfParagraphs } from './text-piece.ts';
import type { Place, Texts } from './text-piece.ts';

/** Texts of the pictures and of what stands in their rows, in the order in which a renderer paints them. */
export function textsOfUpperAxis(axis: Axis, place: Place): Texts {
  const ticks = axis.top.ticks.map((tick) => piece('label', tick.label, place));
  return [piece('label', axis.today.label, place), ...ticks, piece('label', axis.top.unit, place)];
}

function textsOfLowerAxis(axis: Axis, place: Place): Texts {
  if (axis.bottom === undefined) return [];
  const ticks = axis.bottom.ticks.map((tick) => piece('label', tick.label, place));
  return [...ticks, piece('label', axis.bottom.unit, place)];
}

function textsOfStripRow(row: StripRow): Texts {
  return [piece('name', row.name, row), ...optional('label', row.tag, row), ...textsOfParagraphs(row.words)];
}

export function textsOfStrip(strip: Strip): Texts {
  const { axis } = strip;
  if (strip.rows.length === 0) return [];
  const upper = axis === undefined ? [] : textsOfUpperAxis(axis, strip);
  const lower = axis === undefined ? [] : textsOfLowerAxis(axis, strip);
  return [...upper, ...strip.rows.flatMap(textsOfStripRow), ...lower];
}

export function textsOfWeightLine(line: WeightLine): Texts {
  return [
    piece('name', line.name, line),
    ...line.valueTicks.map((tick) => piece('label', tick.label, line)),
    piece('label', line.today.label, line),
    ...line.timeTicks.map((tick) => piece('label', tick.label, line)),
    ...line.points.map((point) => figurePiece(point, line)),
    ...optional('label', line.unknownAfter, line),
  ];
}
