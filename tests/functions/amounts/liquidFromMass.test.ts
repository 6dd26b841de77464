import { liquidFromMass } from "../../../src/functions/amounts/liquidFromMass";
import { errorOf, oneNumber } from "../oneCell";
import { expectRow } from "../publishedRow";

test("reference row: International Fire Code 2018, table G101.2: 1 kg is 0.876 L", () => {
  expectRow("amt-03", oneNumber(liquidFromMass, 1));
});

test("20 L weigh 50.317 08 lb (Schmidt & Wagner 1985 evaluated independently)", () => {
  expect(oneNumber(liquidFromMass, "50.31708 lb")).toBeCloseTo(20, 3);
});

test("a volume is no mass", () => {
  expect(errorOf(liquidFromMass, "20 gal")).toMatch(/#VALUE! mass "20 gal" is an amount of liquid/);
});
