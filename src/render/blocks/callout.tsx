import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { Paragraph } from '../../model/document.ts';
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

/** A call-out of more points may be divided between two of them; a shorter one stays whole. */
const MOST_WHOLE = 4;

/**
 * A framed leaf. Each paragraph is a unit of its own, so that a person with many points about their health still gets
 * every one of them, and no page is left half empty for it. At least two points stand on either side of a break, where
 * the frame stays open.
 */
export function calloutUnits(block: OfType<'callout'>, place: Place): readonly Unit[] {
  const { theme, key } = place;
  const heading = { text: block.heading, tag: place.headingTag(3) };
  const paragraphs: readonly (Paragraph | undefined)[] = block.body.length === 0 ? [undefined] : block.body;
  const whole = paragraphs.length <= MOST_WHOLE || block.kind === 'study';
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
    keepWithNext: whole ? false : index === 0 || index === paragraphs.length - 2,
    ...(whole ? { group: key } : {}),
  }));
}
