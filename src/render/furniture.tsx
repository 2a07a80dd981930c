import { Path, Svg, View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { DocumentTree } from '../model/document.ts';
import { pageNumberText } from '../model/tree-text.ts';
import { Hairline, Words, runsFor } from './blocks/primitives.tsx';
import { DraftEdges } from './draft-edge.tsx';
import { pageGeometry } from './geometry.ts';
import type { PageGeometry } from './geometry.ts';
import { roundedPath } from '../pictures/draw-path.ts';
import { measureLines } from './text.tsx';
import { fromStart, palette, themeOf } from './theme.ts';
import type { Theme, TypeRole } from './theme.ts';

/** Distances from the edges of the paper, in points. */
const HEADER_TOP = 32;
const FOOTER_BOTTOM = 28;
/** A footer of three lines stands lower, so that it keeps its distance from the body. */
const FOOTER_BOTTOM_TALL = 20;
const RULE_GAP = 7;
const RULE = 0.4;
/** White between two texts that share a line. */
const BETWEEN = 12;

interface FurnitureProps {
  readonly tree: DocumentTree;
  readonly theme: Theme;
  readonly geometry: PageGeometry;
  readonly page: number;
  readonly pages: number;
}

interface FurnitureType {
  readonly header: TypeRole;
  readonly footer: TypeRole;
}

function furnitureType(theme: Theme): FurnitureType {
  const { small } = theme.type;
  if (theme.density === 'patient') return { header: small, footer: small };
  return { header: { size: 9, lineHeight: 12, weight: 400 }, footer: small };
}

function naturalWidth(text: string, role: TypeRole): number {
  const set = measureLines({ runs: runsFor(text, role), size: role.size, width: 10_000, setting: 'filled' });
  return Math.ceil(set.width) + 1;
}

interface PairProps {
  readonly theme: Theme;
  readonly width: number;
  readonly start: { readonly text: string; readonly role: TypeRole };
  readonly end: { readonly text: string; readonly role: TypeRole };
}

/** A text at the start of a line and one at its end. The end one is short; the start one takes a second line if it must. */
function Pair({ theme, width, start, end }: PairProps): ReactElement {
  const endWidth = Math.min(naturalWidth(end.text, end.role), width * 0.6);
  const startWidth = width - endWidth - BETWEEN;
  const direction = theme.direction === 'rtl' ? 'row-reverse' : 'row';
  return (
    <View style={{ width, flexDirection: direction, justifyContent: 'space-between' }}>
      <Words theme={theme} text={start.text} role={start.role} width={startWidth} />
      <Words theme={theme} text={end.text} role={end.role} width={endWidth} align="end" />
    </View>
  );
}

const TAB_PADDING = 3.5;
const TAB_SIDE = 12;
const TAB_CORNER = 10;

/** A black leaf that hangs from the top edge: example, or draft. */
function Tab({
  theme,
  geometry,
  text,
}: {
  theme: Theme;
  geometry: PageGeometry;
  text: string;
}): ReactElement {
  const role: TypeRole = { ...furnitureType(theme).header, weight: 700 };
  const most = geometry.contentWidth - 2 * TAB_SIDE;
  const set = measureLines({ runs: runsFor(text, role), size: role.size, width: most, setting: 'balanced' });
  const width = Math.ceil(set.width) + 1 + 2 * TAB_SIDE;
  const height = set.lines * role.lineHeight + 2 * TAB_PADDING;
  const field = { width, direction: theme.direction };
  const box = { start: 0, top: 0, width, height };
  const place = {
    position: 'absolute',
    top: 0,
    width,
    height,
    ...fromStart(theme.direction, geometry.margin),
  } as const;
  return (
    <View style={place}>
      <Svg style={{ position: 'absolute', top: 0, left: 0 }} width={width} height={height}>
        <Path d={roundedPath(field, box, { endBottom: TAB_CORNER })} fill={palette.ink} />
      </Svg>
      <View style={{ position: 'absolute', top: TAB_PADDING - 0.5, left: TAB_SIDE }}>
        <Words
          theme={theme}
          text={text}
          role={role}
          width={width - 2 * TAB_SIDE}
          setting="balanced"
          color={palette.white}
        />
      </View>
    </View>
  );
}

function Header({ tree, theme, geometry }: FurnitureProps): ReactElement {
  const { header } = furnitureType(theme);
  const place = {
    position: 'absolute',
    top: HEADER_TOP,
    left: geometry.margin,
    width: geometry.contentWidth,
  } as const;
  return (
    <View style={place}>
      <Pair
        theme={theme}
        width={geometry.contentWidth}
        start={{ text: tree.furniture.header.start, role: { ...header, weight: 600 } }}
        end={{ text: tree.furniture.header.end, role: header }}
      />
    </View>
  );
}

/** Stands on its foot: a long line to call makes it grow upwards, into the white below the body. */
function Footer({ tree, theme, geometry, page, pages }: FurnitureProps): ReactElement {
  const { footer: words } = tree.furniture;
  const { footer } = furnitureType(theme);
  const { contentWidth: width, margin } = geometry;
  const number = pageNumberText(tree.furniture, page, pages);
  const callWraps = naturalWidth(words.call, footer) + naturalWidth(number, footer) + BETWEEN > width;
  const shares = naturalWidth(words.deferral, footer) + naturalWidth(words.id, footer) + BETWEEN <= width;
  const bottom = callWraps || !shares ? FOOTER_BOTTOM_TALL : FOOTER_BOTTOM;
  return (
    <View
      style={{
        position: 'absolute',
        bottom,
        left: margin,
        width,
        paddingTop: RULE_GAP + RULE,
      }}
    >
      <Hairline
        direction={theme.direction}
        start={0}
        width={width}
        top={RULE / 2}
        thickness={RULE}
        color={palette.ink}
      />
      <Pair
        theme={theme}
        width={width}
        start={{ text: words.call, role: footer }}
        end={{ text: number, role: { ...footer, weight: 700 } }}
      />
      {shares ? (
        <Pair
          theme={theme}
          width={width}
          start={{ text: words.deferral, role: footer }}
          end={{ text: words.id, role: footer }}
        />
      ) : (
        [words.deferral, words.id].map((text) => (
          <Words key={text} theme={theme} text={text} role={footer} width={width} />
        ))
      )}
    </View>
  );
}

/**
 * Everything around the body of one page, as one box of the size of the paper: tab, header, footer, the edges of a
 * draft, painted in the order of furnitureTexts. `page` counts from 1 within the document.
 */
export function pageFurniture(tree: DocumentTree, page: number, pages: number): ReactElement {
  const theme = themeOf(tree);
  const geometry = pageGeometry(tree);
  const { tab, draftEdge, headerOnFirstPage } = tree.furniture;
  const props: FurnitureProps = { tree, theme, geometry, page, pages };
  const { width, height } = geometry;
  return (
    <View artifact style={{ position: 'absolute', top: 0, left: 0, width, height }}>
      {tab === undefined ? null : <Tab theme={theme} geometry={geometry} text={tab} />}
      {page > 1 || headerOnFirstPage ? <Header {...props} /> : null}
      <Footer {...props} />
      {draftEdge === undefined ? null : <DraftEdges theme={theme} word={draftEdge} page={geometry} />}
    </View>
  );
}
