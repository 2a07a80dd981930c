import { createHash } from 'node:crypto';
import type { ReactElement } from 'react';
import { failure, success } from '../diagnostics/diagnostic.ts';
import type { Diagnostic, Result } from '../diagnostics/diagnostic.ts';
import type { DocumentTree } from '../model/document.ts';
import type { PacketTree, PdfAttachment, RenderedPacket } from '../model/packet.ts';
import { checkGlyphs } from './check-glyphs.ts';
import { loadFonts, loadTypefaces } from './fonts.ts';
import { checkFit, draftDocument, galleyOf, makePage, planDocument } from './make-up.ts';
import type { DocumentDraft, PlannedDocument, SetDocument } from './make-up.ts';
import { paintPacket } from './paint-packet.ts';
import type { MadeDocument } from './paint-packet.ts';
import type { WrittenFile } from './place-of-words.ts';
import { setGalleys } from './set-galley.ts';
import { typefacesFor } from './shaping/typefaces.ts';
import type { SetBlock } from './set-galley.ts';
import type { Unit } from './unit.ts';

export interface RenderOptions {
  /** Year-month-day; the only date in the file. */
  readonly createdOn: string;
  /** Program and version, for the document information. */
  readonly producer: string;
  readonly attachments: readonly PdfAttachment[];
  /** What the clinic wrote: where a text has no room, or a sign no glyph, its place there is named. */
  readonly written?: readonly WrittenFile[];
  /** Folder of the font files; without it, that of the installed package. */
  readonly fontFolder?: string;
}

/** How the blocks and the furniture of a page look: what the engine does not know. */
export interface Appearance {
  readonly blockUnits: (tree: DocumentTree) => readonly Unit[];
  /** A box of the size of the page, in which header, footer, tab and edges are placed. Pages count from 1. */
  readonly pageFurniture: (tree: DocumentTree, page: number, pages: number) => ReactElement;
}

/**
 * Document trees → one PDF, in four steps: set every document once as a tall column, plan its pages over the whole,
 * set header and footer now that the number of pages is known, paint. Errors: RENDER_GLYPH_MISSING, RENDER_OVERFLOW,
 * FILE_NOT_FOUND for a font file.
 */
export async function renderPacket(
  packet: PacketTree,
  options: RenderOptions,
  appearance: Appearance,
): Promise<Result<RenderedPacket>> {
  const fonts = await openFonts(options.fontFolder, packet.documents);
  if (!fonts.ok) return fonts;
  const glyphs = checkGlyphs(packet.documents, options.written);
  if (glyphs.length > 0) return failure(glyphs);

  const set = await setDocuments(packet.documents, appearance);
  const misfits = set.flatMap((document) => checkFit(document, options.written ?? []));
  if (misfits.length > 0) return failure(misfits);

  const planned = set.map(planDocument);
  const furniture = await setFurniture(planned, appearance);
  const documents = planned.map((document, index) => madeDocument(document, furniture[index] ?? []));
  const pdf = await paintPacket(documents, {
    info: infoOf(packet, options),
    attachments: options.attachments,
  });
  return success({ pdf, pages: planned.flatMap(pageNumbers) });
}

/** Every document as one column. All in one pass. Call loadFonts first. */
export async function setDocuments(
  trees: readonly DocumentTree[],
  { blockUnits }: Pick<Appearance, 'blockUnits'>,
): Promise<readonly SetDocument[]> {
  const drafts = trees.map((tree) => draftDocument(tree, blockUnits(tree)));
  const set = await setGalleys(drafts.map(galleyOf));
  return drafts.map((draft, index) => ({ draft, blocks: set[index] ?? [] }));
}

async function openFonts(
  folder: string | undefined,
  documents: readonly DocumentTree[],
): Promise<Result<void>> {
  try {
    await loadFonts(folder);
    await loadTypefaces(typefacesFor(JSON.stringify(documents)));
    return success(undefined);
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && error.code === 'ENOENT')) throw error;
    const diagnostic: Diagnostic = {
      code: 'FILE_NOT_FOUND',
      severity: 'error',
      message: 'a file of a typeface (weights 400, 600, 700) cannot be read',
      hint:
        folder === undefined
          ? 'Install the packages of plainleaf again.'
          : `Check that the font folder ${folder} is complete.`,
    };
    return failure([diagnostic]);
  }
}

/** The furniture of every page, document by document; all set in one pass. */
async function setFurniture(
  planned: readonly PlannedDocument[],
  { pageFurniture }: Appearance,
): Promise<readonly (readonly SetBlock[])[]> {
  const numbered = planned.map(({ draft, pages }) =>
    pages.map((_, index) => ({ draft, element: pageFurniture(draft.tree, index + 1, pages.length) })),
  );
  const set = await setGalleys(numbered.flat().map(({ draft, element }) => pageGalley(draft, element)));
  const blocks = set.flatMap((galley) => galley.slice(0, 1));
  let first = 0;
  return numbered.map((pages) => blocks.slice(first, (first += pages.length)));
}

function pageGalley({ geometry: { width, height } }: DocumentDraft, element: ReactElement) {
  return { width, height, elements: [element] };
}

function madeDocument(document: PlannedDocument, furniture: readonly SetBlock[]): MadeDocument {
  const { tree, geometry } = document.draft;
  const pages = document.pages.map((page, index) => makePage(document, page, furniture[index]));
  return { title: tree.title, language: tree.language, geometry, pages };
}

function pageNumbers({ pages }: PlannedDocument, document: number): RenderedPacket['pages'] {
  return pages.map((_, index) => ({ document, page: index + 1, pages: pages.length }));
}

function infoOf(packet: PacketTree, { createdOn, producer, attachments }: RenderOptions) {
  const { title, author, language } = packet;
  return {
    title,
    author,
    language,
    producer,
    createdOn,
    identifier: identify(packet, { createdOn, producer, attachments }),
  };
}

/** Digest of everything that goes into the file: two packets never share an identifier, the same packet always does. */
function identify(packet: PacketTree, { createdOn, producer, attachments }: RenderOptions): Uint8Array {
  const hash = createHash('sha256').update(JSON.stringify([packet, createdOn, producer]));
  for (const { name, content } of attachments) hash.update(name).update(content);
  return new Uint8Array(hash.digest().subarray(0, 16));
}
