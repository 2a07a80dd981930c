import { View } from '@react-pdf/renderer';
import { palette } from '../theme.ts';
import type { Theme } from '../theme.ts';
import type { Unit } from '../unit.ts';
import { Words } from './primitives.tsx';
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
        <View key={index} style={{ marginTop: BETWEEN * theme.scale }}>
          <SentenceLines
            theme={theme}
            sentence={sentence}
            width={inner}
            measure={inner}
            pitch={SAY_PITCH * theme.scale}
          />
        </View>
      ))}
    </View>
  );
  return singleUnit(block, place, element);
}
