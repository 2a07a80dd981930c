import PDFDocument from 'pdfkit';
import type { PdfAttachment } from '../model/packet.ts';
import { tunePdfkit } from './tune-pdfkit.ts';
import type { Tuned } from './tune-pdfkit.ts';

/** What is used of pdfkit: its own types leave out half of it. Coordinates run down from the top of the page. */
export interface PdfDocument {
  readonly page: { readonly width: number; readonly height: number };
  readonly outline: PdfOutline;
  _font: object;
  _fontSize: number;
  _id: Uint8Array;
  addPage(options: { readonly size: readonly [number, number]; readonly margin: number }): unknown;
  save(): unknown;
  restore(): unknown;
  translate(x: number, y: number): unknown;
  font(source: object, size: number): unknown;
  struct(
    tag: string,
    options: { readonly alt?: string; readonly lang?: string; readonly title?: string },
  ): PdfStructure;
  addStructure(structure: PdfStructure): unknown;
  markStructureContent(tag: string): PdfContent;
  markContent(tag: 'Artifact', options: { readonly type: 'Layout' | 'Pagination' }): unknown;
  endMarkedContent(): unknown;
  file(content: Uint8Array, options: Readonly<Record<string, unknown>>): unknown;
  appendXML(xml: string): void;
  on(event: 'data', listener: (chunk: Uint8Array) => void): unknown;
  on(event: 'end', listener: () => void): unknown;
  on(event: 'error', listener: (error: Error) => void): unknown;
  end(): unknown;
}

export interface PdfOutline {
  addItem(
    title: string,
    options: { readonly top: number; readonly left: number; readonly expanded?: boolean },
  ): PdfOutline;
}

/** A run of marked content, to be hung under a structure element. */
export type PdfContent = object;

export interface PdfStructure {
  readonly dictionary: { readonly data: Record<string, unknown> };
  add(child: PdfStructure | PdfContent): unknown;
}

export interface PdfInfo {
  readonly title: string;
  readonly author: string;
  /** Program and version. */
  readonly producer: string;
  readonly language: string;
  /** Year-month-day; everything in the file is dated with it. */
  readonly createdOn: string;
  /** 16 bytes that tell this file from every other (ISO 32000-1, 14.4). */
  readonly identifier: Uint8Array;
}

/** pdfkit writes document information into XML without escaping it. As a text of the PDF itself it stays as it is. */
class XmlSafeText extends String {
  override toString(): string {
    const printed = this.valueOf().replace(/\p{Cc}/gu, ' ');
    return printed.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;');
  }
}

/** Conformance to PDF/UA-1 (ISO 14289-1), and the schema that PDF/A asks for before its claim may be written. */
const accessibilityClaim = `
<rdf:Description rdf:about="" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/"><pdfuaid:part>1</pdfuaid:part></rdf:Description>
<rdf:Description rdf:about="" xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/"
  xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#" xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
<pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
<pdfaSchema:schema>PDF/UA identification schema</pdfaSchema:schema>
<pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
<pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
<pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
<pdfaProperty:name>part</pdfaProperty:name>
<pdfaProperty:valueType>Integer</pdfaProperty:valueType>
<pdfaProperty:category>internal</pdfaProperty:category>
<pdfaProperty:description>Part of ISO 14289 that the file conforms to</pdfaProperty:description>
</rdf:li></rdf:Seq></pdfaSchema:property>
</rdf:li></rdf:Bag></pdfaExtension:schemas>
</rdf:Description>`;

function dateOf(createdOn: string): Date {
  return new Date(`${createdOn}T00:00:00Z`);
}

/**
 * An empty tagged document. The subset is PDF/A-3a and not pdfkit's own PDF/UA: with that, pdfkit writes a wrong CIDSet
 * as soon as a face holds composite glyphs (é, ñ, й), and the file fails rule 7.21.4.2-2.
 */
export function openPdf(info: PdfInfo): PdfDocument {
  const safe = (text: string) => new XmlSafeText(text);
  const options = {
    tagged: true,
    subset: 'PDF/A-3a',
    pdfVersion: '1.7',
    lang: info.language,
    displayTitle: true,
    autoFirstPage: false,
    info: {
      Title: safe(info.title),
      Author: safe(info.author),
      Creator: safe(info.producer),
      Producer: safe(info.producer),
      CreationDate: dateOf(info.createdOn),
    },
  };
  const pdf = new PDFDocument(options as unknown as PDFKit.PDFDocumentOptions) as unknown as PdfDocument;
  pdf._id = info.identifier;
  pdf.appendXML(accessibilityClaim);
  tunePdfkit(pdf as unknown as Tuned);
  return pdf;
}

/** Embeds a file, dated like the document so that the same input gives the same bytes. */
export function attachFile(pdf: PdfDocument, attachment: PdfAttachment, createdOn: string): void {
  pdf.file(attachment.content, {
    name: attachment.name,
    type: attachment.mediaType,
    description: attachment.description,
    relationship: 'Data',
    creationDate: dateOf(createdOn),
    modifiedDate: dateOf(createdOn),
  });
}

/** Lets `paint` fill the document, closes it and gives its bytes. */
export async function writePdf(pdf: PdfDocument, paint: () => void): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  const written = new Promise<void>((resolve, reject) => {
    pdf.on('data', (chunk) => chunks.push(chunk));
    pdf.on('end', resolve);
    pdf.on('error', reject);
  });
  // The painter of @react-pdf ends the document after every call; here only the last one may.
  const end = pdf.end.bind(pdf);
  pdf.end = () => pdf;
  paint();
  end();
  await written;
  return new Uint8Array(Buffer.concat(chunks));
}
