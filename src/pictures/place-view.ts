import { drawnWidth } from '../model/drawing.ts';
import type { DrawnLabel, DrawnView } from '../model/drawing.ts';
import type { Leader } from './leaders.ts';
import type { LabelSize } from './line-labels.ts';
import { spreadLabels } from './place-labels.ts';

/** Room for labels at a side of a drawing, in points; two drawings with labels at three sides fill the page. */
const COLUMN = 68;
/** White between a label and the drawing. */
const GAP = 6;
/** White between two labels of a column. */
const BETWEEN = 3;

/** Widest line that a label may have. */
export const labelMeasure = COLUMN - GAP;

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

/** How large a label is, broken into lines no wider than `labelMeasure`. */
export type SizeOfLabel = (text: string) => LabelSize;

/** Labels in their columns, level with what they name as far as they do not touch each other. */
export function placeView(view: DrawnView, sizeOf: SizeOfLabel): PlacedView {
  const drawingLeft = view.labels.some(({ side }) => side === 'left') ? COLUMN : 0;
  const rightColumn = view.labels.some(({ side }) => side === 'right') ? COLUMN : 0;
  const placed = (['left', 'right'] as const).flatMap((side) =>
    placeColumn(view, { side, drawingLeft, sizeOf }),
  );
  return {
    width: drawingLeft + drawnWidth + rightColumn,
    height: view.height,
    drawingLeft,
    labels: view.labels.flatMap((label) => placed.find((one) => one.label === label) ?? []),
  };
}

interface Column {
  readonly side: DrawnLabel['side'];
  readonly drawingLeft: number;
  readonly sizeOf: SizeOfLabel;
}

function placeColumn(view: DrawnView, { side, drawingLeft, sizeOf }: Column): readonly PlacedLabel[] {
  const labels = view.labels.filter((label) => label.side === side);
  const sizes = labels.map(({ text }) => sizeOf(text));
  const wanted = labels.map(({ y }, index) => ({ centre: y, length: sizes[index]?.height ?? 0 }));
  const tops = spreadLabels(wanted, { low: 0, high: view.height, gap: BETWEEN });
  return labels.map((label, index) => {
    const { width, height } = sizes[index] ?? { width: 0, height: 0 };
    const top = tops[index] ?? 0;
    const left = side === 'left' ? COLUMN - GAP - width : drawingLeft + drawnWidth + GAP;
    const from = side === 'left' ? left + width + 2 : left - 2;
    const line = [
      [from, top + height / 2],
      [drawingLeft + label.x, label.y],
    ] as const;
    return { label, left, top, width, height, line };
  });
}
