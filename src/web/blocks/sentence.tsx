import type { ReactElement } from 'react';
import type { Sentence } from '../../model/care-blocks.ts';
import type { Inline } from '../../model/document.ts';
import type { OfType, Place } from '../place.ts';
import { HeadingOf, Runs } from '../words.tsx';
import { TickBox } from './box.tsx';

/** The end of words that no line parts from the blank after it: the last word, of Chinese its last letters. */
const lastWord =
  /(?:(?<!\p{Script=Han})\p{Script=Han}{1,4}\p{P}?|(?<!\S)(?:(?!\p{Script=Han})\S){1,12}|\p{Script=Han}{3}\p{P}?) *$/u;

/** Runs in two: what comes before the word that a blank belongs to, and that word. */
function partLastWord(inlines: readonly Inline[]): readonly [readonly Inline[], readonly Inline[]] {
  const last = inlines.at(-1);
  const at = last?.type === 'text' ? last.value.search(lastWord) : -1;
  if (last?.type !== 'text' || at < 0) return [inlines, []];
  const before = at === 0 ? [] : [{ ...last, value: last.value.slice(0, at) }];
  return [[...inlines.slice(0, -1), ...before], [{ ...last, value: last.value.slice(at) }]];
}

/** Words with blanks to fill in by hand; what belongs there is said to those who hear the page. */
export function SentenceOf({
  sentence: { parts },
  place,
}: {
  readonly sentence: Sentence;
  readonly place: Place;
}): ReactElement {
  return (
    <p className="sentence">
      {parts.map((part, index) => {
        if (part.type === 'words') {
          const [words] = parts[index + 1]?.type === 'blank' ? partLastWord(part.inlines) : [part.inlines];
          return <Runs key={index} inlines={words} place={place} />;
        }
        const before = parts[index - 1];
        const label = before?.type === 'words' ? partLastWord(before.inlines)[1] : [];
        return (
          <span key={index} className="whole">
            <Runs inlines={label} place={place} />
            <span className="blank" role="img" aria-label={part.alt} />
          </span>
        );
      })}
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
