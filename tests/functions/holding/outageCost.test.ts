import fc from "fast-check";
import { outageCost } from "../../../src/functions/holding/outageCost";
import { evenly } from "../../evenly";
import { oneNumber } from "../oneCell";

test("a day's outage of two full 50 L plants of 1.25 L/h and a restart of 6 h, by hand: 60 + 15 not made, 12.5 boiled off", () => {
  expect(oneNumber(outageCost, 24, 6, 1.25, 50, 2)).toBeCloseTo(87.5, 12);
  expect(oneNumber(outageCost, "1 d", "360 min", "30 L/day", 50, 2, "192 h")).toBeCloseTo(87.5, 9);
});

test("no outage costs its restart only; a long one never boils off more than the vessel holds", () => {
  expect(oneNumber(outageCost, 0, 3, 2, 60)).toBe(6);
  expect(oneNumber(outageCost, 192, 0, 1, 40)).toBeCloseTo(232, 9);
  expect(oneNumber(outageCost, 1920, 0, 1, 40)).toBeCloseTo(1960, 9);
});

test("in proportion to the plants, and rising with hours", () => {
  fc.assert(
    fc.property(
      evenly(0, 500),
      evenly(0, 24),
      evenly(0.1, 5),
      evenly(1, 200),
      fc.integer({ min: 1, max: 20 }),
      (hours, restart, rate, capacity, plants) => {
        const one = oneNumber(outageCost, hours, restart, rate, capacity);
        expect(oneNumber(outageCost, hours, restart, rate, capacity, plants)).toBeCloseTo(plants * one, 6);
        expect(oneNumber(outageCost, hours + 1, restart, rate, capacity)).toBeGreaterThan(one);
      },
    ),
  );
});
