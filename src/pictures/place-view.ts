import { drawnWidth } from '../model/drawing.ts';
import type { DrawnLabel, DrawnView } from '../model/drawing.ts';
import type { Leader } from './leaders.ts';
import type { LabelSize } from './line-labels.ts';
import { spreadLabels } from './place-labels.ts';

/** How large a body is painted, as a multiple of its own unit, and the room for labels at a side of it, in points. */
export interface BodyRoom {
  readonly scale: number;
  readonly column: number;
}

/** Two drawings with labels at three sides fill the page. */
export const bodyRoom: BodyRoom = { scale: 1, column: 68 };
/** White between a label and the drawing. */
const GAP = 6;
/** White between two labels of a column. */
const BETWEEN = 3;

/** Widest line that a label may have. */
export const labelMeasure = measureIn(bodyRoom);

export function measureIn({ column }: BodyRoom): number {
  return column - GAP;
}

/** Where a label stands and where its line begins and ends, in points from the left and top edge of its view. */
export interface PlacedLabel extends LabelSize {
  readonly label: DrawnLabel;
  readonly left: number;
  readonly top: number;
  readonly line: Leader;
}

export interface PlacedView {
  readonly width: number;
  readonly height: number;
  /** Left edge of the drawing itself. */
  readonly drawingLeft: number;
  /** In the order of the view. */
  readonly labels: readonly PlacedLabel[];
}

/** How large a label is, broken into lines no wider than its room. */
export type SizeOfLabel = (text: string) => LabelSize;

/** Labels in their columns, level with what they name as far as they do not touch each other. */
export function placeView(view: DrawnView, sizeOf: SizeOfLabel, room: BodyRoom = bodyRoom): PlacedView {
  const { scale, column } = room;
  const drawingLeft = view.labels.some(({ side }) => side === 'left') ? column : 0;
  const rightColumn = view.labels.some(({ side }) => side === 'right') ? column : 0;
  const placed = (['left', 'right'] as const).flatMap((side) =>
    placeColumn(view, { side, drawingLeft, sizeOf, room }),
  );
  return {
    width: drawingLeft + drawnWidth * scale + rightColumn,
    height: view.height * scale,
    drawingLeft,
    labels: view.labels.flatMap((label) => placed.find((one) => one.label === label) ?? []),
  };
}

interface Column {
  readonly side: DrawnLabel['side'];
  readonly drawingLeft: number;
  readonly sizeOf: SizeOfLabel;
  readonly room: BodyRoom;
}

function placeColumn(view: DrawnView, of: Column): readonly PlacedLabel[] {
  const { side, drawingLeft, sizeOf } = of;
  const { scale, column } = of.room;
  const labels = view.labels.filter((label) => label.side === side);
  const sizes = labels.map(({ text }) => sizeOf(text));
  const wanted = labels.map(({ y }, index) => ({ centre: y * scale, length: sizes[index]?.height ?? 0 }));
  const tops = spreadLabels(wanted, { low: 0, high: view.height * scale, gap: BETWEEN });
  return labels.map((label, index) => {
    const { width, height } = sizes[index] ?? { width: 0, height: 0 };
    const top = tops[index] ?? 0;
    const left = side === 'left' ? column - GAP - width : drawingLeft + drawnWidth * scale + GAP;
    const from = side === 'left' ? left + width + 2 : left - 2;
    const line = [
      [from, top + height / 2],
      [drawingLeft + label.x * scale, label.y * scale],
    ] as const;
    return { label, left, top, width, height, line };
  });
}
