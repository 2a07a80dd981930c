import { gaussHermite } from './gauss-hermite.ts';

export interface CountedShare {
  readonly events: number;
  readonly n: number;
}

export interface LogitNormal {
  /** Mean of the studies' shares on the logit scale. */
  readonly mean: number;
  /** Standard deviation of the studies' shares on that scale; 0 where they differ no more than chance makes. */
  readonly between: number;
  /** Standard error of the mean. */
  readonly error: number;
}

interface Point {
  readonly mean: number;
  readonly between: number;
}

const nodes = gaussHermite(25);
/** Largest difference between studies that is searched, on the logit scale: shares from 0.1 to 99.9 in 100. */
const mostBetween = 6;

/**
 * Binomial-normal model of shares: each study has its own share, normally distributed on the logit scale; the counts
 * are binomial as they are, so no correction is needed for studies that saw none. Maximum likelihood, each study's
 * part of it by adaptive Gauss-Hermite quadrature (Stijnen, Hamza, Ozdemir, Stat Med 2010;29:3046-3067). At least one
 * study must have events and one must have people without.
 */
export function fitLogitNormal(counts: readonly CountedShare[]): LogitNormal {
  const between = highest((trial) => logLikelihood(counts, bestAt(counts, trial)), mostBetween);
  // The search ends beside the edge, never on it.
  const apart = between < 1e-4 ? 0 : between;
  const best = bestAt(counts, apart);
  return { ...best, error: errorAt(counts, best) };
}

/** The mean that fits best at a given difference between studies, by Newton's method on a concave function. */
function bestAt(counts: readonly CountedShare[], between: number): Point {
  const events = counts.reduce((total, study) => total + study.events, 0);
  const people = counts.reduce((total, study) => total + study.n, 0);
  let mean = Math.log(events / (people - events));
  if (between === 0) return { mean, between };
  for (let step = 0; step < 100; step += 1) {
    const { slope, bend } = derivatives(
      (trial) => logLikelihood(counts, { mean: trial, between }),
      mean,
      1e-4,
    );
    const change = bend < 0 ? Math.max(-1, Math.min(1, -slope / bend)) : Math.sign(slope) * 0.1;
    mean += change;
    if (Math.abs(change) < 1e-9) break;
  }
  return { mean, between };
}

function logLikelihood(counts: readonly CountedShare[], point: Point): number {
  return counts.reduce((total, study) => total + studyLogLikelihood(study, point), 0);
}

/** Up to the binomial coefficient, which no parameter changes. */
function studyLogLikelihood({ events, n }: CountedShare, { mean, between }: Point): number {
  const at = (u: number): number => {
    const logit = mean + between * u;
    return events * logit - n * logOnePlusExp(logit) - (u * u) / 2;
  };
  if (between === 0) return at(0);
  const { peak, width } = peakOf({ events, n }, { mean, between });
  const height = at(peak);
  const area = nodes.reduce(
    (sum, node) =>
      sum + node.weight * Math.exp(node.at * node.at + at(peak + Math.SQRT2 * width * node.at) - height),
    0,
  );
  return height + Math.log((width * area) / Math.sqrt(Math.PI));
}

/** Where a study's own deviate is likeliest, and how narrow that peak is, both in standard deviations. */
function peakOf({ events, n }: CountedShare, { mean, between }: Point): { peak: number; width: number } {
  let peak = 0;
  for (let step = 0; step < 200; step += 1) {
    const share = shareOf(mean + between * peak);
    const slope = between * (events - n * share) - peak;
    const change = slope / (between * between * n * share * (1 - share) + 1);
    peak += Math.max(-1, Math.min(1, change));
    if (Math.abs(change) < 1e-12) break;
  }
  const share = shareOf(mean + between * peak);
  return { peak, width: 1 / Math.sqrt(between * between * n * share * (1 - share) + 1) };
}

/** From the curvature of the likelihood in both parameters; in the mean alone where studies do not differ. */
function errorAt(counts: readonly CountedShare[], { mean, between }: Point): number {
  const step = 1e-3;
  const at = (a: number, b: number): number =>
    logLikelihood(counts, { mean: mean + a * step, between: between + b * step });
  const ofMean = -(at(1, 0) - 2 * at(0, 0) + at(-1, 0)) / (step * step);
  if (between === 0) return 1 / Math.sqrt(ofMean);
  const ofBetween = -(at(0, 1) - 2 * at(0, 0) + at(0, -1)) / (step * step);
  const ofBoth = -(at(1, 1) - at(1, -1) - at(-1, 1) + at(-1, -1)) / (4 * step * step);
  return Math.sqrt(ofBetween / (ofMean * ofBetween - ofBoth * ofBoth));
}

function derivatives(
  value: (at: number) => number,
  at: number,
  step: number,
): { readonly slope: number; readonly bend: number } {
  const [low, middle, high] = [value(at - step), value(at), value(at + step)];
  return { slope: (high - low) / (2 * step), bend: (high - 2 * middle + low) / (step * step) };
}

/** Where a function with one peak between 0 and a limit is highest, by golden sections. */
function highest(value: (at: number) => number, limit: number): number {
  const ratio = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [0, limit];
  let [left, right] = [high - ratio * limit, ratio * limit];
  let [ofLeft, ofRight] = [value(left), value(right)];
  while (high - low > 1e-6) {
    if (ofLeft > ofRight) {
      [high, right, ofRight] = [right, left, ofLeft];
      left = high - ratio * (high - low);
      ofLeft = value(left);
    } else {
      [low, left, ofLeft] = [left, right, ofRight];
      right = low + ratio * (high - low);
      ofRight = value(right);
    }
  }
  return (low + high) / 2;
}

function logOnePlusExp(x: number): number {
  return x > 0 ? x + Math.log1p(Math.exp(-x)) : Math.log1p(Math.exp(x));
}

function shareOf(logit: number): number {
  return 1 / (1 + Math.exp(-logit));
}
