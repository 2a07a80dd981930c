import type { ReactElement } from 'react';
import { turnedDirection } from '../../model/left-to-right.ts';
import { inlineText } from '../../model/text-piece.ts';
import type { OfType, Place } from '../place.ts';
import { HeadingOf, Prose, Runs, hasWords } from '../words.tsx';
import { Ends, Words } from '../whole-words.tsx';

export function paragraphBlock(block: OfType<'paragraph'>, place: Place): ReactElement | null {
  return hasWords(block) ? <Prose paragraph={block} place={place} /> : null;
}

const headingClass = { 1: 'title', 2: 'question', 3: 'small-heading' } as const;

export function headingBlock(block: OfType<'heading'>, place: Place): ReactElement {
  const dir = block.level === 3 ? turnedDirection(block.text, place.tree.direction) : undefined;
  const heading = place.heading(block.level, block.text);
  return (
    <HeadingOf heading={heading} className={headingClass[block.level]} dir={dir} lang={block.language} />
  );
}

/** The first panel of a document: who made it, when, the question, for whom. */
export function coverBlock(block: OfType<'cover'>, place: Place): ReactElement {
  const question = place.heading(1, block.question);
  return (
    <div className="cover">
      <Ends start={block.clinic} end={block.date} />
      <HeadingOf heading={question} className="decision" />
      {inlineText(block.lead).trim() === '' ? null : (
        <p className="lead">
          <Runs inlines={block.lead} place={place} />
        </p>
      )}
      {block.addressee === '' ? null : (
        <p className="label">
          <Words text={block.addressee} />
        </p>
      )}
    </div>
  );
}
