// The standard normal distribution.

/** A polynomial in x, its coefficients from the highest power down. */
const polynomial = (x: number, coefficients: readonly number[]): number =>
  coefficients.reduce((sum, coefficient) => sum * x + coefficient, 0);

/* eslint-disable no-loss-of-precision -- coefficients stand as they were published */

const aroundMean = {
  above: [
    0.065682337918207449113, 2.2352520354606839287, 161.02823106855587881, 1067.6894854603709582, 18154.981253343561249,
  ],
  below: [1, 47.20258190468824187, 976.09855173777669322, 10260.932208618978205, 45507.789335026729956],
};
const nearTail = {
  above: [
    1.0765576773720192317e-8, 0.39894151208813466764, 8.8831497943883759412, 93.506656132177855979,
    597.27027639480026226, 2494.5375852903726711, 6848.1904505362823326, 11602.651437647350124, 9842.7148383839780218,
  ],
  below: [
    1, 22.266688044328115691, 235.38790178262499861, 1519.377599407554805, 6485.558298266760755, 18615.571640885098091,
    34900.952721145977266, 38912.003286093271411, 19685.429676859990727,
  ],
};
const farTail = {
  above: [
    0.02307344176494017303, 0.21589853405795699, 0.1274011611602473639, 0.022235277870649807, 0.001421619193227893466,
    2.9112874951168792e-5,
  ],
  below: [
    1, 1.28426009614491121, 0.468238212480865118, 0.0659881378689285515, 0.00378239633202758244, 7.29751555083966205e-5,
  ],
};

const middleQuantile = {
  above: [
    2509.0809287301226727, 33430.575583588128105, 67265.770927008700853, 45921.953931549871457, 13731.693765509461125,
    1971.5909503065514427, 133.14166789178437745, 3.387132872796366608,
  ],
  below: [
    5226.495278852854561, 28729.085735721942674, 39307.89580009271061, 21213.794301586595867, 5394.1960214247511077,
    687.1870074920579083, 42.313330701600911252, 1,
  ],
};
const outerQuantile = {
  above: [
    7.7454501427834140764e-4, 0.0227238449892691845833, 0.24178072517745061177, 1.27045825245236838258,
    3.64784832476320460504, 5.7694972214606914055, 4.6303378461565452959, 1.42343711074968357734,
  ],
  below: [
    1.05075007164441684324e-9, 5.475938084995344946e-4, 0.0151986665636164571966, 0.14810397642748007459,
    0.68976733498510000455, 1.6763848301838038494, 2.05319162663775882187, 1,
  ],
};
const farQuantile = {
  above: [
    2.01033439929228813265e-7, 2.71155556874348757815e-5, 0.0012426609473880784386, 0.026532189526576123093,
    0.29656057182850489123, 1.7848265399172913358, 5.4637849111641143699, 6.6579046435011037772,
  ],
  below: [
    2.04426310338993978564e-15, 1.4215117583164458887e-7, 1.8463183175100546818e-5, 7.868691311456132591e-4,
    0.0148753612908506148525, 0.13692988092273580531, 0.59983220655588793769, 1,
  ],
};

/* eslint-enable no-loss-of-precision */

const ratio = (x: number, { above, below }: { above: readonly number[]; below: readonly number[] }): number =>
  polynomial(x, above) / polynomial(x, below);

/** Density at z. */
export const normalDensity = (z: number): number => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);

/** e^(−z²/2), its square split at a sixteenth so that no digit of a large z is lost. */
const gauss = (z: number): number => {
  const coarse = Math.floor(z * 16) / 16;
  return Math.exp((-coarse * coarse) / 2) * Math.exp((-(z - coarse) * (z + coarse)) / 2);
};

/** Chance of more than z, for z from 0.66291 on. */
const upperTail = (z: number): number => {
  if (z <= Math.sqrt(32)) return gauss(z) * ratio(z, nearTail);
  const square = 1 / (z * z);
  return (gauss(z) * (1 / Math.sqrt(2 * Math.PI) - square * ratio(square, farTail))) / z;
};

/**
 * Chance of at most z, to about 16 digits in the lower tail too.
 * W. J. Cody, Rational Chebyshev approximations for the error function, Math. Comp. 23 (1969) 631, in the form for the
 * normal distribution of Algorithm 715 (ACM Trans. Math. Softw. 19 (1993) 22).
 */
export function normalCdf(z: number): number {
  const distance = Math.abs(z);
  if (distance <= 0.66291) return 0.5 + z * ratio(z * z, aroundMean);
  const tail = distance > 50 ? 0 : upperTail(distance);
  return z > 0 ? 1 - tail : tail;
}

/**
 * The z that a chance p (above 0, under 1) is at most.
 * M. J. Wichura, Algorithm AS 241: The percentage points of the normal distribution, Applied Statistics 37 (1988) 477;
 * PPND16, about 16 digits.
 */
export function normalQuantile(p: number): number {
  const fromMiddle = p - 0.5;
  if (Math.abs(fromMiddle) <= 0.425) return fromMiddle * ratio(0.180625 - fromMiddle * fromMiddle, middleQuantile);
  const depth = Math.sqrt(-Math.log(fromMiddle < 0 ? p : 1 - p));
  const size = depth <= 5 ? ratio(depth - 1.6, outerQuantile) : ratio(depth - 5, farQuantile);
  return fromMiddle < 0 ? -size : size;
}
