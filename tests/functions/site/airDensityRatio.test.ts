import fc from "fast-check";
import { airDensityRatio } from "../../../src/functions/site/airDensityRatio";
import table from "../../reference/iso2533.json";
import { errorOf, oneNumber } from "../oneCell";
import { evenly } from "../../evenly";

const rows = table.rows as [number, number, number, number][];

test.each(rows)("ISO 2533:1975, table 5, at %s m and %s °C", (altitude, temperature, _millibar, density) => {
  expect(Math.abs(oneNumber(airDensityRatio, altitude, temperature) - density / 1.225)).toBeLessThanOrEqual(6e-6);
});

test("falls with heat as 1/T at one altitude (ideal gas law)", () => {
  fc.assert(
    fc.property(evenly(-500, 11000), evenly(-90, 59), (altitude, t) => {
      expect(oneNumber(airDensityRatio, altitude, t + 1) / oneNumber(airDensityRatio, altitude, t)).toBeCloseTo(
        (t + 273.15) / (t + 274.15),
        10,
      );
    }),
  );
});

test("Fahrenheit entered as Celsius is refused, with its unit it is read", () => {
  expect(errorOf(airDensityRatio, 0, 95)).toMatch(/#VALUE! temperature must be between -90 and 60 °C/);
  expect(oneNumber(airDensityRatio, 0, "95 °F")).toBeCloseTo(oneNumber(airDensityRatio, 0, 35), 12);
});
