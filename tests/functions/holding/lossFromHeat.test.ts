import { lossFromHeat } from "../../../src/functions/holding/lossFromHeat";
import { errorOf, oneNumber } from "../oneCell";
import { expectRow } from "../publishedRow";

test("reference row: 12 W boil 10.66 % of 40 L a day at 1 atm", () => {
  expectRow("ner-from-W", (100 * oneNumber(lossFromHeat, 12)) / 40);
  expectRow("ner-from-W", (100 * oneNumber(lossFromHeat, "0.012 kW", "0 psi")) / 40);
});

test("the same heat boils more litres of warmer liquid, which is lighter and needs less heat", () => {
  expect(oneNumber(lossFromHeat, 12, 5)).toBeGreaterThan(oneNumber(lossFromHeat, 12, 0));
  expect(errorOf(lossFromHeat, 12, "25 bar")).toMatch(/#VALUE! pressure must be between/);
});
