import { EDATE } from "@formulajs/formulajs";
import fc from "fast-check";
import { evenly } from "../../evenly";
import { nextServiceDate } from "../../../src/functions/service/nextServiceDate";
import { errorOf, oneCell, oneNumber } from "../oneCell";
import { on } from "./serviceCells";

test("Microsoft's EDATE examples: 15 January 2011 and 1 or 2 months", () => {
  expect(oneCell(nextServiceDate, on("2011-01-15"), 1)).toBe(on("2011-02-15"));
  expect(oneCell(nextServiceDate, on("2011-01-15"), 2)).toBe(on("2011-03-15"));
});

test("ECMA-376 Part 4, EDATE: 31 January 2006 and 5 months, 29 February 2004 and 12 (1904 serials 37436 and 36949)", () => {
  expect(oneCell(nextServiceDate, on("2006-01-31"), 5)).toBe(37436 + 1462);
  expect(oneCell(nextServiceDate, on("2004-02-29"), 12)).toBe(36949 + 1462);
  expect(oneCell(nextServiceDate, on("2004-02-29"), "1 year")).toBe(36949 + 1462);
});

test("harsh by hand: half of the 90 days from 1 January to 1 April is 45", () => {
  expect(oneCell(nextServiceDate, on("2026-01-01"), 3, 0.5)).toBe(on("2026-02-15"));
  expect(oneCell(nextServiceDate, on("2026-01-01"), 3, "50%")).toBe(on("2026-02-15"));
  // 0.7 × 31 = 21.7: the part day is cut off.
  expect(oneCell(nextServiceDate, on("2026-01-01"), 1, 0.7)).toBe(on("2026-01-22"));
});

test("equals formulajs EDATE without the harsh factor; a harsher factor is never later", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 36526, max: 73000 }),
      fc.integer({ min: 1, max: 120 }),
      evenly(0.01, 1),
      (last, months, harsh) => {
        const theirs = EDATE(last, months) as unknown;
        const plain = oneNumber(nextServiceDate, last, months);
        expect(plain).toBe(theirs instanceof Date ? Math.round(theirs.getTime() / 86400000 + 25569) : theirs);
        const sooner = oneNumber(nextServiceDate, last, months, harsh);
        expect(sooner).toBeLessThanOrEqual(plain);
        expect(sooner).toBeGreaterThanOrEqual(last);
      },
    ),
  );
});

test("0 months, part months and harsh 0 or 93 are refused in words; a date of 1899 or 9999 is no last service", () => {
  expect(errorOf(nextServiceDate, 46000, 0)).toMatch(/#VALUE! months must be 1 months or more/);
  expect(errorOf(nextServiceDate, 46000, 1.5)).toMatch(/months must be a whole number/);
  expect(errorOf(nextServiceDate, 46000, 1, 0)).toMatch(/harsh must be above 0/);
  expect(errorOf(nextServiceDate, 46000, 1, 93)).toMatch(/harsh .*93% or 0.93/);
  expect(errorOf(nextServiceDate, 60, 1)).toMatch(/#VALUE! last_date is 60/);
  expect(errorOf(nextServiceDate, on("9999-12-31"), 1)).toMatch(/#VALUE! last_date is 2958465/);
  expect(errorOf(nextServiceDate, on("2100-12-31"), "8000 years")).toMatch(/after the year 9999/);
});

test("a harsh factor above 1 is not read as a percent: 1.2 would put the service off", () => {
  const words = errorOf(nextServiceDate, 46000, 3, 1.2);
  expect(words).toMatch(/#VALUE! harsh 1.2 would lengthen the interval; .*such as 0.8/);
  expect(words).not.toMatch(/percent|0\.012/);
});
