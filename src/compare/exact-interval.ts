import type { Bounds } from '../model/comparison.ts';

/** What is left out on each side of a two-sided 95 % interval. */
const tail = 0.025;

/**
 * Exact (Clopper-Pearson) 95 % interval of a share, 0 to 1: the shares at which so many or more, or so few or
 * fewer, would be seen in 2.5 % of samples. `events` from 0 to `n`, `n` at least 1.
 */
export function exactInterval(events: number, n: number): Bounds {
  return {
    low: events === 0 ? 0 : solve((share) => cumulativeBeta(share, events, n - events + 1), tail),
    high: events === n ? 1 : solve((share) => cumulativeBeta(share, events + 1, n - events), 1 - tail),
  };
}

/** Upper 97.5 % limit of a share, 0 to 1, when none of `n` people had the event. */
export function upperLimitOfNone(n: number): number {
  return -Math.expm1(Math.log(tail) / n);
}

/** Share at which a rising function reaches a level, by halving. */
function solve(rising: (share: number) => number, level: number): number {
  let [low, high] = [0, 1];
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2;
    if (rising(middle) < level) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Regularised incomplete beta function (NIST DLMF 8.17) for 0 < x < 1, by its continued fraction where that converges fast. */
function cumulativeBeta(x: number, a: number, b: number): number {
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x));
  return x < (a + 1) / (a + b + 2)
    ? (front * betaFraction(x, a, b)) / a
    : 1 - (front * betaFraction(1 - x, b, a)) / b;
}

/** Continued fraction of the incomplete beta function (DLMF 8.17.22), by Lentz's method. */
function betaFraction(x: number, a: number, b: number): number {
  let c = 1;
  let d = 1 / apartFromZero(1 - ((a + b) * x) / (a + 1));
  let value = d;
  // The steps needed grow with the square root of the counts; registries hold up to a million people.
  for (let m = 1; m <= 10_000; m += 1) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / apartFromZero(1 + even * d);
    c = apartFromZero(1 + even / c);
    value *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / apartFromZero(1 + odd * d);
    c = apartFromZero(1 + odd / c);
    value *= d * c;
    if (Math.abs(d * c - 1) < 1e-15) break;
  }
  return value;
}

function apartFromZero(value: number): number {
  return Math.abs(value) < 1e-300 ? 1e-300 : value;
}

/** Logarithm of the gamma function for x ≥ 1: Stirling's series (DLMF 5.11.1) from 10, the recurrence below. */
function logGamma(x: number): number {
  if (x < 10) return logGamma(x + 1) - Math.log(x);
  const square = x * x;
  const series = (1 / 12 - (1 / 360 - (1 / 1260 - 1 / (1680 * square)) / square) / square) / x;
  return (x - 0.5) * Math.log(x) - x + 0.5 * Math.log(2 * Math.PI) + series;
}
