import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { Paragraph } from '../../model/document.ts';
import { drawBullet } from '../../pictures/marks.ts';
import { firstBaseline, rowDirection } from '../theme.ts';
import type { Theme } from '../theme.ts';
import type { Unit } from '../unit.ts';
import { LeafFrame } from './leaf-frame.tsx';
import { Drawing, Paragraphs, Words, proseRole } from './primitives.tsx';
import { singleUnit } from './unit-parts.ts';
import type { OfType, Place } from './unit-parts.ts';

const PADDING = 18;
const CORNER = 24;
/** Two columns of 216 in a panel of 492. */
const COLUMN_GAP = 24;
const BULLET_INDENT = 14;

export interface BulletProps {
  readonly theme: Theme;
  readonly paragraphs: readonly Paragraph[];
  readonly width: number;
  readonly measure?: number;
}

/** A leaf bullet and its words, as an item of a list. */
export function BulletItem({ theme, paragraphs, width, measure }: BulletProps): ReactElement {
  const words = proseRole(theme, paragraphs[0]?.role ?? 'body');
  const bullet = theme.density === 'clinician' ? 4.5 : 6;
  const inner = width - BULLET_INDENT;
  return (
    <View sem={{ tag: 'LI' }} style={{ flexDirection: rowDirection(theme.direction), width }}>
      <View
        style={{
          width: BULLET_INDENT,
          paddingTop: firstBaseline(words) - 0.265 * words.size - bullet / 2,
          alignItems: bulletEdge(theme),
        }}
      >
        <Drawing mark={drawBullet(bullet, theme.direction)} />
      </View>
      <View sem={{ tag: 'LBody' }} style={{ width: inner }}>
        <Paragraphs
          theme={theme}
          paragraphs={paragraphs}
          roleOf={proseRole}
          width={inner}
          gap={2}
          {...(measure === undefined ? {} : { measure })}
        />
      </View>
    </View>
  );
}

function bulletEdge(theme: Theme): 'flex-start' | 'flex-end' {
  return theme.direction === 'rtl' ? 'flex-end' : 'flex-start';
}

interface ColumnProps {
  readonly theme: Theme;
  readonly column: OfType<'panel'>['columns'][number];
  readonly width: number;
}

function Column({ theme, column, width }: ColumnProps): ReactElement {
  return (
    <View style={{ width }}>
      <Words
        theme={theme}
        text={column.heading}
        role={theme.type.name}
        width={width}
        setting="balanced"
        sem={{ tag: 'P' }}
      />
      <View sem={{ tag: 'L', numbering: 'Disc' }} style={{ width }}>
        {column.items.map((item, index) => (
          <View key={index} style={{ marginTop: index === 0 ? 5 : 6 }}>
            <BulletItem theme={theme} paragraphs={[item]} width={width} />
          </View>
        ))}
      </View>
    </View>
  );
}

/** One opinion, in a large leaf: what the surgeon leans to, the reasons, and as much room for what speaks against. */
export function panelUnits(block: OfType<'panel'>, place: Place): readonly Unit[] {
  const { theme } = place;
  const { width, direction, type, measure } = theme;
  const inner = width - 2 * PADDING;
  const count = Math.max(1, block.columns.length);
  const columnWidth = (inner - COLUMN_GAP * (count - 1)) / count;
  const text = { theme, width: inner, measure } as const;
  const element = (
    <View style={{ width, padding: PADDING }}>
      <LeafFrame direction={direction} width={width} corner={CORNER} first last />
      <Words
        {...text}
        text={block.lead}
        role={type.lean}
        setting="balanced"
        sem={{ tag: place.headingTag(3) }}
      />
      <Paragraphs {...text} paragraphs={block.body} roleOf={proseRole} gap={theme.space.betweenParagraphs} />
      <View
        style={{ flexDirection: rowDirection(direction), marginTop: 10, justifyContent: 'space-between' }}
      >
        {block.columns.map((column, index) => (
          <Column key={index} theme={theme} column={column} width={columnWidth} />
        ))}
      </View>
      <View style={{ marginTop: block.closing.length === 0 ? 0 : 11 }}>
        <Paragraphs
          {...text}
          paragraphs={block.closing}
          roleOf={proseRole}
          gap={theme.space.betweenParagraphs}
        />
      </View>
    </View>
  );
  return singleUnit(block, place, element);
}
