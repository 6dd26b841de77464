import fc from "fast-check";
import { levelLeft } from "../../../src/functions/holding/levelLeft";
import { evenly } from "../../evenly";
import { errorOf, oneNumber } from "../oneCell";

test("40 L that lose 10 % of the full vessel a day hold 28 L after 3 days (plain arithmetic)", () => {
  expect(oneNumber(levelLeft, 3, 40, 40, 0, 10)).toBeCloseTo(28, 9);
  expect(oneNumber(levelLeft, "72 h", "40 L", 40, 0, 10)).toBeCloseTo(28, 9);
});

test("the constant loss is the cautious side of one in proportion to the level: V·exp(−t/10)", () => {
  for (const days of [1, 3, 6.9])
    expect(oneNumber(levelLeft, days, 40, 40, 0, 10)).toBeLessThan(40 * Math.exp(-days / 10));
});

test("between empty and full, and never rising with time or draw while it runs down", () => {
  fc.assert(
    fc.property(
      evenly(0, 100),
      evenly(1, 500),
      evenly(0, 1),
      evenly(0, 50),
      evenly(1, 30),
      evenly(0, 100),
      (days, capacity, share, draw, emptyDays, made) => {
        const left = oneNumber(levelLeft, days, share * capacity, capacity, draw, emptyDays, made);
        expect(left).toBeGreaterThanOrEqual(0);
        expect(left).toBeLessThanOrEqual(capacity);
        expect(oneNumber(levelLeft, days, share * capacity, capacity, draw + 1, emptyDays, made)).toBeLessThanOrEqual(
          left,
        );
      },
    ),
  );
});

test("refuses a level above the capacity", () => {
  expect(errorOf(levelLeft, 1, "11 gal", 40)).toMatch(/#VALUE! level is 41\.6\d* L, above the capacity of 40 L/);
});
