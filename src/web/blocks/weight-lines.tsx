import type { ReactElement } from 'react';
import type { WeightLine } from '../../model/document.ts';
import { acrossField } from '../../pictures/draw-path.ts';
import type { Box } from '../../pictures/draw-path.ts';
import { BESIDE, placeLineLabels } from '../../pictures/line-labels.ts';
import { spreadLabels } from '../../pictures/place-labels.ts';
import { placeMonth, placeWeight, smallLine, strokesOfLine } from '../../pictures/weight-line.ts';
import { Label, estimateWidth, labelType, sizeOfLabel } from '../label.tsx';
import { Picture, StrokeOf } from '../picture.tsx';
import type { OfType, Place } from '../place.ts';
import { HeadingWords } from '../whole-words.tsx';

/** The size of two in a row suits a phone and a desk alike. */
const sizes = smallLine;

/** White of a line of type: digits do not need it, so that values of an axis stand level with their lines of the grid. */
const LEADING = labelType.lineHeight - labelType.size;

interface LineProps {
  readonly line: WeightLine;
  readonly place: Place;
}

/** x from the left edge of what is counted from the start. */
function across({ place }: LineProps, offset: number): number {
  return acrossField({ width: sizes.width, direction: place.tree.direction }, offset);
}

function ValueLabels(props: LineProps): ReactElement {
  const { line, place } = props;
  const wanted = line.valueTicks.map((tick) => ({
    centre: placeWeight(line, sizes, tick.at),
    length: labelType.size,
  }));
  const tops = spreadLabels(wanted, { low: -4, high: sizes.plotHeight + 4, gap: 0 });
  const anchor = place.tree.direction === 'rtl' ? 'left' : 'right';
  const x = across(props, sizes.plotStart - BESIDE);
  return (
    <>
      {line.valueTicks.map(({ label }, index) => (
        <Label key={index} text={label} x={x} top={(tops[index] ?? 0) - LEADING / 2} anchor={anchor} />
      ))}
    </>
  );
}

function TimeLabels(props: LineProps): ReactElement {
  const { line } = props;
  const lengths = line.timeTicks.map(({ label }) => estimateWidth(label));
  const wanted = line.timeTicks.map((tick, index) => ({
    centre: placeMonth(line, sizes, tick.at),
    length: lengths[index] ?? 0,
  }));
  const starts = spreadLabels(wanted, { low: 0, high: sizes.plotStart + sizes.plotWidth + BESIDE, gap: 6 });
  const top = sizes.height - labelType.lineHeight;
  return (
    <>
      {line.timeTicks.map(({ label }, index) => {
        const x = across(props, (starts[index] ?? 0) + (lengths[index] ?? 0) / 2);
        return <Label key={index} text={label} x={x} top={top} anchor="middle" />;
      })}
    </>
  );
}

/** Words that end where the plot ends, in the box found for them. */
function EndLabel({
  props,
  text,
  box,
  strong,
}: {
  readonly props: LineProps;
  readonly text: string;
  readonly box: Box;
  readonly strong: boolean;
}): ReactElement {
  const anchor = props.place.tree.direction === 'rtl' ? 'left' : 'right';
  const x = across(props, box.start + box.width);
  return <Label text={text} x={x} top={box.top} anchor={anchor} measure={box.width} strong={strong} />;
}

function LineFigure(props: LineProps): ReactElement {
  const { line, place } = props;
  const id = place.nextId();
  const labels = placeLineLabels({
    line,
    sizes,
    sizeOf: (label, text, measure) => sizeOfLabel(text, measure, label !== 'after'),
  });
  return (
    <figure className="weight-line">
      <figcaption className="strong">
        <HeadingWords text={line.name} />
      </figcaption>
      <Picture width={sizes.width} height={sizes.height} alt={{ id, text: line.alt, title: line.name }}>
        {strokesOfLine(line, sizes, place.tree.direction).map((stroke, index) => (
          <StrokeOf key={index} stroke={stroke} />
        ))}
        <ValueLabels {...props} />
        <EndLabel props={props} text={line.today.label} box={labels.today} strong />
        <TimeLabels {...props} />
        {line.points.map(({ label }, index) => {
          const box = labels.values[index] ?? { start: 0, top: 0, width: 0 };
          const x = across(props, box.start + box.width / 2);
          return <Label key={index} text={label} x={x} top={box.top} anchor="middle" strong />;
        })}
        {line.unknownAfter === undefined ? null : (
          <EndLabel props={props} text={line.unknownAfter} box={labels.after} strong={false} />
        )}
      </Picture>
    </figure>
  );
}

export function lineBoardBlock({ lines }: OfType<'line-board'>, place: Place): ReactElement {
  return (
    <div className="line-board">
      {lines.map((line, index) => (
        <LineFigure key={index} line={line} place={place} />
      ))}
    </div>
  );
}
