import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { WarningFrame } from '../../model/care-blocks.ts';
import type { Paragraph } from '../../model/document.ts';
import { rowDirection } from '../theme.ts';
import type { Theme, TypeRole } from '../theme.ts';
import { Bulleted } from './bullet-item.tsx';
import { AFTER_ITEM, BULLET_INDENT, SIDE, frameRows, itemRole } from './frame-rows.ts';
import { Words } from './primitives.tsx';

const BULLET = 7;

interface ItemProps {
  readonly theme: Theme;
  readonly item: Paragraph;
  readonly role: TypeRole;
  readonly width: number;
}

function Item({ theme, item, role, width }: ItemProps): ReactElement {
  const [bullet, indent] = [BULLET * theme.scale, BULLET_INDENT * theme.scale];
  const inner = width - indent;
  return (
    <Bulleted theme={theme} width={width} indent={indent} bullet={bullet} role={role}>
      <Words
        theme={theme}
        text={item.inlines}
        role={role}
        width={inner}
        measure={inner - AFTER_ITEM}
        setting="balanced"
        sem={{ tag: 'P' }}
      />
    </Bulleted>
  );
}

interface ColumnProps {
  readonly theme: Theme;
  readonly items: readonly Paragraph[];
  /** Those of the frame, by whose count the size is chosen. */
  readonly all: readonly Paragraph[];
  readonly width: number;
  readonly gap: number;
}

interface SingleProps {
  readonly theme: Theme;
  /** Those of the frame. */
  readonly items: readonly Paragraph[];
  readonly index: number;
  readonly width: number;
}

/** One item of a frame that stands on more than one page. */
export function SingleItem({ theme, items, index, width }: SingleProps): ReactElement | null {
  const item = items[index];
  if (item === undefined) return null;
  return <Item theme={theme} item={item} role={itemRole(theme, item.role, items)} width={width} />;
}

interface ItemsProps {
  readonly theme: Theme;
  readonly frame: WarningFrame;
}

function Column({ theme, items, all, width, gap }: ColumnProps): ReactElement {
  return (
    <View style={{ width }}>
      {items.map((item, at) => (
        <View key={at} style={{ marginTop: at === 0 ? 0 : gap }}>
          <Item theme={theme} item={item} role={itemRole(theme, item.role, all)} width={width} />
        </View>
      ))}
    </View>
  );
}

/** What stands under the head of a frame. */
export function FrameItems({ theme, frame: { items } }: ItemsProps): ReactElement {
  const inner = theme.width - 2 * SIDE;
  const { rows, gap } = frameRows(items, theme);
  return (
    <View sem={{ tag: 'L', numbering: 'Disc' }} style={{ width: inner }}>
      {rows.map((columns, index) => (
        <View
          key={index}
          style={{
            flexDirection: rowDirection(theme.direction),
            marginTop: index === 0 ? 0 : gap,
          }}
        >
          {columns.map((column, at) => (
            <Column
              key={at}
              theme={theme}
              items={column}
              all={items}
              width={inner / columns.length}
              gap={gap}
            />
          ))}
        </View>
      ))}
    </View>
  );
}
