import { cylindersPerDay } from "../../../src/functions/cylinders/cylindersPerDay";
import { errorOf, oneNumber } from "../oneCell";

test("laid out on a clock: 06:00 to 14:00 with 75 min fills and 5 min changes is six cylinders", () => {
  const ends = Array.from({ length: 10 }, (_, i) => (i + 1) * 80).filter((end) => end <= 8 * 60);
  expect(ends).toHaveLength(6);
  expect(oneNumber(cylindersPerDay, 8, 75)).toBe(6);
});

test("each booster counts whole cylinders of its own", () => {
  expect(oneNumber(cylindersPerDay, 10, 60, 0, 3)).toBe(30);
  expect(oneNumber(cylindersPerDay, 10, 61, 0, 3)).toBe(27);
  expect(oneNumber(cylindersPerDay, 24, 60, 0, 0)).toBe(0);
  expect(oneNumber(cylindersPerDay, 0, 60)).toBe(0);
});

test("floating noise cuts no cylinder off: 0.7 h hold seven of 6 min", () => {
  expect(oneNumber(cylindersPerDay, 0.7, 6, 0)).toBe(7);
  expect(oneNumber(cylindersPerDay, "42 min", "0.1 h", 0)).toBe(7);
});

test("a day of more than 24 h, and fills of no time, are refused", () => {
  expect(errorOf(cylindersPerDay, 25, 60)).toMatch(/#VALUE! hours must be between 0 and 24 h/);
  expect(errorOf(cylindersPerDay, 8, 0)).toMatch(/fill_minutes must be more than 0/);
});
