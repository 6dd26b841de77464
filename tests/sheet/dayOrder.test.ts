/** Dates by the calendar alone: which of the two readings exist is plain from the number of months and days. */
import { dateReadings } from "../../src/sheet/dayOrder";

test("a date whose two readings differ has both, the day first", () => {
  expect(dateReadings("1/3/2026 6:00")).toEqual([
    { words: "1 March 2026", entry: "2026-03-01 6:00" },
    { words: "3 January 2026", entry: "2026-01-03 6:00" },
  ]);
  expect(dateReadings("2.3.26").map(({ entry }) => entry)).toEqual(["2026-03-02", "2026-02-03"]);
});

test("a date with one reading has that one", () => {
  expect(dateReadings("13/3/2026").map(({ entry }) => entry)).toEqual(["2026-03-13"]);
  expect(dateReadings("3/13/2026").map(({ entry }) => entry)).toEqual(["2026-03-13"]);
  expect(dateReadings("4/4/2026").map(({ entry }) => entry)).toEqual(["2026-04-04"]);
  // 2024 is a leap year, 2026 is none.
  expect(dateReadings("29/2/2024").map(({ entry }) => entry)).toEqual(["2024-02-29"]);
});

test.each(["29/2/2026", "1/2", "2026-03-01", "1/2-2026", "12", "=1/3/2026", "31/31/2026", ""])(
  "%s has none",
  (text) => {
    expect(dateReadings(text)).toEqual([]);
  },
);
