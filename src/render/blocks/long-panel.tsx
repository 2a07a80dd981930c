import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
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
  /** What stands again above it where a page begins with it. */
  readonly repeated?: ReactElement;
}

interface ContinuedProps {
  readonly place: Place;
  readonly lead: Panel['lead'];
  /** Of the column that a further item stands under. */
  readonly heading?: string;
}

/** Whose opinion it is, and the heading of a column, within the open frame; screen readers pass over it. */
function PanelContinued({ place, lead, heading }: ContinuedProps): ReactElement {
  const { theme } = place;
  const { direction, width, type } = theme;
  const text = { theme, role: type.name, width: width - 2 * PADDING, setting: 'balanced' } as const;
  return (
    <ContinuedHead place={place}>
      <View style={{ width, paddingHorizontal: PADDING }}>
        <LeafFrame direction={direction} width={width} corner={CORNER} first={false} last={false} />
        <Words {...text} text={lead} />
        {heading === undefined ? null : (
          <View style={{ marginTop: ITEM_GAP }}>
            <Words {...text} text={heading} />
          </View>
        )}
      </View>
    </ContinuedHead>
  );
}

function piecesOf(block: Panel, place: Place, tag: HeadingTag): readonly Piece[] {
  const { theme, key } = place;
  const width = theme.width - 2 * PADDING;
  const text = { theme, width, measure: theme.measure } as const;
  const { lead } = block;
  const whose = <PanelContinued place={place} lead={lead} />;
  const columns = block.columns.flatMap((column, index): readonly Piece[] => {
    const repeated = <PanelContinued place={place} lead={lead} heading={column.heading} />;
    const heading = <Words {...text} text={column.heading} role={theme.type.name} sem={{ tag: 'P' }} />;
    const items = column.items.map((item, at) => ({
      keeps: false,
      gap: ITEM_GAP,
      repeated: at === 0 ? whose : repeated,
      content: (
        <View sem={{ tag: 'L', id: `${key}.side.${index}`, numbering: 'Disc' }} style={{ width }}>
          <BulletItem {...text} paragraphs={[item]} />
        </View>
      ),
    }));
    return [{ keeps: true, gap: COLUMN_GAP, repeated: whose, content: heading }, ...items];
  });
  const closing = block.closing.map((paragraph, index) => ({
    keeps: false,
    gap: index === 0 ? CLOSING_GAP : theme.space.betweenParagraphs,
    repeated: whose,
    content: <Paragraphs {...text} paragraphs={[paragraph]} roleOf={proseRole} gap={0} />,
  }));
  const head = {
    keeps: true,
    gap: 0,
    content: <PanelLead theme={theme} block={block} width={width} tag={tag} />,
  };
  return [head, ...columns, ...closing];
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
 * may begin a page. Where it breaks, the frame stays open, and what the surgeon leans to stands again, above a further
 * reason with its heading: nobody takes a reason for what speaks against, nor has to turn back for which choice it is.
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
