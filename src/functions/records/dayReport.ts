import type { About } from "../../arguments/about";
import { date as day, isoDay } from "../../arguments/date";
import { tableArguments, wholeTable } from "../../arguments/eachCell";
import { planOfTable, planTable } from "../../arguments/planTable";
import { CellError, dateCell, noAnswer } from "../../cells/cellValues";

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
    const days = planOfTable(given.plan, "plan");
    if (days instanceof CellError) return days;
    const first = days[0]!.date;
    const row = days[given.date - first];
    if (!row) {
      const last = days[days.length - 1]!.date;
      return noAnswer(`${isoDay(given.date)} is not in the plan, which runs from ${isoDay(first)} to ${isoDay(last)}`);
    }
    return [
      ["line", "value", "unit"],
      ["date", dateCell(row.date), ""],
      ["opening", row.opening, "L"],
      ["made", row.made, "L"],
      ["received", row.received, "L"],
      ["drawn", row.drawn, "L"],
      ["boil-off", row.boilOff, "L"],
      ["vented", row.vented, "L"],
      ["closing", row.closing, "L"],
      ["short", row.short, "L"],
      ["held back", row.heldBack, "L"],
      ["room", row.room, "L"],
    ];
  });
}

export const about: About = {
  gives: ["text", "value", "text"],
  rule: "the plan's row of that date, turned on its side",
  range: "The eleven columns of STOCK_PLAN, consecutive days. A date outside the plan is #N/A.",
  source: "Plain look-up; common practice, no source",
  examples: [
    {
      formula:
        '=OXYGEN.DAY_REPORT("2026-03-02",{"2026-03-01",30,9,0,15,0,0,24,0,0,60;"2026-03-02",24,36,5,15,0,2,48,0,1,60})',
      result: [
        ["line", "value", "unit"],
        ["date", 46083, ""],
        ["opening", 24, "L"],
        ["made", 36, "L"],
        ["received", 5, "L"],
        ["drawn", 15, "L"],
        ["boil-off", 0, "L"],
        ["vented", 2, "L"],
        ["closing", 48, "L"],
        ["short", 0, "L"],
        ["held back", 1, "L"],
        ["room", 60, "L"],
      ],
      source: "The second row of the table",
    },
    {
      formula: '=OXYGEN.DAY_REPORT("2026-04-02",{"2026-03-01",30,9,0,15,0,0,24,0,0,60})',
      result: { error: "#N/A", words: "2026-04-02 is not in the plan" },
    },
  ],
  seeAlso: ["STOCK_PLAN", "PLAN_TOTALS", "LOG_FAULTS"],
};
