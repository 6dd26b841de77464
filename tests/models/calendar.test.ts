import { EDATE } from "@formulajs/formulajs";
import fc from "fast-check";
import { addMonths, dayOfSerial, daysInMonth, isLeapYear, lastDay, serialOfDay } from "../../src/models/calendar";
import dates from "../reference/dates.json";

type Triple = [number, number, number];
const serial = ([year, month, day]: number[]): number => serialOfDay({ year: year!, month: month!, day: day! });
const triple = (day: number): Triple => Object.values(dayOfSerial(day)) as Triple;
const anySerial = fc.integer({ min: 61, max: lastDay });

test.each(dates.serials)("$day is serial $serial ($source)", (row) => {
  expect(serial(row.day)).toBe(row.serial);
  expect(triple(row.serial)).toEqual(row.day);
});

test.each(dates.edate)("$months months from $start ($source)", (row) => {
  expect(triple(addMonths(serial(row.start), row.months))).toEqual(row.end);
});

test.each(dates.edate1904)("$months months from $start in the 1904 base ($source)", (row) => {
  expect(addMonths(serial(row.start), row.months) - dates.between1900And1904.days).toBe(row.serial);
});

test("1900 and 2100 are no leap years, 2000 is (Gregorian calendar: ISO 8601, 3.1.1)", () => {
  expect([1900, 2000, 2024, 2026, 2100].map(isLeapYear)).toEqual([false, true, true, false, false]);
  expect(daysInMonth(2100, 2)).toBe(28);
  // 28 February 1900 is serial 59 and 1 March 61, so a month back from 31 March 1900 would be 59 in Excel; below 61 the calendars differ.
  expect(serial([2100, 3, 1]) - serial([2100, 2, 28])).toBe(1);
});

test("every serial agrees with the calendar of the JavaScript engine (ECMAScript, Date)", () => {
  fc.assert(
    fc.property(anySerial, (day) => {
      const engine = new Date((day - 25569) * 86400000);
      expect(triple(day)).toEqual([engine.getUTCFullYear(), engine.getUTCMonth() + 1, engine.getUTCDate()]);
      expect(serial(triple(day))).toBe(day);
    }),
    { numRuns: 2000 },
  );
});

test("months added agree with formulajs EDATE from 1900-03 to 9999", () => {
  fc.assert(
    fc.property(fc.integer({ min: 36526, max: 80000 }), fc.integer({ min: 0, max: 600 }), (day, months) => {
      const theirs = EDATE(day, months) as unknown;
      expect(addMonths(day, months)).toBe(
        theirs instanceof Date ? Math.round(theirs.getTime() / 86400000 + 25569) : theirs,
      );
    }),
  );
});

test("beyond 9999-12-31 there is no day", () => {
  expect(addMonths(lastDay, 0)).toBe(lastDay);
  expect(addMonths(lastDay, 1)).toBe(Infinity);
});
