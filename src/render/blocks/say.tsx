import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import { drawTickBox } from '../pictures/marks.ts';
import { firstBaseline, gapStart, palette, rowDirection } from '../theme.ts';
import type { Theme } from '../theme.ts';
import type { Unit } from '../unit.ts';
import { Drawing, Words } from './primitives.tsx';
import { SentenceLines } from './sentence.tsx';
import { singleUnit } from './unit-parts.ts';
import type { OfType, Place } from './unit-parts.ts';

const SIDE = 16;
const TOP = 8;
const BOTTOM = 10;
const CORNER = 16;
/** Lines to write on by hand, one under another. */
const SAY_PITCH = 30;
const BETWEEN = 3;

function leafCorners({ direction }: Theme): Record<string, number> {
  return direction === 'rtl'
    ? { borderTopRightRadius: CORNER, borderBottomLeftRadius: CORNER }
    : { borderTopLeftRadius: CORNER, borderBottomRightRadius: CORNER };
}

/** What to say on the phone, on the pale of the leaf, with lines for what only the caller knows. */
export function sayUnits(block: OfType<'say'>, place: Place): readonly Unit[] {
  const { theme } = place;
  const { width, type } = theme;
  const inner = width - 2 * SIDE;
  const panel = {
    width,
    paddingHorizontal: SIDE,
    paddingTop: TOP,
    paddingBottom: BOTTOM,
    backgroundColor: palette.pale,
    ...leafCorners(theme),
  };
  const element = (
    <View style={panel}>
      <Words
        theme={theme}
        text={block.heading}
        role={type.smallHeading}
        width={inner}
        setting="balanced"
        sem={{ tag: place.headingTag(3) }}
      />
      {block.sentences.map((sentence, index) => (
        <View key={index} style={{ marginTop: BETWEEN }}>
          <SentenceLines theme={theme} sentence={sentence} width={inner} measure={inner} pitch={SAY_PITCH} />
        </View>
      ))}
    </View>
  );
  return singleUnit(block, place, element);
}

const BOX = 15;
const BOX_GAP = 8;
/** With the white above it, 25 from one to the next: room for a pen. */
const ANSWER_PITCH = 20;
const BETWEEN_ANSWERS = 5;

function Answer({ theme, sentence }: AnswerProps): ReactElement {
  const { direction, type } = theme;
  const width = theme.measure - BOX - BOX_GAP;
  const blank = sentence.parts.some((part) => part.type === 'blank');
  const drop = blank ? ANSWER_PITCH - type.body.lineHeight : 0;
  const capitals = 0.69 * type.body.size;
  const top = Math.max(0, drop + firstBaseline(type.body) - capitals / 2 - BOX / 2);
  return (
    <View sem={{ tag: 'LI' }} style={{ flexDirection: rowDirection(direction), width: theme.width }}>
      <View style={{ width: BOX, paddingTop: top }}>
        <Drawing mark={drawTickBox(BOX, direction)} />
      </View>
      <View sem={{ tag: 'LBody' }} style={{ width, ...gapStart(direction, BOX_GAP) }}>
        <SentenceLines theme={theme} sentence={sentence} width={width} measure={width} pitch={ANSWER_PITCH} />
      </View>
    </View>
  );
}

interface AnswerProps {
  readonly theme: Theme;
  readonly sentence: OfType<'answers'>['sentences'][number];
}

/** Sentences to agree to or not: what is agreed to is read whole, so they stay together. */
export function answersUnits(block: OfType<'answers'>, place: Place): readonly Unit[] {
  const { theme } = place;
  const { width, type } = theme;
  const element = (
    <View style={{ width }}>
      <Words
        theme={theme}
        text={block.heading}
        role={type.smallHeading}
        width={width}
        setting="balanced"
        sem={{ tag: place.headingTag(3) }}
      />
      <View sem={{ tag: 'L', numbering: 'None' }} style={{ width, marginTop: 8 }}>
        {block.sentences.map((sentence, index) => (
          <View key={index} style={{ marginTop: index === 0 ? 0 : BETWEEN_ANSWERS }}>
            <Answer theme={theme} sentence={sentence} />
          </View>
        ))}
      </View>
    </View>
  );
  return singleUnit(block, place, element);
}
