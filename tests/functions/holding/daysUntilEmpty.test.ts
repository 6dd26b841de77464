import fc from "fast-check";
import { daysUntilEmpty } from "../../../src/functions/holding/daysUntilEmpty";
import { levelLeft } from "../../../src/functions/holding/levelLeft";
import { evenly } from "../../evenly";
import { errorOf, oneNumber } from "../oneCell";

test("a full unpowered vessel is empty in 8 days, the cautious end of 8 to 10 (common practice, no source)", () => {
  expect(oneNumber(daysUntilEmpty, 40, 40)).toBe(8);
  expect(oneNumber(daysUntilEmpty, 20, 40)).toBe(4);
});

test("plain arithmetic: 28 L at 4 L/day lost and 3 L/day drawn last 4 days", () => {
  expect(oneNumber(daysUntilEmpty, 28, 40, 3, 10)).toBeCloseTo(4, 12);
  expect(oneNumber(daysUntilEmpty, 28, 40, "0.125 L/h", "240 h")).toBeCloseTo(4, 12);
});

test("a vessel that gains or just holds does not run empty; one that is empty is empty now", () => {
  expect(errorOf(daysUntilEmpty, 30, 40, 0, 8, 24)).toMatch(/^#N\/A does not run empty/);
  expect(errorOf(daysUntilEmpty, 30, 40, 0.1, 10, 4.1)).toMatch(/^#N\/A does not run empty/);
  expect(oneNumber(daysUntilEmpty, 0, 40, 0, 8, 24)).toBe(0);
});

test("LEVEL_LEFT is its inverse: nothing left at that day, something just before it", () => {
  fc.assert(
    fc.property(
      evenly(1, 500),
      evenly(0.01, 1),
      evenly(0, 50),
      evenly(1, 30),
      evenly(0, 0.9),
      (capacity, share, draw, emptyDays, madeShare) => {
        const level = share * capacity;
        const made = madeShare * (draw + capacity / emptyDays);
        const days = oneNumber(daysUntilEmpty, level, capacity, draw, emptyDays, made);
        expect(oneNumber(levelLeft, days, level, capacity, draw, emptyDays, made) / capacity).toBeCloseTo(0, 9);
        expect(oneNumber(levelLeft, days * 0.75, level, capacity, draw, emptyDays, made) / level).toBeCloseTo(0.25, 9);
      },
    ),
  );
});

test("drawing more, a leakier vessel and a lower level never last longer", () => {
  fc.assert(
    fc.property(evenly(1, 500), evenly(0.01, 1), evenly(0, 50), evenly(2, 30), (capacity, share, draw, emptyDays) => {
      const days = oneNumber(daysUntilEmpty, share * capacity, capacity, draw, emptyDays);
      expect(oneNumber(daysUntilEmpty, share * capacity, capacity, draw + 1, emptyDays)).toBeLessThan(days);
      expect(oneNumber(daysUntilEmpty, share * capacity, capacity, draw, emptyDays - 1)).toBeLessThan(days);
      expect(oneNumber(daysUntilEmpty, 0.9 * share * capacity, capacity, draw, emptyDays)).toBeLessThan(days);
    }),
  );
});

test("refuses a level above the capacity and zero empty days", () => {
  expect(errorOf(daysUntilEmpty, 41, 40)).toBe(
    "#VALUE! level is 41 L, above the capacity of 40 L; check which is which",
  );
  expect(errorOf(daysUntilEmpty, 40, 40, 0, 0)).toMatch(/#VALUE! empty_days must be more than 0 days/);
});
