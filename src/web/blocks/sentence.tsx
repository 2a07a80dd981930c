import type { ReactElement } from 'react';
import type { Sentence } from '../../model/care-blocks.ts';
import type { OfType, Place } from '../place.ts';
import { HeadingOf, Runs } from '../words.tsx';
import { TickBox } from './box.tsx';

/** Words with blanks to fill in by hand; what belongs there is said to those who hear the page. */
export function SentenceOf({
  sentence,
  place,
}: {
  readonly sentence: Sentence;
  readonly place: Place;
}): ReactElement {
  return (
    <p className="sentence">
      {sentence.parts.map((part, index) =>
        part.type === 'words' ? (
          <Runs key={index} inlines={part.inlines} place={place} />
        ) : (
          <span key={index} className="blank" role="img" aria-label={part.alt} />
        ),
      )}
    </p>
  );
}

export function sayBlock({ heading, sentences }: OfType<'say'>, place: Place): ReactElement {
  return (
    <div className="say">
      <HeadingOf heading={place.heading(3, heading)} className="small-heading" />
      {sentences.map((sentence, index) => (
        <SentenceOf key={index} sentence={sentence} place={place} />
      ))}
    </div>
  );
}

export function answersBlock({ heading, sentences }: OfType<'answers'>, place: Place): ReactElement {
  return (
    <div className="answers">
      <HeadingOf heading={place.heading(3, heading)} className="small-heading" />
      <ul role="list" className="boxed one-column">
        {sentences.map((sentence, index) => (
          <li key={index}>
            <TickBox place={place} />
            <SentenceOf sentence={sentence} place={place} />
          </li>
        ))}
      </ul>
    </div>
  );
}
