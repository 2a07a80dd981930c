import { Path, Svg, View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import { drawnWidth } from '../../model/drawing.ts';
import type { DrawnView } from '../../model/drawing.ts';
import { drawBody } from '../../pictures/body.ts';
import { drawLeaders } from '../../pictures/leaders.ts';
import type { PlacedLabel } from '../../pictures/place-view.ts';
import type { Stroke } from '../../pictures/marks.ts';
import { pictureSizes } from '../picture-sizes.ts';
import { rowDirection } from '../theme.ts';
import type { Theme } from '../theme.ts';
import type { Unit } from '../unit.ts';
import { placeInType } from './drawing-labels.ts';
import { Words } from './primitives.tsx';
import { singleUnit } from './unit-parts.ts';
import type { OfType, Place } from './unit-parts.ts';

const HEADING_GAP = 6;

/** Corners of a body are never sharp. */
function BodyPath({ stroke }: { readonly stroke: Stroke }): ReactElement | null {
  if (stroke.path === '') return null;
  return (
    <Path
      d={stroke.path}
      strokeLinejoin="round"
      {...(stroke.fill === undefined ? {} : { fill: stroke.fill })}
      {...(stroke.stroke === undefined ? {} : { stroke: stroke.stroke })}
      {...(stroke.strokeWidth === undefined ? {} : { strokeWidth: stroke.strokeWidth })}
      {...(stroke.dash === undefined ? {} : { strokeDasharray: stroke.dash })}
    />
  );
}

function PlacedWords({ theme, placed }: { theme: Theme; placed: PlacedLabel }): ReactElement {
  const { label, left, top, width } = placed;
  // Words end where their line begins, on whichever side of the drawing they stand.
  const atEnd = (label.side === 'left') === (theme.direction === 'ltr');
  return (
    <View style={{ position: 'absolute', left, top, width }}>
      <Words
        theme={theme}
        text={label.text}
        role={theme.type.small}
        width={width}
        setting="balanced"
        align={atEnd ? 'end' : 'start'}
        sem={{ tag: 'P' }}
      />
    </View>
  );
}

/** The body at one time, with its labels as one figure: nobody has to listen to bare names. */
export function BodyView({ theme, view }: { readonly theme: Theme; readonly view: DrawnView }): ReactElement {
  const { scale } = pictureSizes[theme.edition].body;
  const placed = placeInType(view, theme);
  const { width, height, drawingLeft, labels } = placed;
  return (
    <View style={{ width }}>
      <View style={{ marginBottom: HEADING_GAP }}>
        <Words theme={theme} text={view.heading} role={theme.type.name} width={width} sem={{ tag: 'P' }} />
      </View>
      <View sem={{ tag: 'Figure', alt: view.alt }} style={{ width, height }}>
        <Svg
          style={{ position: 'absolute', top: 0, left: drawingLeft }}
          width={drawnWidth * scale}
          height={height}
          {...(scale === 1 ? {} : { viewBox: `0 0 ${drawnWidth} ${view.height}` })}
        >
          {drawBody(view).map((stroke, index) => (
            <BodyPath key={index} stroke={stroke} />
          ))}
        </Svg>
        <Svg style={{ position: 'absolute', top: 0, left: 0 }} width={width} height={height}>
          {drawLeaders(
            labels.map(({ line }) => line),
            width,
          ).map((stroke, index) => (
            <BodyPath key={index} stroke={stroke} />
          ))}
        </Svg>
        {labels.map((one, index) => (
          <PlacedWords key={index} theme={theme} placed={one} />
        ))}
      </View>
    </View>
  );
}

/** Before and after side by side; they are one picture and are never parted. */
export function drawingUnits(block: OfType<'drawing'>, place: Place): readonly Unit[] {
  const { theme } = place;
  const { width, direction } = theme;
  const element = (
    <View
      style={{
        width,
        flexDirection: rowDirection(direction),
        justifyContent: block.views.length > 1 ? 'space-between' : 'center',
        alignItems: 'flex-start',
      }}
    >
      {block.views.map((view, index) => (
        <BodyView key={index} theme={theme} view={view} />
      ))}
    </View>
  );
  return singleUnit(block, place, element);
}
