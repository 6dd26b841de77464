/**
 * Logarithm and exponential that give the same digits in every engine. The language leaves the last digits of Math.log and
 * Math.exp to the engine; these take additions, multiplications and divisions alone, which IEEE 754 rounds alike everywhere.
 */

/** ln 2, to the nearest double. */
const ln2 = 0.6931471805599453;
const terms = 13;

/**
 * Natural logarithm of a number above 0: x = m·2ᵉ with √½ ≤ m < √2, and
 * ln m = 2·(s + s³/3 + s⁵/5 + …) with s = (m − 1)/(m + 1), whose square is at most 0.0295.
 */
export function naturalLog(x: number): number {
  let m = x;
  let e = 0;
  for (; m < Math.SQRT1_2; e--) m *= 2;
  for (; m >= Math.SQRT2; e++) m /= 2;
  const s = (m - 1) / (m + 1);
  const square = s * s;
  let sum = 0;
  for (let term = terms; term > 0; term--) sum = sum * square + 1 / (2 * term - 1);
  return e * ln2 + 2 * s * sum;
}

/** Exponential of a number from −700 to 700: x = n·ln 2 + r, the series of eʳ, and n doublings or halvings. */
export function exponential(x: number): number {
  const n = Math.round(x / ln2);
  const r = x - n * ln2;
  let sum = 1;
  for (let term = 18; term > 0; term--) sum = 1 + (sum * r) / term;
  for (let left = n; left > 0; left--) sum *= 2;
  for (let left = n; left < 0; left++) sum /= 2;
  return sum;
}
