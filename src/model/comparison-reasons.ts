/** Why figures fit this person, do not, or are not there: words for the page and for the clinician sheet. */

/** Whose figures apply: the operation history a record's people must share. */
export type Indication =
  | 'first-operation'
  | 'after-band'
  | 'after-sleeve'
  | 'after-bypass'
  | 'after-plication'
  | 'after-other'
  | 'band-trouble'
  | 'none';

/** Why a record does not, or only nearly, fit this person. Numbers are in the unit the code says. */
export type MatchReason =
  | { readonly code: 'bmi-outside'; readonly low?: number; readonly high?: number; readonly yours: number }
  | { readonly code: 'bmi-mean-only'; readonly mean: number; readonly yours: number }
  | { readonly code: 'bmi-assumed'; readonly low: number; readonly high: number; readonly yours: number }
  | { readonly code: 'bmi-unknown' }
  | { readonly code: 'age-outside'; readonly low?: number; readonly high?: number; readonly yours: number }
  | { readonly code: 'age-unknown'; readonly yours: number }
  | { readonly code: 'adults-only'; readonly yours: number }
  | { readonly code: 'adolescents-only'; readonly yours: number }
  | { readonly code: 'indication'; readonly theirs: string; readonly yours: Indication }
  | { readonly code: 'indication-mixed' }
  | { readonly code: 'indication-unknown' }
  | { readonly code: 'operations-mixed'; readonly theirs: readonly string[] }
  | { readonly code: 'removed-before' }
  | { readonly code: 'stages'; readonly theirs: 'one' | 'two' }
  | { readonly code: 'several-operations'; readonly count: number }
  | { readonly code: 'already-has'; readonly condition: string }
  | { readonly code: 'diabetes-only' }
  | { readonly code: 'no-diabetes-only' }
  | { readonly code: 'group'; readonly group: string }
  | { readonly code: 'pregnancy' };

/** Why a record was not used although its people may fit. */
export type SetAsideReason =
  | MatchReason
  | { readonly code: 'not-verified'; readonly seen: string }
  | { readonly code: 'same-people'; readonly as: string }
  | { readonly code: 'other-time'; readonly months?: number; readonly days?: number }
  | { readonly code: 'time-unclear' }
  | { readonly code: 'weaker-match' }
  | { readonly code: 'variant'; readonly variant: string }
  | { readonly code: 'other-dose'; readonly mg: readonly number[]; readonly per: 'day' | 'week' }
  | { readonly code: 'dose-unstated' }
  | { readonly code: 'reference-weight'; readonly reference: string }
  | { readonly code: 'not-convertible'; readonly metric: string }
  | { readonly code: 'group-size-unknown' }
  | { readonly code: 'too-few-people'; readonly n: number }
  | { readonly code: 'contradicted'; readonly by: string }
  | { readonly code: 'other-measure'; readonly kind: string };

/** Why a cell has no figure. */
export type MissingReason =
  | { readonly code: 'no-record' }
  /** What was counted is a part of the outcome, or more than it. */
  | { readonly code: 'counted-in-part' }
  /** What was done is not the option as it is done today. */
  | { readonly code: 'done-otherwise' }
  | { readonly code: 'not-verified' }
  | { readonly code: 'other-time'; readonly longestMonths?: number }
  | { readonly code: 'time-unclear' }
  | { readonly code: 'not-convertible' }
  | { readonly code: 'contradicted' }
  | { readonly code: 'too-few-people'; readonly n: number }
  | MatchReason;

/** What the page says of guideline thresholds and of figures that do not hold. */
export type IndicationNote =
  | 'under-35'
  | 'under-30'
  | 'asian-27-5'
  | 'asian-25'
  | 'under-18-5'
  | 'adolescent'
  | 'pregnant'
  | 'low-after-operation';
