import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { Strip, StripRow } from '../../../model/document.ts';
import { measureLines } from '../../text.tsx';
import { palette, strip as sizes } from '../../theme.ts';
import type { Theme } from '../../theme.ts';
import type { Unit } from '../../unit.ts';
import { ContinuedHead } from '../continued-head.tsx';
import { Hairline, Paragraphs, Words, runsFor, stripRole } from '../primitives.tsx';
import { StripPicture, pictureInset, pictureWidth } from '../strip-picture.tsx';
import { AxisLines } from '../strip-row.tsx';
import { Tag } from '../tag.tsx';
import { groupHighRows } from '../unit-parts.ts';
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
const CORNER = 16;
/** White in the leaf around people. */
const LEAF = 14;

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

function Picture(props: RowProps): ReactElement | null {
  const { theme, strip, row } = props;
  if (strip.layout === 'text') return null;
  const alignItems = theme.direction === 'rtl' ? 'flex-end' : 'flex-start';
  return (
    <View
      sem={{ tag: 'TD' }}
      style={{ width: theme.width, marginTop: row.picture === undefined ? 0 : AFTER_NAME, alignItems }}
    >
      {strip.layout !== 'way-back' ? (
        <Leaf {...props} />
      ) : row.picture === undefined ? null : (
        <StripPicture picture={row.picture} axis={undefined} theme={theme} />
      )}
    </View>
  );
}

/** Name, picture, words: one under another. */
function Row(props: RowProps): ReactElement {
  const { theme, row } = props;
  const { width } = theme;
  return (
    <View sem={{ tag: 'TR' }} style={{ width }}>
      <View sem={{ tag: 'TH', scope: 'Row' }} style={{ width }}>
        <Words
          theme={theme}
          text={row.name}
          role={theme.type.name}
          width={width}
          setting="balanced"
          sem={{ tag: 'P' }}
        />
        {row.tag === undefined ? null : <Tag theme={theme} text={row.tag} />}
      </View>
      <Picture {...props} />
      <View sem={{ tag: 'TD' }} style={{ width, marginTop: row.picture === undefined ? 0 : AFTER_PICTURE }}>
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

/** Two rows of at most so much fit a page under any heading with its sentences. */
const MOST_BOUND = 170;

function isHigh({ words }: StripRow, theme: Theme): boolean {
  const heights = words.map(({ inlines, role }) => {
    const type = stripRole(theme, role);
    const set = {
      runs: runsFor(inlines, type),
      size: type.size,
      width: theme.width,
      setting: 'filled',
    } as const;
    return measureLines(set).lines * type.lineHeight;
  });
  return heights.reduce((sum, height) => sum + height, theme.type.name.lineHeight) > MOST_BOUND;
}

function isPictured({ layout }: Strip): boolean {
  return layout === 'range' || layout === 'people';
}

/**
 * One unit for the axis, one a row; the axis stands again on every page. Rows of words take so much room that they may be
 * divided for fuller pages.
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
    element: inTable(<SpacedRow theme={theme} strip={block} row={row} ruled={index > 0} />),
    keepWithNext: false,
    ...(index === 0 ? { gapBefore: 0 } : { gapBefore: gap, gapShrink: SHRINK }),
    ...(isPictured(block) ? {} : { divisible: true }),
    ...repeated,
  }));
  const grouped = groupHighRows(units, key, isPictured(block) || rows.some((row) => isHigh(row, theme)));
  if (scale === undefined || rows.length === 0) return grouped;
  const head: Unit = {
    key: `${key}.axis`,
    origin,
    element: inTable(scale),
    gapBefore: 0,
    keepWithNext: true,
    group: key,
  };
  return [head, ...grouped];
}
