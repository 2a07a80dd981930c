import { Path, Svg, View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { Axis, Strip, StripRow } from '../../model/document.ts';
import { acrossField } from '../../pictures/draw-path.ts';
import { pictureSizes } from '../picture-sizes.ts';
import { gridOffsets, placeOnAxis } from '../../pictures/range.ts';
import {
  columns,
  firstBaseline,
  fromStart,
  gapStart,
  palette,
  rowDirection,
  strip as rowSizes,
} from '../theme.ts';
import type { Theme } from '../theme.ts';
import { Hairline, Paragraphs, Words, stripRole } from './primitives.tsx';
import { StripPicture, pictureInset } from './strip-picture.tsx';
import { Tag } from './tag.tsx';

/** What a row knows of the strip it belongs to. */
export interface RowPlace {
  readonly theme: Theme;
  readonly strip: Strip;
  readonly first: boolean;
  readonly last: boolean;
}

interface RowProps {
  readonly row: StripRow;
  readonly place: RowPlace;
}

interface Padding {
  readonly top: number;
  readonly bottom: number;
}

/** Extra white above a name, so that its first baseline is that of the words. */
function nameDrop({ row, place: { theme } }: RowProps): number {
  const first = row.words[0];
  if (first === undefined) return 0;
  return Math.max(0, firstBaseline(stripRole(theme, first.role)) - firstBaseline(theme.type.name));
}

function NameCell({ row, place, top, bottom }: RowProps & Padding): ReactElement {
  const { theme } = place;
  const padding = { paddingTop: top + nameDrop({ row, place }), paddingBottom: bottom };
  return (
    <View sem={{ tag: 'TH', scope: 'Row' }} style={{ width: columns.name, ...padding }}>
      <Words
        theme={theme}
        text={row.name}
        role={theme.type.name}
        width={columns.name}
        setting="balanced"
        sem={{ tag: 'P' }}
      />
      {row.tag === undefined ? null : <Tag theme={theme} text={row.tag} />}
    </View>
  );
}

interface WordsCellProps extends RowProps, Padding {
  /** White between paragraphs. */
  readonly between: number;
  readonly width: number;
  readonly gap: number;
}

function WordsCell({
  row,
  place: { theme },
  top,
  bottom,
  width,
  gap,
  between,
}: WordsCellProps): ReactElement {
  const padding = { paddingTop: top, paddingBottom: bottom };
  return (
    <View sem={{ tag: 'TD' }} style={{ width, ...padding, ...gapStart(theme.direction, gap) }}>
      <Paragraphs theme={theme} paragraphs={row.words} roleOf={stripRole} width={width} gap={between} />
    </View>
  );
}

/** Vertical lines over the whole height of a row, whatever it is: grid lines and today. */
export function AxisLines({ axis, theme }: { readonly axis: Axis; readonly theme: Theme }): ReactElement {
  const sizes = pictureSizes[theme.edition].range;
  const field = { width: sizes.width, direction: theme.direction };
  const upright = (offset: number): string =>
    `M${acrossField(field, offset)} 0L${acrossField(field, offset)} 100`;
  return (
    <Svg width={sizes.width} height="100%" viewBox={`0 0 ${sizes.width} 100`} preserveAspectRatio="none">
      <Path d={gridOffsets(axis, sizes).map(upright).join('')} stroke={palette.grid} strokeWidth={0.6} />
      <Path
        d={upright(placeOnAxis(axis, axis.today.at, sizes))}
        stroke={palette.ink}
        strokeWidth={sizes.today}
      />
    </Svg>
  );
}

/** The row's piece of the pale column. It reaches over the gap into the row below, so that no seam shows. */
function ColumnPiece({ place }: { readonly place: RowPlace }): ReactElement {
  const { theme, strip, first, last } = place;
  const rtl = theme.direction === 'rtl';
  const startTop = first ? rowSizes.columnCorner : 0;
  const endBottom = last ? rowSizes.columnCorner : 0;
  const corners = rtl
    ? { borderTopRightRadius: startTop, borderBottomLeftRadius: endBottom }
    : { borderTopLeftRadius: startTop, borderBottomRightRadius: endBottom };
  const box = {
    position: 'absolute',
    top: 0,
    bottom: last ? 0 : -(rowSizes.pictureGap + 0.5),
    left: 0,
    width: columns.picture,
  } as const;
  return (
    <View style={{ ...box, backgroundColor: palette.pale, ...corners }}>
      {strip.axis === undefined ? null : <AxisLines axis={strip.axis} theme={theme} />}
    </View>
  );
}

/** White under what stands in a row with a picture; less where a gap follows. */
function bottomOf({ last }: RowPlace): number {
  return last ? rowSizes.bottom : rowSizes.bottom - rowSizes.pictureGap;
}

function PictureCell({ row, place }: RowProps): ReactElement {
  const { theme, strip } = place;
  const { picture } = row;
  const onAxis = strip.layout === 'range';
  const padding = {
    paddingTop: onAxis ? rowSizes.rangeTop : rowSizes.pictureTop,
    paddingBottom: bottomOf(place),
    paddingHorizontal: picture === undefined ? 0 : pictureInset(picture).side,
  };
  return (
    <View
      sem={{ tag: 'TD' }}
      style={{ width: columns.picture, ...padding, ...gapStart(theme.direction, columns.nameGap) }}
    >
      <ColumnPiece place={place} />
      {picture === undefined ? null : <StripPicture picture={picture} axis={strip.axis} theme={theme} />}
    </View>
  );
}

/** Lines between rows lie under name and words only; the picture column is never cut. */
function RowLines({ place: { theme } }: { readonly place: RowPlace }): ReactElement {
  const { direction } = theme;
  const wordsStart = columns.name + columns.nameGap + columns.picture + 4;
  const line = { direction, thickness: theme.rules.row };
  return (
    <View style={{ position: 'absolute', top: 0, width: theme.width, height: 0, ...fromStart(direction, 0) }}>
      <Hairline {...line} start={0} width={columns.name + columns.nameGap - 4} />
      <Hairline {...line} start={wordsStart} width={theme.width - wordsStart} />
    </View>
  );
}

/** A row with a picture column: people or a range. */
export function PictureRow({ row, place }: RowProps): ReactElement {
  const { theme, first } = place;
  const { wordsTop } = rowSizes;
  const bottom = bottomOf(place);
  return (
    <View style={{ width: theme.width }}>
      {first ? null : <RowLines place={place} />}
      <View sem={{ tag: 'TR' }} style={{ flexDirection: rowDirection(theme.direction) }}>
        <NameCell row={row} place={place} top={wordsTop} bottom={bottom} />
        <PictureCell row={row} place={place} />
        <WordsCell
          row={row}
          place={place}
          top={wordsTop}
          bottom={bottom}
          width={columns.words}
          gap={columns.pictureGap}
          between={0}
        />
      </View>
    </View>
  );
}

/** A row of words, with the small way-back picture or none. */
export function TextRow({ row, place }: RowProps): ReactElement {
  const { theme, strip, first } = place;
  const { direction } = theme;
  const small = strip.rows.every(({ words }) => words.every((paragraph) => paragraph.role === 'small'));
  const inner = small ? rowSizes.smallTextTop : rowSizes.textTop;
  const top = first ? rowSizes.firstTextPadding : inner;
  const bottom = small ? rowSizes.smallTextBottom : rowSizes.textBottom;
  const wayBack = strip.layout === 'way-back';
  const start = columns.name + columns.nameGap + (wayBack ? columns.wayBack : 0);
  const line = { direction, start: 0, width: theme.width, thickness: theme.rules.row };
  return (
    <View style={{ width: theme.width }}>
      {first ? null : <Hairline {...line} />}
      <View sem={{ tag: 'TR' }} style={{ flexDirection: rowDirection(direction) }}>
        <NameCell row={row} place={place} top={top} bottom={bottom} />
        {wayBack ? <WayBackCell row={row} place={place} top={top} /> : null}
        <WordsCell
          row={row}
          place={place}
          top={top}
          bottom={bottom}
          width={theme.width - start}
          gap={wayBack ? 0 : columns.nameGap}
          between={rowSizes.betweenParagraphs}
        />
      </View>
    </View>
  );
}

function WayBackCell({ row, place, top }: RowProps & { readonly top: number }): ReactElement {
  const { theme, strip } = place;
  const { picture } = row;
  const alignItems = theme.direction === 'rtl' ? 'flex-end' : 'flex-start';
  return (
    <View
      sem={{ tag: 'TD' }}
      style={{
        width: columns.wayBack,
        paddingTop: top + 2,
        alignItems,
        ...gapStart(theme.direction, columns.nameGap),
      }}
    >
      {picture === undefined ? null : <StripPicture picture={picture} axis={strip.axis} theme={theme} />}
    </View>
  );
}
