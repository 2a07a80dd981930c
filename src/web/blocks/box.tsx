import type { ReactElement } from 'react';
import { drawTickBox } from '../../pictures/marks.ts';
import { MarkPicture } from '../picture.tsx';
import type { Place } from '../place.ts';
import { Words } from '../whole-words.tsx';

/** Sides of the boxes to tick, in points: that of a grid, that before a line of text. */
const sides = { grid: 17, line: 15 } as const;

/** An empty box to tick on paper. Those who hear the page hear what stands beside it. */
export function TickBox({
  place,
  of = 'line',
}: {
  readonly place: Place;
  readonly of?: keyof typeof sides;
}): ReactElement {
  return <MarkPicture mark={drawTickBox(sides[of], place.tree.direction)} className="box" />;
}

/** Lines to write on. A screen shows one, for nobody writes there; paper has all of them. */
export function WritingLines({ count }: { readonly count: number }): ReactElement | null {
  if (count === 0) return null;
  return (
    <div className="writing" aria-hidden="true">
      {Array.from({ length: count }, (_, index) => (
        <div key={index} className={index === 0 ? 'line' : 'line on-paper'} />
      ))}
    </div>
  );
}

/** Words with a box before each. */
export function BoxedWords({
  words,
  place,
}: {
  readonly words: readonly string[];
  readonly place: Place;
}): ReactElement | null {
  if (words.length === 0) return null;
  return (
    <ul role="list" className="boxed">
      {words.map((text, index) => (
        <li key={index}>
          <TickBox place={place} />
          <p>
            <Words text={text} />
          </p>
        </li>
      ))}
    </ul>
  );
}
