import { whyNeverPrinted } from '../model/aftercare-rules.ts';
import type { WithheldReason } from '../model/aftercare-rules.ts';
import type { AftercareTopic } from '../model/aftercare-codes.ts';
import type { AftercareFact, AftercareSource } from '../model/aftercare.ts';
import { isPrintable } from '../model/evidence.ts';
import type { EvidenceBase } from '../model/evidence.ts';
import { reviewOfFact } from '../model/review.ts';
import type { Review } from '../model/review.ts';
import type { Seen } from '../model/study.ts';

/** What facts on aftercare to list; every key that is given must hold. */
export interface FactFilter {
  /** Also where teams only treat the option alike. */
  readonly option?: string;
  readonly topic?: AftercareTopic;
  readonly seen?: Seen;
}

/** A fact with where it comes from, and why no patient page gives it as the rule of its source, if so. */
export interface FactDetails {
  readonly fact: AftercareFact;
  /** Always there in evidence that was loaded. */
  readonly source: AftercareSource | undefined;
  readonly withheld: readonly WithheldReason[];
  /** When its source is to be read again; undefined for a fact that nobody has read there. */
  readonly review: Review | undefined;
  /** Facts that say otherwise, or are alternatives to it. */
  readonly others: readonly AftercareFact[];
}

/** Facts on aftercare that fit a filter, in file order. */
export function listFacts({ aftercare }: EvidenceBase, filter: FactFilter = {}): readonly AftercareFact[] {
  const { option, topic, seen } = filter;
  return aftercare.filter(
    (fact) =>
      (option === undefined || [...fact.options, ...(fact.extrapolated_to ?? [])].includes(option)) &&
      (topic === undefined || fact.topic === topic) &&
      (seen === undefined || fact.seen === seen),
  );
}

/** One fact with its source; undefined if there is none of that id. */
export function showFact(evidence: EvidenceBase, id: string): FactDetails | undefined {
  const fact = evidence.aftercare.find((candidate) => candidate.id === id);
  if (fact === undefined) return undefined;
  const source = evidence.aftercareSources.get(fact.source);
  return {
    fact,
    source,
    withheld: whyNeverPrinted(fact, source),
    review: isPrintable(fact) ? reviewOfFact(evidence, fact) : undefined,
    others: evidence.aftercare.filter((other) => isOther(fact, other)),
  };
}

function isOther(
  { id, conflict_with: conflicts, one_of: group }: AftercareFact,
  other: AftercareFact,
): boolean {
  if (other.id === id) return false;
  return conflicts?.includes(other.id) === true || (group !== undefined && other.one_of === group);
}
