import { stockPlan } from "../../../src/functions/plan/stockPlan";
import { dayReport } from "../../../src/functions/records/dayReport";
import worked from "../../reference/stockPlanTenDays.json";
import { firstOfMarch, plainCell, workedCells } from "../plan/planCells";

const plan = stockPlan(...(workedCells() as [any, any, any, any, any, any]));

test("each period of the plan worked by hand, from the table with and without header", () => {
  for (const table of [plan, plan.slice(1)]) {
    worked.nextDay.forEach((row, index) => {
      const report = dayReport([[firstOfMarch + index]], table);
      expect(report[0]).toEqual(["line", "value", "unit"]);
      expect(report.slice(1).map((line) => line[0])).toEqual(plan[0]);
      expect(report.slice(1).map((line) => plainCell(line[1]))).toEqual([
        firstOfMarch + index,
        row.opening,
        row.made,
        row.received,
        row.drawn,
        row.boilOff,
        row.vented,
        row.closing,
        row.short,
        row.heldBack,
        row.room,
      ]);
      expect(report.slice(1).map((line) => line[2])).toEqual(["", ...Array(10).fill("L")]);
    });
  }
});

test("a date outside the plan is #N/A with the dates it has; filtered rows are refused", () => {
  expect(dayReport([[46081]], plan)[0]![0]).toMatchObject({
    code: "#N/A",
    message: "2026-02-28 is not in the plan, which runs from 2026-03-01 to 2026-03-10",
  });
  expect(
    dayReport(
      [[firstOfMarch]],
      plan.filter((_, row) => row !== 3),
    )[0]![0],
  ).toMatchObject({ code: "#VALUE!" });
});
