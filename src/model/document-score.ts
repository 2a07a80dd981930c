import type { DocumentKind } from './codes.ts';
import type { Criterion, CriterionSet } from './criterion.ts';

/** Where in a packet a criterion is met or lost. */
export interface ScorePlace {
  readonly document: DocumentKind;
  /** Title of the document, as it is printed. */
  readonly title: string;
  /** Template file and line of the node. */
  readonly origin: string;
  /** The question or heading it stands under; absent at the top of a document. */
  readonly heading?: string;
}

/**
 * met: the pages show it. not-met: they could and do not. clinic, organisation, study: they cannot without it. person:
 * only a reader can judge it, so it is not counted as met.
 */
export type CriterionOutcome =
  'met' | 'not-met' | 'clinic' | 'organisation' | 'study' | 'person' | 'not-applicable';

export interface ScoredCriterion {
  readonly criterion: Criterion;
  readonly outcome: CriterionOutcome;
  /** Where it is met; of one that is not met, where it is lost, if that is one place. */
  readonly places: readonly ScorePlace[];
}

/** A point for each criterion that is met, out of those that apply. */
export interface SetScore {
  readonly met: number;
  readonly applicable: number;
  /** Of those that apply, how many only a reader can judge. */
  readonly person: number;
  /** 100 × met / applicable; null where none applies. */
  readonly percent: number | null;
}

/** Percent that clear communication must reach, by the rule of its standard. */
export const clearCommunicationPass = 90;

/** How the patient documents of a packet stand against published criteria. */
export interface DocumentScore {
  readonly items: readonly ScoredCriterion[];
  readonly sets: Readonly<Record<CriterionSet, SetScore>>;
}
