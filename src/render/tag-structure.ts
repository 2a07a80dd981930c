import { InternalError } from '../diagnostics/diagnostic.ts';
import type { PdfDocument, PdfStructure } from './pdf-document.ts';
import type { Semantics } from './unit.ts';

type Tag = Semantics['tag'];

/** Elements that may hold text directly. */
const contentTags: ReadonlySet<Tag> = new Set<Tag>([
  'H1',
  'H2',
  'H3',
  'P',
  'Lbl',
  'LBody',
  'TH',
  'TD',
  'Caption',
  'Span',
  'BlockQuote',
]);

export function holdsText(tag: Tag): boolean {
  return contentTags.has(tag);
}

/** One open structure element. */
export interface Structure {
  readonly tag: Tag;
  readonly element: PdfStructure;
}

/** The structure tree of one document of the packet; elements hang in the order they are opened in: reading order. */
export interface StructureTree {
  /** The element of a node, opened now or, for an id seen before, earlier. */
  open(semantics: Semantics, owner: Structure | undefined): Structure;
}

/** The element at the head of the whole file. */
export function openRoot(pdf: PdfDocument, language: string): PdfStructure {
  const root = pdf.struct('Document', { lang: language });
  pdf.addStructure(root);
  return root;
}

/** One part of the file for one document of the packet. Ids of Semantics count within it. */
export function openPart(
  pdf: PdfDocument,
  root: PdfStructure,
  { title, language }: { title: string; language: string },
): StructureTree {
  const part = pdf.struct('Part', { title, lang: language });
  root.add(part);
  const known = new Map<string, Structure>();
  return {
    open(semantics, owner) {
      const earlier = semantics.id === undefined ? undefined : known.get(semantics.id);
      if (earlier !== undefined) return earlier;
      const opened = { tag: semantics.tag, element: newElement(pdf, semantics) };
      parentOf(semantics, known, owner?.element ?? part).add(opened.element);
      if (semantics.id !== undefined) known.set(semantics.id, opened);
      return opened;
    },
  };
}

function parentOf(
  { tag, parent }: Semantics,
  known: ReadonlyMap<string, Structure>,
  fallback: PdfStructure,
): PdfStructure {
  if (parent === undefined) return fallback;
  const structure = known.get(parent);
  if (structure === undefined)
    throw new InternalError(`a ${tag} asks for the parent ${parent}, which no earlier unit opened`);
  return structure.element;
}

function newElement(pdf: PdfDocument, semantics: Semantics): PdfStructure {
  const { tag, alt, language } = semantics;
  if (tag === 'Figure' && (alt === undefined || alt === ''))
    throw new InternalError('a figure has no text alternative');
  const element = pdf.struct(tag, {
    ...(alt === undefined ? {} : { alt }),
    ...(language === undefined ? {} : { lang: language }),
  });
  const attributes = attributesOf(semantics);
  if (attributes !== undefined) element.dictionary.data['A'] = attributes;
  return element;
}

/** Standard structure attributes, ISO 32000-1, 14.8.5. */
function attributesOf({
  scope,
  columnSpan,
  numbering,
}: Semantics): Readonly<Record<string, unknown>> | undefined {
  if (numbering !== undefined) return { O: 'List', ListNumbering: numbering };
  const span = columnSpan !== undefined && columnSpan > 1 ? { ColSpan: columnSpan } : {};
  if (scope === undefined && columnSpan === undefined) return undefined;
  return { O: 'Table', ...(scope === undefined ? {} : { Scope: scope }), ...span };
}

/** Where a figure stands: left, bottom, right, top in points from the page's lower start corner. */
export function placeFigure({ element }: Structure, bounds: readonly [number, number, number, number]): void {
  element.dictionary.data['A'] = { O: 'Layout', Placement: 'Block', BBox: [...bounds] };
}
