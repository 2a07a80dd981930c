import type { WeightLine } from '../../model/document.ts';
import { textWidth } from '../measure-text.ts';
import type { Box } from '../../pictures/draw-path.ts';
import { leastTouching, placeValues, spreadLabels } from '../../pictures/place-labels.ts';
import type { LineSizes } from '../../pictures/weight-line.ts';
import { measuredSpots, placeWeight } from '../../pictures/weight-line.ts';
import { measureLines } from '../text.tsx';
import type { Theme, TypeRole } from '../theme.ts';
import { runsFor } from './primitives.tsx';

export interface LinePicture {
  readonly theme: Theme;
  readonly line: WeightLine;
  readonly sizes: LineSizes;
}

/** White between the plot and the labels at its sides. */
export const BESIDE = 6;
/** White between a label inside the plot and the line it belongs to, and the end of the plot. */
const INSIDE = 3;

export function widthOf(text: string, role: TypeRole): number {
  return textWidth(text, { weight: role.weight, size: role.size });
}

interface Size {
  readonly width: number;
  readonly height: number;
}

function sizeOf(text: string, role: TypeRole, most: number): Size {
  const set = measureLines({ runs: runsFor(text, role), size: role.size, width: most, setting: 'balanced' });
  return { width: Math.ceil(set.width) + 1, height: set.lines * role.lineHeight };
}

function plotOf({ sizes }: LinePicture): Box {
  return { start: sizes.plotStart, top: 0, width: sizes.plotWidth, height: sizes.plotHeight };
}

function todayTop({ line, sizes }: LinePicture): number {
  return placeWeight(line, sizes, line.today.at);
}

/** Boxes that no text may cover: the line of today and the marks on the line. */
function drawnBoxes(picture: LinePicture): readonly Box[] {
  const { line, sizes } = picture;
  const marks = measuredSpots(line, sizes).map(([x, y]) => ({
    start: x - 5,
    top: y - 5,
    width: 10,
    height: 10,
  }));
  return [{ ...plotOf(picture), top: todayTop(picture) - 1.5, height: 3 }, ...marks];
}

export interface LineLabels {
  readonly today: Box;
  readonly after: Box;
  /** One for each measured value. */
  readonly values: readonly Box[];
}

/** Labels beside the plot, level with their lines and clear of each other. */
function besidePlot(picture: LinePicture): Pick<LineLabels, 'today' | 'after'> {
  const { theme, line, sizes } = picture;
  const start = sizes.plotStart + sizes.plotWidth + BESIDE;
  const today = sizeOf(line.today.label, theme.type.labelStrong, sizes.labelWidth);
  const after = sizeOf(line.unknownAfter ?? '', theme.type.small, sizes.labelWidth);
  const last = measuredSpots(line, sizes).at(-1)?.[1] ?? todayTop(picture);
  const wanted = [
    { centre: todayTop(picture), length: today.height },
    { centre: last, length: after.height },
  ];
  const shown = line.unknownAfter === undefined ? wanted.slice(0, 1) : wanted;
  const [first = 0, second = 0] = spreadLabels(shown, { low: -4, high: sizes.height, gap: 2 });
  return { today: { start, top: first, ...today }, after: { start, top: second, ...after } };
}

/** Labels inside the plot at its end: today above its line, what is not known under or over the dashes. */
function insidePlot(picture: LinePicture): Pick<LineLabels, 'today' | 'after'> {
  const { theme, line, sizes } = picture;
  const plot = plotOf(picture);
  const end = plot.start + plot.width - INSIDE;
  const drawn = drawnBoxes(picture);
  const place = (size: Size, lineTop: number, taken: readonly Box[]): Box => {
    const above = { start: end - size.width, top: lineTop - INSIDE - size.height, ...size };
    const below = { ...above, top: lineTop + INSIDE };
    const foot = { ...above, top: plot.height - size.height };
    return leastTouching([above, below, foot], taken, plot) ?? above;
  };
  const today = place(
    sizeOf(line.today.label, theme.type.labelStrong, sizes.labelWidth),
    todayTop(picture),
    drawn,
  );
  const last = measuredSpots(line, sizes).at(-1)?.[1] ?? todayTop(picture);
  const after = place(sizeOf(line.unknownAfter ?? '', theme.type.small, sizes.labelWidth), last, [
    ...drawn,
    today,
  ]);
  return { today, after };
}

/** Where every label of a weight line stands, so that none covers a line, a mark or another label. */
export function placeLineLabels(picture: LinePicture): LineLabels {
  const { theme, line, sizes } = picture;
  const ends = sizes.labels === 'beside' ? besidePlot(picture) : insidePlot(picture);
  const role = valueRole(theme);
  const spots = measuredSpots(line, sizes);
  const labels = line.points.map((at) => ({ width: widthOf(at.label, role), height: role.lineHeight }));
  const taken = [
    ...drawnBoxes(picture),
    ends.today,
    ...(line.unknownAfter === undefined ? [] : [ends.after]),
  ];
  const values = placeValues(spots.slice(1), labels, { plot: plotOf(picture), line: spots, taken });
  return { ...ends, values };
}

/** Type of the measured values. */
export function valueRole(theme: Theme): TypeRole {
  return { ...theme.type.name, lineHeight: 15 };
}
