import type { ReactElement } from 'react';
import { drawKeyMark } from '../../pictures/marks.ts';
import { MarkPicture } from '../picture.tsx';
import type { OfType, Place } from '../place.ts';
import { HeadingOf, LabelWords, Paragraphs, PhoneLink, Prose, hasWords, phonesOf } from '../words.tsx';
import { BoxedWords, TickBox, WritingLines } from './box.tsx';
import { HeadingWords, Words } from '../whole-words.tsx';

export function listBlock({ ordered, items, first }: OfType<'list'>, place: Place): ReactElement | null {
  if (items.length === 0) return null;
  const Tag = ordered ? 'ol' : 'ul';
  const small = items.every((paragraphs) => paragraphs[0]?.role === 'small');
  return (
    <Tag className={small ? 'plain notes' : 'plain'} {...(first === undefined ? {} : { start: first })}>
      {items.map((paragraphs, index) => (
        <li key={index}>
          <Paragraphs paragraphs={paragraphs} place={place} />
        </li>
      ))}
    </Tag>
  );
}

export function ticksBlock(block: OfType<'ticks'>, place: Place): ReactElement {
  return (
    <div className="ticks">
      <HeadingOf heading={place.heading(3, block.heading)} className="small-heading" />
      <BoxedWords words={block.items} place={place} />
    </div>
  );
}

export function writeInBlock({ prompt, box, lines }: OfType<'write-in'>, place: Place): ReactElement {
  const asked = prompt !== undefined && hasWords(prompt);
  return (
    <div className={asked ? 'write-in' : 'write-in unasked'}>
      {box ? <TickBox place={place} /> : null}
      <div>
        {asked ? <Prose paragraph={prompt} place={place} /> : null}
        <WritingLines count={lines} />
      </div>
    </div>
  );
}

export function factsBlock({ items }: OfType<'facts'>, place: Place): ReactElement | null {
  if (items.length === 0) return null;
  const phones = phonesOf(place);
  return (
    <dl className="facts">
      {items.map(({ label, value }, index) => (
        <div key={index}>
          <dt>
            <LabelWords label={label} place={place} />
          </dt>
          <dd>
            {typeof value === 'string' && phones.includes(value) ? (
              <PhoneLink number={value} />
            ) : (
              <LabelWords label={value} place={place} />
            )}
          </dd>
        </div>
      ))}
    </dl>
  );
}

/** How to read the pictures: samples with words. */
export function keyBlock({ heading, items }: OfType<'key'>, place: Place): ReactElement {
  const id = place.nextId();
  return (
    <div className="key">
      <p className="strong" id={id}>
        <HeadingWords text={heading} />
      </p>
      <ul role="list" aria-labelledby={id}>
        {items.map(({ mark, words }, index) => (
          <li key={index}>
            <MarkPicture mark={drawKeyMark(mark, place.tree.direction)} />
            <p>
              <Words text={words} />
            </p>
          </li>
        ))}
      </ul>
    </div>
  );
}
