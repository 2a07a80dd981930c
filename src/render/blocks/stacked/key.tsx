import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import { drawKeyMark } from '../../../pictures/marks.ts';
import { gapStart, rowDirection } from '../../theme.ts';
import type { Theme } from '../../theme.ts';
import type { Unit } from '../../unit.ts';
import { Drawing, Hairline, Words } from '../primitives.tsx';
import { singleUnit } from '../unit-parts.ts';
import type { OfType, Place } from '../unit-parts.ts';

const TOP = 12;
const BETWEEN = 8;
const GAP = 12;

interface SampleProps {
  readonly theme: Theme;
  readonly item: OfType<'key'>['items'][number];
  /** Of the widest sample, so that all words begin at one place. */
  readonly room: number;
}

/** A sample and what it means. */
function Sample({ theme, item, room }: SampleProps): ReactElement {
  const { direction, width, type, scale } = theme;
  const words = width - room - GAP;
  return (
    <View sem={{ tag: 'LI' }} style={{ width, flexDirection: rowDirection(direction), alignItems: 'center' }}>
      <View style={{ width: room, alignItems: 'center' }}>
        <Drawing mark={drawKeyMark(item.mark, direction)} scale={scale} />
      </View>
      <View sem={{ tag: 'LBody' }} style={{ width: words, ...gapStart(direction, GAP) }}>
        <Words theme={theme} text={item.words} role={type.cell} width={words} sem={{ tag: 'P' }} />
      </View>
    </View>
  );
}

/** How to read the pictures: samples one under another, each with its words. */
export function stackedKeyUnits(block: OfType<'key'>, place: Place): readonly Unit[] {
  const { theme } = place;
  const { direction, width, scale, rules, type } = theme;
  const room = Math.max(0, ...block.items.map(({ mark }) => drawKeyMark(mark, direction).width * scale));
  const element = (
    <View style={{ width, paddingTop: TOP }}>
      <Hairline direction={direction} start={0} width={width} thickness={rules.row} />
      <Words theme={theme} text={block.heading} role={type.name} width={width} sem={{ tag: 'P' }} />
      <View sem={{ tag: 'L', numbering: 'None' }} style={{ width }}>
        {block.items.map((item, index) => (
          <View key={index} style={{ marginTop: BETWEEN }}>
            <Sample theme={theme} item={item} room={room} />
          </View>
        ))}
      </View>
    </View>
  );
  return singleUnit(block, place, element);
}
