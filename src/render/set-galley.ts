import layoutDocument from '@react-pdf/layout';
import { Font } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import { InternalError } from '../diagnostics/diagnostic.ts';
import { softHyphen } from './divide-word.ts';
import { expandElement } from './expand-elements.ts';
import type { LayoutNode, SetNode } from './layout-node.ts';
import { childNodes, isText } from './layout-node.ts';
import { rememberLines } from './remember-lines.ts';

/** A column as long as it needs to be, without pages. */
export interface Galley {
  /** Points. */
  readonly width: number;
  /** Only for things that are placed from the foot of a page. */
  readonly height?: number;
  readonly elements: readonly ReactElement[];
}

export interface SetBlock {
  readonly height: number;
  readonly node: SetNode;
  /** A word in it is wider than its column. */
  readonly overruns: boolean;
}

type Typesetter = (root: LayoutNode, fonts: typeof Font) => Promise<SetNode>;

/**
 * Sets each galley once and gives back its blocks, one for each element in the same order, boxes relative to the galley.
 * Nothing is paginated here. Call loadFonts first.
 */
export async function setGalleys(galleys: readonly Galley[]): Promise<readonly (readonly SetBlock[])[]> {
  if (galleys.length === 0) return [];
  const root: LayoutNode = {
    type: 'DOCUMENT',
    box: {},
    style: {},
    props: {},
    children: galleys.map(galleyNode),
  };
  const set = await (layoutDocument as unknown as Typesetter)(root, Font);
  return childNodes(set).map((galley) => childNodes(galley).map(setBlock));
}

function galleyNode({ width, height, elements }: Galley): LayoutNode {
  const size = height === undefined ? { width } : { width, height };
  const children = elements.map((element) => blockNode(element, size));
  return { type: 'PAGE', box: {}, style: {}, props: { wrap: false, size }, children };
}

function blockNode(element: ReactElement, size: Pick<Galley, 'width' | 'height'>): LayoutNode {
  return {
    type: 'VIEW',
    box: {},
    style: { ...size, flexShrink: 0 },
    props: {},
    children: [...expandElement(element)],
  };
}

function setBlock(node: SetNode): SetBlock {
  return { node, height: node.box.height, overruns: inspect(node) };
}

/** True if a word overruns its column. Throws when text was set in a face that is not embedded. */
function inspect(node: SetNode): boolean {
  const foreign = node.lines?.some(({ runs }) =>
    runs.some(({ attributes }) => attributes.font?.[0]?.type === 'STANDARD'),
  );
  if (foreign === true)
    throw new InternalError(
      'text was set in a face that is not embedded: fontFamily is missing or a character has no glyph',
    );
  if (node.props.divided === true) exchangeHyphen(node);
  node.lines?.forEach(centreLine);
  if (node.props.lineKey !== undefined && node.lines !== undefined)
    rememberLines(node.props.lineKey, node.lines);
  return node.props.overrun === true || node.children.some((child) => !isText(child) && inspect(child));
}

type TextLine = NonNullable<SetNode['lines']>[number];

/**
 * The typesetter leaves all the white between lines under the letters; half of it belongs above them, where theme.ts counts
 * its baselines from, and where lines of other scripts have it.
 */
function centreLine(line: TextLine): void {
  const [run] = line.runs;
  if (run?.ascent === undefined) return;
  line.ascent = run.ascent + (line.box.height - run.ascent + run.descent) / 2;
}

/** The hyphen at the end of a divided word becomes a soft one, which looks the same and says that the word goes on. */
function exchangeHyphen({ lines }: SetNode): void {
  const run = lines?.at(-1)?.runs.at(-1);
  const glyph = run?.attributes.font?.[0]?.glyphForCodePoint(softHyphen.codePointAt(0) ?? 0);
  if (run?.glyphs === undefined || glyph === undefined)
    throw new InternalError('a divided word was set without glyphs');
  run.glyphs[run.glyphs.length - 1] = glyph;
}
