import fc from "fast-check";
import { cylinderContent } from "../../../src/functions/cylinders/cylinderContent";
import { minutesOnCylinder } from "../../../src/functions/cylinders/minutesOnCylinder";
import { correlatedCompressibility } from "../../reference/oxygenCorrelations";
import { evenly } from "../../evenly";
import { errorOf, oneNumber } from "../oneCell";

// Gas at 21.1 °C and 101.325 kPa, densities of Schmidt & Wagner 1985 by CoolProp, outside this project.
test.each([
  [46.7, 137, 8, 14, 21.1, 758.937],
  [46.7, 137, 8, 5, 21.1, 811.482],
  [46.7, 137, 8, 14, 40, 695.609],
])("%s L at %s bar, %s L/min down to %s bar at %s °C: %s min", (volume, pressure, flow, keep, t, minutes) => {
  expect(oneNumber(minutesOnCylinder, volume, pressure, flow, keep, t) / minutes).toBeCloseTo(1, 5);
});

test("left out, 14 bar are kept (200 psi of cylinder duration rules is 13.8) at 21.1 °C", () => {
  expect(oneNumber(minutesOnCylinder, 46.7, 137, 8) / 758.937).toBeCloseTo(1, 5);
});

test("within 0.5 % of a minute-by-minute run down of the gauge, Z by a correlation fitted apart from the code", () => {
  const reference = 1.01325 / (294.25 * correlatedCompressibility(1.01325, 294.25));
  const held = (gauge: number, kelvin: number): number =>
    (gauge + 1.01325) / (kelvin * correlatedCompressibility(gauge + 1.01325, kelvin)) / reference;
  for (const [volume, pressure, flow, keep, t] of [
    [10.2, 150, 4, 20, 5],
    [3, 200, 2, 14, 35],
  ] as const) {
    let gas = volume * held(pressure, t + 273.15);
    let minutes = 0;
    while (gas - flow >= volume * held(keep, t + 273.15)) {
      gas -= flow;
      minutes++;
    }
    expect(Math.abs(oneNumber(minutesOnCylinder, volume, pressure, flow, keep, t) - minutes)).toBeLessThan(
      1 + 0.005 * minutes,
    );
  }
});

test("by the size factor of an H, 628 min at 10 L/min from 2200 psi (teaching texts): 43 L of real gas agree within 1 %", () => {
  expect(oneNumber(minutesOnCylinder, 43.0148, "2200 psi", 10, "200 psi") / 628).toBeCloseTo(1, 2);
});

test("content now = flow × minutes + content at the pressure kept", () => {
  fc.assert(
    fc.property(
      evenly(0.5, 250),
      evenly(20, 300),
      evenly(0.1, 50),
      evenly(0, 20),
      evenly(-40, 60),
      (volume, pressure, flow, keep, t) => {
        const used = flow * oneNumber(minutesOnCylinder, volume, pressure, flow, keep, t);
        const left = oneNumber(cylinderContent, volume, keep, t);
        expect((used + left) / oneNumber(cylinderContent, volume, pressure, t)).toBeCloseTo(1, 9);
      },
    ),
    { seed: 14 },
  );
});

test("at and under the pressure kept nothing is left, also in thin air", () => {
  for (const pressure of [14, 13.9, 0, -0.31]) expect(oneNumber(minutesOnCylinder, 46.7, pressure, 8)).toBe(0);
});

test("no flow, a gas content as water volume, and a kept pressure out of range are refused", () => {
  expect(errorOf(minutesOnCylinder, 46.7, 137, 0)).toMatch(/#VALUE! flow must be more than 0/);
  expect(errorOf(minutesOnCylinder, 6800, 137, 8)).toMatch(/is this the gas content\?/);
  expect(errorOf(minutesOnCylinder, 46.7, 137, 8, -1)).toMatch(/#VALUE! keep_pressure must be between 0 and 300 bar/);
  expect(errorOf(minutesOnCylinder, 46.7, 137, 8, 301)).toMatch(/#VALUE! keep_pressure must be between 0 and 300 bar/);
  expect(errorOf(minutesOnCylinder, 46.7, 137, 8, 14, 61)).toMatch(/#VALUE! temperature/);
});
