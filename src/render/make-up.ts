import type { ReactElement } from 'react';
import type { Diagnostic, SourceSpan } from '../diagnostics/diagnostic.ts';
import type { DocumentTree } from '../model/document.ts';
import { placeOf } from './check-glyphs.ts';
import { pageGeometry } from './geometry.ts';
import type { PageGeometry } from './geometry.ts';
import type { MadePage } from './paint-packet.ts';
import { placeOfLongest, placeOfOverrun } from './place-of-words.ts';
import type { WrittenFile } from './place-of-words.ts';
import { planPages, unitsTooHigh } from './plan-pages.ts';
import type { PlannedPage } from './plan-pages.ts';
import type { PlanUnit } from './plan-unit.ts';
import type { Galley, SetBlock } from './set-galley.ts';
import type { Unit } from './unit.ts';

/** One document on its way from units to pages. */
export interface DocumentDraft {
  readonly tree: DocumentTree;
  readonly geometry: PageGeometry;
  readonly units: readonly Unit[];
  /** Set with the units in one galley, after them; the same element is set once. */
  readonly continuations: readonly ReactElement[];
}

export function draftDocument(tree: DocumentTree, units: readonly Unit[]): DocumentDraft {
  const continuations = new Set(
    units.flatMap(({ continuation }) => (continuation === undefined ? [] : [continuation])),
  );
  return { tree, geometry: pageGeometry(tree), units, continuations: [...continuations] };
}

export function galleyOf({ geometry, units, continuations }: DocumentDraft): Galley {
  return {
    width: geometry.contentWidth,
    elements: [...units.map(({ element }) => element), ...continuations],
  };
}

/** A draft whose blocks are set. */
export interface SetDocument {
  readonly draft: DocumentDraft;
  readonly blocks: readonly SetBlock[];
}

/** A draft whose blocks are set and whose pages are planned. */
export interface PlannedDocument extends SetDocument {
  readonly pages: readonly PlannedPage[];
}

export function planDocument({ draft, blocks }: SetDocument): PlannedDocument {
  return { draft, blocks, pages: planPages(planUnits(draft, blocks), draft.geometry.bodyHeight) };
}

/**
 * What does not fit: a unit higher than a page, a word wider than its column. With its place in the file of the clinic
 * that holds the words, else in the template.
 */
export function checkFit(
  { draft, blocks }: SetDocument,
  written: readonly WrittenFile[],
): readonly Diagnostic[] {
  const high = unitsTooHigh(planUnits(draft, blocks), draft.geometry.bodyHeight).map((index) => {
    const block = blocks[index];
    return overflow(draft, index, {
      message: 'is higher than a page',
      hint: 'Shorten what is written there, or write less of it.',
      span: block === undefined ? undefined : placeOfLongest(block.node, written),
    });
  });
  const wide = draft.units.flatMap((_, index) => {
    const block = blocks[index];
    if (block?.overruns !== true) return [];
    const message = 'holds a word wider than its column';
    const hint = 'Write it in shorter words, or divide it with a hyphen.';
    return [overflow(draft, index, { message, hint, span: placeOfOverrun(block.node, written) })];
  });
  return [...high, ...wide];
}

function planUnits(
  { units, continuations }: DocumentDraft,
  blocks: readonly SetBlock[],
): readonly PlanUnit[] {
  const heights = new Map(
    continuations.map((element, index) => [element, blocks[units.length + index]?.height ?? 0]),
  );
  return units.map((unit, index) => ({
    ...unit,
    height: blocks[index]?.height ?? 0,
    continuationHeight: unit.continuation === undefined ? 0 : (heights.get(unit.continuation) ?? 0),
  }));
}

interface Misfit {
  readonly message: string;
  readonly hint: string;
  readonly span: SourceSpan | undefined;
}

function overflow(
  { tree, units }: DocumentDraft,
  index: number,
  { message, hint, span }: Misfit,
): Diagnostic {
  const unit = units[index];
  const key = unit?.key ?? String(index);
  return {
    code: 'RENDER_OVERFLOW',
    severity: 'error',
    message: `block ${key} of the ${tree.kind} document ${message}`,
    hint,
    path: `${tree.kind}.${key}`,
    ...(span === undefined ? placeOf(unit?.origin) : { span }),
  };
}

/** The planned page with its blocks in place: body in reading order, then what is repeated, furniture last. */
export function makePage(
  { draft, blocks }: PlannedDocument,
  page: PlannedPage,
  furniture: SetBlock | undefined,
): MadePage {
  const { geometry, units, continuations } = draft;
  const place = (block: SetBlock | undefined, top: number) =>
    block === undefined ? [] : [{ node: block.node, left: geometry.margin, top: geometry.bodyTop + top }];
  const continuation = page.continues === undefined ? undefined : units[page.continues]?.continuation;
  const repeated =
    continuation === undefined ? undefined : blocks[units.length + continuations.indexOf(continuation)];
  return {
    body: page.placements.flatMap(({ unit, top }) => place(blocks[unit], top)),
    repeated: [
      ...place(repeated, 0),
      ...(furniture === undefined ? [] : [{ node: furniture.node, left: 0, top: 0 }]),
    ],
  };
}
