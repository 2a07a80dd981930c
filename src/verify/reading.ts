import { diagnosticCatalogue } from '../diagnostics/codes.ts';
import type { DiagnosticCode } from '../diagnostics/codes.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { DocumentTree } from '../model/document.ts';
import type { Locale } from '../model/locale.ts';
import type { PacketTree, PdfAttachment } from '../model/packet.ts';
import type { ReadBack } from './read-back.ts';
import type { DocumentReading } from './read-document.ts';

/** Everything the rules may look at. */
export interface Reading {
  readonly packet: PacketTree;
  readonly locale: Locale;
  readonly otherLocales: readonly Locale[];
  /** Files that must be inside. */
  readonly attachments: readonly PdfAttachment[];
  /** For each document the keys of the words it must contain. */
  readonly required: readonly (readonly string[])[];
  /** Pages the renderer says it made. */
  readonly pagesMade: number;
  readonly file: ReadBack;
  readonly documents: readonly DocumentReading[];
}

/** One thing to be true of a finished packet. */
export type Rule = (reading: Reading) => readonly Diagnostic[];

interface Where {
  readonly tree?: DocumentTree;
  /** Page of the file, from 1. */
  readonly page?: number;
  /** Origin of the node, or the name of a part of the page. */
  readonly at?: string;
  /** What more may be said without quoting the page. */
  readonly detail?: string;
}

/** A finding says where and which kind; never what stands on the page, which may be about the patient. */
export function finding(code: DiagnosticCode, where: Where): Diagnostic {
  const { when, todo } = diagnosticCatalogue[code];
  const place = [
    where.tree?.kind,
    where.page === undefined ? undefined : `page ${where.page}`,
    where.at,
    where.detail,
  ].filter((part) => part !== undefined);
  return {
    code,
    severity: 'error',
    message: place.length === 0 ? when : `${when} (${place.join(', ')})`,
    hint: todo,
    ...(where.at === undefined ? {} : { path: where.at }),
  };
}
