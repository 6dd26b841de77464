import fc from "fast-check";
import { gasDensity } from "../../../src/functions/amounts/gasDensity";
import { errorOf, oneNumber } from "../oneCell";
import { expectRow } from "../publishedRow";
import { evenly } from "../../evenly";

test("reference rows at 1 atm: a published test value at 300 K, Schmidt & Wagner 1985 evaluated independently, International Fire Code 2018", () => {
  expectRow("o2-gas-300K", oneNumber(gasDensity, 0, "300 K"));
  expectRow("o2-gas-0C", oneNumber(gasDensity, 0, 0));
  expectRow("o2-gas-15C", oneNumber(gasDensity, 0, 15));
  expectRow("o2-gas-70F", oneNumber(gasDensity, 0, "70 °F"));
  expectRow("o2-gas-25C", oneNumber(gasDensity, 0, 25));
  expectRow("amt-06", oneNumber(gasDensity));
});

test("thins out to the ideal gas at low pressure and warmth: p·M/(R·T), R = 8.314 462 618 J/(mol·K)", () => {
  const ideal = (101325 * 0.0319988) / (8.314462618 * 333.15);
  expect(Math.abs(oneNumber(gasDensity, 0, 60) / ideal - 1)).toBeLessThan(1e-3);
});

test("rises with pressure and falls with temperature", () => {
  fc.assert(
    fc.property(evenly(0, 299), evenly(-40, 59), (pressure, celsius) => {
      const density = oneNumber(gasDensity, pressure, celsius);
      expect(oneNumber(gasDensity, pressure + 1, celsius)).toBeGreaterThan(density);
      expect(oneNumber(gasDensity, pressure, celsius + 1)).toBeLessThan(density);
    }),
  );
});

test("a cylinder open to the thin air of 3000 m, 0.7011 bar absolute (ISO 2533:1975), holds gas of 0.918 kg/m³ (ideal gas)", () => {
  const ideal = (70110 * 0.0319988) / (8.314462618 * 294.25);
  expect(Math.abs(oneNumber(gasDensity, 0.7011 - 1.01325) / ideal - 1)).toBeLessThan(1e-3);
});

test("outside the range is refused: pressure, temperature", () => {
  expect(oneNumber(gasDensity, 300.31175, -40)).toBeGreaterThan(400);
  expect(errorOf(gasDensity, 300.4)).toMatch(/#VALUE! pressure must be between .*0\.5 to 301\.325 bar absolute/);
  expect(errorOf(gasDensity, -0.52)).toMatch(/#VALUE! pressure/);
  expect(errorOf(gasDensity, 0, 61)).toMatch(/#VALUE! temperature must be between -40 and 60 °C; this is 61/);
});
