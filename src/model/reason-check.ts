import type { CellValue } from './comparison-value.ts';
import type { matterCodes, reasonCodes } from './codes.ts';

export type ReasonCode = (typeof reasonCodes)[number];

type MatterCode = (typeof matterCodes)[number];

/** Whether the case and the evidence bear a reason out. */
export type ReasonVerdict = 'supported' | 'contradicted' | 'cannot-tell';

/** A ratio or a difference as it was published; `of` is the option that stands first. */
export interface PublishedContrast {
  readonly of: string;
  readonly measure: string;
  readonly estimate: number;
  readonly low: number;
  readonly high: number;
  readonly unit?: string;
}

/** What a comparison of two options stands on: a published contrast, two figures, or that one of them rules it out. */
export type PairBasis =
  | { readonly basis: 'contrast'; readonly contrast: PublishedContrast }
  | { readonly basis: 'one-study' | 'two-studies'; readonly mine: CellValue; readonly theirs: CellValue }
  | { readonly basis: 'impossible' };

/** The option of a reason against one other, where anything is known of both. */
export type KnownPair = {
  readonly other: string;
  /** `yes`: as the reason claims; `no`: the other way round; `unclear`: may be chance, or the studies disagree. */
  readonly result: 'yes' | 'no' | 'unclear';
  readonly outcome: string;
  readonly asked: { readonly days?: number; readonly months?: number };
  readonly records: readonly string[];
} & PairBasis;

/** The option of a reason against one other. */
export type PairFinding = KnownPair | { readonly other: string; readonly result: 'unknown' };

export type Means = 'supports' | 'contradicts' | 'nothing';

/** What one look at the case or the evidence found, and what that means for the reason. */
export type ReasonFinding = { readonly means: Means } & (
  | { readonly find: 'not-in-case'; readonly needs: 'condition' | 'medicine' | 'earlier-operation' | 'wish' }
  | { readonly find: 'in-case' }
  | { readonly find: 'compare'; readonly has: 'fewer' | 'more'; readonly pairs: readonly PairFinding[] }
  | {
      /** Neither a figure of its own nor a comparison: nothing is known of the outcome. */
      readonly find: 'recover';
      readonly outcome: string;
      readonly asked: { readonly days?: number; readonly months?: number };
      /** The option's own figure; null where it is told by the comparison alone. */
      readonly own: { readonly record: string; readonly value: CellValue } | null;
      /** Against doing nothing more; null where nothing is known of that. */
      readonly untreated: KnownPair | null;
    }
  | { readonly find: 'undo'; readonly possible: 'yes' | 'partly' | 'no' | 'not-known' }
  | {
      readonly find: 'under-study';
      readonly maturity: 'established' | 'newer' | 'under-study' | 'not-recorded';
      readonly entries: readonly string[];
    }
  | {
      readonly find: 'cautions';
      /** `practice`: only a caution that stands on usual practice warns; `silent`: none speaks of it. */
      readonly said: 'warned' | 'favoured' | 'spared' | 'practice' | 'silent';
      readonly cautions: readonly string[];
    }
  | {
      readonly find: 'fewer-cautions';
      readonly mine: readonly string[];
      /** Other options of the same sort, with the cautions that warn of them and not of this one. */
      readonly others: readonly { readonly option: string; readonly cautions: readonly string[] }[];
    }
  | {
      readonly find: 'wishes';
      readonly met: readonly MatterCode[];
      readonly unmet: readonly MatterCode[];
      readonly open: readonly MatterCode[];
      /** Wishes in the person's own words, which nothing can check. */
      readonly ownWords: number;
    }
);

/**
 * A coded reason of the surgeon, checked against the case and the evidence. What was found is for clinicians; a patient
 * page says in one sentence that a reason is not borne out.
 */
export interface ReasonCheck {
  /** stance/option/code, for example `for/bypass/reflux-better`. Unique in the table. */
  readonly id: string;
  readonly stance: 'for' | 'against';
  readonly option: string;
  readonly code: ReasonCode;
  readonly verdict: ReasonVerdict;
  readonly findings: readonly ReasonFinding[];
  /** Ids of all records looked at, sorted. */
  readonly records: readonly string[];
}

export type FindingOf<K extends ReasonFinding['find']> = Extract<ReasonFinding, { readonly find: K }>;
