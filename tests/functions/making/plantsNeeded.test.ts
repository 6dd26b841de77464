import fc from "fast-check";
import { plantLoading } from "../../../src/functions/making/plantLoading";
import { plantsNeeded } from "../../../src/functions/making/plantsNeeded";
import { evenly } from "../../evenly";
import { errorOf, oneNumber } from "../oneCell";

// International Fire Code 2018, table G101.2: 115.05 ft³ of gas from a US gallon of liquid, 860.63 L/L.
const printedLitresOfGas = (115.05 * 28.316846592) / 3.785411784;

test("by hand with the fire code's printed ratio: 2160 m³ a day (WHO 100-bed scenario, from memory) at 2 L/h", () => {
  const each = (24 * 2 * printedLitresOfGas) / 1.25;
  expect(2160000 / each / 0.9).toBeCloseTo(72.6, 1);
  expect(oneNumber(plantsNeeded, "90 m3/h", 2)).toBe(74);
  expect(oneNumber(plantsNeeded, 2160000, 2, 0, 1)).toBe(66);
});

test("nothing needed still takes the spare plant", () => {
  expect(oneNumber(plantsNeeded, 0, 2)).toBe(1);
  expect(oneNumber(plantsNeeded, 0, 2, 0)).toBe(0);
});

test("the plants without spare are loaded at most to their availability, and one fewer would be over it", () => {
  fc.assert(
    fc.property(evenly(1000, 1e7), evenly(0.2, 20), evenly(0.3, 1), (gas, rate, availability) => {
      const plants = oneNumber(plantsNeeded, gas, rate, 0, availability);
      expect(oneNumber(plantLoading, gas, rate, plants)).toBeLessThanOrEqual(availability * (1 + 1e-9));
      if (plants > 1) expect(oneNumber(plantLoading, gas, rate, plants - 1)).toBeGreaterThan(availability * (1 - 1e-9));
    }),
  );
});

test("an availability of 0, or as a percent without its sign, is refused in words", () => {
  expect(errorOf(plantsNeeded, 1000, 1, 1, 0)).toMatch(/#VALUE! availability must be above 0 and at most 1/);
  expect(errorOf(plantsNeeded, 1000, 1, 1, 90)).toMatch(/availability .*90% or 0.9/);
});
