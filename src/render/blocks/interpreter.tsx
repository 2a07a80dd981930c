import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import { gapStart, rowDirection } from '../theme.ts';
import type { Unit } from '../unit.ts';
import { BoxedWords, boxedWordsWidth } from './boxed-words.tsx';
import { FieldLine } from './fields.tsx';
import type { FieldShares } from './fields.tsx';
import { widthOnLine } from './fit-words.ts';
import { LeafFrame } from './leaf-frame.tsx';
import { Prose, Words } from './primitives.tsx';
import { singleUnit } from './unit-parts.ts';
import type { HeadingTag, OfType, Place } from './unit-parts.ts';

const SIDE = 13;
const TOP = 12;
const BOTTOM = 13;
const BETWEEN = 5;
const CORNER = 16;
const GAP = 20;

/** Name and number, signature, date, from and to: they share the width of the box. */
const shares: FieldShares = { name: 140, signature: 134, date: 91, time: 72 };

interface HeadProps {
  readonly block: OfType<'interpreter'>;
  readonly place: Place;
  readonly tag: HeadingTag;
  readonly width: number;
}

/** The heading, and at the end of its line how the interpreter takes part; below it where there is no room. */
function Head({ block, place: { theme }, tag, width }: HeadProps): ReactElement {
  const { direction, type } = theme;
  const { heading, ways } = block;
  const taken = boxedWordsWidth({ theme, words: ways, lines: 1 });
  const beside = widthOnLine(heading, type.smallHeading) + GAP + taken <= width;
  const own = beside && ways.length > 0 ? width - taken - GAP : width;
  return (
    <View style={{ flexDirection: beside ? rowDirection(direction) : 'column', width }}>
      <Words
        theme={theme}
        text={heading}
        role={type.smallHeading}
        width={own}
        setting="balanced"
        sem={{ tag }}
      />
      {ways.length === 0 ? null : (
        <View style={beside ? gapStart(direction, GAP) : { marginTop: BETWEEN }}>
          <BoxedWords theme={theme} words={ways} lines={1} width={beside ? taken : width} />
        </View>
      )}
    </View>
  );
}

/** What an interpreter fills in, in a leaf of its own. */
export function interpreterUnits(block: OfType<'interpreter'>, place: Place): readonly Unit[] {
  const { theme } = place;
  const { width, direction } = theme;
  const inner = width - 2 * SIDE;
  const tag = place.headingTag(3);
  const element = (
    <View style={{ width, paddingHorizontal: SIDE, paddingTop: TOP, paddingBottom: BOTTOM }}>
      <LeafFrame direction={direction} width={width} corner={CORNER} first last />
      <Head block={block} place={place} tag={tag} width={inner} />
      {block.body.map((paragraph, index) => (
        <View key={index} style={{ marginTop: BETWEEN }}>
          <Prose theme={theme} paragraph={paragraph} width={inner} />
        </View>
      ))}
      <View style={{ marginTop: BETWEEN }}>
        <FieldLine theme={theme} fields={block.fields} shares={shares} width={inner} plate={block.plate} />
      </View>
    </View>
  );
  return singleUnit(block, place, element);
}
