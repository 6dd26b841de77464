import fc from "fast-check";
import { hoursToFill } from "../../../src/functions/making/hoursToFill";
import { levelAfter } from "../../../src/functions/making/levelAfter";
import { evenly } from "../../evenly";
import { errorOf, oneNumber } from "../oneCell";

test("a 40 L vessel at 1 L/h with a 2.5 h start is full after 42.5 h and not before (common practice, no source)", () => {
  expect(oneNumber(levelAfter, 42.5, 40, 1, 0, 2.5)).toBeCloseTo(40, 9);
  expect(oneNumber(levelAfter, 42.4, 40, 1, 0, 2.5)).toBeCloseTo(39.9, 9);
  expect(oneNumber(levelAfter, 500, 40, 1, 0, 2.5)).toBe(40);
});

test("never above the capacity, never below the level, never falls with time", () => {
  fc.assert(
    fc.property(
      evenly(0, 300),
      evenly(0, 50),
      evenly(1, 200),
      evenly(0.1, 10),
      evenly(0, 1),
      (hours, more, capacity, rate, share) => {
        const level = capacity * share;
        const then = oneNumber(levelAfter, hours, capacity, rate, level);
        expect(then).toBeLessThanOrEqual(capacity);
        expect(then).toBeGreaterThanOrEqual(level);
        expect(oneNumber(levelAfter, hours + more, capacity, rate, level)).toBeGreaterThanOrEqual(then);
      },
    ),
  );
});

test("HOURS_TO_FILL is its inverse", () => {
  fc.assert(
    fc.property(evenly(1, 200), evenly(0.1, 10), evenly(0, 0.99), (capacity, rate, share) => {
      const hours = oneNumber(hoursToFill, capacity, rate, capacity * share);
      expect(oneNumber(levelAfter, hours, capacity, rate, capacity * share) / capacity).toBeCloseTo(1, 9);
      expect(oneNumber(levelAfter, hours - 0.01, capacity, rate, capacity * share)).toBeLessThan(capacity);
    }),
  );
});

test("refuses a level above the capacity", () => {
  expect(errorOf(levelAfter, 5, 20, 1, "6 gal")).toMatch(/#VALUE! level is 22\.7\d* L, above the capacity of 20 L/);
});
