import type { DiagnosticCode } from '../../diagnostics/codes.ts';
import type { Diagnostic, RelatedPlace } from '../../diagnostics/diagnostic.ts';
import type { EvidenceSet } from '../evidence-set.ts';
import type { DataPath } from '../parse-data-file.ts';

/** One promise that the data keep. `description` says it as a sentence about correct data. */
export interface EvidenceRule {
  readonly name: string;
  readonly description: string;
  readonly check: (evidence: EvidenceSet) => readonly Diagnostic[];
}

export interface Fault {
  readonly code: DiagnosticCode;
  readonly message: string;
  readonly hint: string;
  /** Where in the entry; the entry itself if left out. */
  readonly at?: DataPath;
  readonly related?: { readonly message: string; readonly entry: object };
}

/** An error about one entry, at its place in the file. */
export function faultIn(evidence: EvidenceSet, entry: object, fault: Fault): Diagnostic {
  const at = fault.at ?? [];
  const span = evidence.place(entry, at);
  return {
    code: fault.code,
    severity: 'error',
    message: fault.message,
    hint: fault.hint,
    path: [nameOf(entry), at.join('.')].filter((part) => part !== '').join(': '),
    ...(span && { span }),
    ...relatedPlaces(evidence, fault),
  };
}

function relatedPlaces(
  evidence: EvidenceSet,
  { related }: Fault,
): { readonly related?: readonly RelatedPlace[] } {
  if (related === undefined) return {};
  const span = evidence.place(related.entry);
  return span ? { related: [{ message: related.message, span }] } : {};
}

function nameOf(entry: object): string {
  const named = entry as {
    readonly id?: string;
    readonly code?: string;
    readonly option?: string;
    readonly record?: string;
  };
  return named.id ?? named.code ?? named.option ?? named.record ?? '';
}
