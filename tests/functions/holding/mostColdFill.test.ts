import fc from "fast-check";
import { hoursToPressure } from "../../../src/functions/holding/hoursToPressure";
import { mostColdFill } from "../../../src/functions/holding/mostColdFill";
import { errorOf, oneNumber } from "../oneCell";
import { expectRow } from "../publishedRow";

test("reference row: 91.97 % of the volume for a 35 psi relief valve", () => {
  expectRow("maxfill-35", oneNumber(mostColdFill, 100, "35 psi"));
  expectRow("maxfill-35", oneNumber(mostColdFill, 100, 2.413165, "98%"));
});

test("a vessel filled to it reaches its relief pressure with vapour space left; HOURS_TO_PRESSURE answers", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 1000, noNaN: true }),
      fc.double({ min: 0.1, max: 20, noNaN: true }),
      (capacity, relief) => {
        const fill = oneNumber(mostColdFill, capacity, relief);
        expect(oneNumber(hoursToPressure, capacity, fill, 0, relief, 10)).toBeGreaterThan(0);
        expect(fill).toBeLessThan(0.98 * capacity);
        expect(oneNumber(mostColdFill, capacity, relief + 0.1)).toBeLessThan(fill);
      },
    ),
  );
});

test("no relief below the air's pressure", () => {
  expect(errorOf(mostColdFill, 100, -0.1)).toMatch(/#VALUE! relief_pressure must be between 0 and/);
  expect(errorOf(mostColdFill, 100, 1, 1.01)).toMatch(/#VALUE! full_share must be above 0 and at most 1/);
});
