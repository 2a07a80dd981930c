import type { Diagnostic, SourceSpan } from '../diagnostics/diagnostic.ts';
import type { EvidenceSet } from './evidence-set.ts';
import { evidenceRules } from './rules/index.ts';

/** Runs every rule over the data; findings come in order of file and line. */
export function lintEvidence(evidence: EvidenceSet): readonly Diagnostic[] {
  return evidenceRules.flatMap((rule) => rule.check(evidence)).sort(byPlace);
}

export function byPlace(a: Diagnostic, b: Diagnostic): number {
  const first = placeOf(a);
  const second = placeOf(b);
  if (first.file !== second.file) return first.file < second.file ? -1 : 1;
  return first.line - second.line || first.column - second.column;
}

/** What has no place comes first. */
function placeOf({ span }: Diagnostic): SourceSpan {
  return span ?? { file: '', line: 0, column: 0 };
}
