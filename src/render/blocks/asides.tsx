import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { Aside } from '../../model/care-blocks.ts';
import type { Paragraph } from '../../model/document.ts';
import { gapStart, rowDirection } from '../theme.ts';
import type { Theme } from '../theme.ts';
import type { Unit } from '../unit.ts';
import { BoxedItem, boxRoom } from './boxed-list.tsx';
import { widestWord } from './fit-words.ts';
import { Words, stripRole } from './primitives.tsx';
import { singleUnit } from './unit-parts.ts';
import type { HeadingTag, OfType, Place } from './unit-parts.ts';

const GAP = 18;
const AFTER_HEADING = 4;
const BETWEEN = 4;

interface ItemProps {
  readonly theme: Theme;
  readonly item: Paragraph;
  readonly box: boolean;
  readonly width: number;
}

function Item({ theme, item, box, width }: ItemProps): ReactElement {
  const role = stripRole(theme, item.role);
  const inner = box ? width - boxRoom(theme) : width;
  const words = (
    <Words
      theme={theme}
      text={item.inlines}
      role={role}
      width={inner}
      setting="balanced"
      sem={{ tag: 'P' }}
    />
  );
  if (box)
    return (
      <BoxedItem theme={theme} role={role} width={width}>
        {words}
      </BoxedItem>
    );
  return (
    <View sem={{ tag: 'LI' }} style={{ width }}>
      <View sem={{ tag: 'LBody' }} style={{ width }}>
        {words}
      </View>
    </View>
  );
}

interface ColumnProps {
  readonly theme: Theme;
  readonly column: Aside;
  readonly width: number;
  readonly tag: HeadingTag;
}

function Column({ theme, column, width, tag }: ColumnProps): ReactElement {
  return (
    <View style={{ width }}>
      <Words
        theme={theme}
        text={column.heading}
        role={theme.type.smallHeading}
        width={width}
        setting="balanced"
        sem={{ tag }}
      />
      <View sem={{ tag: 'L', numbering: 'None' }} style={{ width }}>
        {column.items.map((item, index) => (
          <View key={index} style={{ marginTop: (index === 0 ? AFTER_HEADING : BETWEEN) * theme.scale }}>
            <Item theme={theme} item={item} box={column.boxes} width={width} />
          </View>
        ))}
      </View>
    </View>
  );
}

/** Whether every word of a column, measured in bold, has room in this width. */
function fits({ heading, boxes, items }: Aside, width: number, theme: Theme): boolean {
  const indent = boxes ? boxRoom(theme) : 0;
  const words = items.map(({ inlines }) => inlines.map(({ value }) => value).join(''));
  const widest = Math.max(0, ...words.map((text) => widestWord(text, theme.type.strong)));
  return widest <= width - indent && widestWord(heading, theme.type.smallHeading) <= width;
}

/** Side by side where every word has room, else one under another, as always in large print. */
export function asideUnits(block: OfType<'asides'>, place: Place): readonly Unit[] {
  const { theme } = place;
  const count = Math.max(1, block.columns.length);
  const each = (theme.width - GAP * (count - 1)) / count;
  const beside = theme.flow === 'beside' && block.columns.every((column) => fits(column, each, theme));
  const tag = place.headingTag(3);
  const element = (
    <View style={{ width: theme.width, flexDirection: beside ? rowDirection(theme.direction) : 'column' }}>
      {block.columns.map((column, index) => {
        const gap = index === 0 ? 0 : GAP;
        return (
          <View key={index} style={beside ? gapStart(theme.direction, gap) : { marginTop: gap }}>
            <Column theme={theme} column={column} width={beside ? each : theme.width} tag={tag} />
          </View>
        );
      })}
    </View>
  );
  return singleUnit(block, place, element);
}
