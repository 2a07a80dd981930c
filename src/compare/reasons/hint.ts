import type { Horizon } from '../../model/comparison.ts';
import type { PairBasis } from '../../model/reason-check.ts';

/** What one contrast, or two figures at one time, say of one option against another. */
export interface Hint {
  /** Whether people with the first option have more of the outcome: of a harm, a benefit, or weight lost. */
  readonly direction: 'more' | 'fewer' | 'unclear';
  readonly asked: Horizon;
  /** True time in months, for telling which is the longest. */
  readonly months: number;
  readonly records: readonly string[];
  readonly stands: Exclude<PairBasis, { readonly basis: 'impossible' }>;
}

/** Contrasts and figures of one study speak of the treatment; two studies may differ by what they counted alone. */
export function isDirect({ stands }: Hint): boolean {
  return stands.basis !== 'two-studies';
}
