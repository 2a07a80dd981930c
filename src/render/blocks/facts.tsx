import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import { gapStart, palette, rowDirection } from '../theme.ts';
import type { Theme } from '../theme.ts';
import type { Unit } from '../unit.ts';
import { Hairline, Words } from './primitives.tsx';
import { singleUnit } from './unit-parts.ts';
import type { OfType, Place } from './unit-parts.ts';

type Fact = OfType<'facts'>['items'][number];

interface FactShape {
  readonly columns: number;
  readonly gap: number;
  readonly top: number;
  readonly between: number;
  readonly color: string;
}

/** Three columns under a black rule; five under a rule of the leaf's colour on the clinician sheet. */
function factShape(theme: Theme): FactShape {
  return theme.density === 'clinician'
    ? { columns: 5, gap: 12, top: 6, between: 6, color: palette.leaf }
    : { columns: 3, gap: 14, top: 9, between: 10, color: palette.ink };
}

interface FactProps {
  readonly theme: Theme;
  readonly fact: Fact;
  readonly width: number;
  readonly gap: number;
}

function FactItem({ theme, fact, width, gap }: FactProps): ReactElement {
  const { type, direction } = theme;
  const text = { theme, width, setting: 'balanced' } as const;
  return (
    <View sem={{ tag: 'LI' }} style={{ width, ...gapStart(direction, gap) }}>
      <View sem={{ tag: 'Lbl' }} style={{ width }}>
        <Words {...text} text={fact.label} role={type.small} />
      </View>
      <View sem={{ tag: 'LBody' }} style={{ width }}>
        <Words {...text} text={fact.value} role={{ ...type.tableHead, weight: 600 }} sem={{ tag: 'P' }} />
      </View>
    </View>
  );
}

export function factsUnits(block: OfType<'facts'>, place: Place): readonly Unit[] {
  const { theme } = place;
  const { width, direction, rules } = theme;
  const { columns, gap, top, between, color } = factShape(theme);
  const each = (width - gap * (columns - 1)) / columns;
  const rows = Array.from({ length: Math.ceil(block.items.length / columns) }, (_, row) =>
    block.items.slice(row * columns, (row + 1) * columns),
  );
  const element = (
    <View style={{ width, paddingTop: top }}>
      <Hairline direction={direction} start={0} width={width} thickness={rules.facts} color={color} />
      <View sem={{ tag: 'L', numbering: 'None' }} style={{ width }}>
        {rows.map((row, index) => (
          <View
            key={index}
            style={{ flexDirection: rowDirection(direction), marginTop: index === 0 ? 0 : between }}
          >
            {row.map((fact, at) => (
              <FactItem key={at} theme={theme} fact={fact} width={each} gap={at === 0 ? 0 : gap} />
            ))}
          </View>
        ))}
      </View>
    </View>
  );
  return singleUnit(block, place, element);
}
