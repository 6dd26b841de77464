import fc from "fast-check";
import { evenly } from "../../evenly";
import { hoursPerDay } from "../../../src/functions/service/hoursPerDay";
import { nextServiceByHours } from "../../../src/functions/service/nextServiceByHours";
import { nextServiceDate } from "../../../src/functions/service/nextServiceDate";
import { serviceDue } from "../../../src/functions/service/serviceDue";
import { errorOf, oneCell, oneNumber } from "../oneCell";
import { on } from "./serviceCells";

const now = on("2026-03-01");

describe("NEXT_SERVICE_BY_HOURS", () => {
  test("by hand: 200 h left at 20 h a day; a part day is cut off; due today", () => {
    expect(oneCell(nextServiceByHours, now, 1000, 500, 1300, 20)).toBe(now + 10);
    expect(oneCell(nextServiceByHours, now, 1000, 500, 1300, 19)).toBe(now + 10);
    expect(oneCell(nextServiceByHours, now, 1000, 500, 1500, 20)).toBe(now);
  });
  test("overdue by an hour is yesterday, not today", () => {
    expect(oneCell(nextServiceByHours, now, 1000, 500, 1501, 20)).toBe(now - 1);
  });
  test("harsh 0.8: 400 h instead of 500", () => {
    expect(oneCell(nextServiceByHours, now, 1000, 500, 1300, 20, 0.8)).toBe(now + 5);
  });
  test("a meter that runs back, 25 h a day, no hours a day are refused", () => {
    expect(errorOf(nextServiceByHours, now, 1000, 500, 900, 20)).toMatch(
      /#VALUE! hours_now 900 h is below last_hours 1000 h; .*meter was changed/,
    );
    expect(errorOf(nextServiceByHours, now, 1000, 500, 1300, 25)).toMatch(
      /hours_per_day must be above 0 and at most 24/,
    );
    expect(errorOf(nextServiceByHours, now, 1000, 500, 1300, 0)).toMatch(/hours_per_day must be above 0/);
  });
});

describe("HOURS_PER_DAY", () => {
  test("by hand: 180 h in ten days; a machine that stood still", () => {
    expect(oneNumber(hoursPerDay, on("2026-03-01"), 1000, on("2026-03-11"), 1180)).toBe(18);
    expect(oneNumber(hoursPerDay, on("2026-03-01"), 1000, on("2026-03-11"), 1000)).toBe(0);
    // February 2024 has 29 days (leap year): 29 × 24 h.
    expect(oneNumber(hoursPerDay, on("2024-02-01"), 0, on("2024-03-01"), 696)).toBe(24);
  });
  test("the same day, dates the wrong way round, a meter that runs back and more than 24 h a day are refused", () => {
    expect(errorOf(hoursPerDay, now, 1, now, 2)).toMatch(/last_date 2026-03-01 must be after first_date 2026-03-01/);
    expect(errorOf(hoursPerDay, now, 1, now - 1, 2)).toMatch(/must be after/);
    expect(errorOf(hoursPerDay, now, 10, now + 1, 2)).toMatch(/last_hours 2 h is below first_hours 10 h/);
    expect(errorOf(hoursPerDay, now, 0, now + 2, 50)).toMatch(/25 h a day and a day has 24/);
    expect(errorOf(hoursPerDay, now, 0, now + 2, 48.02)).toMatch(/24.01 h a day and a day has 24/);
  });
  test("inverse: at that rate the meter's next service falls where the rate says", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 400 }),
        fc.integer({ min: 1, max: 24 }),
        fc.integer({ min: 1, max: 300 }),
        (days, rate, more) => {
          const average = oneNumber(hoursPerDay, now - days, 0, now, days * rate);
          expect(average).toBe(rate);
          expect(oneNumber(nextServiceByHours, now, 0, (days + more) * rate, days * rate, average)).toBe(now + more);
        },
      ),
    );
  });
});

describe("SERVICE_DUE", () => {
  test("is the earlier of the two rules", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: now - 400, max: now }),
        fc.integer({ min: 1, max: 24 }),
        fc.integer({ min: 1, max: 5000 }),
        fc.integer({ min: 0, max: 5000 }),
        evenly(1, 24),
        evenly(0.1, 1),
        (last, months, interval, run, perDay, harsh) => {
          expect(oneNumber(serviceDue, now, last, months, 100, interval, 100 + run, perDay, harsh)).toBe(
            Math.min(
              oneNumber(nextServiceDate, last, months, harsh),
              oneNumber(nextServiceByHours, now, 100, interval, 100 + run, perDay, harsh),
            ),
          );
        },
      ),
    );
  });
  test("by hand: hours first, then months first", () => {
    expect(oneCell(serviceDue, now, on("2026-01-31"), 3, 1000, 500, 1300, 20)).toBe(on("2026-03-11"));
    expect(oneCell(serviceDue, now, on("2026-01-31"), 1, 1000, 500, 1010, 2)).toBe(on("2026-02-28"));
  });
  test("a last date after as_of is refused: a wrong year would put the service off by a year", () => {
    expect(errorOf(serviceDue, now, now + 1, 3, 1000, 500, 1300, 20)).toMatch(
      /#VALUE! last_date 2026-03-02 is after as_of 2026-03-01; check the year/,
    );
    expect(oneCell(serviceDue, now, now, 3, 1000, 500, 1000, 20)).toBe(on("2026-03-26"));
  });
});
