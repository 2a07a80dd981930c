/** The three kinds of figure that a cell of the comparison may hold. */

/** Lower and upper value as proportions (0 to 1), percent of weight, or kg: as the owner says. */
export interface Bounds {
  readonly low: number;
  readonly high: number;
}

/** Share of people, 0 to 1, in whom an outcome was seen. */
export interface Proportion {
  readonly kind: 'proportion';
  readonly value: number;
  readonly events?: number;
  readonly n?: number;
  /** Uncertainty of the share: as published, or exact/score from events and n. */
  readonly interval?: Bounds & { readonly basis: 'published' | 'exact' | 'score' };
  /** None seen: exact one-sided 97.5 % upper limit (Clopper-Pearson), 0 to 1. */
  readonly zero?: { readonly n: number; readonly upper: number };
}

/** Weight at a time, worked out for this person. All weights in kg. */
export interface WeightAt {
  readonly kind: 'weight';
  readonly averageKg: number;
  /** Change from today in kg; negative is loss. */
  readonly changeKg: number;
  readonly bmi: number;
  /** Percent of today's weight lost; negative is gain. */
  readonly twlPercent: number;
  /** Where two in three people end up; only from a spread of people (SD or IQR). */
  readonly spread?: Bounds & {
    readonly basis: 'sd' | 'iqr' | 'range';
    readonly share: 'two-in-three' | 'half' | 'all';
  };
  /** How sure the average is; only from a CI, credible interval or standard error. */
  readonly uncertainty?: Bounds;
  readonly metric: string;
  /** True when worked out from excess weight or BMI with the person's own height and BMI 25. */
  readonly computed: boolean;
  readonly warning?: 'under-18-5' | 'under-20';
}

/** A length of time or a change in a score, as published. */
export interface Amount {
  readonly kind: 'amount';
  readonly value: number;
  readonly unit: string;
  readonly metric?: string;
  readonly low?: number;
  readonly high?: number;
  readonly meaning?: 'spread' | 'uncertainty' | 'unknown';
}

/** Random-effects mean of four or more studies of other people each; shares 0 to 1. For clinicians. */
export interface Pooled extends Bounds {
  readonly value: number;
  readonly studies: number;
  /** I²: the part of the differences between studies that is not chance, in percent. */
  readonly heterogeneity: number;
  /** Where the share of a further study is expected, 95 %. */
  readonly expected: Bounds;
}

export type CellValue = Proportion | WeightAt | Amount;
