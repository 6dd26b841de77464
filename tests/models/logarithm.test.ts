import fc from "fast-check";
import { exponential, naturalLog } from "../../src/models/logarithm";
import { evenly } from "../evenly";

// The engine's own functions are the outside truth: V8 takes them from fdlibm, which errs by less than one last digit.
test("the logarithm agrees with the engine's to the last digits", () => {
  expect(naturalLog(1)).toBe(0);
  expect(naturalLog(2)).toBeCloseTo(Math.LN2, 15);
  fc.assert(
    fc.property(
      evenly(-300, 300).map((exponent) => 10 ** exponent),
      (x) => {
        expect(Math.abs(naturalLog(x) - Math.log(x))).toBeLessThanOrEqual(
          2e-15 * Math.max(1e-1, Math.abs(Math.log(x))),
        );
      },
    ),
    { numRuns: 2000 },
  );
  // Near 1, where a difference of large parts would lose digits.
  for (const x of [1 + 1e-9, 1 - 1e-9, 1 + 1e-15, 0.999, 1.001]) {
    expect(Math.abs(naturalLog(x) / Math.log(x) - 1)).toBeLessThan(1e-14);
  }
});

test("the exponential agrees with the engine's", () => {
  expect(exponential(0)).toBe(1);
  fc.assert(
    fc.property(evenly(-700, 700), (x) => {
      expect(Math.abs(exponential(x) / Math.exp(x) - 1)).toBeLessThan(1e-13);
    }),
    { numRuns: 1000 },
  );
});
