import fc from "fast-check";
import { saturationPressure } from "../../../src/functions/amounts/saturationPressure";
import { correlatedPressure } from "../../reference/oxygenCorrelations";
import { errorOf, oneNumber } from "../oneCell";
import { expectRow } from "../publishedRow";
import { evenly } from "../../evenly";

test("reference row: 254.0046 kPa at 100 K, in °C, K and °F", () => {
  for (const cell of [-173.15, "100 K", "-279.67 °F"])
    expectRow("o2-psat-100K", 100 * (oneNumber(saturationPressure, cell) + 1.01325));
});

test("1 atm at 90.188 K, the normal boiling point of the International Temperature Scale of 1990", () => {
  expect(oneNumber(saturationPressure, "90.188 K")).toBeCloseTo(0, 3);
});

test("within 0.02 % of the published auxiliary correlation, and rising", () => {
  fc.assert(
    fc.property(evenly(-189.2, -135.7), (celsius) => {
      const absolute = oneNumber(saturationPressure, celsius) + 1.01325;
      expect(Math.abs(absolute / correlatedPressure(celsius + 273.15) - 1)).toBeLessThan(2e-4);
      expect(oneNumber(saturationPressure, celsius + 0.05) + 1.01325).toBeGreaterThan(absolute);
    }),
  );
});

test("a temperature at which it doesn't boil in range is refused, and the range named", () => {
  expect(errorOf(saturationPressure, 20)).toMatch(
    /#VALUE! temperature must be between -189\.\d+ and -135\.6\d* °C, where oxygen boils/,
  );
  expect(errorOf(saturationPressure, -190)).toMatch(/#VALUE! temperature/);
});
