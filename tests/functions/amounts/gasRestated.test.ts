import fc from "fast-check";
import { gasRestated } from "../../../src/functions/amounts/gasRestated";
import { errorOf, oneNumber } from "../oneCell";

test("one Nm³ of oxygen is 38.05 ft³ at 70 °F: masses of a gas table (read), 1.4291 kg/Nm³ and 0.03756 kg/scf", () => {
  expect(oneNumber(gasRestated, "1 m3", 0, "70 °F") / 28.316846592 / (1.4291 / 0.03756)).toBeCloseTo(1, 3);
});

/** Densities of oxygen at 1 atm [kg/m³]: Schmidt & Wagner 1985, computed with CoolProp outside this project. */
const density: readonly (readonly [number, number])[] = [
  [0, 1.4290325],
  [15, 1.3543637],
  [20, 1.3311838],
  [21.1, 1.3261907],
];

test("within 0.1 % of the same mass of real gas at the usual reference temperatures", () => {
  for (const [from, fromDensity] of density)
    for (const [to, toDensity] of density)
      expect(Math.abs(oneNumber(gasRestated, 1000, from, to) / ((1000 * fromDensity) / toDensity) - 1)).toBeLessThan(
        0.001,
      );
});

test("left out, the temperature wanted is that of all gas litres, 21.1 °C; and there and back is the same", () => {
  expect(oneNumber(gasRestated, 273.15, 0)).toBeCloseTo(294.25, 9);
  expect(oneNumber(gasRestated, 273.15, 0, 20)).toBeCloseTo(293.15, 9);
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 100000 }),
      fc.integer({ min: -400, max: 600 }),
      fc.integer({ min: -400, max: 600 }),
      (gas, from, to) => {
        const there = oneNumber(gasRestated, gas, from / 10, to / 10);
        expect(oneNumber(gasRestated, there, to / 10, from / 10)).toBeCloseTo(gas, 6);
        if (gas > 0 && to > from) expect(there).toBeGreaterThan(gas);
      },
    ),
    { seed: 11 },
  );
});

test("a normal volume given as a unit is refused with the way out; kelvin passes; beyond −40 to 60 °C is refused", () => {
  for (const gas of ["10 Nm3", "10 Nm³", "300 scf"]) expect(errorOf(gasRestated, gas, 0)).toMatch(/GAS_RESTATED/);
  expect(oneNumber(gasRestated, 100, "273.15 K", "294.25 K")).toBeCloseTo((100 * 294.25) / 273.15, 9);
  expect(errorOf(gasRestated, 100, 60.1)).toMatch(/#VALUE! from_temperature must be between -40 and 60 °C/);
  expect(errorOf(gasRestated, 100, 20, -41)).toMatch(/#VALUE! to_temperature must be between -40 and 60 °C/);
});
