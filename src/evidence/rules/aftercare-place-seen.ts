import type { AftercareFact, AftercareSource } from '../../model/aftercare.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

/** A source of one address says for all its facts where they were read; of several, each fact says which. */
export const aftercarePlaceSeen: EvidenceRule = {
  name: 'aftercare-place-seen',
  description: 'a fact on aftercare that somebody read says on which page, and a recalled one names none',
  check: (evidence) => {
    const sources = new Map(evidence.aftercareSources.map((source) => [source.id, source]));
    return evidence.aftercare.flatMap((fact) => {
      const source = sources.get(fact.source);
      // A source that is not there is told by another rule.
      const message = source === undefined ? undefined : faultOf(fact, source);
      if (message === undefined) return [];
      const hint = 'Name the address where it was read, also in seen_at of its source.';
      return [faultIn(evidence, fact, { code: 'EVIDENCE_NO_LOCATOR', message, hint, at: ['seen'] })];
    });
  },
};

function faultOf({ seen, seen_at: at }: AftercareFact, source: AftercareSource): string | undefined {
  const places = source.seen_at ?? [];
  if (seen === 'memory') return at === undefined ? undefined : 'it is recalled, yet says where it was read';
  if (at !== undefined && !places.includes(at))
    return 'it was read at an address that its source does not name';
  if (at !== undefined || places.length === 1) return undefined;
  return places.length === 0
    ? 'it was read, but neither it nor its source says where'
    : 'its source has several addresses, and it does not say at which it was read';
}
