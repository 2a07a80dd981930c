import type { ReactElement } from 'react';
import type { Axis, StripRow } from '../../model/document.ts';
import type { OfType, Place } from '../place.ts';
import { LabelWords, Paragraphs } from '../words.tsx';
import { AxisFoot, AxisHead, AxisLines, StripPicture } from './strip-picture.tsx';
import { Words } from '../whole-words.tsx';

type Strip = OfType<'strip'>;

interface AxisProps {
  readonly axis: Axis;
  readonly place: Place;
}

/** The axis above the first row, where rows stand under each other in columns. */
function UpperAxis({ axis, place }: AxisProps): ReactElement {
  return (
    <div className="axis-row upper" aria-hidden="true">
      <AxisHead axis={axis} direction={place.tree.direction} />
      <p className="small">{axis.top.unit}</p>
    </div>
  );
}

/** The same axis under the picture of one row, where rows are stacked: a bar is read beside its numbers. */
function AxisAgain({ axis, place }: AxisProps): ReactElement {
  return (
    <div className="axis-again" aria-hidden="true" data-repeated="">
      <AxisHead axis={axis} direction={place.tree.direction} />
      <p className="small">{axis.top.unit}</p>
    </div>
  );
}

function LowerAxis({ axis, place }: AxisProps): ReactElement | null {
  if (axis.bottom === undefined) return null;
  return (
    <div className="axis-row lower" aria-hidden="true">
      <AxisFoot axis={axis} direction={place.tree.direction} ticks={axis.bottom.ticks} />
      <p className="small">{axis.bottom.unit}</p>
    </div>
  );
}

interface RowProps {
  readonly row: StripRow;
  readonly strip: Strip;
  readonly place: Place;
}

function Name({ row, place }: Pick<RowProps, 'row' | 'place'>): ReactElement {
  return (
    <div className="name">
      <p className="strong">
        <LabelWords label={row.name} place={place} />
      </p>
      {row.tag === undefined ? null : (
        <p className="tag">
          <Words text={row.tag} />
        </p>
      )}
    </div>
  );
}

/** A picture with its words as its caption. A row of nothing but words has the room of the picture left free. */
function Shown({ row, strip, place }: RowProps): ReactElement {
  const { picture } = row;
  const { axis } = strip;
  const words = <Paragraphs paragraphs={row.words} place={place} />;
  if (picture === undefined)
    return (
      <div className="shown">
        <div className="field empty" />
        <div className="words">{words}</div>
      </div>
    );
  const onAxis = picture.type === 'range' || (picture.type === 'unknown' && picture.of === 'range');
  const { direction } = place.tree;
  return (
    <figure className="shown">
      <div className="field">
        {onAxis && axis !== undefined ? <AxisLines axis={axis} direction={direction} /> : null}
        <StripPicture picture={picture} axis={axis} direction={direction} id={place.nextId()} />
      </div>
      {picture.type === 'range' && axis !== undefined ? <AxisAgain axis={axis} place={place} /> : null}
      <figcaption className="words">{words}</figcaption>
    </figure>
  );
}

/** One row a choice: name, picture, words; columns where there is room, else one under another. */
export function stripBlock(strip: Strip, place: Place): ReactElement | null {
  const { rows, layout, axis } = strip;
  if (rows.length === 0) return null;
  return (
    <div className={`strip ${layout}`}>
      {axis === undefined ? null : <UpperAxis axis={axis} place={place} />}
      <ul role="list">
        {rows.map((row, index) => (
          <li key={index}>
            <Name row={row} place={place} />
            {layout === 'text' ? (
              <div className="words">
                <Paragraphs paragraphs={row.words} place={place} />
              </div>
            ) : (
              <Shown row={row} strip={strip} place={place} />
            )}
          </li>
        ))}
      </ul>
      {axis === undefined ? null : <LowerAxis axis={axis} place={place} />}
    </div>
  );
}
