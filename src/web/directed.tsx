import { Fragment } from 'react';
import type { ReactElement, ReactNode } from 'react';
import { isLeftToRight, leftToRightSpans } from '../model/left-to-right.ts';
import type { TextSpan } from '../model/left-to-right.ts';
import type { Inline } from '../model/document.ts';
import type { Place } from './place.ts';
import { Words } from './whole-words.tsx';

/** Part of an inline that lies wholly within a phrase, or wholly outside. */
interface DirectedPiece {
  readonly inline: Inline;
  readonly text: string;
}

interface DirectedPart {
  /** Whether it is a phrase that is read from left to right among words from right to left. */
  readonly isolated: boolean;
  readonly pieces: readonly DirectedPiece[];
}

/**
 * What any browser sets in its right order by itself: a bare number, a word; no word before a number, which it would take
 * for one phrase with the word (UAX #9, W7).
 */
const needsNothing = /^(?:\p{Nd}+(?:[.,]\p{Nd}+)*|\p{Script=Latin}+)$/u;
const numberNext = /^[^\p{L}\p{Nd}]*\p{Nd}/u;

function isolates(text: string, { start, end }: TextSpan): boolean {
  const phrase = text.slice(start, end);
  return !needsNothing.test(phrase) || (/\p{L}/u.test(phrase) && numberNext.test(text.slice(end)));
}

/**
 * A paragraph from right to left in parts, so that names, phone numbers and sentences of another language keep their order
 * and the marks at their ends. A paragraph that is not from right to left at all is one part.
 */
export function directedParts(inlines: readonly Inline[]): readonly DirectedPart[] {
  const text = inlines.map(({ value }) => value).join('');
  let at = 0;
  const placed = inlines.map((inline) => ({ inline, start: at, end: (at += inline.value.length) }));
  const marked = placed.filter(({ inline }) => inline.type === 'text' && inline.language !== undefined);
  const spans = isLeftToRight(text)
    ? [{ start: 0, end: text.length }]
    : leftToRightSpans(text, marked).filter((span) => isolates(text, span));
  const parts: DirectedPart[] = [];
  const add = (part: TextSpan, isolated: boolean): void => {
    if (part.end > part.start) parts.push({ isolated, pieces: piecesWithin(placed, part) });
  };
  let done = 0;
  for (const span of spans) {
    add({ start: done, end: span.start }, false);
    add(span, true);
    done = span.end;
  }
  add({ start: done, end: text.length }, false);
  return parts;
}

function piecesWithin(
  placed: readonly (TextSpan & { readonly inline: Inline })[],
  part: TextSpan,
): readonly DirectedPiece[] {
  return placed
    .map(({ inline, start, end }) => ({
      inline,
      text: inline.value.slice(Math.max(part.start - start, 0), Math.max(Math.min(part.end, end) - start, 0)),
    }))
    .filter(({ text }) => text !== '');
}

/** A phrase that is read from left to right. */
export function Isolated({ children }: { readonly children: ReactNode }): ReactElement {
  return <bdi dir="ltr">{children}</bdi>;
}

/** Words without marks of their own, as a label or a value. */
export function Directed({ text, place }: { readonly text: string; readonly place: Place }): ReactElement {
  if (place.tree.direction === 'ltr') return <Words text={text} />;
  return (
    <>
      {directedParts([{ type: 'text', value: text }]).map(({ isolated, pieces }, index) => {
        const words = pieces.map((piece) => piece.text).join('');
        const set = <Words text={words} />;
        return isolated ? <Isolated key={index}>{set}</Isolated> : <Fragment key={index}>{set}</Fragment>;
      })}
    </>
  );
}
