import { lossFromPlate } from "../../../src/functions/holding/lossFromPlate";
import vesselRows from "../../reference/vesselsAndHoses.json";
import { errorOf, oneNumber } from "../oneCell";

const rowOf = (id: string): number => vesselRows.find((row) => row.id === id)!.expected;

test("a share of the capacity: 1.5 % of 180 L is 2.7 L, however it is written", () => {
  for (const share of [0.015, "1.5%", "1.5 %", "1.5 %/day"])
    expect(oneNumber(lossFromPlate, 180, share)).toBeCloseTo(2.7, 12);
  expect(oneNumber(lossFromPlate, 180, 0.015, "oxygen")).toBeCloseTo(2.7, 12);
});

test("of nitrogen 0.622, within 0.1 % of the heat to boil a litre times the distance from 300 K (reference rows)", () => {
  const factor = oneNumber(lossFromPlate, 100, 0.01, "nitrogen");
  expect(Math.abs(factor / (rowOf("nitrogen-heat") * rowOf("nitrogen-distance")) - 1)).toBeLessThan(1e-3);
  expect(oneNumber(lossFromPlate, 100, 0.01, "Nitrogen")).toBe(factor);
});

test("handbook values from memory: nitrogen 0.808 kg/L × 199 kJ/kg at 77.4 K, oxygen 1.141 × 213 at 90.2 K", () => {
  const byHand = ((0.808 * 199) / (1.141 * 213)) * ((300 - 90.2) / (300 - 77.4));
  expect(oneNumber(lossFromPlate, 1, 0.1, "nitrogen") * 10).toBeCloseTo(byHand, 2);
});

test("a percent without its sign, another liquid and a vessel of nothing are refused", () => {
  expect(errorOf(lossFromPlate, 180, 1.5)).toMatch(/#VALUE! share_a_day 1.5 looks like a percent: enter 1.5% or 0.015/);
  expect(errorOf(lossFromPlate, 180, 0.21)).toMatch(/#VALUE! share_a_day 0.21 looks like a percent/);
  expect(oneNumber(lossFromPlate, 180, 0.2)).toBeCloseTo(36, 12);
  expect(errorOf(lossFromPlate, 180, 0)).toMatch(/#VALUE! share_a_day must be above 0/);
  expect(errorOf(lossFromPlate, 180, 0.01, "argon")).toMatch(/#VALUE! stated_for is "argon"; enter oxygen or nitrogen/);
  expect(errorOf(lossFromPlate, 0, 0.01)).toMatch(/#VALUE! capacity must be more than 0 L/);
});
