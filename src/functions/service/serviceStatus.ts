import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { date } from "../../arguments/date";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { days } from "../../arguments/quantity";
import { serviceState } from "../../models/servicePlan";

export const args = cellArguments({
  as_of: date,
  due_date: date,
  warn: days.whole().default(defaults.warn),
  grace: days.whole().default(defaults.grace),
});

/**
 * Where a service stands: ok, due soon, in grace or overdue.
 *
 * @customfunction SERVICE_STATUS
 * @param as_of The day to judge from [date]
 * @param due_date Day on which the service is due [date]
 * @param [warn] Days of warning before the due date [days]
 * @param [grace] Days it may be late [days]
 * @returns "ok", "due soon", "in grace" or "overdue"
 */
export function serviceStatus(as_of: any[][], due_date: any[][], warn?: any[][], grace?: any[][]): any[][] {
  return eachCell(args, [as_of, due_date, warn, grace], (given) =>
    serviceState(given.as_of, given.due_date, given.warn, given.grace),
  );
}

export const about: About = {
  gives: "text",
  rule: "more than grace days late: overdue; 1 to grace days late: in grace; 0 to warn days before: due soon; earlier: ok",
  range: "Whole days. The due date itself is due soon.",
  source: `Common practice, no source; warn: ${defaults.warn.source}; grace: ${defaults.grace.source}`,
  examples: [
    {
      formula: '=OXYGEN.SERVICE_STATUS("2026-03-01","2026-03-05")',
      result: "due soon",
      note: "Four days before",
      source: `4 is not above ${defaults.warn.value}`,
    },
    {
      formula: '=OXYGEN.SERVICE_STATUS("2026-03-01","2026-04-05")',
      result: "ok",
      source: `35 is above ${defaults.warn.value}`,
    },
    {
      formula: '=OXYGEN.SERVICE_STATUS("2026-03-01","2026-04-05",45)',
      result: "due soon",
      note: "The same with a longer warning",
      source: "35 is not above 45",
    },
    {
      formula: '=OXYGEN.SERVICE_STATUS("2026-03-10","2026-03-05",7,10)',
      result: "in grace",
      note: "Five days late, ten allowed",
      source: "The rule stated",
    },
    {
      formula: '=OXYGEN.SERVICE_STATUS("2026-03-10","2026-03-05")',
      result: "overdue",
      source: "Five days late, none allowed",
    },
  ],
  seeAlso: ["OVERDUE_DAYS", "SERVICE_DUE", "SERVICE_LIST", "VISIT_FOR"],
  caution: "Grace is for planning visits: where the maker's manual or a local rule allows none, enter 0.",
};
