import { altitudeFromPressure } from "../../../src/functions/site/altitudeFromPressure";
import { errorOf, oneNumber } from "../oneCell";

test("29.92 inHg is sea level and 24.90 inHg is 5000 ft (printed standard-atmosphere tables, from memory)", () => {
  expect(Math.abs(oneNumber(altitudeFromPressure, "29.9213 inHg"))).toBeLessThan(0.5);
  expect(Math.abs(oneNumber(altitudeFromPressure, "24.896 inHg") - 1524)).toBeLessThan(1);
});

test("ISO 2533:1975, table 5, in each unit: 471.81 mbar at 6000 m", () => {
  for (const pressure of ["47.181 kPa", 47.181, "471.81 hPa", "0.47181 bar", "47181 Pa"])
    expect(Math.abs(oneNumber(altitudeFromPressure, pressure) - 6000)).toBeLessThan(0.1);
});

test("hPa entered as kPa, and gauge pressure of nothing, are refused", () => {
  expect(errorOf(altitudeFromPressure, 845)).toMatch(
    /#VALUE! pressure_kpa must be between 22\.63\d* and 107\.4\d* kPa/,
  );
  expect(errorOf(altitudeFromPressure, 0)).toMatch(/pressure_kpa/);
});

test("a reading in hPa entered bare says how to enter it", () => {
  expect(errorOf(altitudeFromPressure, 845)).toMatch(/this is 845 \(if that is in hPa, enter "845 hPa"\)$/);
});

test("a bare number under 40 is refused with its likely unit, inches of mercury or psi, and passes with it", () => {
  expect(errorOf(altitudeFromPressure, 29.92)).toBe(
    '#VALUE! pressure_kpa 29.92 looks like inches of mercury: write "29.92 inHg", or "29.92 kPa" if it is kPa',
  );
  expect(errorOf(altitudeFromPressure, 14.2)).toMatch(/looks like pounds per square inch: write "14\.2 psia"/);
  expect(errorOf(altitudeFromPressure, 39.99)).toMatch(/inHg/);
  expect(oneNumber(altitudeFromPressure, 40)).toBeGreaterThan(7000);
  expect(Math.abs(oneNumber(altitudeFromPressure, "29.92 inHg"))).toBeLessThan(2);
  // 14.2 psi absolute is 97.906 kPa (NIST SP 811); ISO 2533:1975, table 5, has 989.453 mbar at 200 m and 1007.26 at 50 m.
  expect(oneNumber(altitudeFromPressure, "14.2 psi")).toBe(oneNumber(altitudeFromPressure, "14.2 psia"));
  expect(oneNumber(altitudeFromPressure, "14.2 psia")).toBeCloseTo(
    oneNumber(altitudeFromPressure, 14.2 * 6.894757293168),
    6,
  );
  expect(oneNumber(altitudeFromPressure, "35 kPa")).toBeGreaterThan(8000);
});
