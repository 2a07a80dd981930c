import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { EvidenceSet } from './evidence-set.ts';
import { evidenceRules } from './rules/index.ts';

/** Runs every rule over the data; findings come in order of file and line. */
export function lintEvidence(evidence: EvidenceSet): readonly Diagnostic[] {
  return evidenceRules.flatMap((rule) => rule.check(evidence)).sort(byPlace);
}

export function byPlace(a: Diagnostic, b: Diagnostic): number {
  const fileA = a.span?.file ?? '';
  const fileB = b.span?.file ?? '';
  if (fileA !== fileB) return fileA < fileB ? -1 : 1;
  return (a.span?.line ?? 0) - (b.span?.line ?? 0) || (a.span?.column ?? 0) - (b.span?.column ?? 0);
}
