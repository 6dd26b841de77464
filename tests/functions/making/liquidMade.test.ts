import fc from "fast-check";
import { hoursToFill } from "../../../src/functions/making/hoursToFill";
import { liquidMade } from "../../../src/functions/making/liquidMade";
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
    fc.property(
      fc.double({ min: 1, max: 500, noNaN: true }),
      fc.double({ min: 0.1, max: 20, noNaN: true }),
      fc.double({ min: 0, max: 12, noNaN: true }),
      (capacity, rate, delay) => {
        expect(
          oneNumber(liquidMade, oneNumber(hoursToFill, capacity, rate, 0, delay), rate, delay) / capacity,
        ).toBeCloseTo(1, 9);
      },
    ),
  );
});
