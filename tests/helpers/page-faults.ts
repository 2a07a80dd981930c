import type { DocumentTree } from '../../src/model/document.ts';
import { blockUnits } from '../../src/render/blocks/index.tsx';
import { isText } from '../../src/render/layout-node.ts';
import type { SetNode } from '../../src/render/layout-node.ts';
import { makePage, planDocument } from '../../src/render/make-up.ts';
import type { PlannedDocument, SetDocument } from '../../src/render/make-up.ts';
import { setDocuments } from '../../src/render/render-packet.ts';
import type { Unit } from '../../src/render/unit.ts';

/** A page of which less than this share is used looks like a mistake. */
const leastUsed = 0.25;
/** Heights are sums; they are compared with this tolerance, in points. */
const tolerance = 0.05;

const headings: readonly string[] = ['H1', 'H2', 'H3'];
/** A paragraph is whole too: so no page begins with its last line. */
const wholes: readonly string[] = ['TR', 'Figure', 'LI', 'P'];

/** Something that stands on a page, in points from the top of the body. */
interface Piece {
  readonly node: SetNode;
  readonly tag: string;
  readonly top: number;
  readonly bottom: number;
}

/** Documents as the product sets them, each as one column. Call loadFonts first. */
export function setAsProduct(trees: readonly DocumentTree[]): Promise<readonly SetDocument[]> {
  return setDocuments(trees, { blockUnits });
}

/** Documents as the product lays them out and makes up their pages, without painting them. Call loadFonts first. */
export async function planPagesOf(trees: readonly DocumentTree[]): Promise<readonly PlannedDocument[]> {
  return (await setAsProduct(trees)).map(planDocument);
}

/**
 * What is wrong with the pages of a document, from where its words and rows stand on them; nothing of how the planner
 * weighs a break is used.
 */
export function pageFaults(planned: PlannedDocument): readonly string[] {
  const pages = planned.pages.map((page) => piecesOn(planned, page));
  const { bodyHeight } = planned.draft.geometry;
  return [
    ...pages.flatMap((pieces, index) => [
      ...(planned.pages.length > 1 ? emptiness(pieces, bodyHeight, index + 1) : []),
      ...strandedHeading(planned, index),
      ...pieces
        .filter(({ tag, bottom }) => wholes.includes(tag) && bottom > bodyHeight + tolerance)
        .map(({ tag }) => `page ${index + 1}: a ${tag} is cut by the foot of the page`),
      ...overlaps(planned, index),
    ]),
    ...partedRows(planned, pages),
  ];
}

function piecesOn(planned: PlannedDocument, page: PlannedDocument['pages'][number]): readonly Piece[] {
  const { bodyTop } = planned.draft.geometry;
  const { body, repeated } = makePage(planned, page, undefined);
  return [...repeated, ...body].flatMap(({ node, top }) => piecesIn(node, top - bodyTop));
}

/** A block's own box is where the page puts it; those inside are relative to it. */
function piecesIn(node: SetNode, top: number): readonly Piece[] {
  return node.children.flatMap((child) => {
    if (isText(child)) return [];
    const at = top + child.box.top;
    const tag = child.type === 'TEXT' ? 'words' : (child.props.sem?.tag ?? '');
    const piece = { node: child, tag, top: at, bottom: at + child.box.height };
    return [piece, ...piecesIn(child, at)];
  });
}

/** Words and lines to write on are what a page is used for. */
function usedOf(pieces: readonly Piece[]): number {
  const marks = pieces.filter(({ node, tag }) => tag === 'words' || node.type === 'SVG');
  return Math.max(0, ...marks.map(({ bottom }) => bottom));
}

function emptiness(pieces: readonly Piece[], bodyHeight: number, page: number): readonly string[] {
  const used = usedOf(pieces) / bodyHeight;
  return used < leastUsed ? [`page ${page}: only ${Math.round(used * 100)} in a hundred are used`] : [];
}

/**
 * Pages that are less than half full though what stands first on the next had room on them. The last page of a document
 * may be short.
 */
export function halfEmptyPages(planned: PlannedDocument): readonly string[] {
  const { bodyHeight } = planned.draft.geometry;
  return planned.pages.slice(0, -1).flatMap((page, index) => {
    const used = usedOf(piecesOn(planned, page));
    const next = planned.pages[index + 1]?.placements[0]?.unit ?? 0;
    if (used >= bodyHeight / 2 || leastOf(planned, next) > bodyHeight - used) return [];
    const share = Math.round((used / bodyHeight) * 100);
    return [`page ${index + 1}: ${share} in a hundred are used, and what follows had room`];
  });
}

/** Height of a unit with all that may not be parted from it, with the white above. */
function leastOf(planned: SetDocument, first: number): number {
  const { draft, blocks } = planned;
  const unit = draft.units[first];
  if (unit === undefined) return 0;
  const own = unit.gapBefore + (blocks[first]?.height ?? 0);
  return own + (isBound(unit, draft.units[first + 1]) ? leastOf(planned, first + 1) : 0);
}

function isBound(unit: Unit, next: Unit | undefined): boolean {
  if (unit.keepWithNext || unit.keepsRow === true) return true;
  return unit.divisible !== true && unit.group !== undefined && unit.group === next?.group;
}

/** A page ends with heads alone: a heading, that of a topic with its sentences, those of a table, an axis. */
function strandedHeading(planned: PlannedDocument, index: number): readonly string[] {
  const unit = planned.pages[index]?.placements.at(-1)?.unit;
  if (unit === undefined) return [];
  const block = planned.blocks[unit];
  const tags = block === undefined ? [] : tagsOver(block.node);
  const bare = tags.length > 0 && tags.every((tag) => headings.includes(tag));
  const isHead = /\.(head|axis|names)$/.test(planned.draft.units[unit]?.key ?? '');
  return bare || isHead ? [`page ${index + 1}: a heading stands last`] : [];
}

/** For each text of a block the tag right above it. */
function tagsOver(node: SetNode, above = ''): readonly string[] {
  const tag = node.props.sem?.tag ?? above;
  if (node.type === 'TEXT') return [tag];
  return node.children.flatMap((child) => (isText(child) ? [] : tagsOver(child, tag)));
}

/** Every row and figure of the document on one page, once. */
function partedRows(planned: PlannedDocument, pages: readonly (readonly Piece[])[]): readonly string[] {
  const places = new Map<SetNode, number[]>();
  pages.forEach((pieces, index) => {
    for (const { node, tag } of pieces)
      if (wholes.includes(tag)) places.set(node, [...(places.get(node) ?? []), index + 1]);
  });
  const own = planned.blocks
    .slice(0, planned.draft.units.length)
    .flatMap(({ node }) => piecesIn(node, 0))
    .filter(({ tag }) => wholes.includes(tag));
  return own.flatMap(({ node, tag }) => {
    const found = places.get(node) ?? [];
    return found.length === 1 ? [] : [`a ${tag} stands on pages [${found.join(', ')}]`];
  });
}

/** What stands over something else hides a part of it. */
function overlaps(planned: PlannedDocument, index: number): readonly string[] {
  const placements = planned.pages[index]?.placements ?? [];
  return placements.flatMap(({ unit, top }, at) => {
    const before = placements[at - 1];
    if (before === undefined) return [];
    const bottom = before.top + (planned.blocks[before.unit]?.height ?? 0);
    return top < bottom - tolerance ? [`page ${index + 1}: block ${unit} stands over the one before`] : [];
  });
}

/**
 * Less than half of a page is used though what comes next, with what it is kept with, would have had room on it. What is
 * made to begin a page is not asked.
 */
export function needlessWhite({ pages, blocks, draft }: PlannedDocument): readonly string[] {
  const { units, geometry } = draft;
  const heightOf = (unit: number): number => blocks[unit]?.height ?? 0;
  return pages.slice(0, -1).flatMap(({ placements }, index) => {
    const last = placements.at(-1);
    if (last === undefined) return [];
    const used = last.top + heightOf(last.unit);
    if (units[last.unit + 1]?.startsPage === true) return [];
    const end = units.findIndex(({ keepWithNext }, at) => at > last.unit && !keepWithNext);
    const next = units.slice(last.unit + 1, end + 1);
    const needed = next.reduce((sum, { gapBefore }, at) => sum + gapBefore + heightOf(last.unit + 1 + at), 0);
    const wasted = used < geometry.bodyHeight / 2 && used + needed <= geometry.bodyHeight;
    return wasted ? [`page ${index + 1}: less than half is used, and what follows had room`] : [];
  });
}

/** Frames of warning signs, by the key of their head, that are parted though a page holds them whole under their title. */
export function partedFrames({ pages, blocks, draft }: PlannedDocument): readonly string[] {
  const frames = new Set(draft.units.flatMap(({ key }) => /^.*\.frame\.\d+(?=\.)/.exec(key)?.[0] ?? []));
  return [...frames].flatMap((frame) => {
    const own = draft.units.flatMap(({ key }, unit) => (key.startsWith(`${frame}.`) ? [unit] : []));
    const onPages = pages.filter(({ placements }) => placements.some(({ unit }) => own.includes(unit)));
    const first = own[0] ?? 0;
    const under = draft.units[first - 1]?.keepWithNext === true ? first - 1 : first;
    const all = draft.units.slice(under, first + own.length);
    const height = all.reduce(
      (sum, { gapBefore }, at) => sum + gapBefore + (blocks[under + at]?.height ?? 0),
      0,
    );
    return onPages.length > 1 && height <= draft.geometry.bodyHeight ? [`${frame} is parted`] : [];
  });
}
