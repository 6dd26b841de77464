import fc from "fast-check";
import { overdueDays } from "../../../src/functions/service/overdueDays";
import { serviceStatus } from "../../../src/functions/service/serviceStatus";
import { visitFor } from "../../../src/functions/service/visitFor";
import { errorOf, oneCell, oneNumber } from "../oneCell";
import { on } from "./serviceCells";

const due = on("2026-03-31");

describe("SERVICE_STATUS", () => {
  // The rule's own limits: due soon 0…warn days before, in grace 1…grace days late.
  test.each([
    [-8, "ok"],
    [-7, "due soon"],
    [0, "due soon"],
    [1, "in grace"],
    [5, "in grace"],
    [6, "overdue"],
  ])("%d days after the due date, 7 of warning and 5 of grace: %s", (late, state) => {
    expect(oneCell(serviceStatus, due + late, due, undefined, 5)).toBe(state);
  });
  test("without grace the day after is overdue; without warning the day before is ok", () => {
    expect(oneCell(serviceStatus, due + 1, due)).toBe("overdue");
    expect(oneCell(serviceStatus, due - 1, due, 0)).toBe("ok");
    expect(oneCell(serviceStatus, due, due, 0)).toBe("due soon");
  });
  test("overdue exactly when OVERDUE_DAYS is above 0", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -40, max: 40 }),
        fc.integer({ min: 0, max: 20 }),
        fc.integer({ min: 0, max: 20 }),
        (late, warn, grace) => {
          expect(oneCell(serviceStatus, due + late, due, warn, grace) === "overdue").toBe(
            oneNumber(overdueDays, due + late, due, grace) > 0,
          );
        },
      ),
    );
  });
});

describe("OVERDUE_DAYS", () => {
  test("by hand over a month end: 31 March to 10 April is 10 days, 3 beyond a week of grace", () => {
    expect(oneNumber(overdueDays, on("2026-04-10"), due)).toBe(10);
    expect(oneNumber(overdueDays, on("2026-04-10"), due, 7)).toBe(3);
    expect(oneNumber(overdueDays, on("2026-04-07"), due, 7)).toBe(0);
  });
  test("a time of day doesn't make a day", () => {
    expect(oneNumber(overdueDays, due + 0.9, due + 0.1)).toBe(0);
  });
});

describe("VISIT_FOR", () => {
  const today = due - 40;
  const visit = (day: number, visits: unknown[], late?: number, asOf = today): any => {
    const cell = visitFor(
      [[asOf]],
      [[day]],
      visits.map((each) => [each]),
      ...(late === undefined ? [] : [[[late]]]),
    )[0]![0];
    return cell.basicValue ?? cell;
  };
  test("the last visit in time, in whatever order they stand, on the due date itself too", () => {
    const visits = [due + 10, due - 3, due - 30];
    expect(visit(due, visits)).toBe(due - 3);
    expect(visit(due, [...visits, due])).toBe(due);
    expect(visit(due, visits, 10)).toBe(due + 10);
    expect(visit(due, visits, 9)).toBe(due - 3);
    expect(visit(due, ["visits", ...visits])).toBe(due - 3);
  });
  test("a visit that is past is no answer, one on the very day is", () => {
    const visits = [due - 30, due + 3];
    expect(visit(due, visits, undefined, due - 30)).toBe(due - 30);
    expect(visit(due, visits, undefined, due - 29)).toMatchObject({
      code: "#N/A",
      message: "no visit from 2026-03-02 to 2026-03-31; the first one after is on 2026-04-03",
    });
  });
  test("an overdue task gets the first visit to come, whatever their order", () => {
    const visits = [due + 60, due - 30, due + 25, due + 90];
    expect(visit(due, visits, undefined, due + 1)).toBe(due + 25);
    // With 30 days of grace it is not overdue yet on the day after.
    expect(visit(due, visits, 70, due + 1)).toBe(due + 60);
    expect(visit(due, visits, 30, due + 31)).toBe(due + 60);
    expect(visit(due, [due - 30], undefined, due + 9)).toMatchObject({
      code: "#N/A",
      message: "overdue since 2026-03-31, and no visit on or after 2026-04-09: plan one now",
    });
  });
  test("agrees with a search day by day", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -60, max: 60 }), { minLength: 1, maxLength: 6 }),
        fc.integer({ min: -30, max: 30 }),
        fc.integer({ min: 0, max: 20 }),
        (offsets, asOf, late) => {
          const visits = new Set(offsets);
          const days = Array.from({ length: 121 }, (_, index) => index - 60).filter(
            (day) => visits.has(day) && day >= asOf,
          );
          const wanted = late < asOf ? days[0] : days.filter((day) => day <= late).pop();
          const got = visit(
            due,
            offsets.map((day) => due + day),
            late,
            due + asOf,
          );
          if (wanted === undefined) expect(got.code).toBe("#N/A");
          else expect(got).toBe(due + wanted);
        },
      ),
    );
  });
  test("none in time is #N/A; a date written out is refused, not taken for a header", () => {
    expect(visit(due, [today - 1])).toMatchObject({
      code: "#N/A",
      message: "no visit on or after 2026-02-19: plan one by 2026-03-31",
    });
    expect(visit(due, ["March 1", due - 9])).toMatchObject({
      code: "#VALUE!",
      message: expect.stringContaining('visit_dates row 1 "March 1" is text, not a date'),
    });
    expect(errorOf(visitFor, today, due, undefined)).toMatch(/#VALUE! visit_dates is blank/);
  });
  test("one list of visits serves a column of due dates", () => {
    const result = visitFor([[today]], [[due], [due + 8]], [[due - 1], [due + 7]]);
    expect(result.map((line) => line[0].basicValue)).toEqual([due - 1, due + 7]);
  });
});
