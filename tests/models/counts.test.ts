import binomialCdf from "@stdlib/stats-base-dists-binomial-cdf";
import poissonMass from "@stdlib/stats-base-dists-poisson-pmf";
import fc from "fast-check";
import { binomial, chanceOver, countAtLevel, poisson, turnedAwayShare } from "../../src/models/counts";
import { evenly } from "../evenly";

const { jStat } = require("jstat") as { jStat: { poisson: { cdf(k: number, mean: number): number } } };

/** P(N ≤ k) by adding up a library's single chances, which it takes from the logarithm of the factorial. */
function summedPoisson(mean: number, k: number): number {
  let sum = 0;
  for (let n = Math.max(0, Math.floor(mean - 40 * Math.sqrt(mean))); n <= k; n++) sum += poissonMass(n, mean);
  return sum;
}

describe("Poisson counts", () => {
  // jStat's factorials overflow from k = 149 on at these means, and always from k = 171.
  test("agree with jStat below k = 149", () => {
    for (const mean of [0.01, 0.5, 1, 4, 20, 77.7, 120]) {
      for (let k = 0; k <= Math.min(148, mean + 12 * Math.sqrt(mean) + 10); k++) {
        expect(Math.abs(1 - chanceOver(poisson(mean), k) - jStat.poisson.cdf(k, mean))).toBeLessThan(1e-12);
      }
    }
  });

  test.each([171, 1000, 10000, 31415.9, 100000])("at a mean of %p agree with single chances added up", (mean) => {
    const counts = poisson(mean);
    for (const z of [-4, -2, -1, 0, 1, 2, 4]) {
      const k = Math.round(mean + z * Math.sqrt(mean));
      expect(Math.abs(1 - chanceOver(counts, k) - summedPoisson(mean, k))).toBeLessThan(1e-8);
    }
    for (const level of [0.01, 0.5, 0.9, 0.95, 0.99, 0.999]) {
      const enough = countAtLevel(counts, level);
      expect(summedPoisson(mean, enough)).toBeGreaterThanOrEqual(level);
      expect(summedPoisson(mean, enough - 1)).toBeLessThan(level);
    }
  });

  test("the median lies where Ramanujan's expansion puts it: P(N ≤ m) = 1/2 + 2/(3√(2πm)) for whole m", () => {
    for (const mean of [1000, 10000, 100000]) {
      const expansion = 0.5 + 2 / (3 * Math.sqrt(2 * Math.PI * mean));
      expect(Math.abs(1 - chanceOver(poisson(mean), mean) - expansion)).toBeLessThan(1e-5);
    }
  });

  test("a very rare excess keeps its digits: P(N > 60), mean 20, by the series of its own terms", () => {
    let term = poissonMass(61, 20);
    let sum = 0;
    for (let k = 61; k < 200; k++) {
      sum += term;
      term *= 20 / (k + 1);
    }
    expect(chanceOver(poisson(20), 60) / sum).toBeCloseTo(1, 6);
  });
});

describe("binomial counts", () => {
  test.each([
    [1, 0.5],
    [20, 0.25],
    [500, 0.03],
    [10000, 0.999],
    [100000, 0.3],
  ])("of %p at %p agree with a library's incomplete beta function", (n, p) => {
    const counts = binomial(n, p);
    const sd = Math.sqrt(n * p * (1 - p));
    for (let z = -6; z <= 6; z += 0.5) {
      const k = Math.round(n * p + z * sd);
      if (k < 0 || k > n) continue;
      expect(Math.abs(1 - chanceOver(counts, k) - binomialCdf(k, n, p))).toBeLessThan(1e-10);
    }
    for (const level of [0.05, 0.5, 0.95, 0.999]) {
      const enough = countAtLevel(counts, level);
      expect(binomialCdf(enough, n, p)).toBeGreaterThanOrEqual(level - 1e-10);
      if (enough > 0) expect(binomialCdf(enough - 1, n, p)).toBeLessThan(level);
    }
  });

  test("a level that is met exactly is enough: P(K ≤ 1) = 3/4 for two coins", () => {
    expect(countAtLevel(binomial(2, 0.5), 0.75)).toBe(1);
    expect(countAtLevel(binomial(2, 0.5), 0.7500001)).toBe(2);
    // Decimals, where the double of 1 − level falls short of the chance that is left: P(K ≤ 0) = 0.8, 0.81; P(K ≤ 1) = 0.896.
    expect(countAtLevel(binomial(1, 0.2), 0.8)).toBe(0);
    expect(countAtLevel(binomial(2, 0.1), 0.81)).toBe(0);
    expect(countAtLevel(binomial(3, 0.2), 0.896)).toBe(1);
    // 1 − 0.001² = 0.999999
    expect(countAtLevel(binomial(2, 0.001), 0.999999)).toBe(1);
  });

  test("nobody or everybody", () => {
    expect(countAtLevel(binomial(20, 0), 0.99)).toBe(0);
    expect(countAtLevel(binomial(20, 1), 0.01)).toBe(20);
    expect(countAtLevel(binomial(0, 0.5), 0.5)).toBe(0);
  });
});

test("the count at a level never falls as mean or level rise", () => {
  fc.assert(
    fc.property(evenly(0.001, 3000), evenly(1, 3), evenly(0.01, 0.999), evenly(0, 1), (mean, more, level, way) => {
      const counts = poisson(mean);
      const enough = countAtLevel(counts, level);
      expect(countAtLevel(poisson(mean * more), level)).toBeGreaterThanOrEqual(enough);
      expect(countAtLevel(counts, level + (0.9999 - level) * way)).toBeGreaterThanOrEqual(enough);
      expect(chanceOver(counts, enough)).toBeLessThanOrEqual((1 - level) * (1 + 1e-9));
      if (enough > 0) expect(chanceOver(counts, enough - 1)).toBeGreaterThan((1 - level) * (1 - 1e-9));
    }),
  );
});

describe("Erlang's loss formula", () => {
  test("agrees with its defining sum, (aⁿ/n!)/Σ aᵏ/k!", () => {
    for (const [a, n] of [
      [0.5, 1],
      [1, 3],
      [20, 25],
      [25, 30],
      [100, 60],
    ] as const) {
      let term = 1;
      let sum = 1;
      for (let k = 1; k <= n; k++) {
        term *= a / k;
        sum += term;
      }
      expect(turnedAwayShare(a, n) / (term / sum)).toBeCloseTo(1, 12);
    }
  });

  test("is the Poisson chance of just n given at most n, also at 100,000 places", () => {
    const mean = 100000;
    for (const places of [99000, 100000, 101000]) {
      expect(turnedAwayShare(mean, places) / (poissonMass(places, mean) / summedPoisson(mean, places))).toBeCloseTo(
        1,
        8,
      );
    }
  });

  test("without places all are turned away, and far more places than patients turn nobody away", () => {
    expect(turnedAwayShare(3, 0)).toBe(1);
    expect(turnedAwayShare(3, 1e6)).toBe(0);
  });
});
