/** A straight line through points, y = intercept + slope·x. */
export interface StraightLine {
  readonly slope: number;
  readonly intercept: number;
  /** Standard error of the slope; undefined for two points, which leave no freedom */
  readonly slopeError: number | undefined;
  /** Coefficient of determination; undefined when every y is the same */
  readonly rSquared: number | undefined;
  readonly points: number;
}

/**
 * Ordinary least squares on centred data:
 *
 *   b = Sxy/Sxx,  a = ȳ − b·x̄,  s² = Σ(y − a − bx)²/(n − 2),  se(b) = √(s²/Sxx),  r² = 1 − SSE/Syy
 *
 * Textbook formulas (NIST/SEMATECH e-Handbook of Statistical Methods, 4.1.4.1); centring keeps serial dates from
 * swamping the sums.
 *
 * @returns undefined with fewer than two points or when every x is the same
 */
export function fitStraightLine(xs: readonly number[], ys: readonly number[]): StraightLine | undefined {
  const points = xs.length;
  if (points < 2) return undefined;
  const meanX = xs.reduce((sum, x) => sum + x, 0) / points;
  const meanY = ys.reduce((sum, y) => sum + y, 0) / points;
  let sxx = 0;
  let sxy = 0;
  let syy = 0;
  for (let i = 0; i < points; i++) {
    const dx = xs[i]! - meanX;
    const dy = ys[i]! - meanY;
    sxx += dx * dx;
    sxy += dx * dy;
    syy += dy * dy;
  }
  // Equal dates leave only rounding of the mean behind.
  const largest = xs.reduce((most, x) => Math.max(most, Math.abs(x)), 0);
  if (sxx <= points * (largest * Number.EPSILON) ** 2) return undefined;
  const slope = sxy / sxx;
  let sse = 0;
  for (let i = 0; i < points; i++) {
    const miss = ys[i]! - meanY - slope * (xs[i]! - meanX);
    sse += miss * miss;
  }
  return {
    slope,
    intercept: meanY - slope * meanX,
    slopeError: points > 2 ? Math.sqrt(sse / (points - 2) / sxx) : undefined,
    rSquared: syy > 0 ? Math.max(0, 1 - sse / syy) : undefined,
    points,
  };
}
