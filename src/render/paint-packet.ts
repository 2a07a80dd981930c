import type { PdfAttachment } from '../model/packet.ts';
import type { PageGeometry } from './geometry.ts';
import { textOf } from './layout-node.ts';
import type { SetNode } from './layout-node.ts';
import { openPainter } from './paint-node.ts';
import type { Listener } from './paint-node.ts';
import { attachFile, openPdf, writePdf } from './pdf-document.ts';
import type { PdfDocument, PdfInfo, PdfOutline, PdfStructure } from './pdf-document.ts';
import { openPart, openRoot } from './tag-structure.ts';

/** A set block and its place on the page: points from the left and top edge. */
export interface PlacedBlock {
  readonly node: SetNode;
  readonly left: number;
  readonly top: number;
}

export interface MadePage {
  /** Reading order. */
  readonly body: readonly PlacedBlock[];
  /** Continuation heads, then furniture: painted after the body and passed over by screen readers. */
  readonly repeated: readonly PlacedBlock[];
}

export interface MadeDocument {
  readonly title: string;
  readonly language: string;
  readonly geometry: PageGeometry;
  readonly pages: readonly MadePage[];
}

export interface PaintOptions {
  readonly info: PdfInfo;
  readonly attachments: readonly PdfAttachment[];
}

/**
 * Pages → the bytes of one tagged, archivable PDF (PDF/UA-1 and PDF/A-3a), with a bookmark for every document and every
 * topic. The same pages and options give the same bytes.
 */
export async function paintPacket(
  documents: readonly MadeDocument[],
  { info, attachments }: PaintOptions,
): Promise<Uint8Array> {
  const pdf = openPdf(info);
  return writePdf(pdf, () => {
    const root = openRoot(pdf, info.language);
    for (const attachment of attachments) attachFile(pdf, attachment, info.createdOn);
    for (const document of documents) paintDocument(pdf, root, document);
  });
}

function paintDocument(pdf: PdfDocument, root: PdfStructure, document: MadeDocument): void {
  const { geometry } = document;
  const tree = openPart(pdf, root, document);
  const outline = new TopicOutline(pdf, document.title);
  for (const page of document.pages) {
    pdf.addPage({ size: [geometry.width, geometry.height], margin: 0 });
    const painter = openPainter(pdf, tree, outline.listen);
    outline.startPage();
    for (const block of page.body) painter.content(block.node, block);
    for (const block of page.repeated) painter.artifact(block.node, block);
  }
}

/** Bookmarks of one document: its title, and under it the topics (headings of the second level). */
class TopicOutline {
  private readonly pdf: PdfDocument;
  private readonly title: string;
  private head: PdfOutline | undefined;

  constructor(pdf: PdfDocument, title: string) {
    this.pdf = pdf;
    this.title = title;
  }

  startPage(): void {
    this.head ??= this.pdf.outline.addItem(this.title, { ...this.target(0), expanded: true });
  }

  readonly listen: Listener = ({ tag }, node, top) => {
    if (tag === 'H2') this.head?.addItem(textOf(node).trim(), this.target(top));
  };

  /** pdfkit counts the left edge of a target from the right. */
  private target(top: number): { top: number; left: number } {
    return { top, left: this.pdf.page.width };
  }
}
