import { hoursToFill } from "../../../src/functions/making/hoursToFill";
import { errorOf, oneNumber } from "../oneCell";

test("a 40 L vessel at 1 L/h with a 2.5 h start takes 42.5 h (common practice, no source)", () => {
  expect(oneNumber(hoursToFill, 40, 1, 0, 2.5)).toBeCloseTo(42.5, 12);
});

test("a full vessel takes the start delay; a level above the capacity is refused", () => {
  expect(oneNumber(hoursToFill, 40, 1, 40)).toBe(3);
  expect(errorOf(hoursToFill, 40, 1, 41)).toMatch(/#VALUE! level is 41 L, above the capacity of 40 L/);
});

test("a gallon is the US gallon (NIST SP 811)", () => {
  expect(oneNumber(hoursToFill, "10 gal", "1 gal/h", 0, 0)).toBeCloseTo(10, 12);
  expect(oneNumber(hoursToFill, "10 gal", 1, 0, 0)).toBeCloseTo(37.85411784, 9);
});

test("a level that is the capacity but for rounding is full: 0.1 + 0.2 in 0.3 L", () => {
  expect(oneNumber(hoursToFill, 0.3, 1, 0.1 + 0.2)).toBeCloseTo(3, 12);
});
