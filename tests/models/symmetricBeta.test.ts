import { symmetricBetaPoint } from "../../src/models/symmetricBeta";

const { jStat } = require("jstat") as {
  jStat: { centralF: { inv(share: number, one: number, other: number): number } };
};

/** The 95 % point of the F distribution with 2n and 2n degrees of freedom. */
const f95 = (n: number): number => {
  const y = symmetricBetaPoint(0.05, n);
  return (1 - y) / y;
};

// NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.3, upper critical values at 5 %, ν1 = ν2; three decimals, the
// values from memory and equal to those of a table read (atozmath, F distribution) for 2 and 2.
test.each([
  [2, 19.0],
  [4, 6.388],
  [6, 4.284],
  [8, 3.438],
  [10, 2.978],
  [12, 2.687],
  [14, 2.484],
  [16, 2.333],
  [18, 2.217],
  [20, 2.124],
])("F of %d and as many degrees of freedom is %d in the printed table", (degrees, printed) => {
  expect(Math.abs(f95(degrees / 2) - printed)).toBeLessThanOrEqual(0.0005);
});

test("is jStat's, which comes by another way, to its own eight digits", () => {
  for (const n of [1, 2, 3, 4, 7, 15, 40, 100, 300])
    expect(f95(n) / jStat.centralF.inv(0.95, 2 * n, 2 * n)).toBeCloseTo(1, 7);
});

/** P(at least n of 2n − 1 tosses), each of chance y: I_y(n, n) for a whole n (DLMF 8.17.5), added up term by term. */
function tail(y: number, n: number): number {
  const tosses = 2 * n - 1;
  let sum = 0;
  for (let k = n; k <= tosses; k++) {
    let term = 1;
    // As many factors of y and 1 − y as are due stand beside those of the binomial number, so that nothing overflows.
    for (let j = 1; j <= k; j++) term *= ((tosses - k + j) / j) * y;
    sum += term * (1 - y) ** (tosses - k);
  }
  return sum;
}

test("the share below the point is the one asked for, by the binomial sum", () => {
  for (const n of [1, 2, 3, 5, 10, 25, 60, 150])
    for (const share of [0.001, 0.05, 0.3]) expect(tail(symmetricBetaPoint(share, n), n)).toBeCloseTo(share, 10);
});

test("in closed form for one stop, and close to the normal law for many", () => {
  // I_y(1, 1) = y; for large n, y is normal about 1/2 with variance 1/(4(2n + 1)) and 1.6448536 is its 95 % point.
  expect(symmetricBetaPoint(0.05, 1)).toBeCloseTo(0.05, 14);
  for (const n of [5000, 100000])
    expect(symmetricBetaPoint(0.05, n)).toBeCloseTo(0.5 - 1.6448536 / 2 / Math.sqrt(2 * n + 1), 6);
});
