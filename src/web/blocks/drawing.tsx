import type { ReactElement } from 'react';
import type { DrawnView } from '../../model/drawing.ts';
import { drawBody } from '../../pictures/body.ts';
import { drawLeaders } from '../../pictures/leaders.ts';
import { bodyRoom, labelMeasure, placeView } from '../../pictures/place-view.ts';
import type { BodyRoom } from '../../pictures/place-view.ts';
import type { LabelSize } from '../../pictures/line-labels.ts';
import { Label, sizeOfLabel } from '../label.tsx';
import { Picture, StrokeOf } from '../picture.tsx';
import type { OfType, Place } from '../place.ts';
import { HeadingWords } from '../whole-words.tsx';

/** Of a body between labels, so that these are still about 1 rem high on a phone of 360 pixels. */
const SMALLER = 0.76;

function sizeOf(text: string): LabelSize {
  return sizeOfLabel(text, labelMeasure);
}

/** One size for all views of a drawing: smaller where a body stands between labels, and room for the longest word. */
function roomFor(views: readonly DrawnView[]): BodyRoom {
  const betweenLabels = views.some(({ labels }) => new Set(labels.map(({ side }) => side)).size > 1);
  const widest = Math.max(0, ...views.flatMap(({ labels }) => labels.map(({ text }) => sizeOf(text).width)));
  const beside = bodyRoom.column - labelMeasure;
  return { scale: betweenLabels ? SMALLER : 1, column: Math.max(bodyRoom.column, widest + beside) };
}

interface BodyProps {
  readonly view: DrawnView;
  readonly room: BodyRoom;
  readonly place: Place;
}

/** The body at one time with its labels, as one figure. Never turned over, whatever the direction of the language. */
function BodyFigure({ view, room, place }: BodyProps): ReactElement {
  const placed = placeView(view, sizeOf, room);
  const { width, height, drawingLeft, labels } = placed;
  const shrunk = room.scale === 1 ? '' : ` scale(${String(room.scale)})`;
  const id = place.nextId();
  return (
    <figure className="body">
      <figcaption className="strong">
        <HeadingWords text={view.heading} />
      </figcaption>
      <Picture width={width} height={height} alt={{ id, text: view.alt, title: view.heading }}>
        <g transform={`translate(${String(drawingLeft)} 0)${shrunk}`} strokeLinejoin="round">
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
  const room = roomFor(views);
  return (
    <div className="drawing">
      {views.map((view, index) => (
        <BodyFigure key={index} view={view} room={room} place={place} />
      ))}
    </div>
  );
}
