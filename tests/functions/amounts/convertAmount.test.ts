import fc from "fast-check";
import { convertAmount } from "../../../src/functions/amounts/convertAmount";
import { amountUnits } from "../../../src/models/amounts";
import { errorOf, oneNumber } from "../oneCell";
import { expectRow } from "../publishedRow";
import { evenly } from "../../evenly";

const seventyFahrenheit = "70 °F";
const convert = (amount: number, from: string, to: string) =>
  oneNumber(convertAmount, amount, from, to, seventyFahrenheit);

test("reference rows: International Fire Code 2018, table G101.2", () => {
  expectRow("ifc-gal-kg", convert(1, "liquid gal", "kg"));
  expectRow("ifc-gal-scf", convert(1, "liquid gal", "gas ft3"));
  expectRow("ifc-L-kg", convert(1, "liquid L", "kg"));
  expectRow("ifc-L-scf", convert(1, "liquid L", "gas ft3"));
  expectRow("ifc-L-m3", convert(1, "liquid L", "gas m3"));
  expectRow("ifc-kg-scf", convert(1, "kg", "gas ft3"));
  expectRow("ifc-lb-m3", convert(1, "lb", "gas m3"));
  expectRow("ifc-100scf-lb", convert(100, "gas ft3", "lb"));
  expectRow("ifc-100scf-gal", convert(100, "gas ft3", "liquid gal"));
  expectRow("ifc-m3-L", convert(1, "gas m3", "liquid L"));
  expectRow("amt-03", convert(1, "kg", "liquid L"));
  expectRow("amt-04", convert(1, "kg", "gas m3"));
  expectRow("amt-06", convert(1, "gas m3", "kg"));
  expectRow("amt-07", convert(1, "liquid gal", "gas ft3"));
  expectRow("o2-lb-gasL", oneNumber(convertAmount, 1, "lb", "gas L", 21.1111));
});

test("exact factors of NIST SP 811 inside one state", () => {
  expect(convert(1, "liquid gal", "liquid L")).toBeCloseTo(3.785411784, 12);
  expect(convert(1, "gas ft3", "gas L")).toBeCloseTo(28.316846592, 11);
  expect(convert(1, "gas m3", "gas L")).toBeCloseTo(1000, 9);
  expect(convert(1, "lb", "kg")).toBeCloseTo(0.45359237, 12);
});

test("there and back gives the amount, by way of any third unit", () => {
  const unit = fc.constantFrom(...amountUnits);
  fc.assert(
    fc.property(evenly(0.001, 1e6), unit, unit, unit, evenly(-40, 60), (amount, a, b, c, celsius) => {
      const there = oneNumber(convertAmount, oneNumber(convertAmount, amount, a, b, celsius), b, c, celsius);
      expect(oneNumber(convertAmount, there, c, a, celsius) / amount).toBeCloseTo(1, 12);
    }),
  );
});

test("spellings of one unit agree", () => {
  const kilograms = oneNumber(convertAmount, 3, "liquid gal", "kg");
  for (const spelling of [
    "Liquid Gal",
    "gallons liquid",
    "LOX gal",
    "liquid gallons",
    "gal of liquid",
    " liquid gal ",
  ]) {
    expect(oneNumber(convertAmount, 3, spelling, "KG")).toBe(kilograms);
  }
  const metres = oneNumber(convertAmount, 3, "lbs", "gas m³");
  for (const spelling of ["gas m3", "m3 gas", "cubic metres of gas"])
    expect(oneNumber(convertAmount, 3, "pounds", spelling)).toBe(metres);
});

test("a unit that doesn't tell liquid from gas is refused with the choices", () => {
  for (const bare of ["L", "m3", "gal", "constructor"]) {
    expect(errorOf(convertAmount, 1, bare, "kg")).toBe(
      `#VALUE! from is "${bare}"; enter liquid L, liquid gal, gas L, gas m3, gas ft3, kg or lb`,
    );
  }
  expect(errorOf(convertAmount, 1, "kg", "litres")).toMatch(/#VALUE! to is "litres"/);
});

test("the temperature of the gas counts: 100 kg are 69.98 m³ at 0 °C and 75.12 m³ at 20 °C (computed with CoolProp outside this project)", () => {
  expect(oneNumber(convertAmount, 100, "kg", "gas m3", 0)).toBeCloseTo(69.9774, 3);
  expect(oneNumber(convertAmount, 100, "kg", "gas m3", 20)).toBeCloseTo(75.1211, 3);
});
