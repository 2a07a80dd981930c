import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { Paragraph } from '../../model/document.ts';
import { measureLines } from '../text.tsx';
import { rowDirection } from '../theme.ts';
import type { Theme } from '../theme.ts';
import type { Unit } from '../unit.ts';
import { LeafFrame } from './leaf-frame.tsx';
import { longPanelUnits } from './long-panel.tsx';
import { BulletItem, bulletIndent } from './bullet-item.tsx';
import { CORNER, PADDING, PanelLead } from './panel-lead.tsx';
import { Paragraphs, Words, proseRole, runsFor } from './primitives.tsx';
import { singleUnit } from './unit-parts.ts';
import type { OfType, Place } from './unit-parts.ts';

/** Two columns of 216 in a panel of 492. */
const COLUMN_GAP = 24;
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
          <View key={index} style={{ marginTop: (index === 0 ? 5 : 6) * theme.scale }}>
            <BulletItem theme={theme} paragraphs={[item]} width={width} />
          </View>
        ))}
      </View>
    </View>
  );
}

/**
 * A longer one takes most of a page with its lead, and is parted: so no page is left half empty before it, and none is too
 * low for it. Points.
 */
const MOST_WHOLE = 400;

function heightOf(items: readonly Paragraph[], theme: Theme, width: number): number {
  return items.reduce((sum, item) => {
    const role = proseRole(theme, item.role);
    const runs = runsFor(item.inlines, role);
    const setting = { runs, size: role.size, width, setting: 'filled' } as const;
    return sum + measureLines(setting).lines * role.lineHeight + 6;
  }, 0);
}

/** Sides that stand one under another take the room of both, in larger type round them. */
const MOST_STACKED = 300;

function isLong({ columns, body, closing }: OfType<'panel'>, theme: Theme, columnWidth: number): boolean {
  const sides = columns.map(({ items }) => heightOf(items, theme, columnWidth - bulletIndent(theme)));
  const others = heightOf([...body, ...closing], theme, theme.measure);
  if (theme.flow === 'beside') return Math.max(0, ...sides) + others > MOST_WHOLE;
  return sides.reduce((sum, height) => sum + height, others) > MOST_STACKED;
}

/** One opinion, in a large leaf: what the surgeon leans to, the reasons, and as much room for what speaks against. */
export function panelUnits(block: OfType<'panel'>, place: Place): readonly Unit[] {
  const { theme } = place;
  const { width, direction, measure } = theme;
  const inner = width - 2 * PADDING;
  const count = Math.max(1, block.columns.length);
  const beside = theme.flow === 'beside';
  const columnWidth = beside ? (inner - COLUMN_GAP * (count - 1)) / count : inner;
  const text = { theme, width: inner, measure } as const;
  const tag = place.headingTag(3);
  if (isLong(block, theme, columnWidth)) return longPanelUnits(block, place, tag);
  const element = (
    <View style={{ width, padding: PADDING }}>
      <LeafFrame direction={direction} width={width} corner={CORNER} first last />
      <PanelLead theme={theme} block={block} width={inner} tag={tag} />
      <View
        style={{
          flexDirection: beside ? rowDirection(direction) : 'column',
          marginTop: 10 * theme.scale,
          justifyContent: 'space-between',
        }}
      >
        {block.columns.map((column, index) => (
          <View key={index} style={{ marginTop: beside || index === 0 ? 0 : 14 }}>
            <Column theme={theme} column={column} width={columnWidth} />
          </View>
        ))}
      </View>
      <View style={{ marginTop: block.closing.length === 0 ? 0 : 11 * theme.scale }}>
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
