import { Path, Svg, View } from '@react-pdf/renderer';
import type { ReactElement, ReactNode } from 'react';
import type { Axis, Tick } from '../../model/document.ts';
import { textWidth } from '../measure-text.ts';
import { linePath } from '../../pictures/draw-path.ts';
import { spreadLabels } from '../../pictures/place-labels.ts';
import { pictureSizes } from '../picture-sizes.ts';
import { placeOnAxis, rangeSizes } from '../../pictures/range.ts';
import { columns, fromStart, gapStart, palette, rowDirection, strip as sizes } from '../theme.ts';
import type { Theme, TypeRole } from '../theme.ts';
import { Words } from './primitives.tsx';

/** Labels of an axis may reach this far beyond the picture column. */
const OVERHANG = 10;
/** Two labels nearer than this read as one. */
const LABEL_GAP = 4;

export interface LabelProps {
  readonly theme: Theme;
  readonly text: string;
  readonly role: TypeRole;
  /** From the start edge of the box it lies in. */
  readonly start: number;
  readonly top: number;
}

/** One short text at an exact place. */
export function Label({ theme, text, role, start, top }: LabelProps): ReactElement {
  const width = textWidth(text, { weight: role.weight, size: role.size }) + 1;
  const place = { position: 'absolute', top, width, ...fromStart(theme.direction, start) } as const;
  return (
    <View style={place}>
      <Words theme={theme} text={text} role={role} width={width} sem={{ tag: 'P' }} />
    </View>
  );
}

/** Labels centred on their places along the axis, kept apart and near the column. */
export function axisLabels(
  labels: readonly Tick[],
  { theme, axis }: AxisProps,
  role: TypeRole,
): readonly number[] {
  const sizes = pictureSizes[theme.edition].range;
  const wanted = labels.map((tick) => ({
    centre: placeOnAxis(axis, tick.at, sizes),
    length: textWidth(tick.label, { weight: role.weight, size: role.size }),
  }));
  const beyond = theme.flow === 'stacked' ? 0 : OVERHANG;
  return spreadLabels(wanted, { low: -beyond, high: sizes.width + beyond, gap: LABEL_GAP * theme.scale });
}

interface AxisRowProps {
  readonly theme: Theme;
  readonly height: number;
  readonly unit: string;
  readonly unitTop: number;
  readonly children: ReactNode;
}

/** A row of the strip's table that holds an axis: nothing, the labels, the unit in words. */
function AxisRow({ theme, height, unit, unitTop, children }: AxisRowProps): ReactElement {
  const { direction } = theme;
  return (
    <View sem={{ tag: 'TR' }} style={{ flexDirection: rowDirection(direction), height }}>
      <View sem={{ tag: 'TD' }} style={{ width: columns.name }} />
      <View sem={{ tag: 'TD' }} style={{ width: columns.picture, ...gapStart(direction, columns.nameGap) }}>
        {children}
      </View>
      <View
        sem={{ tag: 'TD' }}
        style={{ width: columns.words, paddingTop: unitTop, ...gapStart(direction, columns.pictureGap) }}
      >
        <Words theme={theme} text={unit} role={theme.type.small} width={columns.words} sem={{ tag: 'P' }} />
      </View>
    </View>
  );
}

export interface AxisProps {
  readonly theme: Theme;
  readonly axis: Axis;
}

/** The labels of an axis, each centred on its place as far as the field goes. */
export function tickLabels(
  { theme, axis }: AxisProps,
  ticks: readonly Tick[],
  top: number,
): readonly ReactElement[] {
  const { small } = theme.type;
  const starts = axisLabels(ticks, { theme, axis }, small);
  return ticks.map((tick, index) => (
    <Label key={index} theme={theme} text={tick.label} role={small} start={starts[index] ?? 0} top={top} />
  ));
}

/** Label of today, ticks and unit above the first row. */
export function AxisHead({ theme, axis }: AxisProps): ReactElement {
  const { small, labelStrong } = theme.type;
  const { ticks } = axis.top;
  const [todayStart = 0] = axisLabels([axis.today], { theme, axis }, labelStrong);
  const tickTop = sizes.axisHead - small.lineHeight - 4;
  return (
    <AxisRow theme={theme} height={sizes.axisHead} unit={axis.top.unit} unitTop={tickTop}>
      <Label theme={theme} text={axis.today.label} role={labelStrong} start={todayStart} top={0} />
      {tickLabels({ theme, axis }, ticks, tickTop)}
    </AxisRow>
  );
}

/** Tick marks, ticks and unit of the second unit, under the last row. */
export function AxisFoot({
  theme,
  axis,
  bottom,
}: AxisProps & { bottom: NonNullable<Axis['bottom']> }): ReactElement {
  const { small } = theme.type;
  const { ticks } = bottom;
  const field = { width: rangeSizes.width, direction: theme.direction };
  const marks = ticks.map((tick) => placeOnAxis(axis, tick.at, rangeSizes));
  const tickTop = sizes.axisFoot - small.lineHeight;
  return (
    <AxisRow theme={theme} height={sizes.axisFoot} unit={bottom.unit} unitTop={tickTop}>
      <Svg style={{ position: 'absolute', top: 0, left: 0 }} width={rangeSizes.width} height={5}>
        <Path
          d={marks
            .map((at) =>
              linePath(field, [
                [at, 0],
                [at, 5],
              ]),
            )
            .join('')}
          stroke={palette.ink}
          strokeWidth={0.6}
        />
      </Svg>
      {tickLabels({ theme, axis }, ticks, tickTop)}
    </AxisRow>
  );
}
