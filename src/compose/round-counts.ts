import { InternalError } from '../diagnostics/diagnostic.ts';
import type { Proportion } from '../model/comparison.ts';

/** A share of people as whole people out of a denominator, without turning something into nothing. */
export type RoundedShare =
  /** None of `n` people seen; the true count out of the denominator could be up to `upTo`. */
  | { readonly kind: 'none-seen'; readonly n: number; readonly upTo: number }
  | { readonly kind: 'fewer-than-one' }
  | { readonly kind: 'count'; readonly count: number; readonly rest: number }
  /** Not everybody, but fewer than one of the denominator is left over. */
  | { readonly kind: 'all-but-fewer-than-one'; readonly count: number }
  | { readonly kind: 'everyone'; readonly count: number };

export type Denominator = 100 | 1000;

/** Guards against shares such as 0.57 * 100 = 56.99999999999999, half a unit in the last place away. */
const tiny = 1e-9;

/**
 * Rounds a share to whole people, halves up, so that both sides add up to the denominator.
 * A larger share never gets a smaller count. Throws InternalError for a share outside 0 to 1, and for none seen in an
 * unknown number of people, which says nothing.
 */
export function roundShare(
  share: Pick<Proportion, 'value' | 'zero'>,
  denominator: Denominator,
): RoundedShare {
  if (!(share.value >= 0 && share.value <= 1))
    throw new InternalError('a share of people lies outside 0 to 1');
  if (share.value === 0) {
    if (share.zero === undefined) throw new InternalError('none were seen in an unknown number of people');
    return { kind: 'none-seen', n: share.zero.n, upTo: upperCount(share.zero.upper, denominator) };
  }
  if (share.value === 1) return { kind: 'everyone', count: denominator };
  const people = share.value * denominator;
  if (people < 1 - tiny) return { kind: 'fewer-than-one' };
  if (people > denominator - 1 + tiny) return { kind: 'all-but-fewer-than-one', count: denominator - 1 };
  const count = Math.round(people + tiny);
  return { kind: 'count', count, rest: denominator - count };
}

/** An upper limit, rounded up so that it is never understated; at least one, at most everyone. */
export function upperCount(upper: number, denominator: Denominator): number {
  return Math.min(denominator, Math.max(1, Math.ceil(upper * denominator - tiny)));
}

/** A lower limit, rounded down so that it is never overstated. */
export function lowerCount(lower: number, denominator: Denominator): number {
  return Math.max(0, Math.floor(lower * denominator + tiny));
}

/** An end of a range of other studies: null below one, so that it can be said in words. */
export function rangeCount(share: number, denominator: Denominator): number | 'none' | 'fewer-than-one' {
  if (share === 0) return 'none';
  const people = share * denominator;
  return people < 1 - tiny ? 'fewer-than-one' : Math.round(people + tiny);
}

/**
 * A change on the reader's own scale, from the rounded numbers that are printed: whoever subtracts 206 from 268 must
 * get the 62 that the page says.
 */
export function roundedChange(from: number, to: number): number {
  return Math.round(to) - Math.round(from);
}
