export interface QuadratureNode {
  readonly at: number;
  readonly weight: number;
}

const steps = 100;

/**
 * Nodes and weights of Gauss-Hermite quadrature for the weight exp(-x²): zeros of the Hermite polynomial, found by
 * Newton's method between those of the polynomial one lower (NIST DLMF 3.5.15, 18.16). `count` from 1 to 40.
 */
export function gaussHermite(count: number): readonly QuadratureNode[] {
  return zerosOf(count).map((at) => {
    const { below } = hermite(count, at);
    return { at, weight: 1 / (count * below * below) };
  });
}

/** Zeros of one polynomial part those of the next, so each is searched for between two of the one before. */
function zerosOf(order: number): readonly number[] {
  if (order === 0) return [];
  const inner = zerosOf(order - 1);
  const outermost = Math.sqrt(2 * order + 1);
  const fences = [-outermost, ...inner, outermost];
  return Array.from({ length: order }, (_, index) =>
    zeroBetween(order, fences[index] ?? 0, fences[index + 1] ?? 0),
  );
}

function zeroBetween(order: number, from: number, to: number): number {
  let [low, high] = [from, to];
  const sign = Math.sign(hermite(order, low).value);
  for (let step = 0; step < steps && high - low > 1e-15 * Math.max(1, Math.abs(low)); step += 1) {
    const middle = (low + high) / 2;
    if (Math.sign(hermite(order, middle).value) === sign) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Orthonormal Hermite polynomials of an order and of the one below, by their recurrence (DLMF 18.9). */
function hermite(order: number, x: number): { readonly value: number; readonly below: number } {
  let below = 0;
  let value = Math.PI ** -0.25;
  for (let n = 0; n < order; n += 1) {
    const next = x * Math.sqrt(2 / (n + 1)) * value - Math.sqrt(n / (n + 1)) * below;
    below = value;
    value = next;
  }
  return { value, below };
}
