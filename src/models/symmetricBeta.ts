/**
 * The beta distribution with two equal whole parameters n, and by it the F distribution with 2n and 2n degrees of freedom:
 * F = (1 − y)/y at the tail that the beta distribution leaves below y.
 */

/**
 * The front factor of I_x(n, n) at its middle: (1/4)^n / (n B(n, n)), which is half of C(2n, n)/4^n, a product of
 * 1 − 1/(2k).
 */
function middleFactor(n: number): number {
  let product = 0.5;
  for (let k = 1; k <= n; k++) product *= 1 - 1 / (2 * k);
  return product;
}

const tiny = 1e-300;
/** The fraction takes about √n terms; this is far beyond. */
const mostTerms = 100000;

/**
 * I_x(n, n) for x up to 1/2, where the continued fraction of DLMF 8.17.22 converges quickly. Evaluated from the front
 * (Lentz, as modified by Thompson and Barnett, J. Comput. Phys. 64 (1986) 490).
 */
function below(x: number, n: number, factor: number): number {
  let [value, c, d] = [1, 1, 0];
  for (let term = 1; term <= mostTerms; term++) {
    const m = Math.floor(term / 2);
    const coefficient =
      term % 2 === 0
        ? (m * (n - m) * x) / ((n + 2 * m - 1) * (n + 2 * m))
        : (-(n + m) * (2 * n + m) * x) / ((n + 2 * m) * (n + 2 * m + 1));
    d = 1 + coefficient * d;
    if (Math.abs(d) < tiny) d = tiny;
    d = 1 / d;
    c = 1 + coefficient / c;
    if (Math.abs(c) < tiny) c = tiny;
    value *= c * d;
    if (Math.abs(c * d - 1) < 1e-15) break;
  }
  return (factor * Math.pow(4 * x * (1 - x), n)) / value;
}

/** The y below which the beta distribution of n and n leaves a share of at most a half, by bisection. */
export function symmetricBetaPoint(share: number, n: number): number {
  const factor = middleFactor(n);
  let [low, high] = [0, 0.5];
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (below(middle, n, factor) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
