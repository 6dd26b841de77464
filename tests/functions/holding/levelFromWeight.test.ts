import fc from "fast-check";
import { liquidMass } from "../../../src/functions/amounts/liquidMass";
import { levelFromWeight } from "../../../src/functions/holding/levelFromWeight";
import { evenly } from "../../evenly";
import { errorOf, oneNumber } from "../oneCell";
import { expectRow } from "../publishedRow";

test("International Fire Code 2018, table G101.2: 1 kg is 0.876 L", () => {
  expectRow("amt-03", oneNumber(levelFromWeight, 51, 50));
});

test("20 L weigh 50.317 08 lb (Schmidt & Wagner 1985 evaluated independently), in pounds and in kilograms", () => {
  expect(oneNumber(levelFromWeight, "150.31708 lb", "100 lb")).toBeCloseTo(20, 3);
  expect(oneNumber(levelFromWeight, 150.31708 * 0.45359237, 45.359237)).toBeCloseTo(20, 3);
});

test("takes back what LIQUID_MASS weighs, on any empty vessel", () => {
  fc.assert(
    fc.property(evenly(0.1, 500), evenly(1, 500), evenly(-0.5, 14.9), (liquid, empty, pressure) => {
      const gross = empty + oneNumber(liquidMass, liquid, pressure);
      expect(Math.abs(oneNumber(levelFromWeight, gross, empty, pressure) - liquid)).toBeLessThan(1e-9);
    }),
  );
});

test("an empty vessel holds 0; less than empty is refused", () => {
  expect(oneNumber(levelFromWeight, 50, 50)).toBe(0);
  expect(errorOf(levelFromWeight, 49, 50)).toBe(
    "#VALUE! gross_mass of 49 kg is below empty_mass of 50 kg; check which is which",
  );
});

test("rounding makes no vessel lighter than empty: 0.1 + 0.2 of 0.3", () => {
  expect(oneNumber(levelFromWeight, 0.3, 0.1 + 0.2)).toBe(0);
});
