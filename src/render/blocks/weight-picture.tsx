import { Svg, View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { WeightLine } from '../../model/document.ts';
import { textWidth } from '../measure-text.ts';
import type { Box } from '../pictures/draw-path.ts';
import type { Stroke } from '../pictures/marks.ts';
import { placeValues, spreadLabels } from '../pictures/place-labels.ts';
import type { LineSizes } from '../pictures/weight-line.ts';
import { drawWeightLine, measuredSpots, placeMonth, placeWeight } from '../pictures/weight-line.ts';
import { measureLines } from '../text.tsx';
import { fromStart, palette } from '../theme.ts';
import type { Theme, TypeRole } from '../theme.ts';
import { StrokePath, Words, runsFor } from './primitives.tsx';
import { Label } from './strip-axis.tsx';

interface PictureProps {
  readonly theme: Theme;
  readonly line: WeightLine;
  readonly sizes: LineSizes;
}

/** White between the plot and the labels at its sides. */
const BESIDE = 6;
const NAME_GAP = 5;

function widthOf(text: string, role: TypeRole): number {
  return textWidth(text, { weight: role.weight, size: role.size });
}

function strokesOf({ theme, line, sizes }: PictureProps): readonly Stroke[] {
  const drawn = drawWeightLine(line, sizes, theme.direction);
  return [
    { path: drawn.plot, fill: palette.pale },
    { path: drawn.band, fill: palette.light },
    { path: drawn.grid, stroke: palette.grid, strokeWidth: 0.6 },
    { path: drawn.today, stroke: palette.ink, strokeWidth: 1.5 },
    { path: drawn.after, stroke: palette.ink, strokeWidth: 1.2, dash: '3 3' },
    { path: drawn.line, stroke: palette.ink, strokeWidth: sizes.stroke },
    { path: drawn.halos, fill: palette.pale },
    { path: drawn.marks, fill: palette.ink },
  ];
}

/** Values of the axis stand before the plot, at the end edge of their room. */
function ValueLabels({ theme, line, sizes }: PictureProps): ReactElement {
  const { small } = theme.type;
  const wanted = line.valueTicks.map((tick) => ({
    centre: placeWeight(line, sizes, tick.at),
    length: small.lineHeight,
  }));
  const tops = spreadLabels(wanted, { low: -4, high: sizes.plotHeight + 4, gap: 0 });
  return (
    <>
      {line.valueTicks.map((tick, index) => (
        <Label
          key={index}
          theme={theme}
          text={tick.label}
          role={small}
          start={sizes.plotStart - BESIDE - widthOf(tick.label, small)}
          top={tops[index] ?? 0}
        />
      ))}
    </>
  );
}

function TimeLabels({ theme, line, sizes }: PictureProps): ReactElement {
  const { small } = theme.type;
  const wanted = line.timeTicks.map((tick) => ({
    centre: placeMonth(line, sizes, tick.at),
    length: widthOf(tick.label, small),
  }));
  const starts = spreadLabels(wanted, { low: 0, high: sizes.plotStart + sizes.plotWidth + BESIDE, gap: 6 });
  const top = sizes.height - small.lineHeight;
  return (
    <>
      {line.timeTicks.map((tick, index) => (
        <Label
          key={index}
          theme={theme}
          text={tick.label}
          role={small}
          start={starts[index] ?? 0}
          top={top}
        />
      ))}
    </>
  );
}

/** Measured values in bold beside their marks. The start carries none: it is labelled today. */
function PointLabels({ theme, line, sizes }: PictureProps): ReactElement {
  const role = { ...theme.type.name, lineHeight: 15 };
  const spots = measuredSpots(line, sizes);
  const todayTop = placeWeight(line, sizes, line.today.at);
  const plot: Box = { start: sizes.plotStart, top: 0, width: sizes.plotWidth, height: sizes.plotHeight };
  const taken: readonly Box[] = [
    { ...plot, top: todayTop - 2, height: 4 },
    { start: plot.start - 4, top: todayTop - 5, width: 9, height: 10 },
  ];
  const labels = line.points.map((at) => ({ width: widthOf(at.label, role), height: role.lineHeight }));
  const boxes = placeValues(spots.slice(1), labels, { plot, line: spots, taken });
  return (
    <>
      {line.points.map((at, index) => (
        <Label
          key={index}
          theme={theme}
          text={at.label}
          role={role}
          start={boxes[index]?.start ?? 0}
          top={boxes[index]?.top ?? 0}
        />
      ))}
    </>
  );
}

interface EndLabelProps {
  readonly theme: Theme;
  readonly text: string;
  readonly role: TypeRole;
  readonly sizes: LineSizes;
  readonly top: number;
}

function EndLabel({ theme, text, role, sizes, top }: EndLabelProps): ReactElement {
  const start = sizes.plotStart + sizes.plotWidth + BESIDE;
  const place = {
    position: 'absolute',
    top,
    width: sizes.endLabel,
    ...fromStart(theme.direction, start),
  } as const;
  return (
    <View style={place}>
      <Words theme={theme} text={text} role={role} width={sizes.endLabel} setting="balanced" />
    </View>
  );
}

/** Tops of the label of today and of "not known after", level with their lines and clear of each other. */
export function endLabelTops({ theme, line, sizes }: PictureProps): {
  readonly today: number;
  readonly after: number;
} {
  const { labelStrong, small } = theme.type;
  const heightOf = (text: string, role: TypeRole): number => {
    const runs = runsFor(text, role);
    const set = measureLines({ runs, size: role.size, width: sizes.endLabel, setting: 'balanced' });
    return set.lines * role.lineHeight;
  };
  const todayTop = placeWeight(line, sizes, line.today.at);
  const last = line.points.at(-1);
  const lastTop = last === undefined ? todayTop : placeWeight(line, sizes, last.at);
  const wanted = [
    { centre: todayTop, length: heightOf(line.today.label, labelStrong) },
    { centre: lastTop, length: heightOf(line.unknownAfter ?? '', small) },
  ];
  const shown = line.unknownAfter === undefined ? wanted.slice(0, 1) : wanted;
  const [today = 0, after = 0] = spreadLabels(shown, { low: -4, high: sizes.height, gap: 2 });
  return { today, after };
}

/**
 * Weight over time for one choice: name, line, and all labels as text. The whole is one figure with one text
 * alternative, so that nobody has to listen to bare numbers.
 */
export function WeightPicture({ theme, line, sizes }: PictureProps): ReactElement {
  const { type } = theme;
  const picture = { theme, line, sizes };
  const tops = endLabelTops(picture);
  return (
    <View style={{ width: sizes.width }}>
      <View style={{ marginBottom: NAME_GAP }}>
        <Words
          theme={theme}
          text={line.name}
          role={type.name}
          width={sizes.width}
          setting="balanced"
          sem={{ tag: 'P' }}
        />
      </View>
      <View sem={{ tag: 'Figure', alt: line.alt }} style={{ width: sizes.width, height: sizes.height }}>
        <Svg style={{ position: 'absolute', top: 0, left: 0 }} width={sizes.width} height={sizes.height}>
          {strokesOf(picture).map((stroke, index) => (
            <StrokePath key={index} stroke={stroke} />
          ))}
        </Svg>
        <ValueLabels {...picture} />
        <EndLabel
          theme={theme}
          text={line.today.label}
          role={type.labelStrong}
          sizes={sizes}
          top={tops.today}
        />
        <TimeLabels {...picture} />
        <PointLabels {...picture} />
        {line.unknownAfter === undefined ? null : (
          <EndLabel theme={theme} text={line.unknownAfter} role={type.small} sizes={sizes} top={tops.after} />
        )}
      </View>
    </View>
  );
}
