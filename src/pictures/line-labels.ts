import type { WeightLine } from '../model/document.ts';
import type { Box } from './draw-path.ts';
import { leastTouching, placeValues, spreadLabels } from './place-labels.ts';
import type { LineSizes } from './weight-line.ts';
import { measuredSpots, placeWeight } from './weight-line.ts';

/** A label as it will be set: in lines of its own breaking, as wide as the widest of them. */
export interface LabelSize {
  readonly width: number;
  readonly height: number;
}

export interface LabelledLine {
  readonly line: WeightLine;
  readonly sizes: LineSizes;
  /** How large each label is in lines no wider than the measure, in points. A value is never broken. */
  readonly sizeOf: (label: 'today' | 'after' | 'value', text: string, measure: number) => LabelSize;
}

/** White between the plot and the labels at its sides. */
export const BESIDE = 6;
/** White between a label inside the plot and the line it belongs to, and the end of the plot. */
const INSIDE = 3;
/** A label in the plot of more lines than these is rather set wider, in multiples of the width of labels. */
const MOST_LINES = 2;
const wider = [1, 1.3, 1.7, 2.2];

/** Sizes with room over the highest value for a line of a label of this height, where labels stand in the plot. Points. */
export function withHeadroom(sizes: LineSizes, labelHeight: number): LineSizes {
  if (sizes.labels === 'beside') return sizes;
  return { ...sizes, headroom: Math.max(sizes.headroom, labelHeight + INSIDE) };
}

function plotOf({ sizes }: LabelledLine): Box {
  return { start: sizes.plotStart, top: 0, width: sizes.plotWidth, height: sizes.plotHeight };
}

function todayTop({ line, sizes }: LabelledLine): number {
  return placeWeight(line, sizes, line.today.at);
}

/** Boxes that no text may cover: the line of today, the dashes after the last time and the marks on the line. */
function drawnBoxes(picture: LabelledLine): readonly Box[] {
  const { line, sizes } = picture;
  const size = Math.max(10, sizes.mark + 3);
  const plot = plotOf(picture);
  const spots = measuredSpots(line, sizes);
  const marks = spots.map(([x, y]) => ({
    start: x - size / 2,
    top: y - size / 2,
    width: size,
    height: size,
  }));
  const today = { ...plot, top: todayTop(picture) - 1.5, height: 3 };
  const [lastX, lastY] = spots.at(-1) ?? [plot.start, todayTop(picture)];
  const dashes = { start: lastX, top: lastY - 1.5, width: plot.start + plot.width - lastX, height: 3 };
  return [today, ...(line.unknownAfter === undefined ? [] : [dashes]), ...marks];
}

export interface LineLabels {
  readonly today: Box;
  readonly after: Box;
  /** One for each measured value. */
  readonly values: readonly Box[];
}

/** Labels beside the plot, level with their lines and clear of each other. */
function besidePlot(picture: LabelledLine): Pick<LineLabels, 'today' | 'after'> {
  const { line, sizes, sizeOf } = picture;
  const start = sizes.plotStart + sizes.plotWidth + BESIDE;
  const today = sizeOf('today', line.today.label, sizes.labelWidth);
  const after = sizeOf('after', line.unknownAfter ?? '', sizes.labelWidth);
  const last = measuredSpots(line, sizes).at(-1)?.[1] ?? todayTop(picture);
  const wanted = [
    { centre: todayTop(picture), length: today.height },
    { centre: last, length: after.height },
  ];
  const shown = line.unknownAfter === undefined ? wanted.slice(0, 1) : wanted;
  const [first = 0, second = 0] = spreadLabels(shown, { low: -4, high: sizes.height, gap: 2 });
  return { today: { start, top: first, ...today }, after: { start, top: second, ...after } };
}

/** Sizes that a label may have in the plot, the best liked first. */
function sizesInside(
  { sizes, sizeOf }: LabelledLine,
  label: 'today' | 'after',
  text: string,
): readonly LabelSize[] {
  const widest = sizes.plotWidth - 2 * INSIDE;
  const measures = wider.map((times) => Math.min(times * sizes.labelWidth, widest));
  const set = [...(label === 'today' ? [widest] : []), ...measures].map((measure) =>
    sizeOf(label, text, measure),
  );
  const highest = MOST_LINES * sizeOf(label, text, Number.POSITIVE_INFINITY).height;
  return [...set.filter(({ height }) => height <= highest), ...set.filter(({ height }) => height > highest)];
}

/** Labels inside the plot at its end: today above its line, what is not known under or over the dashes. */
function insidePlot(picture: LabelledLine): Pick<LineLabels, 'today' | 'after'> {
  const { line, sizes } = picture;
  const plot = plotOf(picture);
  const end = plot.start + plot.width - INSIDE;
  const drawn = drawnBoxes(picture);
  const spots = measuredSpots(line, sizes);
  const place = (liked: readonly LabelSize[], lineTop: number, taken: readonly Box[]): Box => {
    const boxes = liked.flatMap((size) => {
      const above = { start: end - size.width, top: lineTop - INSIDE - size.height, ...size };
      return [above, { ...above, top: lineTop + INSIDE }];
    });
    const feet = boxes.map((box) => ({ ...box, top: plot.height - box.height }));
    return leastTouching([...boxes, ...feet], taken, { plot, line: spots }) ?? plot;
  };
  const today = place(sizesInside(picture, 'today', line.today.label), todayTop(picture), drawn);
  const last = spots.at(-1)?.[1] ?? todayTop(picture);
  const after = place(sizesInside(picture, 'after', line.unknownAfter ?? ''), last, [...drawn, today]);
  return { today, after };
}

/** Where every label of a weight line stands, so that none covers a line, a mark or another label. */
export function placeLineLabels(picture: LabelledLine): LineLabels {
  const { line, sizes, sizeOf } = picture;
  const ends = sizes.labels === 'beside' ? besidePlot(picture) : insidePlot(picture);
  const spots = measuredSpots(line, sizes);
  const labels = line.points.map((at) => sizeOf('value', at.label, Number.POSITIVE_INFINITY));
  const taken = [
    ...drawnBoxes(picture),
    ends.today,
    ...(line.unknownAfter === undefined ? [] : [ends.after]),
  ];
  const values = placeValues(spots.slice(1), labels, { plot: plotOf(picture), line: spots, taken });
  return { ...ends, values };
}
