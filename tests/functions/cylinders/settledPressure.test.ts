import fc from "fast-check";
import { settledPressure } from "../../../src/functions/cylinders/settledPressure";
import rows from "../../reference/cylinders.json";
import { errorOf, oneNumber } from "../oneCell";
import { evenly } from "../../evenly";

// NIST SP 811: 1 psi = 0.06894757293168 bar.
const psi = 0.06894757293168;

test.each(["settle-2015-60F", "settle-2015-100F"])(
  "%s both ways: isochore of Schmidt & Wagner 1985, computed outside this project",
  (id) => {
    const { inputs, expected, tolerance } = rows.find((each) => each.id === id) as {
      inputs: any;
      expected: number;
      tolerance: number;
    };
    const settled = oneNumber(settledPressure, `${expected} psi`, `${inputs.gas_T_F} °F`, `${inputs.settled_T_F} °F`);
    expect(Math.abs(settled / psi - inputs.settled_psig)).toBeLessThanOrEqual(tolerance);
    const back = oneNumber(
      settledPressure,
      `${inputs.settled_psig} psi`,
      `${inputs.settled_T_F} °F`,
      `${inputs.gas_T_F} °F`,
    );
    expect(Math.abs(back / psi - expected)).toBeLessThanOrEqual(tolerance);
  },
);

test("137 bar at 15 °C is 153.76 bar at 40 °C (same source); an ideal gas would give 149", () => {
  expect(Math.abs(oneNumber(settledPressure, 137, 15, 40) - 153.7587)).toBeLessThanOrEqual(0.3);
});

test("there and back is the same pressure, and warm gas settles lower", () => {
  fc.assert(
    fc.property(evenly(5, 200), evenly(22, 60), (pressure, t) => {
      const settled = oneNumber(settledPressure, pressure, t);
      expect(settled).toBeLessThan(pressure);
      expect(oneNumber(settledPressure, settled, 21.1, t)).toBeCloseTo(pressure, 6);
    }),
  );
});

test("a result out of range is refused on both sides", () => {
  expect(errorOf(settledPressure, 290, 0, 60)).toMatch(
    /#VALUE! pressure 290 bar would settle to \d+.* bar, above the 300\.31\d* bar/,
  );
  expect(errorOf(settledPressure, -0.4, 60, -40)).toMatch(
    /would settle to -0\.58\d* bar gauge, under the 0\.5 bar absolute/,
  );
  // 1.11325 bar absolute × 233.15/333.15, ideal gas law.
  expect(oneNumber(settledPressure, 0.1, 60, -40)).toBeCloseTo((1.11325 * 233.15) / 333.15 - 1.01325, 2);
});
