import { Path, Svg, View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { DocumentTree } from '../model/document.ts';
import { pageNumberText } from '../model/tree-text.ts';
import { Hairline, Words, runsFor } from './blocks/primitives.tsx';
import { DraftEdges } from './draft-edge.tsx';
import { pageGeometry } from './geometry.ts';
import type { PageGeometry } from './geometry.ts';
import {
  RULE,
  RULE_GAP,
  headerPair,
  measureFurniture,
  shareLine,
  tabRoom,
  tiedCall,
} from './measure-furniture.ts';
import type { FurnitureFrame, Sharing } from './measure-furniture.ts';
import { roundedPath } from '../pictures/draw-path.ts';
import { measureLines } from './text.tsx';
import { fromStart, palette, themeOf } from './theme.ts';
import type { Theme, TypeRole } from './theme.ts';

interface FurnitureProps {
  readonly tree: DocumentTree;
  readonly theme: Theme;
  readonly geometry: PageGeometry;
  readonly frame: FurnitureFrame;
  readonly page: number;
  readonly pages: number;
}

interface PairProps extends Sharing {
  readonly theme: Theme;
  readonly width: number;
  /** Which of them is painted, and so read, first. */
  readonly first?: 'start' | 'end';
}

/** A text at the start of a line and one at its end. */
function Pair({ theme, width, start, end, first = 'start' }: PairProps): ReactElement {
  const widths = shareLine({ start, end }, width);
  const fromLeft = (theme.direction === 'ltr') === (first === 'start');
  const texts = [
    <Words key="start" theme={theme} text={start.text} role={start.role} width={widths.start} />,
    <Words key="end" theme={theme} text={end.text} role={end.role} width={widths.end} align="end" />,
  ];
  return (
    <View style={{ width, flexDirection: fromLeft ? 'row' : 'row-reverse', justifyContent: 'space-between' }}>
      {first === 'start' ? texts : texts.reverse()}
    </View>
  );
}

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
  const role: TypeRole = { ...theme.type.header, weight: 700 };
  const most = geometry.contentWidth - 2 * tabRoom.side;
  const set = measureLines({ runs: runsFor(text, role), size: role.size, width: most, setting: 'balanced' });
  const width = Math.ceil(set.width) + 1 + 2 * tabRoom.side;
  const height = set.lines * role.lineHeight + 2 * tabRoom.above;
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
      <View style={{ position: 'absolute', top: tabRoom.above - 0.5, left: tabRoom.side }}>
        <Words
          theme={theme}
          text={text}
          role={role}
          width={width - 2 * tabRoom.side}
          setting="balanced"
          color={palette.white}
        />
      </View>
    </View>
  );
}

/** Name and title on one line, or in large print, where they have no room there, on one each. */
function Header({ tree, theme, geometry, frame }: FurnitureProps): ReactElement {
  const { contentWidth: width, margin: left } = geometry;
  const { start, end } = headerPair(tree.furniture.header, theme.type.header);
  return (
    <View style={{ position: 'absolute', top: frame.headerTop, left, width }}>
      {frame.headerStacked ? (
        [start, end].map(({ text, role }) => (
          <Words key={text} theme={theme} text={text} role={role} width={width} />
        ))
      ) : (
        <Pair theme={theme} width={width} start={start} end={end} />
      )}
    </View>
  );
}

/** The texts of a footer line by line, in the order of furnitureTexts. */
function FooterLines({ tree, theme, geometry, frame, page, pages }: FurnitureProps): ReactElement {
  const { deferral, id } = tree.furniture.footer;
  const { footer: role } = theme.type;
  const { contentWidth: width } = geometry;
  const call = tiedCall(tree.furniture.footer);
  const number = {
    text: pageNumberText(tree.furniture, page, pages),
    role: { ...role, weight: 700 },
  } as const;
  const alone = (text: string): ReactElement => (
    <Words key={text} theme={theme} text={text} role={role} width={width} />
  );
  if (frame.numberBeside === 'deferral')
    return (
      <>
        {alone(call)}
        <Pair theme={theme} width={width} start={{ text: deferral, role }} end={number} first="end" />
        {alone(id)}
      </>
    );
  return (
    <>
      <Pair theme={theme} width={width} start={{ text: call, role }} end={number} />
      {frame.footerShares ? (
        <Pair theme={theme} width={width} start={{ text: deferral, role }} end={{ text: id, role }} />
      ) : (
        [deferral, id].map(alone)
      )}
    </>
  );
}

/** Stands on its foot: a long line to call makes it grow upwards, into the white below the body. */
function Footer(props: FurnitureProps): ReactElement {
  const { theme, geometry, frame } = props;
  const { contentWidth: width, margin: left } = geometry;
  const paddingTop = RULE_GAP + RULE;
  return (
    <View style={{ position: 'absolute', bottom: frame.footerBottom, left, width, paddingTop }}>
      <Hairline
        direction={theme.direction}
        start={0}
        width={width}
        top={RULE / 2}
        thickness={RULE}
        color={palette.ink}
      />
      <FooterLines {...props} />
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
  const { tab, draftEdges, headerOnFirstPage } = tree.furniture;
  const frame = measureFurniture(tree);
  const props: FurnitureProps = { tree, theme, geometry, frame, page, pages };
  const { width, height } = geometry;
  return (
    <View artifact style={{ position: 'absolute', top: 0, left: 0, width, height }}>
      {tab === undefined ? null : <Tab theme={theme} geometry={geometry} text={tab} />}
      {page > 1 || headerOnFirstPage ? <Header {...props} /> : null}
      <Footer {...props} />
      {draftEdges === undefined ? null : <DraftEdges theme={theme} words={draftEdges} page={geometry} />}
    </View>
  );
}
