import { drainHours } from "../../../src/functions/transferring/drainHours";
import { errorOf, oneNumber } from "../oneCell";

test("60 L at 15 L/h drain in 4 h (plain arithmetic), in gallons as in litres", () => {
  expect(oneNumber(drainHours, 60, 15)).toBe(4);
  expect(oneNumber(drainHours, "16 gal", "4 gal/h")).toBeCloseTo(4, 12);
});

test("nothing drains at no rate", () => {
  expect(errorOf(drainHours, 60, 0)).toMatch(/#VALUE! drain_rate must be more than 0 L\/h/);
  expect(oneNumber(drainHours, 0, 15)).toBe(0);
});
