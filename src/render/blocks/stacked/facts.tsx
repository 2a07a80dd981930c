import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import { gapStart, palette, rowDirection } from '../../theme.ts';
import type { Theme } from '../../theme.ts';
import type { Unit } from '../../unit.ts';
import { widestWord, widthOnLine } from '../fit-words.ts';
import { Hairline, Words } from '../primitives.tsx';
import { singleUnit } from '../unit-parts.ts';
import type { OfType, Place } from '../unit-parts.ts';

const TOP = 12;
const BETWEEN = 8;
const AFTER_LABEL = 10;

interface FactProps {
  readonly theme: Theme;
  readonly fact: OfType<'facts'>['items'][number];
}

/** Label and value on one line; the value below where its longest word has no room beside the label. */
function Fact({ theme, fact }: FactProps): ReactElement {
  const { type, direction, width } = theme;
  const bold = { ...type.strong, weight: 700 } as const;
  const label = Math.ceil(widthOnLine(fact.label, type.body)) + 1;
  const rest = width - label - AFTER_LABEL;
  const beside = rest >= widestWord(fact.value, bold);
  const [first, second] = beside ? [label, rest] : [width, width];
  const gap = beside ? gapStart(direction, AFTER_LABEL) : {};
  return (
    <View sem={{ tag: 'LI' }} style={{ width, flexDirection: beside ? rowDirection(direction) : 'column' }}>
      <View sem={{ tag: 'Lbl' }} style={{ width: first }}>
        <Words theme={theme} text={fact.label} role={type.body} width={first} />
      </View>
      <View sem={{ tag: 'LBody' }} style={{ width: second, ...gap }}>
        <Words theme={theme} text={fact.value} role={bold} width={second} sem={{ tag: 'P' }} />
      </View>
    </View>
  );
}

/** One fact under another, under a black rule. */
export function stackedFactUnits(block: OfType<'facts'>, place: Place): readonly Unit[] {
  const { theme } = place;
  const { width, direction, rules } = theme;
  const rule = { direction, start: 0, width, thickness: rules.facts, color: palette.ink };
  const element = (
    <View style={{ width, paddingTop: TOP }}>
      <Hairline {...rule} />
      <View sem={{ tag: 'L', numbering: 'None' }} style={{ width }}>
        {block.items.map((fact, index) => (
          <View key={index} style={{ marginTop: index === 0 ? 0 : BETWEEN }}>
            <Fact theme={theme} fact={fact} />
          </View>
        ))}
      </View>
    </View>
  );
  return singleUnit(block, place, element);
}
