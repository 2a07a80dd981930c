import type { Indication, MatchReason, OptionColumn, Person } from '../model/comparison.ts';

/** The person of the case, in the words of the evidence. */
export interface Subject {
  readonly person: Person;
  /** kg/m², to one decimal as clinics write it: entry limits of studies and guidelines are meant so. */
  readonly bmi: number;
  readonly operatedBefore: boolean;
  /** What the person had before. */
  readonly history: Indication;
  /** Weight-loss operations so far. */
  readonly operations: number;
  /** The last operation was undone or taken out. */
  readonly removed: boolean;
  /** A band is in place now. */
  readonly bandInPlace: boolean;
  /** How a band in place is to be exchanged; undefined where that is open or there is none. */
  readonly stages: 'one' | 'two' | undefined;
  /** Conditions, the milder ones that a severe one includes too. */
  readonly conditions: ReadonlySet<string>;
  /** Outcomes that studies count as new trouble only, with the condition of this person that makes them not new. */
  readonly alreadyHas: ReadonlyMap<string, string>;
  /** Past events, by code. */
  readonly pastEvents: ReadonlySet<string>;
}

export type OptionKind = OptionColumn['kind'];

/** The option asked about, as far as matching needs it. */
export interface MatchedOption {
  readonly kind: OptionKind;
  readonly indication: Indication;
}

/** One way in which the people of a record differ from this person. */
export interface Difference {
  readonly reason: MatchReason;
  /** Alone enough to make them other people. */
  readonly excludes: boolean;
}
