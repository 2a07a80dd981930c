import type { ReactElement } from 'react';
import type { Axis, Picture as PictureData, Tick } from '../../model/document.ts';
import { linePath, acrossField } from '../../pictures/draw-path.ts';
import { palette } from '../../pictures/palette.ts';
import type { Direction } from '../../pictures/palette.ts';
import { drawPeopleGroups, gridOf } from '../../pictures/people.ts';
import type { PeopleGroup } from '../../pictures/people.ts';
import { spreadLabels } from '../../pictures/place-labels.ts';
import { gridOffsets, placeOnAxis, rangeSizes } from '../../pictures/range.ts';
import { drawStripPicture, strokesOfPeople } from '../../pictures/strip-picture.ts';
import { Label, estimateWidth, labelType } from '../label.tsx';
import { Picture, StrokeOf } from '../picture.tsx';

/** A group of ten whose marks are alike stands once in the page (see people-groups.tsx) and is painted from there. */
export function groupId(of: 100 | 1000, state: string): string {
  return `people-${String(of)}-${state}`;
}

export function GroupMarks({ marks }: Pick<PeopleGroup, 'marks'>): ReactElement {
  return (
    <>
      {strokesOfPeople(marks).map((stroke, index) => (
        <StrokeOf key={index} stroke={stroke} />
      ))}
    </>
  );
}

function Group({ group, of }: { readonly group: PeopleGroup; readonly of: 100 | 1000 }): ReactElement {
  const { left, top, alike, marks } = group;
  if (alike === 'had' || alike === 'not')
    return <use href={`#${groupId(of, alike)}`} x={shorter(left)} y={shorter(top)} />;
  return (
    <g transform={`translate(${shorter(left)} ${shorter(top)})`}>
      <GroupMarks marks={marks} />
    </g>
  );
}

function shorter(value: number): string {
  return String(Math.round(value * 100) / 100);
}

export interface StripPictureProps {
  readonly picture: PictureData;
  readonly axis: Axis | undefined;
  readonly direction: Direction;
  readonly id: string;
}

/** One picture of a strip, the same as on paper, with its text alternative. */
export function StripPicture({ picture, axis, direction, id }: StripPictureProps): ReactElement {
  const alt = { id, text: picture.alt };
  if (picture.type === 'people') {
    const { width, height } = gridOf(picture.of);
    return (
      <Picture width={width} height={height} alt={alt} className="people">
        {drawPeopleGroups(picture, direction).map((group, index) => (
          <Group key={index} group={group} of={picture.of} />
        ))}
      </Picture>
    );
  }
  const mark = drawStripPicture(picture, axis, direction);
  return (
    <Picture width={mark.width} height={mark.height} alt={alt} className={picture.type}>
      {mark.strokes.map((stroke, index) => (
        <StrokeOf key={index} stroke={stroke} />
      ))}
    </Picture>
  );
}

/** Lines over the whole height of a row, whatever it is: grid and today. */
export function AxisLines({
  axis,
  direction,
}: {
  readonly axis: Axis;
  readonly direction: Direction;
}): ReactElement {
  const field = { width: rangeSizes.width, direction };
  const upright = (offset: number): string =>
    linePath(field, [
      [offset, 0],
      [offset, 100],
    ]);
  const line = { vectorEffect: 'non-scaling-stroke', fill: 'none' } as const;
  return (
    <svg
      className="axis-lines"
      viewBox={`0 0 ${String(rangeSizes.width)} 100`}
      preserveAspectRatio="none"
      aria-hidden="true"
      focusable="false"
    >
      <path d={gridOffsets(axis).map(upright).join('')} stroke={palette.grid} strokeWidth={1} {...line} />
      <path d={upright(placeOnAxis(axis, axis.today.at))} stroke={palette.ink} strokeWidth={2} {...line} />
    </svg>
  );
}

/** Labels of an axis may reach this far beyond the picture column. */
const OVERHANG = 10;
const LABEL_GAP = 4;

function TickLabels({
  ticks,
  axis,
  direction,
  top,
  strong,
}: {
  readonly ticks: readonly Tick[];
  readonly axis: Axis;
  readonly direction: Direction;
  readonly top: number;
  readonly strong?: boolean;
}): ReactElement {
  const { width } = rangeSizes;
  const lengths = ticks.map(({ label }) => estimateWidth(label));
  const wanted = ticks.map((tick, index) => ({
    centre: placeOnAxis(axis, tick.at),
    length: lengths[index] ?? 0,
  }));
  const starts = spreadLabels(wanted, { low: -OVERHANG, high: width + OVERHANG, gap: LABEL_GAP });
  return (
    <>
      {ticks.map(({ label }, index) => {
        const middle = (starts[index] ?? 0) + (lengths[index] ?? 0) / 2;
        const x = acrossField({ width, direction }, middle);
        return <Label key={index} text={label} x={x} top={top} anchor="middle" strong={strong === true} />;
      })}
    </>
  );
}

interface AxisProps {
  readonly axis: Axis;
  readonly direction: Direction;
}

/** Label of today over the ticks. Hidden from those who hear the page: every row says its figures in words. */
export function AxisHead({ axis, direction }: AxisProps): ReactElement {
  const { lineHeight } = labelType;
  return (
    <Picture width={rangeSizes.width} height={2 * lineHeight + 2} className="axis">
      <TickLabels ticks={[axis.today]} axis={axis} direction={direction} top={0} strong />
      <TickLabels ticks={axis.top.ticks} axis={axis} direction={direction} top={lineHeight} />
    </Picture>
  );
}

const TICK = 5;

export function AxisFoot({
  axis,
  direction,
  ticks,
}: AxisProps & { readonly ticks: readonly Tick[] }): ReactElement {
  const { width } = rangeSizes;
  const marks = ticks.map(({ at }) =>
    linePath({ width, direction }, [
      [placeOnAxis(axis, at), 0],
      [placeOnAxis(axis, at), TICK],
    ]),
  );
  return (
    <Picture width={width} height={TICK + labelType.lineHeight + 2} className="axis">
      <StrokeOf stroke={{ path: marks.join(''), stroke: palette.ink, strokeWidth: 0.8 }} />
      <TickLabels ticks={ticks} axis={axis} direction={direction} top={TICK} />
    </Picture>
  );
}
