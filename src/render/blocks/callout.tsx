import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { Paragraph } from '../../model/document.ts';
import { Lines } from '../text.tsx';
import { alignStart } from '../theme.ts';
import type { Theme } from '../theme.ts';
import type { Unit } from '../unit.ts';
import { LeafFrame } from './leaf-frame.tsx';
import { Prose, Words } from './primitives.tsx';
import type { HeadingTag, OfType, Place } from './unit-parts.ts';

const SIDE = 13;
const TOP = 12;
const BOTTOM = 13;
const BETWEEN = 5;
const CORNER = 16;

interface PieceProps {
  readonly theme: Theme;
  readonly first: boolean;
  readonly last: boolean;
  readonly heading?: { readonly text: string; readonly tag: HeadingTag };
  readonly paragraph?: Paragraph;
}

/** One piece of a call-out: the heading with the first paragraph, or a further paragraph, with its part of the frame. */
function CalloutPiece({ theme, first, last, heading, paragraph }: PieceProps): ReactElement {
  const { width, direction, type } = theme;
  const inner = width - 2 * SIDE;
  const padding = { paddingHorizontal: SIDE, paddingTop: first ? TOP : 0, paddingBottom: last ? BOTTOM : 0 };
  return (
    <View style={{ width, ...padding }}>
      <LeafFrame direction={direction} width={width} corner={CORNER} first={first} last={last} />
      {heading === undefined ? null : (
        <Words
          theme={theme}
          text={heading.text}
          role={type.smallHeading}
          width={inner}
          setting="balanced"
          sem={{ tag: heading.tag }}
        />
      )}
      {paragraph === undefined ? null : (
        <View style={{ marginTop: BETWEEN }}>
          <Prose theme={theme} paragraph={paragraph} width={inner} />
        </View>
      )}
    </View>
  );
}

/** The heading again, where a page goes on with a call-out; screen readers pass over it. */
function CalloutContinued({
  place,
  heading,
}: {
  readonly place: Place;
  readonly heading: string;
}): ReactElement {
  const { theme, continued } = place;
  const { width, direction, type } = theme;
  const { size, lineHeight, weight } = type.smallHeading;
  const runs = [
    { text: `${heading} `, weight },
    { text: continued, weight: 400 as const },
  ];
  const inner = width - 2 * SIDE;
  return (
    <View artifact style={{ width, paddingHorizontal: SIDE, paddingTop: TOP }}>
      <LeafFrame direction={direction} width={width} corner={CORNER} first last={false} />
      <Lines
        runs={runs}
        size={size}
        lineHeight={lineHeight}
        width={inner}
        setting="balanced"
        align={alignStart(direction)}
      />
    </View>
  );
}

/** A call-out of more paragraphs may be divided between two points; a shorter one stays whole. */
const MOST_WHOLE = 3;

/** A point begins with bold words; what follows without them is more about the same. */
function beginsPoint(paragraph: Paragraph | undefined): boolean {
  return paragraph?.inlines[0]?.bold === true;
}

/** Whether each paragraph is of one point with the next; where none is bold, the first two and the last two are bound. */
function boundToNext(paragraphs: readonly (Paragraph | undefined)[]): readonly boolean[] {
  const last = paragraphs.length - 1;
  if (!paragraphs.some(beginsPoint))
    return paragraphs.map((_, index) => last > 0 && (index === 0 || index === last - 1));
  return paragraphs.map((_, index) => index < last && !beginsPoint(paragraphs[index + 1]));
}

/**
 * A framed leaf. Each paragraph is a unit of its own, so that a person with many points about their health still gets
 * every one of them, and no page is left half empty for it. A break comes between two points only; there the frame
 * stays open, and the heading is said again above what goes on.
 */
export function calloutUnits(block: OfType<'callout'>, place: Place): readonly Unit[] {
  const { theme, key } = place;
  const heading = { text: block.heading, tag: place.headingTag(3) };
  const paragraphs: readonly (Paragraph | undefined)[] = block.body.length === 0 ? [undefined] : block.body;
  const whole = paragraphs.length <= MOST_WHOLE || block.kind === 'study';
  const bound = whole ? [] : boundToNext(paragraphs);
  const continuation = <CalloutContinued place={place} heading={block.heading} />;
  return paragraphs.map((paragraph, index) => ({
    key: `${key}.${index}`,
    origin: block.origin,
    element: (
      <CalloutPiece
        theme={theme}
        first={index === 0}
        last={index === paragraphs.length - 1}
        {...(index === 0 ? { heading } : {})}
        {...(paragraph === undefined ? {} : { paragraph })}
      />
    ),
    gapBefore: 0,
    keepWithNext: bound[index] === true,
    group: key,
    ...(whole ? {} : { divisible: true }),
    ...(index === 0 ? {} : { continuation }),
  }));
}
