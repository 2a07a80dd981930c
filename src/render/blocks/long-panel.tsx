import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import { Lines } from '../text.tsx';
import { alignStart } from '../theme.ts';
import type { Theme } from '../theme.ts';
import type { Unit } from '../unit.ts';
import { LeafFrame } from './leaf-frame.tsx';
import { BulletItem } from './bullet-item.tsx';
import { ContinuedHead } from './continued-head.tsx';
import { CORNER, PADDING, PanelLead } from './panel-lead.tsx';
import { Paragraphs, Words, proseRole } from './primitives.tsx';
import type { HeadingTag, OfType, Place } from './unit-parts.ts';

type Panel = OfType<'panel'>;

/** White between columns that stand one under another, before their items, and before what closes the panel. */
const COLUMN_GAP = 14;
const ITEM_GAP = 6;
const CLOSING_GAP = 11;

interface Piece {
  /** Not parted from the next piece: a heading from its first item. */
  readonly keeps: boolean;
  readonly gap: number;
  readonly content: ReactElement;
  /** What stands again above it where a page begins with it: the heading that a further item stands under. */
  readonly repeated?: ReactElement;
}

/** The heading of a column within the open frame; screen readers pass over it. */
function ColumnContinued({
  place,
  heading,
}: {
  readonly place: Place;
  readonly heading: string;
}): ReactElement {
  const { theme } = place;
  const { direction, width, type } = theme;
  const { size, lineHeight, weight } = type.name;
  return (
    <ContinuedHead place={place}>
      <View style={{ width, paddingHorizontal: PADDING }}>
        <LeafFrame direction={direction} width={width} corner={CORNER} first={false} last={false} />
        <Lines
          runs={[{ text: heading, weight }]}
          size={size}
          lineHeight={lineHeight}
          width={width - 2 * PADDING}
          setting="balanced"
          align={alignStart(direction)}
          direction={direction}
        />
      </View>
    </ContinuedHead>
  );
}

function piecesOf(block: Panel, place: Place, tag: HeadingTag): readonly Piece[] {
  const { theme, key } = place;
  const width = theme.width - 2 * PADDING;
  const text = { theme, width, measure: theme.measure } as const;
  const columns = block.columns.flatMap((column, index): readonly Piece[] => {
    const repeated = <ColumnContinued place={place} heading={column.heading} />;
    const heading = <Words {...text} text={column.heading} role={theme.type.name} sem={{ tag: 'P' }} />;
    const items = column.items.map((item, at) => ({
      keeps: false,
      gap: ITEM_GAP,
      ...(at === 0 ? {} : { repeated }),
      content: (
        <View sem={{ tag: 'L', id: `${key}.side.${index}`, numbering: 'Disc' }} style={{ width }}>
          <BulletItem {...text} paragraphs={[item]} />
        </View>
      ),
    }));
    return [{ keeps: true, gap: COLUMN_GAP, content: heading }, ...items];
  });
  const closing = block.closing.map((paragraph, index) => ({
    keeps: false,
    gap: index === 0 ? CLOSING_GAP : theme.space.betweenParagraphs,
    content: <Paragraphs {...text} paragraphs={[paragraph]} roleOf={proseRole} gap={0} />,
  }));
  const lead = {
    keeps: true,
    gap: 0,
    content: <PanelLead theme={theme} block={block} width={width} tag={tag} />,
  };
  return [lead, ...columns, ...closing];
}

interface FramedProps {
  readonly theme: Theme;
  readonly piece: Piece;
  readonly first: boolean;
  readonly last: boolean;
}

function Framed({ theme, piece, first, last }: FramedProps): ReactElement {
  const { direction, width } = theme;
  const padding = {
    paddingHorizontal: PADDING,
    paddingTop: first ? PADDING : piece.gap,
    paddingBottom: last ? PADDING : 0,
  };
  return (
    <View style={{ width, ...padding }}>
      <LeafFrame direction={direction} width={width} corner={CORNER} first={first} last={last} />
      {piece.content}
    </View>
  );
}

/**
 * An opinion with many or long reasons: for and against stand one under the other, as wide as the panel, and each reason
 * may begin a page. Where it breaks, the frame stays open, and above a further reason its heading stands again: nobody
 * takes a reason for what speaks against.
 */
export function longPanelUnits(block: Panel, place: Place, tag: HeadingTag): readonly Unit[] {
  const { theme, key } = place;
  const pieces = piecesOf(block, place, tag);
  return pieces.map((piece, index) => ({
    key: `${key}.${index}`,
    origin: block.origin,
    element: <Framed theme={theme} piece={piece} first={index === 0} last={index === pieces.length - 1} />,
    gapBefore: 0,
    keepWithNext: piece.keeps,
    group: key,
    divisible: true,
    ...(piece.repeated === undefined ? {} : { continuation: piece.repeated }),
  }));
}
