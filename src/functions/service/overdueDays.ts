import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { date } from "../../arguments/date";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { days } from "../../arguments/quantity";
import { overdueDays as late } from "../../models/servicePlan";

export const args = cellArguments({ as_of: date, due_date: date, grace: days.whole().default(defaults.grace) });

/**
 * Days by which a service is overdue, beyond its grace days; 0 when it is not.
 *
 * @customfunction OVERDUE_DAYS
 * @param as_of The day to judge from [date]
 * @param due_date Day on which the service is due [date]
 * @param [grace] Days it may be late [days]
 * @returns Days overdue [days]
 */
export function overdueDays(as_of: any[][], due_date: any[][], grace?: any[][]): any[][] {
  return eachCell(args, [as_of, due_date, grace], (given) => late(given.as_of, given.due_date, given.grace));
}

export const about: About = {
  gives: "days",
  rule: "the larger of 0 and as of − due date − grace",
  range: "Whole days. On the due date itself, and within the grace days, the answer is 0.",
  source: "Plain arithmetic",
  examples: [
    {
      formula: '=OXYGEN.OVERDUE_DAYS("2026-03-10","2026-03-01")',
      result: 9 - defaults.grace.value,
      source: `10 March − 1 March − ${defaults.grace.value}`,
    },
    {
      formula: '=OXYGEN.OVERDUE_DAYS("2026-03-10","2026-03-01",7)',
      result: 2,
      note: "Seven of the nine days are grace",
      source: "9 − 7",
    },
    {
      formula: '=OXYGEN.OVERDUE_DAYS("2026-02-20","2026-03-01")',
      result: 0,
      note: "Not due yet",
      source: "The rule stated",
    },
  ],
  seeAlso: ["SERVICE_STATUS", "SERVICE_DUE", "NEXT_SERVICE_DATE"],
};
