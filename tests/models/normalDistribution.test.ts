import stdlibCdf from "@stdlib/stats-base-dists-normal-cdf";
import stdlibQuantile from "@stdlib/stats-base-dists-normal-quantile";
import { normalCdf, normalDensity, normalQuantile } from "../../src/models/normalDistribution";

/** Largest relative difference that counts as the same: a few units in the sixteenth digit. */
const digits = 2e-15;

const expectNear = (got: number, wanted: number, relative: number): void =>
  expect(Math.abs(got - wanted)).toBeLessThanOrEqual(Math.abs(wanted) * relative);

// Abramowitz and Stegun, Handbook of Mathematical Functions (1964), table 26.1: P(x) to 15 decimals.
test.each([
  [0, 0.5],
  [0.5, 0.691462461274013],
  [1, 0.841344746068543],
  [1.5, 0.933192798731142],
  [2, 0.977249868051821],
  [2.5, 0.993790334674224],
  [3, 0.99865010196837],
])("the chance of at most %d is that of the handbook", (z, chance) => {
  expect(Math.abs(normalCdf(z) - chance)).toBeLessThanOrEqual(1e-15);
  expect(Math.abs(normalCdf(-z) - (1 - chance))).toBeLessThanOrEqual(1e-15);
});

// Wichura, Applied Statistics 37 (1988) 477: values for p = 0.25, 0.001 and 1e-20 that an implementation must give.
test.each([
  [0.25, -0.6744897501960817],
  [0.001, -3.090232306167814],
  [1e-20, -9.26234008979841],
])("the quantile of %d is that of the algorithm's paper", (p, z) => {
  expectNear(normalQuantile(p), z, digits);
});

test("the chance agrees with stdlib from far below to far above the mean", () => {
  for (let z = -37; z <= 9; z += 0.0371) {
    // A tail moves by z² of its size for each unit in the last place of z, which both may lose.
    expectNear(normalCdf(z), stdlibCdf(z, 0, 1), digits * Math.max(1, z * z));
  }
});

test("the quantile agrees with stdlib, which loses digits in the tails, and leads back to the chance", () => {
  for (let p = 0.001; p < 1; p += 0.00137) expectNear(normalQuantile(p), stdlibQuantile(p, 0, 1), 1e-13);
  for (let exponent = -300; exponent < -0.31; exponent += 0.0913) {
    const p = 10 ** exponent;
    // A unit in the last place of z moves the chance by z² of its own size.
    expectNear(normalCdf(normalQuantile(p)), p, digits * Math.max(1, normalQuantile(p) ** 2));
  }
});

test("both are symmetric about the mean", () => {
  for (const z of [0.1, 0.66, 0.67, 1.96, 5, 6, 8]) expect(normalCdf(z) + normalCdf(-z)).toBeCloseTo(1, 15);
  for (const p of [0.01, 0.0625, 0.25, 0.375]) expectNear(normalQuantile(1 - p), -normalQuantile(p), digits);
});

test("nothing is left so far out that no number holds it", () => {
  expect([normalCdf(-60), normalCdf(60), normalCdf(-Infinity), normalCdf(Infinity)]).toEqual([0, 1, 0, 1]);
});

// The density is the slope of the chance; central difference, error of order h².
test("the density is the slope of the chance", () => {
  for (const z of [-4, -1, -0.3, 0, 0.66291, 2]) {
    const h = 1e-4;
    expect(normalDensity(z)).toBeCloseTo((normalCdf(z + h) - normalCdf(z - h)) / (2 * h), 8);
  }
});
