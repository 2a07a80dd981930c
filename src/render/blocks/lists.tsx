import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { Paragraph } from '../../model/document.ts';
import { listCounter } from '../../model/tree-text.ts';
import { measureLines } from '../text.tsx';
import { firstBaseline, gapStart, rowDirection } from '../theme.ts';
import type { Theme, TypeRole } from '../theme.ts';
import type { Unit } from '../unit.ts';
import { BoxedItem, BoxedList, TickBox, boxGap, boxRoom } from './boxed-list.tsx';
import { ContinuedHead } from './continued-head.tsx';
import { BulletItem, bulletIndent } from './bullet-item.tsx';
import { widestWord } from './fit-words.ts';
import { Paragraphs, Prose, Words, proseRole, runsFor } from './primitives.tsx';
import { singleUnit } from './unit-parts.ts';
import type { OfType, Place } from './unit-parts.ts';
import { WritingLines } from './writing-lines.tsx';

const STEP_INDENT = 27;
const MOST_STEPS = 8;
/** How much of the white between two notes may be closed up to save a page. */
const NOTE_SHRINK = 2;

/**
 * How wide the lines of an item may be. Words in small type run to the edge where that spares them a second line: a list
 * of them is looked up, not read through.
 */
function measureOf(
  paragraphs: readonly Paragraph[],
  theme: Theme,
  { room, usual }: { room: number; usual: number },
): number {
  const fits = paragraphs.every(({ role, inlines }) => {
    const { size } = proseRole(theme, role);
    const runs = runsFor(inlines, proseRole(theme, role));
    return role === 'small' && measureLines({ runs, size, width: room, setting: 'filled' }).lines === 1;
  });
  return fits ? room : usual;
}

interface StepProps {
  readonly theme: Theme;
  readonly counter: string;
  readonly paragraphs: readonly Paragraph[];
}

function Step({ theme, counter, paragraphs }: StepProps): ReactElement {
  const { type, width, measure, density } = theme;
  const indent = density === 'clinician' ? 14 : STEP_INDENT * theme.scale;
  const words = proseRole(theme, paragraphs[0]?.role ?? 'body');
  const size = words.size < type.body.size ? words.size : type.tableNumber.size;
  const role: TypeRole = { size, lineHeight: words.lineHeight, weight: 700 };
  const lift = firstBaseline(role) - firstBaseline(words);
  const room = width - indent;
  return (
    <View sem={{ tag: 'LI' }} style={{ flexDirection: rowDirection(theme.direction), width }}>
      <View sem={{ tag: 'Lbl' }} style={{ width: indent, marginTop: -lift }}>
        <Words theme={theme} text={counter} role={role} width={indent} />
      </View>
      <View sem={{ tag: 'LBody' }} style={{ width: width - indent }}>
        <Paragraphs
          theme={theme}
          paragraphs={paragraphs}
          roleOf={proseRole}
          width={room}
          measure={measureOf(paragraphs, theme, { room, usual: measure - indent })}
          gap={2}
        />
      </View>
    </View>
  );
}

/** The heading that is said again where a page begins under it; one element for all, which is then set once. */
function goingOn(place: Place): Pick<Unit, 'continuation'> {
  return place.title === undefined ? {} : { continuation: <ContinuedHead place={place} /> };
}

/** The first item, or the last but one: in large print it may stand alone rather than leave a page nearly empty. */
function beside(long: boolean): Pick<Unit, 'keepWithNext' | 'keepsRow'> {
  return long ? { keepWithNext: false, keepsRow: true } : { keepWithNext: true };
}

/** Each item is a unit; at least two stand on either side of a break. */
export function listUnits(block: OfType<'list'>, place: Place): readonly Unit[] {
  const { theme, key } = place;
  const last = block.items.length - 1;
  const repeated = goingOn(place);
  const { space, width, measure } = theme;
  const numbering = block.ordered ? 'Decimal' : 'Disc';
  const small = block.items.every((paragraphs) => paragraphs[0]?.role === 'small');
  // In large print it may take most of a page, and is divided rather than leave another half empty.
  const long = theme.flow === 'stacked';
  const gap = small ? space.betweenNotes : block.ordered ? space.betweenSteps : space.betweenBullets;
  // A short list is read in one go.
  const together = !small && block.items.length <= MOST_STEPS;
  // The large notes of a row say what each is about, and are few: they go on wherever a page ends.
  const bound = !(long && block.first !== undefined);
  const group = together ? { group: `${key}.list`, ...(long ? { divisible: true } : {}) } : {};
  return block.items.map((paragraphs, index) => ({
    key: `${key}.item.${index}`,
    origin: block.origin,
    element: (
      <View sem={{ tag: 'L', id: `${key}.list`, numbering }} style={{ width }}>
        {block.ordered ? (
          <Step theme={theme} counter={listCounter(block, index)} paragraphs={paragraphs} />
        ) : (
          <BulletItem
            theme={theme}
            paragraphs={paragraphs}
            width={width}
            measure={measureOf(paragraphs, theme, { room: width - bulletIndent(theme), usual: measure })}
          />
        )}
      </View>
    ),
    gapBefore: index === 0 ? 0 : gap,
    ...(index > 0 ? { gapShrink: small ? NOTE_SHRINK : gap / 2 } : {}),
    ...(bound && last > 0 && (index === 0 || index === last - 1) ? beside(long) : { keepWithNext: false }),
    ...repeated,
    ...group,
  }));
}

/** White kept free after the words of an item: the box after it is not taken for theirs. */
const AFTER_ITEM = 14;
/** A pen finds one box and not the one below it. */
const BETWEEN_TICKS = 9;

/** Whether an item takes at most two lines of this width, with no word wider than that. */
function fitsTwoLines(item: string, width: number, theme: Theme): boolean {
  const { size } = theme.type.body;
  const longest = widestWord(item, theme.type.body);
  const runs = runsFor(item, theme.type.body);
  return longest <= width && measureLines({ runs, size, width, setting: 'filled' }).lines <= 2;
}

/** Three columns where every item takes at most two lines, else two, else one; one in large print. */
export function tickColumns(items: readonly string[], theme: Theme): number {
  if (theme.flow === 'stacked') return 1;
  const fits = (count: number): boolean =>
    items.every((item) => fitsTwoLines(item, theme.width / count - boxRoom(theme) - AFTER_ITEM, theme));
  return fits(3) ? 3 : fits(2) ? 2 : 1;
}

export function ticksUnits(block: OfType<'ticks'>, place: Place): readonly Unit[] {
  const { theme } = place;
  const { width, type } = theme;
  const count = tickColumns(block.items, theme);
  const rows = Array.from({ length: Math.ceil(block.items.length / count) }, (_, row) =>
    block.items.slice(row * count, (row + 1) * count),
  );
  const own = width / count;
  const inner = own - boxRoom(theme);
  const lines = rows.map((row) =>
    row.map((item, at) => (
      <BoxedItem key={at} theme={theme} width={own}>
        <Words
          theme={theme}
          text={item}
          role={type.body}
          width={inner}
          measure={inner - AFTER_ITEM}
          sem={{ tag: 'P' }}
        />
      </BoxedItem>
    )),
  );
  const tag = place.headingTag(3);
  const list = (
    <BoxedList theme={theme} heading={block.heading} tag={tag} rows={lines} between={BETWEEN_TICKS} />
  );
  return singleUnit(block, place, list);
}

/** A question, with a box to tick where asked, and lines to write on. */
export function writeInUnits(block: OfType<'write-in'>, place: Place): readonly Unit[] {
  const { theme } = place;
  const { width, direction } = theme;
  const { prompt } = block;
  const indent = block.box ? boxRoom(theme) : 0;
  const silent = prompt === undefined || prompt.inlines.every((inline) => inline.value.trim() === '');
  const element = (
    <View style={{ width }}>
      <View style={{ flexDirection: rowDirection(direction), width }}>
        {block.box ? <TickBox theme={theme} height={theme.type.body.lineHeight} /> : null}
        <View style={{ width: width - indent, ...gapStart(direction, block.box ? boxGap(theme) : 0) }}>
          {silent ? null : <Prose theme={theme} paragraph={prompt} width={width - indent} />}
        </View>
      </View>
      <WritingLines theme={theme} indent={indent} count={block.lines} beside={block.box && silent} />
    </View>
  );
  return singleUnit(block, place, element).map((unit) => ({ ...unit, ...goingOn(place) }));
}
