import { Fragment } from 'react';
import type { ReactElement } from 'react';
import { splitHeading, splitWholePhrases } from './whole-phrases.ts';
import type { TextPart } from './whole-phrases.ts';

/**
 * Plain words, of which short phrases stay on one line: a number with what it counts, a compound with a hyphen. Only a
 * style keeps them, no character is another, so that what is copied, searched or read aloud is the text itself.
 */
export function Words({ text }: { readonly text: string }): ReactElement {
  return <Parts parts={splitWholePhrases(text)} />;
}

/** The same of a heading, in which no Chinese word is parted either. */
export function HeadingWords({ text }: { readonly text: string }): ReactElement {
  return <Parts parts={splitHeading(text)} />;
}

function Parts({ parts }: { readonly parts: readonly TextPart[] }): ReactElement {
  return (
    <>
      {parts.map((part, index) =>
        part.whole ? (
          <span key={index} className="whole">
            {part.text}
          </span>
        ) : (
          <Fragment key={index}>{part.text}</Fragment>
        ),
      )}
    </>
  );
}

/** Two texts on one line, one at each end: who made the pages and when. */
export function Ends({ start, end }: { readonly start: string; readonly end: string }): ReactElement {
  return (
    <div className="ends">
      <p className="label">
        <Words text={start} />
      </p>
      <p>
        <Words text={end} />
      </p>
    </div>
  );
}
