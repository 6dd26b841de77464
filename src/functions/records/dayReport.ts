import type { About } from "../../arguments/about";
import { date as day, isoDay } from "../../arguments/date";
import { tableArguments, wholeTable } from "../../arguments/eachCell";
import { planTable, wholePlan } from "../../arguments/planTable";
import { dateCell, noAnswer } from "../../cells/cellValues";

export const args = tableArguments({ date: day, plan: planTable });

/**
 * One day of a stock plan, a line for each column.
 *
 * @customfunction DAY_REPORT
 * @param date The day to report [date]
 * @param plan The table of STOCK_PLAN, with or without its header row
 * @returns One row a line, in the order of the plan's columns: line, value, unit
 */
export function dayReport(date: any[][], plan: any[][]): any[][] {
  return wholeTable(args, [date, plan], (given) => {
    const gap = wholePlan(given.plan);
    if (gap) return gap;
    const first = given.plan[0]!.date;
    const row = given.plan[given.date - first];
    if (!row) {
      const last = given.plan[given.plan.length - 1]!.date;
      return noAnswer(`${isoDay(given.date)} is not in the plan, which runs from ${isoDay(first)} to ${isoDay(last)}`);
    }
    return [
      ["line", "value", "unit"],
      ["date", dateCell(row.date), ""],
      ["opening", row.opening, "L"],
      ["made", row.made, "L"],
      ["received", row.received, "L"],
      ["drawn", row.drawn, "L"],
      ["boil-off", row.boil_off, "L"],
      ["vented", row.vented, "L"],
      ["closing", row.closing, "L"],
      ["short", row.short, "L"],
      ["held back", row.held_back, "L"],
      ["room", row.room, "L"],
    ];
  });
}

export const about: About = {
  rule: "the plan's row of that date, turned on its side",
  range: "The eleven columns of STOCK_PLAN, consecutive days. A date outside the plan is #N/A.",
  source: "Plain look-up; common practice, no source",
  examples: [
    {
      formula:
        '=OXYGEN.DAY_REPORT("2026-03-02",{"2026-03-01",37.5,0,0,12.5,0,0,25,0,0,50;"2026-03-02",25,30,0,12.5,0,0,42.5,0,0,50})',
      result: [
        ["line", "value", "unit"],
        ["date", 46083, ""],
        ["opening", 25, "L"],
        ["made", 30, "L"],
        ["received", 0, "L"],
        ["drawn", 12.5, "L"],
        ["boil-off", 0, "L"],
        ["vented", 0, "L"],
        ["closing", 42.5, "L"],
        ["short", 0, "L"],
        ["held back", 0, "L"],
        ["room", 50, "L"],
      ],
    },
    {
      formula: '=OXYGEN.DAY_REPORT("2026-04-02",{"2026-03-01",37.5,0,0,12.5,0,0,25,0,0,50})',
      result: { error: "#N/A", words: "2026-04-02 is not in the plan" },
    },
  ],
  seeAlso: ["STOCK_PLAN", "PLAN_TOTALS", "LOG_FAULTS"],
};
