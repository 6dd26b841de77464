/**
 * Exact distributions of counts, summed term by term outwards from the likeliest count: each term follows from its
 * neighbour by a ratio, all are positive, and dividing by their sum makes up for the unknown first term. Accurate to some
 * 1e-12 at any mean, where series for the incomplete gamma function lose digits at means of many thousands.
 */
export interface CountDistribution {
  /** The count that `chances[0]` belongs to; counts below it are rarer than 1e-25 of the likeliest. */
  readonly first: number;
  readonly chances: readonly number[];
}

/** Largest mean or number of patients taken: 100 times beyond any plan, and still answered at once. */
export const mostMean = 1e6;

/** Terms below this part of the likeliest one are left out. */
const negligible = 1e-25;

/** @param ratio chance of k + 1 over the chance of k */
function outwardsFrom(mode: number, most: number, ratio: (k: number) => number): CountDistribution {
  const above: number[] = [];
  let term = 1;
  for (let k = mode; k < most; k++) {
    term *= ratio(k);
    if (term < negligible) break;
    above.push(term);
  }
  const below: number[] = [];
  term = 1;
  for (let k = mode - 1; k >= 0; k--) {
    term /= ratio(k);
    if (term < negligible) break;
    below.push(term);
  }
  const terms = [...below.reverse(), 1, ...above];
  const total = terms.reduce((sum, each) => sum + each, 0);
  return { first: mode - below.length, chances: terms.map((each) => each / total) };
}

/** Poisson distribution of a mean: P(k + 1)/P(k) = mean/(k + 1). */
export const poisson = (mean: number): CountDistribution =>
  outwardsFrom(Math.floor(mean), Infinity, (k) => mean / (k + 1));

/** Binomial distribution of n things, each with chance p: P(k + 1)/P(k) = (n − k)/(k + 1) · p/(1 − p). */
export function binomial(n: number, p: number): CountDistribution {
  if (p === 0 || n === 0) return { first: 0, chances: [1] };
  if (p === 1) return { first: n, chances: [1] };
  const odds = p / (1 - p);
  return outwardsFrom(Math.min(n, Math.floor((n + 1) * p)), n, (k) => ((n - k) / (k + 1)) * odds);
}

/**
 * Chance that a level leaves for more than enough. The little added covers the rounding of 1 − level and of the sums, so
 * that a level which is met exactly doesn't ask for one more.
 */
export const leftOver = (level: number): number => (1 - level) * (1 + 1e-12) + 2e-16;

/** The least count that is enough with a chance of at least `level`, above 0 and under 1. */
export function countAtLevel({ first, chances }: CountDistribution, level: number): number {
  const mayExceed = leftOver(level);
  let index = chances.length - 1;
  let above = 0;
  while (index > 0 && above + chances[index]! <= mayExceed) above += chances[index--]!;
  return first + index;
}

/** Chance of more than `places`; under some 1e-25 it is 0. */
export function chanceOver({ first, chances }: CountDistribution, places: number): number {
  let above = 0;
  for (let index = chances.length - 1; index >= 0 && first + index > places; index--) above += chances[index]!;
  return Math.min(1, above);
}

/**
 * Share of arrivals turned away when all places are taken (Erlang's loss formula), by the recursion
 * B(0) = 1, B(k) = a·B(k − 1)/(k + a·B(k − 1)), which never subtracts. Erlang 1917; holds for any distribution of stay.
 *
 * @param offered Mean number that would be there with room for all
 */
export function turnedAwayShare(offered: number, places: number): number {
  let lost = 1;
  for (let k = 1; k <= places && lost > 0; k++) lost = (offered * lost) / (k + offered * lost);
  return lost;
}
