import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { Strip, StripRow } from '../../../model/document.ts';
import { gapStart, palette, rowDirection, strip as sizes } from '../../theme.ts';
import type { Theme } from '../../theme.ts';
import type { Unit } from '../../unit.ts';
import { ContinuedHead } from '../continued-head.tsx';
import { Hairline, Paragraphs, Words, stripRole } from '../primitives.tsx';
import { StripPicture, pictureInset, pictureWidth } from '../strip-picture.tsx';
import { AxisLines } from '../strip-row.tsx';
import { Tag } from '../tag.tsx';
import type { OfType, Place } from '../unit-parts.ts';
import { StackedAxis } from './axis.tsx';

/** White between choices with a picture, and over and under a row of words. */
const BETWEEN_PICTURES = 20;
const TOP = 11;
const BOTTOM = 10;
/** How much of the white between two rows may be closed up to save a page. */
const SHRINK = 5;
const AFTER_NAME = 6;
const AFTER_PICTURE = 7;
const AFTER_TAG = 4;
/** Between a name and its way back. */
const BESIDE = 16;
const CORNER = 16;
/** White in the leaf around people. */
const LEAF = 10;

interface RowProps {
  readonly theme: Theme;
  readonly strip: Strip;
  readonly row: StripRow;
}

/** A picture in a whole leaf of its own: a bar as wide as the page, people as wide as they are. */
function Leaf({ theme, strip, row }: RowProps): ReactElement | null {
  const { picture } = row;
  const rtl = theme.direction === 'rtl';
  const corners = rtl
    ? { borderTopRightRadius: CORNER, borderBottomLeftRadius: CORNER }
    : { borderTopLeftRadius: CORNER, borderBottomRightRadius: CORNER };
  if (picture === undefined) return null;
  const onAxis = pictureInset(picture).onAxis;
  const size = pictureWidth(picture, theme);
  const width = onAxis ? theme.width : size + 2 * LEAF;
  return (
    <View style={{ width, padding: onAxis ? 0 : LEAF }}>
      <View
        style={{
          position: 'absolute',
          top: 0,
          bottom: 0,
          left: 0,
          width,
          backgroundColor: palette.pale,
          ...corners,
        }}
      >
        {strip.axis === undefined ? null : <AxisLines axis={strip.axis} theme={theme} />}
      </View>
      <StripPicture picture={picture} axis={strip.axis} theme={theme} />
    </View>
  );
}

/** Name and tag, as wide as they may be. */
function Name({ theme, row, width }: Omit<RowProps, 'strip'> & { readonly width: number }): ReactElement {
  const { name } = theme.type;
  const text = { theme, text: row.name, role: name, width, setting: 'balanced' } as const;
  return (
    <View sem={{ tag: 'TH', scope: 'Row' }} style={{ width }}>
      <Words {...text} sem={{ tag: 'P' }} />
      {row.tag === undefined ? null : (
        <View style={{ marginBottom: AFTER_TAG }}>
          <Tag theme={{ ...theme, nameWidth: width }} text={row.tag} />
        </View>
      )}
    </View>
  );
}

/** The way back is so small that it stands at the end of the name's line. */
function NameAndWayBack({ theme, row }: RowProps): ReactElement {
  const { width, direction } = theme;
  const { picture } = row;
  if (picture === undefined) return <Name theme={theme} row={row} width={width} />;
  const room = pictureWidth(picture, theme);
  return (
    <View style={{ width, flexDirection: rowDirection(direction), alignItems: 'center' }}>
      <Name theme={theme} row={row} width={width - room - BESIDE} />
      <View sem={{ tag: 'TD' }} style={{ width: room, ...gapStart(direction, BESIDE) }}>
        <StripPicture picture={picture} axis={undefined} theme={theme} />
      </View>
    </View>
  );
}

/** A picture under the name. */
function NameOverPicture(props: RowProps): ReactElement {
  const { theme, strip, row } = props;
  const { width, direction } = theme;
  const alignItems = direction === 'rtl' ? 'flex-end' : 'flex-start';
  return (
    <>
      <Name theme={theme} row={row} width={width} />
      {strip.layout === 'text' ? null : (
        <View
          sem={{ tag: 'TD' }}
          style={{ width, marginTop: row.picture === undefined ? 0 : AFTER_NAME, alignItems }}
        >
          <Leaf {...props} />
        </View>
      )}
    </>
  );
}

/** Name, picture, words: one under another. */
function Row(props: RowProps): ReactElement {
  const { theme, strip, row } = props;
  const { width } = theme;
  const pictured = isPictured(strip) && row.picture !== undefined;
  return (
    <View sem={{ tag: 'TR' }} style={{ width }}>
      {strip.layout === 'way-back' ? <NameAndWayBack {...props} /> : <NameOverPicture {...props} />}
      <View sem={{ tag: 'TD' }} style={{ width, marginTop: pictured ? AFTER_PICTURE : 0 }}>
        <Paragraphs
          theme={theme}
          paragraphs={row.words}
          roleOf={stripRole}
          width={width}
          gap={sizes.betweenParagraphs}
        />
      </View>
    </View>
  );
}

/** Rows of words are ruled off from each other; a leaf needs no line. */
function SpacedRow({ ruled, ...props }: RowProps & { readonly ruled: boolean }): ReactElement {
  const { theme, strip } = props;
  const pictured = isPictured(strip);
  const line = { direction: theme.direction, start: 0, width: theme.width, thickness: theme.rules.row };
  const white = pictured ? {} : { paddingTop: ruled ? TOP : 0, paddingBottom: BOTTOM - SHRINK };
  return (
    <View style={{ width: theme.width, ...white }}>
      {ruled && !pictured ? <Hairline {...line} /> : null}
      <Row {...props} />
    </View>
  );
}

function isPictured({ layout }: Strip): boolean {
  return layout === 'range' || layout === 'people';
}

/**
 * One unit for the axis, one a row; the axis stands again on every page. Rows take so much room that a strip may be
 * divided for fuller pages, and one row stand alone under its heading.
 */
export function stackedStripUnits(block: OfType<'strip'>, place: Place): readonly Unit[] {
  const { theme, key, title } = place;
  const { axis, rows, origin } = block;
  const inTable = (element: ReactElement): ReactElement => (
    <View sem={{ tag: 'Table', id: `${key}.table` }} style={{ width: theme.width }}>
      {element}
    </View>
  );
  const scale = axis === undefined ? undefined : <StackedAxis theme={theme} axis={axis} />;
  const repeated =
    title === undefined && scale === undefined
      ? {}
      : { continuation: <ContinuedHead place={place}>{scale}</ContinuedHead> };
  const gap = isPictured(block) ? BETWEEN_PICTURES : SHRINK;
  const units = rows.map((row, index): Unit => ({
    key: `${key}.row.${index}`,
    origin: row.origin,
    element: inTable(
      <SpacedRow theme={theme} strip={block} row={row} ruled={index > 0 || block.goesOn === true} />,
    ),
    keepWithNext: false,
    ...(index === 0 ? { gapBefore: 0 } : { gapBefore: gap, gapShrink: SHRINK }),
    divisible: true,
    ...repeated,
  }));
  const grouped = units.map((unit) => ({ ...unit, group: key }));
  if (scale === undefined || rows.length === 0) return grouped;
  const head: Unit = {
    key: `${key}.axis`,
    origin,
    element: inTable(scale),
    gapBefore: 0,
    keepWithNext: true,
    divisible: true,
    group: key,
  };
  return [head, ...grouped];
}
