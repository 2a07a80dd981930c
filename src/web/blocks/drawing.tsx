import type { ReactElement } from 'react';
import type { DrawnView } from '../../model/drawing.ts';
import { drawBody } from '../../pictures/body.ts';
import { drawLeaders } from '../../pictures/leaders.ts';
import { labelMeasure, placeView } from '../../pictures/place-view.ts';
import { Label, sizeOfLabel } from '../label.tsx';
import { Picture, StrokeOf } from '../picture.tsx';
import type { OfType, Place } from '../place.ts';
import { Words } from '../whole-words.tsx';

/** The body at one time with its labels, as one figure. Never turned over, whatever the direction of the language. */
function BodyFigure({ view, place }: { readonly view: DrawnView; readonly place: Place }): ReactElement {
  const placed = placeView(view, (text) => sizeOfLabel(text, labelMeasure));
  const { width, height, drawingLeft, labels } = placed;
  const id = place.nextId();
  return (
    <figure className="body">
      <figcaption className="strong">
        <Words text={view.heading} />
      </figcaption>
      <Picture width={width} height={height} alt={{ id, text: view.alt, title: view.heading }}>
        <g transform={`translate(${String(drawingLeft)} 0)`} strokeLinejoin="round">
          {drawBody(view).map((stroke, index) => (
            <StrokeOf key={index} stroke={stroke} />
          ))}
        </g>
        {drawLeaders(
          labels.map(({ line }) => line),
          width,
        ).map((stroke, index) => (
          <StrokeOf key={index} stroke={stroke} />
        ))}
        {labels.map(({ label, left, top, width: own }, index) => (
          <Label
            key={index}
            text={label.text}
            x={label.side === 'left' ? left + own : left}
            top={top}
            anchor={label.side === 'left' ? 'right' : 'left'}
            measure={labelMeasure}
          />
        ))}
      </Picture>
    </figure>
  );
}

export function drawingBlock({ views }: OfType<'drawing'>, place: Place): ReactElement {
  return (
    <div className="drawing">
      {views.map((view, index) => (
        <BodyFigure key={index} view={view} place={place} />
      ))}
    </div>
  );
}
