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
  const visit = (day: number, visits: unknown[], late?: number): any => {
    const cell = visitFor(
      [[day]],
      visits.map((each) => [each]),
      late === undefined ? undefined : [[late]],
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
  test("none in time is #N/A; a date written out is refused, not taken for a header", () => {
    expect(visit(due, [due + 1])).toMatchObject({ code: "#N/A", message: "no visit on or before 2026-03-31" });
    expect(visit(due, [due + 3], 2)).toMatchObject({
      message: "no visit on or before 2026-04-02, 2 days after the due date",
    });
    expect(visit(due, ["March 1", due - 9])).toMatchObject({
      code: "#VALUE!",
      message: expect.stringContaining('visit_dates row 1 "March 1" is text, not a date'),
    });
    expect(errorOf(visitFor, due, undefined)).toMatch(/#VALUE! visit_dates is blank/);
  });
});
