import type { ReactElement } from 'react';
import type { WarningFrame } from '../../model/care-blocks.ts';
import type { OfType, Place, PlacedHeading } from '../place.ts';
import { HeadingOf, LabelWords, PhoneLink, Prose } from '../words.tsx';
import { Words } from '../whole-words.tsx';

interface FrameProps {
  readonly frame: WarningFrame;
  readonly heading: PlacedHeading;
  readonly place: Place;
}

/** Urgency is told by weight and order, not by colour; each number can be called by a touch. */
function Frame({ frame, heading, place }: FrameProps): ReactElement {
  return (
    <div className={`frame ${frame.urgency}`}>
      <div className="frame-head">
        <div>
          <HeadingOf heading={heading} />
          {frame.note === undefined ? null : (
            <p className="small">
              <Words text={frame.note} />
            </p>
          )}
        </div>
        {frame.phones.length === 0 ? null : (
          <ul role="list">
            {frame.phones.map(({ label, hours, number }, index) => (
              <li key={index}>
                {[label, hours].map((words, at) =>
                  words === undefined ? null : (
                    <span key={at} className="small">
                      <LabelWords label={words} place={place} />{' '}
                    </span>
                  ),
                )}
                <PhoneLink number={number} />
              </li>
            ))}
          </ul>
        )}
        {frame.first === undefined ? null : (
          <p className="first">
            <LabelWords label={frame.first} place={place} />
          </p>
        )}
      </div>
      {frame.items.length === 0 ? null : (
        <ul className="plain">
          {frame.items.map((item, index) => (
            <li key={index}>
              <Prose paragraph={item} place={place} />
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}

export function warningBlock({ frames }: OfType<'warning-frames'>, place: Place): ReactElement {
  const headed = frames.map((frame) => ({
    frame,
    heading: place.heading(place.inTopic === true ? 3 : 2, frame.heading),
  }));
  return (
    <div className="frames">
      {headed.map(({ frame, heading }) => (
        <Frame key={heading.id} frame={frame} heading={heading} place={place} />
      ))}
    </div>
  );
}
