import fc from "fast-check";
import { airPressure } from "../../../src/functions/site/airPressure";
import { altitudeFromPressure } from "../../../src/functions/site/altitudeFromPressure";
import table from "../../reference/iso2533.json";
import { errorOf, oneNumber } from "../oneCell";
import { evenly } from "../../evenly";

const rows = table.rows as [number, number, number, number][];

test.each(rows)("ISO 2533:1975, table 5, at %s m", (altitude, _temperature, millibar) => {
  expect(Math.abs(oneNumber(airPressure, altitude) - millibar / 10)).toBeLessThanOrEqual(0.0006);
});

test.each(rows)(
  "ALTITUDE_FROM_PRESSURE gives the altitude back: ISO 2533:1975, table 5, at %s m",
  (altitude, _temperature, millibar) => {
    // The printed pressures have six digits: 0.005 mbar is 0.04 m at sea level and 0.15 m at 11 000 m.
    if (altitude > -500 && altitude < 11000)
      expect(Math.abs(oneNumber(altitudeFromPressure, `${millibar} mbar`) - altitude)).toBeLessThanOrEqual(0.16);
  },
);

test("falls with altitude, and ALTITUDE_FROM_PRESSURE is its inverse, to the ends of the range", () => {
  fc.assert(
    fc.property(evenly(-500, 11000), (altitude) => {
      expect(oneNumber(altitudeFromPressure, `${oneNumber(airPressure, altitude)} kPa`)).toBeCloseTo(altitude, 6);
      if (altitude < 10999) expect(oneNumber(airPressure, altitude + 1)).toBeLessThan(oneNumber(airPressure, altitude));
    }),
  );
  for (const end of [-500, 11000])
    expect(oneNumber(altitudeFromPressure, `${oneNumber(airPressure, end)} kPa`)).toBeCloseTo(end, 6);
});

test("feet are read exactly (NIST SP 811: 1 ft = 0.3048 m); outside the troposphere is refused", () => {
  expect(oneNumber(airPressure, "10000 ft")).toBe(oneNumber(airPressure, 3048));
  expect(errorOf(airPressure, 11001)).toMatch(/#VALUE! altitude must be between -500 and 11000 m/);
});
