import { Path, Svg, View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { DocumentTree } from '../model/document.ts';
import { pageNumberText } from '../model/tree-text.ts';
import { Hairline, Words, runsFor } from './blocks/primitives.tsx';
import { pageGeometry } from './geometry.ts';
import type { PageGeometry } from './geometry.ts';
import { acrossField, roundedPath, short } from './pictures/draw-path.ts';
import { measureLines } from './text.tsx';
import { fromStart, palette, themeOf } from './theme.ts';
import type { Theme, TypeRole } from './theme.ts';

/** Distances from the edges of the paper, in points. */
const HEADER_TOP = 32;
const FOOTER_BOTTOM = 28;
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
  return (
    <View
      style={{
        position: 'absolute',
        bottom: FOOTER_BOTTOM,
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
      <Pair
        theme={theme}
        width={width}
        start={{ text: words.deferral, role: footer }}
        end={{ text: words.id, role: footer }}
      />
    </View>
  );
}

/** The edges of a draft: slanting lines in runs, the word in the gaps, beside the text and never across it. */
const edge = { inset: 20, width: 14, top: 25, run: 150, gap: 100, pitch: 9, stroke: 1.1 } as const;

/** Runs of slanting lines down one edge of a page, and the middles of the gaps between them. */
export function edgeRuns(pageHeight: number): { readonly lines: string; readonly gaps: readonly number[] } {
  const lines: string[] = [];
  const gaps: number[] = [];
  for (let top = edge.top; top < pageHeight - edge.top; top += edge.run + edge.gap) {
    const end = Math.min(top + edge.run, pageHeight - edge.top);
    for (let y = top; y + edge.width <= end; y += edge.pitch)
      lines.push(`M0 ${short(y + edge.width)}L${edge.width} ${short(y)}`);
    const middle = top + edge.run + edge.gap / 2;
    if (middle + edge.gap / 2 <= pageHeight) gaps.push(middle);
  }
  return { lines: lines.join(''), gaps };
}

interface EdgeProps {
  readonly theme: Theme;
  readonly word: string;
  readonly geometry: PageGeometry;
  readonly left: number;
}

function DraftEdge({ theme, word, geometry, left }: EdgeProps): ReactElement {
  const role: TypeRole = { size: 12, lineHeight: 15, weight: 700 };
  const { lines, gaps } = edgeRuns(geometry.height);
  const width = naturalWidth(word, role);
  return (
    <View style={{ position: 'absolute', top: 0, left, width: edge.width, height: geometry.height }}>
      <Svg style={{ position: 'absolute', top: 0, left: 0 }} width={edge.width} height={geometry.height}>
        <Path d={lines} stroke={palette.ink} strokeWidth={edge.stroke} />
      </Svg>
      {gaps.map((middle) => (
        <View
          key={middle}
          style={{
            position: 'absolute',
            top: middle - role.lineHeight / 2,
            left: (edge.width - width) / 2,
            width,
            height: role.lineHeight,
            transform: 'rotate(-90deg)',
          }}
        >
          <Words theme={theme} text={word} role={role} width={width} />
        </View>
      ))}
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
  const field = { width, direction: 'ltr' } as const;
  const edges = [edge.inset, acrossField(field, width - edge.inset - edge.width)];
  return (
    <View artifact style={{ position: 'absolute', top: 0, left: 0, width, height }}>
      {tab === undefined ? null : <Tab theme={theme} geometry={geometry} text={tab} />}
      {page > 1 || headerOnFirstPage ? <Header {...props} /> : null}
      <Footer {...props} />
      {draftEdge === undefined
        ? null
        : edges.map((left) => (
            <DraftEdge key={left} theme={theme} word={draftEdge} geometry={geometry} left={left} />
          ))}
    </View>
  );
}
