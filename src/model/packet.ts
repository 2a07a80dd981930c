import type { DocumentTree } from './document.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';

/** The trees of one packet: one language, one PDF. */
export interface PacketTree {
  readonly caseReference: string;
  readonly language: string;
  readonly title: string;
  readonly author: string;
  readonly documents: readonly DocumentTree[];
}

export interface PdfAttachment {
  readonly name: string;
  readonly mediaType: string;
  readonly description: string;
  readonly content: Uint8Array;
}

export interface RenderedPacket {
  readonly pdf: Uint8Array;
  /** Which document each page belongs to, in page order. */
  readonly pages: readonly { readonly document: number; readonly page: number; readonly pages: number }[];
}

export interface VerificationReport {
  readonly passed: boolean;
  readonly findings: readonly Diagnostic[];
  readonly pages: number;
  /** Counts of what was looked for and found. */
  readonly figures: number;
  readonly statements: number;
  readonly cautions: number;
  readonly phones: number;
}
