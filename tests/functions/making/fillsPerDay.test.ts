import fc from "fast-check";
import { fillsPerDay } from "../../../src/functions/making/fillsPerDay";
import { evenly } from "../../evenly";
import { errorOf, oneNumber } from "../oneCell";

test("by hand: one plant of 1.25 L/h, 1 L fills drawn at 1.25 and 20 min each", () => {
  expect((24 * 1.25) / (1.25 + 1.25 / 3)).toBeCloseTo(18, 9);
  expect(oneNumber(fillsPerDay, 1, 1.25, 20)).toBe(18);
});

test("the day's balance holds: n fills are made good, n + 1 are not, and only the plant drawn from stops", () => {
  fc.assert(
    fc.property(
      evenly(0.5, 40),
      evenly(0.5, 10),
      evenly(1, 120),
      fc.integer({ min: 1, max: 12 }),
      evenly(1, 2),
      (fill, rate, minutes, plants, ratio) => {
        const n = oneNumber(fillsPerDay, fill, rate, minutes, plants, ratio);
        const made = (fills: number): number => rate * (24 * plants - (fills * minutes) / 60);
        expect(made(n) - n * fill * ratio).toBeGreaterThanOrEqual(-1e-6);
        expect(made(n + 1) - (n + 1) * fill * ratio).toBeLessThan(1e-6);
      },
    ),
  );
});

test("no plants make no fills; a fill of nothing is refused", () => {
  expect(oneNumber(fillsPerDay, 10, 2, 30, 0)).toBe(0);
  expect(errorOf(fillsPerDay, 0, 2, 30)).toMatch(/#VALUE! fill_each must be more than 0/);
});
