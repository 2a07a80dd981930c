import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { AftercarePlan } from './aftercare-plan.ts';
import type { Case } from './case.ts';
import type { DocumentKind } from './codes.ts';
import type { ClinicProfile } from './clinic.ts';
import type { ComparisonTable } from './comparison.ts';
import type { DocumentTree } from './document.ts';
import type { PrintEdition } from './edition.ts';
import type { OpenPoint } from './open-point.ts';
import type { ProvenanceRecord } from './provenance.ts';

/**
 * example: of an invented person. draft: something is missing, and nobody may sign. final: nothing is.
 */
export type PacketState = 'example' | 'draft' | 'final';

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

/** The text of a file and the name by which messages speak of it. */
export interface SourceFile {
  readonly file: string;
  readonly text: string;
}

/** The files of one case, and the day (ISO) that ages and dates count from. */
export interface CaseRequest {
  readonly files: { readonly case: SourceFile; readonly clinic: SourceFile };
  readonly date: string;
  /** Whether an HTML edition is to be made beside the PDF. */
  readonly html?: boolean;
  /** Large print, also where the case does not ask for it. */
  readonly largePrint?: boolean;
}

/** A case that has been read and compared; its packets differ only in language. */
export interface OpenCase extends CaseRequest {
  readonly case: Case;
  readonly clinic: ClinicProfile;
  readonly comparison: ComparisonTable;
  /** What to do when, before and after the treatment; null until it is chosen and its day is set. */
  readonly aftercare: AftercarePlan | null;
}

/** The documents of a packet as one HTML page that has come back whole. */
export interface HtmlEdition {
  /** UTF-8. */
  readonly bytes: Uint8Array;
  readonly sha256: string;
  readonly verification: VerificationReport;
}

/** A packet that was made and has come back whole. */
export interface FinishedPacket {
  /** Of its files: the packet, or the one document in it. */
  readonly name: 'packet' | DocumentKind;
  readonly caseReference: string;
  readonly language: string;
  readonly state: PacketState;
  /** What stands between it and a final one; of an example too. */
  readonly openPoints: readonly OpenPoint[];
  readonly edition: PrintEdition;
  readonly pdf: Uint8Array;
  readonly provenance: ProvenanceRecord;
  readonly verification: VerificationReport;
  /** Where it was asked for. */
  readonly html?: HtmlEdition;
}
