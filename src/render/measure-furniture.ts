import type { DocumentTree } from '../model/document.ts';
import { pageNumberText } from '../model/tree-text.ts';
import type { Edition, TypeRole } from './edition.ts';
import { leadType } from './lead-type.ts';
import { measureLines } from './text.tsx';
import { editionOf } from './theme.ts';

/** Points. */
export const RULE_GAP = 7;
export const RULE = 0.4;
/** White between two texts that share a line. */
export const BETWEEN = 12;
/** White in the black tab at the top edge, and below it. */
export const tabRoom = { above: 3.5, side: 12, below: 4 } as const;
/** Of the width, at most so much goes to the text at the end of a line where the two have not room on one. */
const MOST_AT_END = 0.6;

function measure(text: string, role: TypeRole, width: number): { lines: number; width: number } {
  const runs = [{ text, weight: role.weight }];
  return measureLines({ runs, size: role.size, width, setting: 'filled' });
}

/** On one line, in points. */
export function naturalWidth(text: string, role: TypeRole): number {
  return Math.ceil(measure(text, role, 10_000).width) + 1;
}

export interface Sharing {
  readonly start: { readonly text: string; readonly role: TypeRole };
  readonly end: { readonly text: string; readonly role: TypeRole };
}

/** Widths of two texts that share a line. The end one is short; the start one takes more lines if it must. */
export function shareLine(pair: Sharing, width: number): { readonly start: number; readonly end: number } {
  const natural = naturalWidth(pair.end.text, pair.end.role);
  const endWidth = fitsLine(pair, width) ? natural : Math.min(natural, width * MOST_AT_END);
  return { start: width - endWidth - BETWEEN, end: endWidth };
}

function fitsLine({ start, end }: Sharing, width: number): boolean {
  return naturalWidth(start.text, start.role) + naturalWidth(end.text, end.role) + BETWEEN <= width;
}

function linesOf(pair: Sharing, width: number): number {
  const widths = shareLine(pair, width);
  return Math.max(
    measure(pair.start.text, pair.start.role, widths.start).lines,
    measure(pair.end.text, pair.end.role, widths.end).lines,
  );
}

/** Where the furniture of a document's pages stands, in points from the edges of the paper; the same on all of them. */
export interface FurnitureFrame {
  readonly tabHeight: number;
  readonly headerTop: number;
  /** Whether name and title have a line each. */
  readonly headerStacked: boolean;
  readonly footerBottom: number;
  /** Whether the last two texts of the footer share a line. */
  readonly footerShares: boolean;
  /** Whether the number of the page stands on the line of whom to call, or on the next one. */
  readonly numberBeside: 'call' | 'deferral';
  readonly bodyTop: number;
  /** From the foot of the body to that of the paper. */
  readonly belowBody: number;
}

type Tree = Pick<DocumentTree, 'audience' | 'edition' | 'furniture' | 'language'>;

/** The type that header and footer are set in: lines as far apart as the script needs. */
function typeOf(tree: Tree): Edition['type'] {
  return leadType(editionOf(tree).type, tree.language);
}

/** Measures what stands around the body. Call loadFonts first. */
export function measureFurniture(tree: Tree): FurnitureFrame {
  const { page, width } = editionOf(tree);
  const type = typeOf(tree);
  const head = frameHead(tree);
  const foot = footerLines(tree, width);
  const footerBottom = foot.lines > page.footerLines ? page.tallFooter : page.footer;
  // What the usual lines of a footer take more than those of the edition is the body's, so that the white above stays.
  const led = page.footerLines * (type.footer.lineHeight - editionOf(tree).type.footer.lineHeight);
  const footerHeight = RULE_GAP + RULE + foot.lines * type.footer.lineHeight;
  return {
    ...head,
    footerBottom,
    footerShares: foot.shares,
    numberBeside: foot.numberBeside,
    belowBody: Math.max(page.belowBody + led, footerBottom + footerHeight + page.overFooter),
  };
}

type Head = Pick<FurnitureFrame, 'tabHeight' | 'headerTop' | 'headerStacked' | 'bodyTop'>;

function frameHead(tree: Tree): Head {
  const { page, width, flow } = editionOf(tree);
  const type = typeOf(tree);
  const { tab, header } = tree.furniture;
  const bold = { ...type.header, weight: 700 } as const;
  const tabLines = tab === undefined ? 0 : measure(tab, bold, width - 2 * tabRoom.side).lines;
  const tabHeight = tab === undefined ? 0 : tabLines * bold.lineHeight + 2 * tabRoom.above;
  const headerTop = Math.max(page.header, tabHeight + tabRoom.below);
  const pair = headerPair(header, type.header);
  const headerStacked = flow === 'stacked' && !fitsLine(pair, width);
  const stacked = [pair.start, pair.end].map(({ text, role }) => measure(text, role, width).lines);
  const lines = headerStacked ? stacked.reduce((sum, count) => sum + count, 0) : linesOf(pair, width);
  const bodyTop = Math.max(page.bodyTop, headerTop + lines * type.header.lineHeight + page.underHeader);
  return { tabHeight, headerTop, headerStacked, bodyTop };
}

export function headerPair({ start, end }: DocumentTree['furniture']['header'], role: TypeRole): Sharing {
  return { start: { text: start, role: { ...role, weight: 600 } }, end: { text: end, role } };
}

/** A number to call is never parted from what it is for by the end of a line. */
export function tiedCall({ call }: DocumentTree['furniture']['footer']): string {
  return call.replace(/ (?=[\d+])/g, '\u00a0');
}

/** The number of a page, and of how many, has three digits at most. */
const widestNumber = 999;

type Foot = Pick<FurnitureFrame, 'numberBeside'> & { readonly lines: number; readonly shares: boolean };

/** In large print the number of the page stands where the footer is lower for it. */
function footerLines(tree: Tree, width: number): Foot {
  const beside = besideCall(tree, width);
  const lines = editionOf(tree).flow === 'stacked' ? linesBelowCall(tree, width) : Number.POSITIVE_INFINITY;
  return lines < beside.lines ? { lines, shares: false, numberBeside: 'deferral' } : beside;
}

function besideCall(tree: Tree, width: number): Foot {
  const { furniture } = tree;
  const { footer: role } = typeOf(tree);
  const { deferral, id } = furniture.footer;
  const last = { start: { text: deferral, role }, end: { text: id, role } };
  const shares = fitsLine(last, width);
  const own = [deferral, id].reduce((sum, text) => sum + measure(text, role, width).lines, 0);
  const top = linesOf(withNumber(furniture, tiedCall(furniture.footer), role), width);
  return { lines: top + (shares ? 1 : own), shares, numberBeside: 'call' };
}

function linesBelowCall(tree: Tree, width: number): number {
  const { furniture } = tree;
  const { footer: role } = typeOf(tree);
  const { deferral, id } = furniture.footer;
  const own = [tiedCall(furniture.footer), id].reduce(
    (sum, text) => sum + measure(text, role, width).lines,
    0,
  );
  return own + linesOf(withNumber(furniture, deferral, role), width);
}

function withNumber(furniture: DocumentTree['furniture'], text: string, role: TypeRole): Sharing {
  const number = pageNumberText(furniture, widestNumber, widestNumber);
  return { start: { text, role }, end: { text: number, role: { ...role, weight: 700 } } };
}
