import fc from "fast-check";
import { readyAt } from "../../../src/functions/making/readyAt";
import { switchOnBy } from "../../../src/functions/making/switchOnBy";
import { evenly } from "../../evenly";
import { errorOf, oneNumber } from "../oneCell";

test("over the leap day by the calendar of JavaScript's Date: 2028-02-28 21:00 + 3 h + 24 h", () => {
  const wanted = Date.UTC(2028, 1, 28, 21) / 86400000 + 25569 + 27 / 24;
  expect(new Date(Date.UTC(2028, 1, 28, 21) + 27 * 3600000).toISOString()).toBe("2028-03-01T00:00:00.000Z");
  expect(oneNumber(readyAt, "2028-02-28 21:00", 36, 1.5)).toBeCloseTo(wanted, 8);
});

test("twice the plants halve the making but not the start delay", () => {
  const one = oneNumber(readyAt, 46083, 60, 1, 3, 1) - 46083;
  const two = oneNumber(readyAt, 46083, 60, 1, 3, 2) - 46083;
  expect(one * 24).toBeCloseTo(63, 6);
  expect(two * 24).toBeCloseTo(33, 6);
});

test("SWITCH_ON_BY is its inverse", () => {
  fc.assert(
    fc.property(
      evenly(34000, 60000),
      evenly(0, 2000),
      evenly(0.2, 10),
      evenly(0, 12),
      fc.integer({ min: 1, max: 20 }),
      (start, need, rate, delay, plants) => {
        const ready = oneNumber(readyAt, start, need, rate, delay, plants);
        expect(oneNumber(switchOnBy, ready, need, rate, delay, plants)).toBeCloseTo(start, 7);
      },
    ),
  );
});

test("refuses no plants, and a time past the calendar", () => {
  expect(errorOf(readyAt, 46083, 10, 1, 3, 0)).toMatch(/#VALUE! plants must be 1 or more/);
  expect(errorOf(readyAt, 46083, 1e12, 1)).toMatch(/#VALUE! .*after the year 9999/);
});
