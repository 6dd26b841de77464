import fc from "fast-check";
import { heatLeak } from "../../../src/functions/holding/heatLeak";
import { lossFromHeat } from "../../../src/functions/holding/lossFromHeat";
import { evenly } from "../../evenly";
import { oneNumber } from "../oneCell";
import { expectRow } from "../publishedRow";

test("reference row: a 40 L vessel empty in 10 days at 35 psi", () => {
  expectRow("leak-10d-35", oneNumber(heatLeak, 4, "35 psi"));
  expectRow("leak-10d-35", oneNumber(heatLeak, "96 L/day", 2.413165) / 24);
});

test("handbook values at 1 atm, from memory: 1.141 kg/L × 213 kJ/kg: 243 kJ/L, so 1 L/h takes 67.5 W", () => {
  expect(oneNumber(heatLeak, "1 L/h")).toBeCloseTo(67.5, 0);
});

test("LOSS_FROM_HEAT is its inverse", () => {
  fc.assert(
    fc.property(evenly(0.001, 1000), evenly(-0.5, 14.9), (loss, pressure) => {
      expect(oneNumber(lossFromHeat, oneNumber(heatLeak, loss, pressure), pressure) / loss).toBeCloseTo(1, 12);
    }),
  );
});
