import type { ReactElement } from 'react';
import { inlineText } from '../../model/text-piece.ts';
import type { OfType, Place } from '../place.ts';
import { HeadingOf, Paragraphs, Prose, Runs } from '../words.tsx';
import { TickBox } from './box.tsx';
import { HeadingWords } from '../whole-words.tsx';

export function calloutBlock({ kind, heading, body }: OfType<'callout'>, place: Place): ReactElement {
  return (
    <div className={`callout ${kind}`}>
      <HeadingOf heading={place.heading(3, heading)} className="small-heading" />
      <Paragraphs paragraphs={body} place={place} />
    </div>
  );
}

/** One opinion, in a large leaf: as much room for what speaks against it as for the reasons. */
export function panelBlock({ lead, body, columns, closing }: OfType<'panel'>, place: Place): ReactElement {
  const heading = place.heading(3, inlineText(lead));
  const lists = columns.map((column) => ({ ...column, id: place.nextId() }));
  return (
    <div className="panel">
      <HeadingOf heading={heading} className="lean">
        <Runs inlines={lead} place={place} />
      </HeadingOf>
      <Paragraphs paragraphs={body} place={place} />
      <div className="columns">
        {lists.map((column) => (
          <div key={column.id}>
            <p className="strong" id={column.id}>
              <HeadingWords text={column.heading} />
            </p>
            <ul className="plain" aria-labelledby={column.id}>
              {column.items.map((item, at) => (
                <li key={at}>
                  <Prose paragraph={item} place={place} />
                </li>
              ))}
            </ul>
          </div>
        ))}
      </div>
      <Paragraphs paragraphs={closing} place={place} />
    </div>
  );
}

/** Short lists side by side. */
export function asidesBlock({ columns }: OfType<'asides'>, place: Place): ReactElement {
  return (
    <div className="columns asides">
      {columns.map(({ heading, boxes, items }, index) => (
        <div key={index}>
          <HeadingOf heading={place.heading(3, heading)} className="small-heading" />
          <ul role="list" className={boxes ? 'boxed one-column' : 'bare'}>
            {items.map((item, at) => (
              <li key={at}>
                {boxes ? <TickBox place={place} /> : null}
                <Prose paragraph={item} place={place} />
              </li>
            ))}
          </ul>
        </div>
      ))}
    </div>
  );
}
