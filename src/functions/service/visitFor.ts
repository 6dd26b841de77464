import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { column } from "../../arguments/column";
import { date, isoDay } from "../../arguments/date";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { days } from "../../arguments/quantity";
import { dateCell, noAnswer } from "../../cells/cellValues";
import { lastVisit } from "../../models/servicePlan";

export const args = cellArguments({
  due_date: date,
  visit_dates: column(date),
  late: days.whole().default(defaults.late),
});

/**
 * The visit on which to do a service: the last one that is in time.
 *
 * @customfunction VISIT_FOR
 * @param due_date Day on which the service is due [date]
 * @param visit_dates Days of the planned visits, in any order [date]
 * @param [late] Days the service may be late [days]
 * @returns Day of the visit [date]
 */
export function visitFor(due_date: any[][], visit_dates: any[][], late?: any[][]): any[][] {
  return eachCell(args, [due_date, visit_dates, late], (given) => {
    const latest = given.due_date + given.late;
    const visit = lastVisit(given.visit_dates, latest);
    return visit === undefined
      ? noAnswer(
          given.late === 0
            ? `no visit on or before ${isoDay(latest)}`
            : `no visit on or before ${isoDay(latest)}, ${given.late} day${given.late === 1 ? "" : "s"} after the due date`,
        )
      : dateCell(visit);
  });
}

export const about: About = {
  rule: "the last visit date that is not after due date + late",
  range: "Visits in any order, a header passed over, a blank refused. No visit in time is #N/A.",
  source: "Common practice, no source",
  examples: [
    {
      formula: '=OXYGEN.VISIT_FOR("2026-03-20",{"2026-02-15";"2026-03-15";"2026-04-15"})',
      result: 46096,
      note: "15 March 2026",
    },
    {
      formula: '=OXYGEN.VISIT_FOR("2026-04-10",{"2026-02-15";"2026-03-15";"2026-04-15"},7)',
      result: 46127,
      note: "A week late is allowed: 15 April",
    },
    {
      formula: '=OXYGEN.VISIT_FOR("2026-02-01",{"2026-02-15"})',
      result: { error: "#N/A", words: "no visit on or before 2026-02-01" },
    },
  ],
  seeAlso: ["SERVICE_LIST", "SERVICE_STATUS", "NEXT_SERVICE_DATE"],
};
