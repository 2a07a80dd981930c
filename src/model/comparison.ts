import type {
  Indication,
  IndicationNote,
  MatchReason,
  MissingReason,
  SetAsideReason,
} from './comparison-reasons.ts';
import type { Bounds, CellValue, Pooled, WeightAt } from './comparison-value.ts';
import type { MortalityScore } from './mortality-score.ts';
import type { ReasonCheck } from './reason-check.ts';

export type * from './comparison-reasons.ts';
export type { Amount, Bounds, CellValue, Pooled, Proportion, WeightAt } from './comparison-value.ts';

/** The comparison: language-free, every cell with the records it stands on and those set aside. */
export type OptionCode = string;
export type OutcomeCode = string;

export interface Person {
  /** Whole years on the day the comparison is made. */
  readonly age: number;
  readonly sex: 'female' | 'male' | 'not-stated';
  readonly weightKg: number;
  readonly heightM: number;
  /** kg/m², not rounded. */
  readonly bmi: number;
  readonly threshold: 'standard' | 'asian';
  readonly conditions: readonly string[];
  readonly pregnantNow: boolean;
  readonly asked: 'first-operation' | 'second-operation' | 'after-removal';
}

export interface Horizon {
  readonly days?: number;
  readonly months?: number;
}

export type MatchLevel = 'like-you' | 'near' | 'other-people';

export interface SetAside {
  readonly record: string;
  readonly reason: SetAsideReason;
}

/** A record in use: why it fits and why it leads. */
export interface RecordUse {
  readonly record: string;
  readonly study: string;
  readonly match: Exclude<MatchLevel, 'other-people'>;
  /** The one named difference of a `near` match; empty for `like-you`. */
  readonly reasons: readonly MatchReason[];
  /** Whether the people's BMI was stated, derived from mean ± 2 SD, or assumed from the indication of the day. */
  readonly bmiBasis: 'stated-range' | 'mean-sd' | 'mean-only' | 'assumed' | 'not-needed' | 'unknown';
  /** BMI (kg/m²) and age (years) the study covered, where known; for the line under a strip. */
  readonly covered: {
    readonly bmiLow?: number;
    readonly bmiHigh?: number;
    readonly ageLow?: number;
    readonly ageHigh?: number;
  };
  /** What decided that this record leads: the first criterion on which it beat the next. */
  readonly ledBy:
    | 'only-one'
    | 'match'
    | 'time'
    | 'measure'
    | 'side-by-side'
    | 'design'
    | 'dose'
    | 'size'
    | 'year'
    | 'id'
    | 'clinic-preference';
  readonly n?: number;
  /** How much of a medicine its people took, as `writeDose` says it. */
  readonly dose?: string;
  readonly certainty: string;
  readonly horizon: Horizon;
  readonly timeBasis: string;
}

/** One clinic result beside the literature. */
export interface OwnResult {
  readonly events: number;
  readonly n: number;
  readonly days: number;
  readonly from: string;
  readonly to: string;
  /** The surgeon's id in the clinic profile. */
  readonly surgeon: string;
  /** Under 30 people. */
  readonly tooFew: boolean;
  readonly score: Bounds;
}

interface CellBase {
  /** option/outcome/time, for example `sleeve/leak/30d`. Unique in the table. */
  readonly id: string;
  readonly option: OptionCode;
  readonly outcome: OutcomeCode;
  readonly asked: Horizon;
  readonly setAside: readonly SetAside[];
  readonly own?: OwnResult;
}

export interface KnownCell extends CellBase {
  readonly state: 'known';
  readonly value: CellValue;
  readonly lead: RecordUse;
  /** Lowest and highest of other people's records: a share (0 to 1), this person's weight (kg), or an amount. */
  readonly others?: Bounds & { readonly records: readonly string[] };
  /** Of the lead and the others, where four or more state their counts. */
  readonly pooled?: Pooled;
}

export interface UnknownCell extends CellBase {
  readonly state: 'not-known';
  readonly reason: MissingReason;
}

/** The outcome cannot happen with this kind of option (a leak without an operation). */
export interface ImpossibleCell extends CellBase {
  readonly state: 'not-possible';
}

export type Cell = KnownCell | UnknownCell | ImpossibleCell;

/** One outcome at one time over all options; `cells` in the order of the options. */
export interface OutcomeRow {
  readonly outcome: OutcomeCode;
  readonly asked: Horizon;
  readonly cells: readonly Cell[];
}

export type TopicId = 'first-month' | 'later-years' | 'living-with-it' | 'benefits';

export interface Topic {
  readonly id: TopicId;
  /** One denominator for the whole topic's table; the picture row has its own, stated. */
  readonly denominator: 100 | 1000;
  /** The outcome drawn as a picture, if any option has a figure. */
  readonly picture: (OutcomeRow & { readonly denominator: 100 | 1000 }) | null;
  readonly rows: readonly OutcomeRow[];
}

/**
 * The weight of the people of one study, followed over time. Figures of different studies are never joined to a line:
 * they were other people, so a rise or fall between them would mean nothing.
 */
export interface WeightCourse {
  readonly option: OptionCode;
  readonly study: string;
  readonly points: readonly WeightPoint[];
}

export interface WeightPoint {
  readonly months: number;
  readonly value: WeightAt;
  readonly record: string;
  readonly cell: string;
}

export interface WeightTopic {
  /** Main horizon in months: 60, else the longest with a figure; 60 if none has. */
  readonly mainMonths: number;
  readonly main: OutcomeRow;
  /** All horizons asked (12, 24, 60, 120; 36 where 60 is not known at all), each a row. */
  readonly over: readonly OutcomeRow[];
  /** Per option with two times or more from one study: its people's course, earliest first. */
  readonly courses: readonly WeightCourse[];
}

export interface StandingOf {
  readonly maturity: 'established' | 'newer' | 'under-study' | 'not-recorded';
  /** Ids of the standing entries used. */
  readonly entries: readonly string[];
}

export interface ReversibilityOf {
  readonly possible: 'yes' | 'partly' | 'no' | 'not-known';
  readonly changeTo: readonly OptionCode[];
  readonly weightAfterKnown: boolean;
  /** How the people differ whose weight was followed once they had stopped; absent where they are like this person. */
  readonly weightAfterDiffers?: MatchReason;
  /** Earlier operations of this person that took out something which undoing this option does not bring back. */
  readonly goneBefore: readonly OptionCode[];
}

export interface OptionColumn {
  readonly code: OptionCode;
  /** The option whose records are used; differs for no-operation. */
  readonly figuresFrom: OptionCode;
  readonly kind: 'operation' | 'endoscopic' | 'medicine' | 'programme' | 'none';
  readonly indication: Indication;
  readonly standing: StandingOf;
  readonly reversibility: ReversibilityOf;
  /** Length of hospital stay from evidence, where known. */
  readonly stay: Cell;
}

export interface CautionHit {
  readonly id: string;
  /** The case's options it touches, in the order of the case. */
  readonly options: readonly OptionCode[];
  readonly effect: 'contra-indicated' | 'outside-indication' | 'prefer-other' | 'extra-risk' | 'needs-check';
  readonly strength: 'strong' | 'moderate' | 'weak';
  /** `practice`: only the ask line prints, and the clinician sheet says it needs confirming. */
  readonly basis: 'page' | 'practice';
  /** Options of the case that its statement holds up as better than those it touches, by code. */
  readonly favours?: readonly OptionCode[];
  /** Codes of the case that triggered it, for example `condition:reflux`, `bmi`, `smoking:current`. */
  readonly triggers: readonly string[];
  /** What this clinic said of it. A struck one stays in the table, but never on a patient page. */
  readonly clinic?: 'confirmed' | 'struck';
}

/** Cautions of one case that pull in different directions: one points to an option that others warn of. */
export interface CautionConflict {
  /** The caution that points there. */
  readonly caution: string;
  /** The option it points to, and the options of the case that it points away from, by code. */
  readonly to: OptionCode;
  readonly from: readonly OptionCode[];
  /** The cautions that warn of `to` and not of `from`, gravest first. */
  readonly against: readonly string[];
}

export interface ComparisonTable {
  readonly person: Person;
  readonly evidence: {
    readonly version: string;
    readonly date: string;
    readonly nextReview: string;
    readonly digest: string;
  };
  readonly options: readonly OptionColumn[];
  readonly weight: WeightTopic;
  readonly topics: readonly Topic[];
  /** What only a record of the talk prints: harms of the chosen option, and without treatment, that no topic shows with a figure. */
  readonly furtherHarms: readonly Cell[];
  readonly cautions: readonly CautionHit[];
  readonly conflicts: readonly CautionConflict[];
  /** For clinicians only; null where it was not made for this person and these options. */
  readonly mortalityScore: MortalityScore | null;
  /** Whether the surgeon's coded reasons are borne out, in the order of the case. */
  readonly reasons: readonly ReasonCheck[];
  readonly notes: readonly IndicationNote[];
  /** Every record id printed on a patient page, sorted. */
  readonly recordsUsed: readonly string[];
}
