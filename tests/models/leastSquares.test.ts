import fc from "fast-check";

import { fitStraightLine } from "../../src/models/leastSquares";
import norris from "../reference/norris.json";
import { evenly } from "../evenly";

describe("straight line", () => {
  test("NIST StRD Norris: certified values", () => {
    const fit = fitStraightLine(norris.x, norris.y)!;
    const relative = {
      slope: fit.slope / norris.slope - 1,
      intercept: fit.intercept / norris.intercept - 1,
      "slope error": fit.slopeError! / norris.slopeError - 1,
      "r²": fit.rSquared! / norris.rSquared - 1,
    };
    const [name, worst] = Object.entries(relative).sort((a, b) => Math.abs(b[1]) - Math.abs(a[1]))[0]!;
    process.stdout.write(`straight line: Norris, worst relative deviation ${worst.toExponential(1)} (${name})\n`);
    for (const deviation of Object.values(relative)) expect(Math.abs(deviation)).toBeLessThan(1e-11);
    expect(fit.points).toBe(36);
  });

  test("Norris with x as late dates: centring keeps the digits", () => {
    const fit = fitStraightLine(
      norris.x.map((x) => x + 46000),
      norris.y,
    )!;
    expect(Math.abs(fit.slope / norris.slope - 1)).toBeLessThan(1e-10);
    expect(Math.abs(fit.slopeError! / norris.slopeError - 1)).toBeLessThan(1e-8);
  });

  test("exact lines come back", () => {
    fc.assert(
      fc.property(
        evenly(-50, 50),
        evenly(-500, 500),
        fc.uniqueArray(fc.integer({ min: 40000, max: 50000 }), { minLength: 2, maxLength: 20 }),
        (slope, intercept, xs) => {
          const fit = fitStraightLine(
            xs,
            xs.map((x) => intercept + slope * x),
          )!;
          expect(fit.slope).toBeCloseTo(slope, 6);
          if (xs.length > 2) expect(fit.slopeError!).toBeLessThan(1e-5);
          if (Math.abs(slope) > 0.01) expect(fit.rSquared!).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  test("what can't be told is not told", () => {
    expect(fitStraightLine([1], [2])).toBeUndefined();
    expect(fitStraightLine([46000.1, 46000.1, 46000.1], [1, 2, 3])).toBeUndefined();
    expect(fitStraightLine([1, 2], [5, 7])).toEqual({
      slope: 2,
      intercept: 3,
      slopeError: undefined,
      rSquared: 1,
      points: 2,
    });
    expect(fitStraightLine([1, 2, 3], [4, 4, 4])).toMatchObject({ slope: 0, slopeError: 0, rSquared: undefined });
  });
});
