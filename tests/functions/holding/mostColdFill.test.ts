import fc from "fast-check";
import { hoursToPressure } from "../../../src/functions/holding/hoursToPressure";
import { mostColdFill } from "../../../src/functions/holding/mostColdFill";
import { evenly } from "../../evenly";
import { errorOf, oneNumber } from "../oneCell";
import { expectRow } from "../publishedRow";

test("reference row: 91.97 % of the volume for a 35 psi relief valve", () => {
  expectRow("maxfill-35", oneNumber(mostColdFill, 100, "35 psi"));
  expectRow("maxfill-35", oneNumber(mostColdFill, 100, 2.413165, "98%"));
});

test("a vessel filled to it reaches its relief pressure with vapour space left; HOURS_TO_PRESSURE answers", () => {
  fc.assert(
    fc.property(evenly(1, 1000), evenly(0.1, 14.8), (capacity, relief) => {
      const fill = oneNumber(mostColdFill, capacity, relief);
      expect(oneNumber(hoursToPressure, capacity, fill, 0, relief, 10)).toBeGreaterThan(0);
      expect(fill).toBeLessThan(0.98 * capacity);
      expect(oneNumber(mostColdFill, capacity, relief + 0.1)).toBeLessThan(fill);
    }),
  );
});

test("the share of the brim that stays liquid at relief is what is asked for", () => {
  expect(oneNumber(mostColdFill, 100, "35 psi", 0.9) / oneNumber(mostColdFill, 100, "35 psi")).toBeCloseTo(
    0.9 / 0.98,
    12,
  );
});

test("a relief valve opens above the air's pressure: 0, as a blank is on old hosts, is refused, and bare psi too", () => {
  expect(errorOf(mostColdFill, 100, 0)).toMatch(/#VALUE! relief_pressure must be above 0 and at most 23.98675 bar/);
  expect(errorOf(mostColdFill, 100, -0.1)).toMatch(/#VALUE! relief_pressure must be above 0/);
  expect(errorOf(mostColdFill, 100, 22)).toMatch(/#VALUE! relief_pressure 22 looks like psi: write "22 psi"/);
  expect(oneNumber(mostColdFill, 100, "22 bar")).toBeGreaterThan(0);
  expect(errorOf(mostColdFill, 0, 1)).toMatch(/#VALUE! brim_volume must be more than 0 L/);
  expect(errorOf(mostColdFill, 100, 1, 1.01)).toMatch(/#VALUE! full_share must be above 0 and at most 1/);
});
