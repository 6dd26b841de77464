import fc from "fast-check";
import { fullAt } from "../../../src/functions/making/fullAt";
import { hoursToFill } from "../../../src/functions/making/hoursToFill";
import { evenly } from "../../evenly";
import { errorOf, oneNumber } from "../oneCell";

const serialOf = (iso: string): number => Date.parse(`${iso}Z`) / 86400000 + 25569;

test("a day and a half later by the calendar of JavaScript's Date", () => {
  const start = "2024-02-28T20:00:00";
  const hours = 3 + (50 - 5) / 1.25;
  const wanted = new Date(Date.parse(`${start}Z`) + hours * 3600000).toISOString().slice(0, 19);
  expect(oneNumber(fullAt, "2024-02-28 20:00", 50, 1.25, 5)).toBeCloseTo(serialOf(wanted), 8);
  expect(wanted).toBe("2024-03-01T11:00:00");
});

test("differs from the start by the hours that HOURS_TO_FILL answers", () => {
  fc.assert(
    fc.property(evenly(1, 500), evenly(0.1, 20), evenly(0, 1), evenly(0, 12), (capacity, rate, share, delay) => {
      const hours = oneNumber(hoursToFill, capacity, rate, capacity * share, delay);
      expect((oneNumber(fullAt, 46000.25, capacity, rate, capacity * share, delay) - 46000.25) * 24).toBeCloseTo(
        hours,
        5,
      );
    }),
  );
});

test("shows date and time, and keeps the fraction", () => {
  expect(fullAt([[46083]], [[10]], [[1]], [[0]], [[2]])[0]![0]).toMatchObject({
    basicValue: 46083.5,
    numberFormat: "yyyy-mm-dd hh:mm",
  });
});

test("refuses a level above the capacity and a time past the calendar", () => {
  expect(errorOf(fullAt, 46083, 10, 1, 11)).toMatch(/#VALUE! level is 11 L, above the capacity/);
  expect(errorOf(fullAt, 46083, 1e12, 1e-3)).toMatch(/#VALUE! .*after the year 9999/);
});
