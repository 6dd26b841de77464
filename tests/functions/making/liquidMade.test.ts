import fc from "fast-check";
import { hoursToFill } from "../../../src/functions/making/hoursToFill";
import { liquidMade } from "../../../src/functions/making/liquidMade";
import { evenly } from "../../evenly";
import { oneNumber } from "../oneCell";

test("nothing during the start delay, then in proportion to hours and plants", () => {
  expect(oneNumber(liquidMade, 3, 1.5)).toBe(0);
  expect(oneNumber(liquidMade, 0, 1.5)).toBe(0);
  expect(oneNumber(liquidMade, 27, 1.5)).toBeCloseTo(36, 12);
  expect(oneNumber(liquidMade, 27, 1.5, 3, 4)).toBeCloseTo(144, 12);
  expect(oneNumber(liquidMade, 27, 1.5, 3, 0)).toBe(0);
});

test("reads time and rate with units: 2 days at 10 gal/day (NIST SP 811: 1 gal = 3.785 411 784 L)", () => {
  expect(oneNumber(liquidMade, "2 d", "10 gal/day", 0)).toBeCloseTo(2 * 37.85411784, 9);
});

test("after the hours to fill it has made the capacity", () => {
  fc.assert(
    fc.property(evenly(1, 500), evenly(0.1, 20), evenly(0, 12), (capacity, rate, delay) => {
      expect(
        oneNumber(liquidMade, oneNumber(hoursToFill, capacity, rate, 0, delay), rate, delay) / capacity,
      ).toBeCloseTo(1, 9);
    }),
  );
});
