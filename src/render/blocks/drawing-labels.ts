import { drawnWidth } from '../../model/drawing.ts';
import type { DrawnLabel, DrawnView } from '../../model/drawing.ts';
import { spreadLabels } from '../../pictures/place-labels.ts';
import { measureLines } from '../text.tsx';
import type { Theme } from '../theme.ts';
import { runsFor } from './primitives.tsx';

/** Room for labels at a side of a drawing, in points; two drawings with labels at three sides fill the page. */
const COLUMN = 68;
/** White between a label and the drawing. */
const GAP = 6;
/** White between two labels of a column. */
const BETWEEN = 3;

/** Widest line that a label may have. */
export const labelMeasure = COLUMN - GAP;

/** Where a label stands and where its line begins and ends, in points from the left and top edge of its view. */
export interface PlacedLabel {
  readonly label: DrawnLabel;
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly line: readonly [from: readonly [number, number], to: readonly [number, number]];
}

export interface PlacedView {
  readonly width: number;
  readonly height: number;
  /** Left edge of the drawing itself. */
  readonly drawingLeft: number;
  /** In the order of the view. */
  readonly labels: readonly PlacedLabel[];
}

/** Labels in their columns, level with what they name as far as they do not touch each other. */
export function placeView(view: DrawnView, theme: Theme): PlacedView {
  const drawingLeft = view.labels.some(({ side }) => side === 'left') ? COLUMN : 0;
  const rightColumn = view.labels.some(({ side }) => side === 'right') ? COLUMN : 0;
  const placed = (['left', 'right'] as const).flatMap((side) =>
    placeColumn(view, { side, drawingLeft, theme }),
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
  readonly theme: Theme;
}

function placeColumn(view: DrawnView, { side, drawingLeft, theme }: Column): readonly PlacedLabel[] {
  const { small } = theme.type;
  const labels = view.labels.filter((label) => label.side === side);
  const sizes = labels.map(({ text }) => {
    const set = measureLines({
      runs: runsFor(text, small),
      size: small.size,
      width: labelMeasure,
      setting: 'balanced',
    });
    return { width: Math.ceil(set.width) + 1, height: set.lines * small.lineHeight };
  });
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
