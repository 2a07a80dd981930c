import { Svg, View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { Box } from '../../pictures/draw-path.ts';
import { BESIDE } from '../../pictures/line-labels.ts';
import { spreadLabels } from '../../pictures/place-labels.ts';
import { strokesOfLine, placeMonth, placeWeight } from '../../pictures/weight-line.ts';
import { fromStart, palette } from '../theme.ts';
import type { Theme, TypeRole } from '../theme.ts';
import type { LinePicture } from './line-labels.ts';
import { placeLabels, valueRole, widthOf } from './line-labels.ts';
import { StrokePath, Words } from './primitives.tsx';
import { Label } from './strip-axis.tsx';

const NAME_GAP = 5;

/**
 * Values of the axis stand before the plot, at the end edge of their room, level with their lines: they are moved apart
 * where the figures would touch, not where lines of words would.
 */
function ValueLabels({ theme, line, sizes }: LinePicture): ReactElement {
  const { small } = theme.type;
  const lead = small.lineHeight - small.size;
  const wanted = line.valueTicks.map((tick) => ({
    centre: placeWeight(line, sizes, tick.at),
    length: small.size,
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
          top={(tops[index] ?? 0) - lead / 2}
        />
      ))}
    </>
  );
}

function TimeLabels({ theme, line, sizes }: LinePicture): ReactElement {
  const { small } = theme.type;
  const wanted = line.timeTicks.map((tick) => ({
    centre: placeMonth(line, sizes, tick.at),
    length: widthOf(tick.label, small),
  }));
  const end = Math.min(sizes.width, sizes.plotStart + sizes.plotWidth + BESIDE);
  const starts = spreadLabels(wanted, { low: 0, high: end, gap: 6 });
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

interface BoxedLabelProps {
  readonly theme: Theme;
  readonly text: string;
  readonly role: TypeRole;
  readonly box: Box;
  readonly align: 'start' | 'end';
  readonly plate: boolean;
}

/** A label of one line or more in the box that was found for it. */
function BoxedLabel({ theme, text, role, box, align, plate }: BoxedLabelProps): ReactElement {
  const place = {
    position: 'absolute',
    top: box.top,
    width: box.width,
    ...(plate ? { backgroundColor: palette.pale } : {}),
    ...fromStart(theme.direction, box.start),
  } as const;
  return (
    <View style={place}>
      <Words theme={theme} text={text} role={role} width={box.width} setting="balanced" align={align} />
    </View>
  );
}

/**
 * Weight over time for one choice: name, line, and all labels as text. The whole is one figure with one text
 * alternative, so that nobody has to listen to bare numbers.
 */
export function WeightPicture(picture: LinePicture): ReactElement {
  const { theme, line, sizes } = picture;
  const { type } = theme;
  const labels = placeLabels(picture);
  const align = sizes.labels === 'beside' ? 'start' : 'end';
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
          {strokesOfLine(line, sizes, theme.direction).map((stroke, index) => (
            <StrokePath key={index} stroke={stroke} />
          ))}
        </Svg>
        <ValueLabels {...picture} />
        <BoxedLabel
          theme={theme}
          text={line.today.label}
          role={type.labelStrong}
          box={labels.today}
          align={align}
          plate={sizes.plates}
        />
        <TimeLabels {...picture} />
        {line.points.map((at, index) => (
          <Label
            key={index}
            theme={theme}
            text={at.label}
            role={valueRole(theme)}
            start={labels.values[index]?.start ?? 0}
            top={labels.values[index]?.top ?? 0}
          />
        ))}
        {line.unknownAfter === undefined ? null : (
          <BoxedLabel
            theme={theme}
            text={line.unknownAfter}
            role={type.small}
            box={labels.after}
            align={align}
            plate={sizes.plates}
          />
        )}
      </View>
    </View>
  );
}
