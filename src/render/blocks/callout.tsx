import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { Paragraph } from '../../model/document.ts';
import { pointOf } from '../../model/tree-text.ts';
import { spaceBetween } from '../../model/wide-marks.ts';
import { Lines } from '../text.tsx';
import { alignStart } from '../theme.ts';
import type { Theme, TypeRole } from '../theme.ts';
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
        <View style={{ marginTop: BETWEEN * theme.scale }}>
          <Prose theme={theme} paragraph={paragraph} width={inner} />
        </View>
      )}
    </View>
  );
}

interface ContinuedProps {
  readonly place: Place;
  readonly heading: string;
  /** The bold words of the point that goes on; without them a new point begins. */
  readonly point?: string;
}

/** The heading again, where a page goes on with a call-out, and what it goes on about; screen readers pass over both. */
function CalloutContinued({ place, heading, point }: ContinuedProps): ReactElement {
  const { theme, continued } = place;
  const { width, direction, type } = theme;
  const inner = width - 2 * SIDE;
  const text = { width: inner, align: alignStart(direction), direction } as const;
  const runs = [
    { text: heading + spaceBetween(heading, continued), weight: type.smallHeading.weight },
    { text: continued, weight: 400 as const },
  ];
  return (
    <View artifact style={{ width, paddingHorizontal: SIDE, paddingTop: TOP }}>
      <LeafFrame direction={direction} width={width} corner={CORNER} first last={false} />
      <Lines {...text} {...sizeOf(type.smallHeading)} runs={runs} setting="balanced" />
      {point === undefined ? null : (
        <View style={{ marginTop: BETWEEN * theme.scale }}>
          <Lines
            {...text}
            {...sizeOf(type.strong)}
            runs={[{ text: point, weight: type.strong.weight }]}
            setting="filled"
          />
        </View>
      )}
    </View>
  );
}

function sizeOf({ size, lineHeight }: TypeRole): Pick<TypeRole, 'size' | 'lineHeight'> {
  return { size, lineHeight };
}

/**
 * A call-out of more paragraphs may be divided; a shorter one stays whole, and so does what is said of a study, but in
 * large print, where it may take most of a page.
 */
const MOST_WHOLE = 3;

function staysWhole({ kind }: OfType<'callout'>, paragraphs: number, { flow }: Theme): boolean {
  return paragraphs <= MOST_WHOLE || (kind === 'study' && flow === 'beside');
}

/** For each paragraph the bold words of the point that it goes on with; none where it begins one. */
function pointsOf(paragraphs: readonly (Paragraph | undefined)[]): readonly (string | undefined)[] {
  let point: string | undefined;
  return paragraphs.map((paragraph) => {
    const begun = paragraph === undefined ? '' : pointOf(paragraph);
    if (begun !== '') point = begun;
    return begun === '' ? point : undefined;
  });
}

/** What is repeated above each paragraph; one element for all of a point, which is then set once. */
function continuations(block: OfType<'callout'>, place: Place): readonly ReactElement[] {
  const heads = new Map<string | undefined, ReactElement>();
  return pointsOf(block.body).map((point) => {
    const head = heads.get(point) ?? (
      <CalloutContinued place={place} heading={block.heading} {...(point === undefined ? {} : { point })} />
    );
    heads.set(point, head);
    return head;
  });
}

/**
 * A framed leaf. Each paragraph is a unit of its own, so that a person with many points about their health still gets
 * every one of them, and no page is left half empty for it. Where it breaks, the frame stays open, and above what goes
 * on stand the heading and what the point is about.
 */
export function calloutUnits(block: OfType<'callout'>, place: Place): readonly Unit[] {
  const { theme, key } = place;
  const heading = { text: block.heading, tag: place.headingTag(3) };
  const paragraphs: readonly (Paragraph | undefined)[] = block.body.length === 0 ? [undefined] : block.body;
  const whole = staysWhole(block, paragraphs.length, theme);
  const repeated = continuations(block, place);
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
    keepWithNext: false,
    group: key,
    ...(whole ? {} : { divisible: true }),
    ...(index === 0 || repeated[index] === undefined ? {} : { continuation: repeated[index] }),
  }));
}
