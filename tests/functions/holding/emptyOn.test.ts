import fc from "fast-check";
import { serialOfIso } from "../../../src/arguments/date";
import { daysUntilEmpty } from "../../../src/functions/holding/daysUntilEmpty";
import { emptyOn } from "../../../src/functions/holding/emptyOn";
import { evenly } from "../../evenly";
import { errorOf, oneNumber, oneCell } from "../oneCell";

test("8 days from the end of February of a leap year (calendar)", () => {
  expect(oneCell(emptyOn, "2024-02-27", 40, 40)).toBe(serialOfIso("2024-03-06"));
});

test("part days and a time of day are cut off: never late", () => {
  expect(oneCell(emptyOn, "2026-03-02 23:00", 39.9, 40)).toBe(serialOfIso("2026-03-09"));
  fc.assert(
    fc.property(evenly(0.1, 40), evenly(0, 20), (level, draw) => {
      const days = oneNumber(daysUntilEmpty, level, 40, draw);
      const late = (oneCell(emptyOn, 46083, level, 40, draw) as number) - 46083 - days;
      expect(late).toBeLessThanOrEqual(1e-9);
      expect(late).toBeGreaterThan(-1);
    }),
  );
});

test("a whole number of days that rounding left short counts whole: 0.3 / 0.1", () => {
  // 2.9999999999999996 in binary.
  expect(oneCell(emptyOn, 46083, 0.3, 0.8, 0)).toBe(46086);
});

test("is a date to Excel", () => {
  expect(emptyOn([[46083]], [[40]], [[40]])[0]![0]).toMatchObject({
    type: "Double",
    basicValue: 46091,
    numberFormat: "yyyy-mm-dd",
  });
});

test("no day: does not run empty, or after the last date of Excel", () => {
  expect(errorOf(emptyOn, 46083, 30, 40, 0, 8, 24)).toMatch(/^#N\/A does not run empty/);
  expect(errorOf(emptyOn, 46083, 40, 40, 0, 1e9)).toMatch(
    /^#VALUE! the day on which it is empty would be after the year 9999/,
  );
});
